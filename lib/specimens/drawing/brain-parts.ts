/**
 * Parts of the brain: a right hemisphere from its inner side, a left one with its
 * fibres laid bare, the brainstem with the cranial nerves from the front, and a sheet
 * across both hemispheres through the mammillary bodies.
 */
import { cerebrumSide, sulcus } from "#lib/specimens/drawing/brain.ts";
import {
  arc,
  at,
  bothHalves,
  bothLines,
  contours,
  ellipse,
  type Path,
  type Point,
  ring,
  roundBand,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import { bothSides, filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export function drawHemisphereInside(vary: Variation): Sketch {
  const outline = vary.loosen(
    at(`
      14,76 8,58 14,40 28,24 48,12 74,4 104,2 132,8 158,20 178,40 188,62 186,82 172,92 150,96 132,98
      120,104 100,112 76,116 62,110 60,98 66,90 46,92 26,88
    `),
    1.2,
  );
  const sulci = [
    at("34,66 40,48 54,36 74,28 100,26 124,34 138,48"),
    at("124,34 128,20 126,10"),
    at("150,24 150,44 146,64 138,80"),
    at("182,66 166,68 152,74 138,80"),
    at("24,36 36,42 42,54"),
    at("54,12 58,22 56,30"),
    at("88,4 90,14 86,24"),
    at("136,60 144,50 156,46"),
    at("166,32 160,44 164,56"),
    at("90,102 108,96 130,92"),
    at("20,62 30,66 36,76"),
    at("160,82 150,88 136,90"),
  ];
  return {
    shapes: [
      filled("organ", ring(outline), "outline"),
      stroked("hatch", contours(outline, 8, 12, [0.96, 0.92])),
      stroked("line", ...sulci.map((line) => sulcus(vary, line, 1.5))),
      filled("hollow", ring(at("58,74 64,60 80,54 104,56 122,66 126,76 112,78 92,70 74,70")), "line"),
      filled(
        "sinew",
        roundBand(at("58,86 54,74 58,60 72,50 94,46 116,52 130,64 132,76"), [2, 4.4, 5, 4, 3.6, 4, 5, 5]),
        "outline",
      ),
      filled("glass", ring(at("62,76 66,62 82,56 102,58 92,66 76,72")), "fine"),
      filled("sinew", roundBand(at("68,92 72,80 84,68 106,64 124,72"), [2, 2, 2, 2, 1.4]), "line"),
      filled("deep", ring(at("84,84 92,74 108,72 120,80 112,90 94,92")), "outline"),
      filled("nerve", ellipse(71, 85, 2.4, 2), "line"),
      filled("tissue", ring(at("92,92 112,90 118,98 106,104 94,102")), "line"),
    ],
    callouts: [
      { structure: "corpus-callosum", at: [94, 46] },
      { structure: "septum-pellucidum", at: [80, 63] },
      { structure: "thalamus", at: [102, 82] },
      { structure: "cingulate-gyrus", at: [80, 36] },
      { structure: "parieto-occipital-sulcus", at: [149, 40] },
      { structure: "calcarine-sulcus", at: [166, 68] },
      { structure: "precuneus", at: [138, 26] },
      { structure: "cuneus", at: [170, 54] },
      { structure: "fornix-of-brain", at: [90, 66] },
    ],
  };
}

/** The bark of the hemisphere is peeled off but for its hind pole. */
export function drawHemisphereFibres(vary: Variation): Sketch {
  const outline = vary.loosen(cerebrumSide, 0.8);
  const fan = (from: Point, ends: readonly Point[], bow: number): Path[] =>
    ends.map((end) => smooth([from, [(from[0] + end[0]) / 2, (from[1] + end[1]) / 2 - bow], end]));
  const crown = Array.from({ length: 25 }, (_, index): Point => {
    const turn = Math.PI * (1.06 + (index / 24) * 0.86);
    return [
      102 + Math.cos(turn) * (76 + vary.within(-2, 2)),
      66 + Math.sin(turn) * (55 + vary.within(-2, 2)),
    ];
  });
  return {
    shapes: [
      filled("tissue", ring(outline), "outline"),
      filled(
        "fat",
        ring(at("26,80 22,60 34,36 60,18 100,12 138,20 160,38 160,62 150,80 110,92 66,92 44,86"), 0.9),
        "fine",
      ),
      filled("organ", ring(at("150,22 172,34 186,54 188,74 180,86 164,92 158,76 164,56 158,38")), "line"),
      stroked(
        "line",
        sulcus(vary, at("168,40 172,54 168,70 176,82"), 1.8),
        sulcus(vary, at("160,48 166,62 162,80"), 1.6),
        sulcus(vary, at("180,52 180,66 184,76"), 1.2),
      ),
      stroked("fine", ...fan([102, 62], crown, 4)),
      stroked(
        "nerve-twig",
        ...at("158,80 162,72 164,64 166,86").map((end) =>
          smooth([[112, 76], [136, 74 + (end[1] - 74) * 0.3], end]),
        ),
      ),
      filled(
        "nerve",
        roundBand(at("42,44 66,30 100,28 132,38 148,58 140,78 116,86"), [3, 5, 5.4, 5, 5, 4.4, 3]),
        "line",
      ),
      stroked(
        "hatch",
        ...[-2, 0, 2].map((shift) =>
          smooth(at("42,44 66,30 100,28 132,38 148,58 140,78 116,86").map(([x, y]): Point => [x, y + shift])),
        ),
      ),
      filled("deep", ring(at("84,56 100,48 118,54 122,66 112,76 94,76 84,68")), "outline"),
      stroked("hatch", ...[0.8, 0.6, 0.4].map((f) => arc(103, 63, 17 * f, 12 * f, 0.2, 6))),
      filled(
        "nerve",
        roundBand(at("40,70 56,82 74,86 80,96 68,106 58,104"), [3, 4.4, 5, 5, 4.4, 2.4]),
        "line",
      ),
      stroked("line", smooth(at("60,112 96,110 130,100 154,90"))),
    ],
    callouts: [
      { structure: "corona-radiata", at: [94, 18] },
      { structure: "superior-longitudinal-fasciculus", at: [136, 42] },
      { structure: "uncinate-fasciculus", at: [62, 84] },
      { structure: "lentiform-nucleus", at: [100, 62] },
      { structure: "putamen", at: [108, 66] },
      { structure: "optic-radiation", at: [146, 76] },
      { structure: "temporal-lobe", at: [96, 100] },
    ],
  };
}

export function drawBrainstem(vary: Variation): Sketch {
  const nerve = (line: string, width = 1.5): Shape =>
    filled("nerve", roundBand(vary.loosen(at(line), 0.5), width), "fine");
  return {
    shapes: [
      ...bothSides([
        nerve("30,68 52,62 74,70", 4.6),
        nerve("28,96 48,96 70,104"),
        nerve("28,100 48,102 70,112", 1.7),
        nerve("22,124 44,124 66,132"),
        nerve("22,130 44,132 66,142", 1.7),
        nerve("20,150 38,146 56,156 68,170"),
        nerve("15,122 30,112 44,84"),
        nerve("8,36 20,30 36,32 52,28", 1.9),
        nerve("30,40 42,46 46,60 60,64", 0.9),
        nerve("8,106 18,92 30,78 44,70"),
        nerve("10,198 34,176 32,150 48,140", 1.2),
      ]),
      ...bothSides([
        filled("organ", ring(at("2,42 8,20 20,2 34,-4 44,6 40,24 28,44 14,54")), "outline"),
        stroked(
          "hatch",
          smooth(at("30,2 24,20 14,42")),
          smooth(at("36,6 30,24 20,44")),
          smooth(at("24,4 16,24 8,44")),
        ),
      ]),
      filled("organ", ring(bothHalves(at("0,46 20,46 36,58 40,76 32,94 18,102 0,102")), 0.9), "outline"),
      stroked(
        "hatch",
        ...[56, 66, 76, 86, 94].map((y) =>
          arc(0, y + 6, 36 - Math.abs(y - 74) * 0.3, 8, Math.PI + 0.25, 2 * Math.PI - 0.25),
        ),
      ),
      stroked("line", smooth(at("0,48 0,100"))),
      filled(
        "tissue",
        ring(bothHalves(at("0,104 16,103 24,112 23,136 15,166 11,196 10,226 0,230")), 0.9),
        "outline",
      ),
      ...bothSides([
        filled("organ", ring(at("2,106 8,104 13,112 11,138 5,160 2,158")), "line"),
        filled("deep", ring(at("15,110 21,112 22,126 18,136 14,128")), "line"),
      ]),
      stroked(
        "line",
        smooth(at("0,106 0,156")),
        ...[162, 168, 174].map((y) =>
          smooth([
            [-3, y + 4],
            [3, y],
          ]),
        ),
      ),
      stroked(
        "hatch",
        ...[6, -6].map((x) =>
          smooth([
            [x, 170],
            [x, 200],
            [x * 0.9, 224],
          ]),
        ),
      ),
    ],
    callouts: [
      { structure: "cerebral-peduncle", at: [-28, 16] },
      { structure: "oculomotor-nerve", at: [46, 29] },
      { structure: "trigeminal-nerve", at: [62, 65] },
      { structure: "pons", at: [-16, 72] },
      { structure: "abducent-nerve", at: [-34, 74] },
      { structure: "facial-nerve", at: [-58, 99] },
      { structure: "vestibulocochlear-nerve", at: [62, 108] },
      { structure: "olive-of-medulla-oblongata", at: [-19, 122] },
      { structure: "pyramid-of-medulla-oblongata", at: [7, 128] },
    ],
  };
}

export function drawCoronalBrain(vary: Variation): Sketch {
  const half = vary
    .loosen(
      at(
        "5,4 22,0 44,6 64,20 76,42 80,62 70,70 58,72 72,78 78,92 70,112 50,122 32,116 24,104 26,92 18,86 6,88",
      ),
      0.7,
    )
    .map(([x, y], index): Point => [index === 0 || index === 16 ? Math.max(x, 1.2) : x, y]);
  const inner = half.map(([x, y]): Point => [x + (38 - x) * 0.2, y + (54 - y) * 0.17]);
  const folds = [
    at("24,5 26,12 22,21"),
    at("45,11 44,20 38,27"),
    at("63,25 56,31 49,33"),
    at("74,46 66,47 57,50"),
    at("6,22 11,24 17,29"),
    at("74,87 66,88 57,86"),
    at("65,109 60,104 52,101"),
    at("44,117 44,111 40,104"),
  ];
  return {
    shapes: [
      filled("deep", ring(bothHalves([[0, 8], ...half, [0, 86]]), 0.8), "outline"),
      ...bothSides([
        filled("tissue", ring(inner, 0.9), "fine"),
        ...folds.map((line) => filled("deep", roundBand(line, [2.6, 2.6, 2]), "fine")),
        stroked("line", ...folds.map((line) => sulcus(vary, line, 0.8))),
        filled("deep", ring(at("54,58 60,50 56,44 50,54 48,68 54,76 62,76 58,70")), "fine"),
        stroked("outline", smooth(at("80,64 66,68 56,66 52,58"))),
        stroked("fine", smooth(at("46,52 44,64 47,76"))),
      ]),
      filled("tissue", roundBand(at("-26,40 -12,34 0,32 12,34 26,40"), [2, 3.4, 4, 3.4, 2]), "line"),
      ...bothSides([
        filled("hollow", ring(at("3,38 14,37 24,42 22,48 12,45 4,46")), "line"),
        filled("deep", ring(at("22,43 27,44 25,54 20,50")), "line"),
        filled("deep", ring(at("36,56 42,52 44,66 40,78 34,74")), "line"),
        filled("organ", ring(at("28,64 34,60 34,76 26,74")), "line"),
        filled("deep", ring(at("3,56 12,50 20,56 20,66 12,72 4,70")), "line"),
        stroked("fine", smooth(at("28,46 28,58 22,70"))),
        filled("deep", ellipse(36, 96, 9, 7.4), "line"),
        filled("nerve", ellipse(19, 84, 5, 2.6, 0.4), "line"),
        filled("nerve", roundBand(at("2,47 6,50 4,54"), 1.6), "fine"),
        filled("sinew", ellipse(4.6, 88, 4.2, 4.4), "outline"),
      ]),
      filled("hollow", roundBand(at("0,56 0,68 0,82"), [1.6, 2, 1.6]), "line"),
      stroked("outline", smooth(at("0,8 0,28"))),
      stroked("fine", ...bothLines(at("4,54 5,70 8,82"))),
    ],
    callouts: [
      { structure: "corpus-callosum", at: [0, 32] },
      { structure: "caudate-nucleus", at: [-24, 48] },
      { structure: "putamen", at: [-40, 64] },
      { structure: "thalamus", at: [12, 62] },
      { structure: "mammillary-body", at: [4, 88] },
      { structure: "amygdaloid-body", at: [-36, 96] },
      { structure: "insula", at: [54, 64] },
      { structure: "third-ventricle", at: [0, 76] },
      { structure: "cerebral-cortex", at: [60, 20] },
    ],
  };
}
