/**
 * The neck from the front, the larynx opened from behind, tongue and pharynx from
 * behind, and the left orbit with its roof taken away. The left of the body is at the
 * right of the plate from the front, at the left from behind and from above.
 */
import { belly, tube } from "#lib/specimens/drawing/forms.ts";
import {
  arc,
  at,
  bothHalves,
  bothLines,
  contours,
  ellipse,
  type Point,
  ring,
  roundBand,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import { bothSides, filled, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export function drawNeck(vary: Variation): Sketch {
  const outline = bothHalves(
    vary
      .loosen(
        at("4,26 26,22 50,8 66,-4 74,4 72,30 66,60 68,96 84,122 116,138 132,150 128,166 90,172 40,176 4,170"),
        0.8,
      )
      .map(([x, y], index): Point => [index === 0 || index === 14 ? 0 : x, y]),
  );
  return {
    shapes: [
      filled("tissue", ring(outline, 0.9), "outline"),
      ...bothSides([
        ...belly(at("8,36 30,28 50,14 62,2"), [4, 6, 6, 3]),
        filled("organ", ring(at("32,30 44,22 56,22 58,32 48,40 36,38")), "line"),
        ...belly(at("58,168 48,120 40,76 36,56"), [10, 9, 7, 4], "deep"),
        filled("vein", roundBand(at("40,30 40,70 38,110 34,166"), [4, 6, 6.4, 6]), "line"),
        filled("artery", roundBand(at("27,166 28,120 28,72"), [4.6, 4.4, 5.4]), "line"),
        filled("artery", roundBand(at("28,76 32,52 34,30"), 3), "fine"),
        filled("artery", roundBand(at("27,76 24,54 30,36"), 2.6), "fine"),
        stroked("artery", smooth(at("26,68 18,66 14,78 14,98"))),
        stroked("nerve", smooth(at("33,36 34,80 32,120 31,166")), smooth(at("44,26 36,42 22,46 12,42"))),
        stroked("nerve", smooth(at("36,44 36,84 33,104 28,100 27,60")), smooth(at("60,86 56,120 46,166"))),
        ...belly(at("5,52 8,84 10,124 10,164"), [3, 4.4, 4.6, 5]),
        ...belly(at("8,50 16,80 18,98"), [2.6, 4, 3]),
      ]),
      ...tube(at("0,112 0,140 0,174"), 9.6, "glass"),
      stroked(
        "line",
        ...[120, 128, 136, 144, 152, 160, 168].map((y) => arc(0, y - 2, 9.4, 3, 0.2, Math.PI - 0.2)),
      ),
      filled("bone", ring(bothHalves(at("0,42 10,42 24,36 34,34 33,38 20,46 8,50 0,50"))), "line"),
      filled("glass", ring(bothHalves(at("0,60 6,56 16,56 20,62 19,78 14,90 6,94 0,92"))), "outline"),
      stroked("line", smooth(at("0,62 0,90"))),
      filled("glass", ring(bothHalves(at("0,98 8,98 14,96 14,106 8,110 0,110"))), "line"),
      filled(
        "organ",
        ring(bothHalves(at("0,112 8,110 18,94 22,82 27,92 28,116 24,136 16,142 8,132 0,126"))),
        "outline",
      ),
      filled("organ", ring(at("-4,114 -3,84 2,60 4,86 4,114")), "line"),
      ...belly(at("70,24 62,60 42,110 16,150 8,164"), [8, 12, 13, 10, 5]),
      filled("bone", roundBand(at("10,166 40,158 80,160 122,152"), [6, 5, 4.4, 5]), "line"),
      filled("bone", roundBand(at("-10,166 -40,158 -80,160 -122,152"), [6, 5, 4.4, 5]), "line"),
    ],
    callouts: [
      { structure: "thyroid-gland", at: [-22, 118] },
      { structure: "common-carotid-artery", at: [-28, 104] },
      { structure: "internal-jugular-vein", at: [-40, 90] },
      { structure: "vagus-nerve", at: [-33, 140] },
      { structure: "submandibular-gland", at: [-46, 30] },
      { structure: "sternocleidomastoid", at: [52, 90] },
      { structure: "trachea", at: [4, 156] },
      { structure: "pyramidal-lobe-of-thyroid-gland", at: [1, 74] },
      { structure: "ansa-cervicalis", at: [-33, 102] },
    ],
  };
}

/** The back wall cut in the middle and spread: the folds of the voice at both sides of the slit. */
export function drawLarynxOpened(vary: Variation): Sketch {
  const wall = bothHalves(
    vary.loosen(at("6,40 22,34 40,40 50,60 54,90 50,124 40,146 34,176 31,214 6,218"), 0.8),
  );
  return {
    shapes: [
      ...bothSides([
        filled("bone", roundBand(at("47,52 52,30 50,4"), [4, 3, 2]), "outline"),
        filled("glass", ring(at("40,44 54,52 62,80 60,116 52,126 44,110")), "outline"),
      ]),
      filled("tissue", ring(bothHalves(at("0,-26 13,-22 22,-6 20,16 28,38 14,50 0,52")), 0.9), "outline"),
      filled("organ", ring(wall, 0.9), "outline"),
      stroked(
        "hatch",
        contours(bothHalves(at("0,-26 13,-22 22,-6 20,16 28,38 14,50 0,52")), 1, 4, [0.86, 0.72]),
      ),
      stroked("line", smooth(at("0,-22 0,30"))),
      ...bothSides([
        filled("muscle", ring(at("26,66 40,72 46,92 40,110 28,100 24,80")), "line"),
        filled("glass", ring(at("26,52 33,50 37,60 34,74 27,72")), "line"),
        filled("glass", ellipse(29, 47, 4, 3), "line"),
        filled("sinew", roundBand(at("3,78 14,74 25,73"), [2, 3.6, 4]), "line"),
        filled("hollow", roundBand(at("4,86 14,84 24,84"), [1.4, 2.6, 2]), "fine"),
        filled("sinew", roundBand(at("2,93 14,93 25,94"), [2, 3, 4]), "outline"),
        filled("glass", ring(at("24,112 40,112 44,130 38,148 26,146 22,130")), "line"),
        stroked("line", smooth(at("20,12 30,34 34,52"))),
        stroked("nerve", smooth(at("60,30 48,46 40,64")), smooth(at("44,210 44,160 40,120"))),
      ]),
      stroked(
        "hatch",
        ...[-10, 0, 10].map((x) =>
          smooth([
            [x, 104],
            [x * 1.2, 130],
            [x * 1.4, 150],
          ]),
        ),
      ),
      ...[158, 171, 184, 197, 210].map((y) => stroked("line", arc(0, y - 5, 31, 7, 0.35, Math.PI - 0.35))),
      stroked("fine", smooth(at("0,100 0,150"))),
    ],
    callouts: [
      { structure: "epiglottis", at: [8, -6] },
      { structure: "vestibular-fold", at: [-14, 75] },
      { structure: "vocal-fold", at: [-14, 93] },
      { structure: "arytenoid-cartilage", at: [32, 62] },
      { structure: "posterior-cricoarytenoid", at: [38, 92] },
      { structure: "superior-horn-of-thyroid-cartilage", at: [-51, 20] },
      { structure: "lamina-of-cricoid-cartilage", at: [34, 130] },
      { structure: "laryngeal-ventricle", at: [16, 84] },
    ],
  };
}

export function drawPharynxFromBehind(vary: Variation): Sketch {
  const flap = vary.loosen(at("34,10 62,4 86,20 92,70 86,126 70,176 52,206 34,210 40,160 44,110 40,60"), 0.8);
  const papillae = at("-26,92 -18,98 -9,102 0,104 9,102 18,98 26,92");
  return {
    shapes: [
      ...bothSides([
        filled("muscle", ring(flap, 0.9), "outline"),
        stroked(
          "hatch",
          ...[30, 56, 82, 108, 134, 160].map((y) =>
            smooth([
              [44, y + 12],
              [64, y],
              [88 - Math.max(0, y - 110) * 0.35, y - 16],
            ]),
          ),
        ),
        stroked("line", smooth(at("44,74 68,62 90,58")), smooth(at("44,130 66,120 86,112"))),
      ]),
      filled(
        "hollow",
        ring(bothHalves(at("0,0 30,6 40,24 42,60 46,110 42,160 34,210 16,222 0,224")), 0.9),
        "line",
      ),
      ...bothSides([filled("organ", ring(at("36,58 43,70 42,90 34,96 29,82 31,66")), "line")]),
      filled("organ", ring(bothHalves(at("0,62 20,64 34,76 36,102 28,122 12,132 0,133")), 0.9), "outline"),
      stroked("fine", smooth(at("-30,84 -14,94 0,100 14,94 30,84")), smooth(at("0,102 0,128"))),
      ...papillae.map(([x, y]) => filled("tissue", ellipse(x, y - 6, 2.6, 2.2), "line")),
      stroked(
        "stipple",
        ...at("-22,112 -14,118 -6,112 6,118 14,112 22,116 -10,124 10,124").map(([x, y]) =>
          arc(x, y, 1.4, 1.2, 0, 6),
        ),
      ),
      filled(
        "tissue",
        ring(bothHalves(at("0,14 22,16 40,26 40,44 28,52 14,52 8,56 6,70 0,76")), 0.9),
        "outline",
      ),
      stroked("hatch", ...bothLines(at("6,22 20,26 32,38")), ...bothLines(at("4,30 12,36 16,46"))),
      ...bothSides([stroked("line", smooth(at("14,52 28,64 32,84")), smooth(at("30,50 42,66 44,100")))]),
      filled("tissue", ring(bothHalves(at("0,128 12,130 19,142 18,158 10,164 0,162")), 0.9), "outline"),
      filled("hollow", ring(bothHalves(at("0,160 10,164 12,176 6,188 0,190"))), "outline"),
      ...bothSides([
        stroked("line", smooth(at("17,154 22,170 16,188 4,194")), smooth(at("30,146 34,172 22,204"))),
      ]),
      filled("deep", ring(bothHalves(at("0,192 12,188 18,200 14,216 0,220"))), "line"),
      stroked(
        "hatch",
        ...[-8, -3, 3, 8].map((x) =>
          smooth([
            [x, 194],
            [x * 1.2, 206],
            [x, 216],
          ]),
        ),
      ),
    ],
    callouts: [
      { structure: "uvula-of-palate", at: [0, 66] },
      { structure: "soft-palate", at: [-22, 34] },
      { structure: "palatine-tonsil", at: [36, 78] },
      { structure: "vallate-papillae", at: [-18, 92] },
      { structure: "epiglottis", at: [8, 146] },
      { structure: "laryngeal-inlet", at: [-2, 176] },
      { structure: "superior-pharyngeal-constrictor", at: [72, 44] },
      { structure: "middle-pharyngeal-constrictor", at: [-72, 94] },
    ],
  };
}

/** Front at the top; a left orbit, with its apex towards the middle of the body at the right. */
export function drawOrbitFromAbove(vary: Variation): Sketch {
  const rim = vary.loosen(
    at("10,70 20,34 50,12 92,6 132,14 146,30 146,70 142,120 138,168 126,196 108,194 84,160 52,120 26,96"),
    0.8,
  );
  const socket = at(
    "22,70 32,42 58,24 92,18 124,24 134,40 132,80 128,124 124,170 116,182 106,172 84,140 56,108 34,90",
  );
  return {
    shapes: [
      filled("bone", ring(rim, 0.9), "outline"),
      filled("hollow", ring(socket, 0.9), "line"),
      filled("nerve", roundBand(at("86,82 98,118 112,152 118,180"), [7, 6.4, 6, 6]), "outline"),
      filled("sinew", ellipse(80, 54, 33), "outline"),
      stroked("hatch", arc(80, 54, 28, 28, 1.6, 3.4), arc(80, 54, 24, 24, 1.8, 3.2)),
      filled("hollow", roundBand(at("60,24 80,16 100,24"), [1, 4, 1]), "line"),
      ...belly(at("48,58 58,92 88,136 114,176"), [4, 8, 7, 3]),
      ...belly(at("112,54 120,92 122,136 120,174"), [4, 7, 6, 3]),
      ...belly(at("82,46 90,84 104,128 117,174"), [12, 10, 7, 3]),
      ...belly(at("130,42 130,90 126,140 121,172"), [2.4, 5, 4, 2]),
      stroked("outline", smooth(at("128,40 120,36 100,44 88,46")), arc(129, 39, 3.4, 3.4, 0, 6)),
      filled("organ", ring(at("28,58 36,40 50,34 54,46 44,58 34,68")), "outline"),
      stroked(
        "nerve",
        smooth(at("118,176 102,130 84,90 70,50 64,26")),
        smooth(at("84,90 90,60 92,24")),
        smooth(at("116,176 78,126 52,84 42,58")),
      ),
      stroked("nerve", smooth(at("122,178 124,150 131,112")), smooth(at("120,176 110,140 118,104 134,86"))),
      stroked(
        "artery",
        smooth(at("112,172 104,148 118,122 128,84 124,52 116,32")),
        smooth(at("106,148 84,116 60,84 44,66")),
      ),
      filled("nerve", ellipse(96, 126, 3.4, 2.6), "line"),
    ],
    callouts: [
      { structure: "eyeball", at: [66, 62] },
      { structure: "lacrimal-gland", at: [40, 50] },
      { structure: "superior-rectus", at: [94, 96] },
      { structure: "lateral-rectus", at: [66, 104] },
      { structure: "superior-oblique", at: [130, 78] },
      { structure: "frontal-nerve", at: [106, 140] },
      { structure: "trochlear-nerve", at: [125, 144] },
      { structure: "lacrimal-nerve", at: [60, 98] },
      { structure: "optic-nerve", at: [115, 166] },
    ],
  };
}
