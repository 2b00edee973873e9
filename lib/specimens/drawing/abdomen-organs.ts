/**
 * Organs of the belly as they are shown one by one: liver, stomach,
 * kidney whole and halved, spleen, pancreas with duodenum, the bowel.
 */
import { mass, pouchedTube, reachInside, tube } from "#lib/specimens/drawing/forms.ts";
import {
  along,
  arc,
  at,
  band,
  contours,
  ellipsePoints,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export function drawLiver(vary: Variation): Sketch {
  const outline = vary.loosen(
    at(`
      6,64 8,40 24,20 52,8 84,6 112,12 134,18 160,18 190,26 212,40 206,50 184,60 160,72 138,88 122,98
      108,116 86,134 60,146 36,146 18,130 8,98
    `),
    1.6,
  );
  return {
    shapes: [
      filled("duct", ring(at("92,120 104,122 112,138 106,154 94,154 88,138")), "outline"),
      ...mass(outline, "organ", 13, 19, [0.95, 0.9, 0.85, 0.8]),
      stroked("hatch", contours(outline, 2, 6, [0.93, 0.87])),
      filled("tissue", ring(at("126,14 136,18 140,46 134,84 126,98 130,60 128,34")), "line"),
      ...tube(at("128,92 130,104 126,118"), 2.6, "nerve"),
      ...tube(at("78,10 76,0 78,-10"), 9, "vein"),
      stroked(
        "fine",
        smooth(at("24,22 48,12 84,12 118,20")),
        smooth(at("36,96 52,108 66,128")),
        smooth(at("150,36 168,42 182,50")),
      ),
    ],
    callouts: [
      { structure: "right-lobe-of-liver", at: [56, 70] },
      { structure: "left-lobe-of-liver", at: [168, 46] },
      { structure: "falciform-ligament", at: [134, 50] },
      { structure: "gallbladder", at: [100, 140] },
      { structure: "inferior-vena-cava", at: [78, -4] },
    ],
  };
}

export function drawStomach(vary: Variation): Sketch {
  const outline = vary.loosen(
    at(`
      88,34 98,14 122,4 146,12 160,36 162,68 154,102 136,132 108,152 78,158 54,150 40,136 30,138
      24,130 34,116 52,120 74,122 92,112 102,92 102,66 96,48
    `),
    1.2,
  );
  return {
    shapes: [
      ...tube(at("66,-16 74,10 90,40"), [8, 8, 9], "tissue"),
      filled("tissue", band(at("34,128 12,122 -6,134 -10,160 0,186"), [9, 10, 10, 10, 9]), "outline"),
      ...mass(outline, "organ", 5, 11, [0.95, 0.9, 0.85, 0.8]),
      stroked(
        "fine",
        ...[0, 1, 2, 3].map((lane) =>
          smooth(
            vary.loosen(
              [
                [112 + lane * 10, 20 + lane * 2],
                [120 + lane * 9, 60],
                [112 + lane * 9, 104 + lane],
                [84 + lane * 6, 134 + lane * 4],
                [56 + lane * 4, 134 + lane * 4],
              ],
              2,
            ),
          ),
        ),
      ),
      stroked(
        "artery",
        smooth(at("98,44 106,66 106,92 94,114 74,126 52,124")),
        smooth(at("166,60 160,100 140,138 108,158 76,164")),
        ...[0, 1, 2, 3].map((row) =>
          smooth([
            [106 - row * 2, 66 + row * 14],
            [118 - row * 2, 70 + row * 14],
            [126 - row * 4, 78 + row * 13],
          ]),
        ),
        ...[0, 1, 2, 3].map((row) =>
          smooth([
            [164 - row * 8, 82 + row * 18],
            [152 - row * 8, 84 + row * 16],
            [144 - row * 8, 80 + row * 16],
          ]),
        ),
      ),
      stroked("nerve", smooth(at("70,-12 82,20 98,44 108,60")), smooth(at("98,44 114,48 128,58"))),
      stroked("line", smooth(at("34,117 37,126 35,137"))),
    ],
    callouts: [
      { structure: "oesophagus", at: [72, 0] },
      { structure: "fundus-of-stomach", at: [126, 14] },
      { structure: "greater-curvature-of-stomach", at: [156, 102] },
      { structure: "lesser-curvature-of-stomach", at: [104, 84] },
      { structure: "pylorus", at: [34, 127] },
      { structure: "duodenum", at: [-8, 150] },
    ],
  };
}

const kidneyOutline: readonly Point[] = at(`
  64,6 84,14 98,36 104,66 102,98 92,126 74,142 54,140 42,126 40,108 46,94 48,78 44,62 38,46 40,24
  50,10
`);

/** A left kidney from the front. @param withGland with the suprarenal gland on its upper pole */
export function drawKidney(vary: Variation, withGland: boolean): Sketch {
  const outline = vary.loosen(kidneyOutline, 1.2);
  return {
    shapes: [
      ...(withGland
        ? [filled("fat", ring(vary.loosen(at("46,8 54,-8 70,-12 84,-4 78,8 62,2"), 1)), "line")]
        : []),
      ...tube(at("58,84 30,96 20,130 16,178"), [8, 6, 3.6, 3.4], "nerve"),
      ...tube(at("62,76 28,70 0,72"), [4, 5, 5.6], "vein"),
      ...tube(at("62,64 30,57 0,53"), [2.4, 3.4, 3.6], "artery"),
      ...mass(outline, "organ", 1, 6, [0.93, 0.86, 0.79, 0.72]),
      stroked("fine", smooth(at("44,58 51,68 53,80 51,92 46,102")), smooth(at("47,64 56,72 57,84 52,96"))),
    ],
    callouts: [
      ...(withGland ? [{ structure: "suprarenal-gland", at: [66, -6] } as const] : []),
      { structure: "renal-artery", at: [18, 56] },
      { structure: "renal-vein", at: [16, 70] },
      { structure: "ureter", at: [18, 140] },
      { structure: "inferior-pole-of-kidney", at: [76, 132] },
    ],
  };
}

/** A left kidney cut open, from the front. */
export function drawKidneyHalved(vary: Variation): Sketch {
  const outline = vary.loosen(kidneyOutline, 1);
  const hilum: Point = [58, 76];
  const count = vary.whole(7, 9);
  const pyramids = Array.from(
    { length: count },
    (_, index): { tip: Point; left: Point; right: Point; top: Point } => {
      const turn = -1.85 + (3.7 * index) / (count - 1);
      const at = (share: number, angle: number): Point => {
        const reach = reachInside(hilum, angle, outline) * share;
        return [hilum[0] + Math.cos(angle) * reach, hilum[1] + Math.sin(angle) * reach];
      };
      const half = 1.3 / count;
      return {
        tip: at(0.44, turn),
        left: at(0.78, turn - half),
        right: at(0.78, turn + half),
        top: at(0.84, turn),
      };
    },
  );
  return {
    shapes: [
      ...tube(at("48,92 30,100 20,132 16,178"), [7, 6, 3.6, 3.4], "nerve"),
      ...mass(outline, "organ", 1, 7, [0.965]),
      ...pyramids.flatMap((pyramid): Shape[] => [
        filled("deep", ring([pyramid.tip, pyramid.left, pyramid.top, pyramid.right], 0.7), "line"),
        stroked(
          "hatch",
          ...[0.25, 0.5, 0.75].map((share) =>
            straight([
              pyramid.tip,
              [
                pyramid.left[0] + (pyramid.right[0] - pyramid.left[0]) * share,
                pyramid.left[1] + (pyramid.right[1] - pyramid.left[1]) * share,
              ],
            ]),
          ),
        ),
      ]),
      ...pyramids.map((pyramid) =>
        filled(
          "nerve",
          roundBand(
            [[54, 80], [(56 + pyramid.tip[0]) / 2, (79 + pyramid.tip[1]) / 2], pyramid.tip],
            [3, 1.5, 3],
          ),
          "fine",
        ),
      ),
      filled("nerve", ring(at("38,88 46,76 58,72 62,82 56,94 44,100 38,98")), "line"),
      ...tube(at("48,72 28,66 0,66"), [4, 4.6, 5], "vein"),
      ...tube(at("50,66 28,56 0,52"), [2.6, 3, 3.4], "artery"),
    ],
    callouts: [
      { structure: "renal-cortex", at: [98, 62] },
      { structure: "renal-papillae", at: pyramids[3]?.tip ?? [70, 60] },
      { structure: "minor-renal-calices", at: pyramids[4]?.tip ?? [70, 80] },
      { structure: "renal-pyramids", at: pyramids[1]?.top ?? [60, 30] },
      { structure: "renal-pelvis", at: [48, 86] },
      { structure: "renal-artery", at: [14, 54] },
      { structure: "ureter", at: [18, 140] },
    ],
  };
}

export function drawSpleen(vary: Variation): Sketch {
  const outline = vary.loosen(
    at(`
      20,60 28,34 46,14 66,16 72,24 80,22 96,30 100,38 110,42 122,62 124,88 110,104 84,110 54,106
      32,90
    `),
    1.4,
  );
  return {
    shapes: [
      ...mass(outline, "organ", 9, 14, [0.93, 0.86, 0.79, 0.72]),
      filled("deep", ring(at("46,62 66,54 90,60 98,72 78,76 56,72")), "line"),
      ...tube(at("70,66 88,63 116,52 152,46"), [0.8, 2.6, 3, 3.4], "artery"),
      ...tube(at("66,71 86,71 116,64 152,60"), [0.8, 3.4, 4, 4.6], "vein"),
      stroked("artery", smooth(at("88,64 72,58 58,62")), smooth(at("84,66 70,66"))),
      stroked("fine", smooth(at("72,24 72,34")), smooth(at("98,36 92,44"))),
    ],
    callouts: [
      { structure: "superior-border-of-spleen", at: [84, 24] },
      { structure: "hilum-of-spleen", at: [60, 66] },
      { structure: "splenic-artery", at: [130, 50] },
      { structure: "splenic-vein", at: [134, 62] },
      { structure: "diaphragmatic-surface-of-spleen", at: [40, 92] },
    ],
  };
}

export function drawPancreas(vary: Variation): Sketch {
  const body: Point[] = vary.loosen(at("30,92 48,76 72,70 106,66 140,54 172,42"), 1.4);
  const lobes = along(body, 9);
  return {
    shapes: [
      ...tube(at("60,-6 56,24 44,60 28,84"), 3.6, "duct"),
      filled(
        "tissue",
        band(
          at("70,18 42,14 18,26 8,56 8,96 22,124 54,134 90,124 118,108"),
          [11, 11, 11, 11, 11, 11, 11, 10, 9],
        ),
        "outline",
      ),
      stroked(
        "fine",
        ...Array.from({ length: 12 }, (_, index) => arc(8, 44 + index * 5.4, 9, 2.4, 0.3, Math.PI - 0.3)),
      ),
      ...tube(at("88,150 86,110 88,84"), 5.4, "vein"),
      ...tube(at("100,150 98,112 96,80"), 4, "artery"),
      filled("fat", roundBand(body, [18, 21, 15, 15, 13, 8]), "outline"),
      stroked(
        "fine",
        ...lobes.flatMap((point, index) => [
          arc(point[0], point[1] - 5 + (index % 2) * 3, 7, 5, 0.3, 2.6),
          arc(point[0] + 5, point[1] + 4, 6, 4, 3.4, 5.6),
        ]),
      ),
      stroked("duct", smooth(at("14,96 40,88 72,74 106,68 140,56 168,45")), smooth(at("44,60 30,86 15,95"))),
      stroked("artery", smooth(at("78,46 98,44 116,50 132,40 150,42 170,30"))),
    ],
    callouts: [
      { structure: "duodenum", at: [8, 70] },
      { structure: "bile-duct", at: [56, 20] },
      { structure: "pancreatic-duct", at: [116, 65] },
      { structure: "head-of-pancreas", at: [36, 96] },
      { structure: "tail-of-pancreas", at: [168, 42] },
      { structure: "superior-mesenteric-vein", at: [87, 140] },
    ],
  };
}

/** @param withLoops with the small intestine inside the frame of the colon */
export function drawBowel(vary: Variation, withLoops: boolean): Sketch {
  const frame: Point[] = vary.loosen(
    at(`
      22,140 18,100 18,66 24,42 44,34 70,42 96,46 120,40 138,28 154,36 160,64 158,100 154,130 140,150
      118,158 102,172 98,194
    `),
    0.8,
  );
  const loops = Array.from({ length: 5 }, (_, row): Shape[] => {
    const y = 64 + row * 18;
    const wobble = vary.within(-3, 3);
    return [
      filled(
        "tissue",
        band(
          [
            [44, y],
            [60, y - 6 + wobble],
            [80, y + 4],
            [100, y - 5 - wobble],
            [120, y + 3],
            [132, y - 2],
          ],
          7.4,
        ),
        "line",
      ),
      stroked(
        "hatch",
        smooth([
          [46, y + 3],
          [60, y - 3 + wobble],
          [80, y + 7],
          [100, y - 2 - wobble],
          [120, y + 6],
        ]),
      ),
    ];
  }).flat();
  return {
    shapes: [
      ...(withLoops ? loops : []),
      ...pouchedTube(frame, 10.5, 15, "organ"),
      filled("organ", ring(ellipsePoints(22, 146, 15, 17, 0, 10)), "outline"),
      ...tube(at("20,160 12,172 16,184"), 3, "tissue"),
      ...tube(at("54,142 42,146 32,146"), 7, "tissue"),
      stroked("line", smooth(at("22,134 17,100 17,66 24,41 44,33 70,41 96,45 120,39 138,27"))),
    ],
    callouts: [
      { structure: "ascending-colon", at: [18, 84] },
      { structure: "transverse-colon", at: [104, 40] },
      { structure: "descending-colon", at: [156, 80] },
      { structure: "caecum", at: [20, 148] },
      { structure: "vermiform-appendix", at: [13, 176] },
      ...(withLoops ? [{ structure: "ileum", at: [120, 104] } as const] : []),
    ],
  };
}
