/**
 * The brain from the left side and from below, and the spinal cord with its roots.
 * Convolutions are drawn as folds between fixed sulci, loosened from seed to seed.
 */
import {
  along,
  arc,
  at,
  band,
  beside,
  bothHalves,
  bothLines,
  contours,
  ellipse,
  type Path,
  type Point,
  ring,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** A sulcus: a line that wanders a little to either side of its way. */
export function sulcus(vary: Variation, line: readonly Point[], sway: number): Path {
  const steps = along(line, Math.max(4, line.length + 2));
  const start = vary.chance(0.5) ? 1 : -1;
  return smooth(
    beside(
      steps,
      steps.map((_, index) =>
        index === 0 || index === steps.length - 1
          ? 0
          : sway * start * (index % 2 === 0 ? 1 : -1) * vary.within(0.5, 1),
      ),
    ),
  );
}

export const cerebrumSide: readonly Point[] = at(`
  18,78 12,62 16,44 28,28 48,14 74,6 102,4 130,8 156,18 176,34 188,54 190,72 184,86 170,94 150,98
  128,102 108,110 86,116 66,114 54,104 50,94 38,92 26,88
`);

const sulciSide: readonly (readonly Point[])[] = [
  at("98,6 102,24 94,44 86,64 80,76"),
  at("82,8 86,26 78,46 70,62"),
  at("116,8 116,26 108,46 102,62"),
  at("24,40 42,36 58,40 70,38"),
  at("20,58 36,54 52,58 62,56"),
  at("34,26 50,24 66,20 78,22"),
  at("26,74 38,70 48,74"),
  at("112,44 130,38 148,40 166,46"),
  at("122,24 136,24 150,28 160,36"),
  at("130,68 136,56 148,54 154,64 150,76"),
  at("164,44 172,54 170,68 178,78"),
  at("158,78 168,74 180,72"),
  at("62,100 80,96 102,90 124,84 142,82"),
  at("72,108 92,106 112,100 132,94 152,90"),
  at("48,44 52,30"),
  at("130,38 128,26"),
  at("60,12 66,22"),
  at("40,30 44,38"),
  at("150,28 156,38"),
  at("176,44 182,62"),
  at("88,92 94,104"),
  at("60,66 52,76 58,84"),
  at("140,14 142,24"),
];

export function drawBrainSide(vary: Variation): Sketch {
  const outline = vary.loosen(cerebrumSide, 1.4);
  const cerebellum: Point[] = at("132,102 152,98 172,98 184,106 182,120 168,130 148,130 134,122 128,112");
  return {
    shapes: [
      filled("tissue", band(at("106,104 112,118 120,132 126,156"), [11, 12, 9, 6]), "outline"),
      stroked(
        "hatch",
        smooth(at("102,114 112,120 122,118")),
        smooth(at("106,124 116,128 124,125")),
        smooth(at("124,136 128,154")),
      ),
      filled("deep", ring(cerebellum), "outline"),
      stroked(
        "fine",
        ...[0.86, 0.72, 0.58, 0.44, 0.3].map((factor) =>
          smooth(
            cerebellum
              .slice(0, 8)
              .map(
                (p): Point => [128 + (p[0] - 128) * factor + 6 * (1 - factor), 114 + (p[1] - 114) * factor],
              ),
          ),
        ),
      ),
      filled("organ", ring(outline), "outline"),
      stroked("hatch", contours(outline, 7, 12, [0.955, 0.91]), contours(outline, 16, 19, [0.95, 0.9])),
      stroked("outline", smooth(at("50,94 66,84 84,78 106,72 126,66"))),
      stroked("line", ...sulciSide.map((line) => sulcus(vary, line, 2.4))),
      stroked(
        "artery",
        sulcus(vary, at("58,92 74,80 96,74 118,68"), 1),
        sulcus(vary, at("84,77 76,62 74,44"), 1.4),
        sulcus(vary, at("104,72 112,52 124,34"), 1.6),
      ),
      stroked("nerve", smooth(at("96,110 86,120 72,124")), smooth(at("110,128 104,136 96,138"))),
    ],
    callouts: [
      { structure: "central-sulcus", at: [94, 44] },
      { structure: "lateral-cerebral-sulcus", at: [70, 83] },
      { structure: "frontal-lobe", at: [40, 44] },
      { structure: "cerebellum", at: [166, 116] },
      { structure: "pons", at: [110, 118] },
      { structure: "occipital-lobe", at: [178, 66] },
    ],
  };
}

export function drawBrainBelow(vary: Variation): Sketch {
  const half: Point[] = at("2,4 18,2 36,12 46,30 48,48 44,58 58,70 64,90 62,116 54,142 38,160 18,168 3,164");
  const outline = bothHalves(half);
  const lobe: Point[] = at("6,110 26,104 48,112 54,130 44,148 24,154 8,146");
  return {
    shapes: [
      filled("organ", ring(outline, 0.9), "outline"),
      stroked("line", smooth(at("0,4 0,54"))),
      stroked(
        "line",
        ...[1, -1].flatMap((side) =>
          (
            [
              at("12,14 14,30 12,46"),
              at("24,12 30,24 40,30"),
              at("22,34 32,40 40,50"),
              at("30,74 42,78 54,92 56,110"),
              at("22,78 34,88 44,104"),
            ] as const
          ).map((line) =>
            sulcus(
              vary,
              line.map((p): Point => [p[0] * side, p[1]]),
              1.8,
            ),
          ),
        ),
      ),
      ...[1, -1].flatMap((side): Shape[] => {
        const points = lobe.map((p): Point => [p[0] * side, p[1]]);
        return [
          filled("deep", ring(points), "outline"),
          stroked(
            "fine",
            ...[0.86, 0.72, 0.58, 0.44].map((factor) =>
              arc(26 * side, 128, 24 * factor, 22 * factor, side > 0 ? -1.4 : 1.7, side > 0 ? 1.6 : 4.5),
            ),
          ),
        ];
      }),
      filled(
        "tissue",
        ring(at("-14,78 0,74 14,78 17,92 12,104 8,122 6,150 0,154 -6,150 -8,122 -12,104 -17,92")),
        "outline",
      ),
      stroked(
        "fine",
        ...[80, 85, 90, 95].map((y) => arc(0, y + 3, 14, 5, Math.PI + 0.3, 2 * Math.PI - 0.3)),
        smooth(at("0,106 0,150")),
      ),
      stroked(
        "nerve",
        ...bothLines(at("4,58 10,62 18,68 26,72")),
        ...bothLines(at("6,22 8,40 12,52")),
        ...bothLines(at("15,86 26,88 34,84")),
        ...bothLines(at("11,104 22,106 32,102")),
        ...bothLines(at("9,114 20,118 28,120")),
        ...bothLines(at("8,124 16,132 24,134")),
      ),
      filled("nerve", ellipse(7, 21, 3, 5), "line"),
      filled("nerve", ellipse(-7, 21, 3, 5), "line"),
      stroked(
        "artery",
        smooth(at("-8,134 -3,118 0,106 0,82 0,72")),
        smooth(at("8,134 3,118 0,106")),
        ring(at("0,72 8,68 12,60 8,52 0,50 -8,52 -12,60 -8,68")),
        ...bothLines(at("11,60 24,58 40,56")),
        ...bothLines(at("3,50 4,36 3,18")),
      ),
    ],
    callouts: [
      { structure: "optic-nerve", at: [-10, 62] },
      { structure: "cerebral-arterial-circle", at: [12, 60] },
      { structure: "pons", at: [-10, 88] },
      { structure: "trigeminal-nerve", at: [28, 88] },
      { structure: "cerebellum", at: [36, 136] },
      { structure: "olfactory-bulb", at: [-7, 20] },
      { structure: "basilar-artery", at: [0, 96] },
      { structure: "vertebral-artery", at: [-6, 128] },
      { structure: "middle-cerebral-artery", at: [34, 57] },
      { structure: "anterior-cerebral-artery", at: [3, 34] },
    ],
  };
}

export function drawSpinalCord(vary: Variation): Sketch {
  const axis: Point[] = at("0,0 60,4 140,0 220,-6 300,-2 340,0");
  const spine = along(vary.loosen(axis, 2), 24);
  const widths = spine.map(
    (_, index) =>
      7.5 +
      (index > 2 && index < 7 ? 2 : 0) +
      (index > 16 && index < 21 ? 2.2 : 0) -
      (index > 20 ? (index - 20) * 1.6 : 0),
  );
  const roots = [1, -1].flatMap((side) =>
    spine.slice(1, 22).map((point, index): Path => {
      const reach = 16 + index * 0.5;
      const run = 4 + index * 1.7;
      return smooth([
        [point[0], point[1] + side * 5],
        [point[0] + run * 0.5, point[1] + side * (reach * 0.6)],
        [point[0] + run, point[1] + side * reach],
      ]);
    }),
  );
  return {
    shapes: [
      filled(
        "fluid",
        band(
          spine,
          widths.map((_, index) => 21 - index * 0.25),
        ),
        "fine",
      ),
      stroked("nerve", ...roots),
      ...[1, -1].flatMap((side) =>
        spine
          .slice(1, 22)
          .map(
            (point, index): Shape =>
              filled(
                "nerve",
                ellipse(point[0] + 4 + index * 1.7, point[1] + side * (18 + index * 0.5), 3, 1.9, 0.3 * side),
                "fine",
              ),
          ),
      ),
      stroked(
        "nerve",
        ...[-3, -1, 1, 3].map((lane) =>
          smooth([
            [316, lane],
            [350, lane * 2.6],
            [386, lane * 4.6],
          ]),
        ),
      ),
      filled(
        "tissue",
        band(
          spine,
          widths.map((width) => Math.max(width, 1)),
        ),
        "outline",
      ),
      stroked("artery", smooth(vary.loosen(spine.slice(0, 22), 0.6))),
      stroked(
        "hatch",
        smooth(
          beside(
            spine.slice(0, 21),
            widths.map((width) => -width * 0.6),
          ),
        ),
      ),
    ],
    callouts: [
      { structure: "cervical-enlargement-of-spinal-cord", at: [66, -2] },
      { structure: "anterior-spinal-artery", at: [150, 0] },
      { structure: "conus-medullaris", at: [322, 2] },
      { structure: "cauda-equina", at: [370, 10] },
      { structure: "anterior-root-of-spinal-nerve", at: [210, 14] },
    ],
  };
}
