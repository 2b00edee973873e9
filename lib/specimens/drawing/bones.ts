/**
 * Single bones: a vertebra from above, the thigh bone, the shoulder blade, the hip
 * bones with the sacrum, the rib cage. Drawn as right ones where they have a side.
 */
import { mass } from "#lib/specimens/drawing/forms.ts";
import {
  arc,
  at,
  bothHalves,
  contours,
  ellipse,
  mirrored,
  type Point,
  ring,
  roundBand,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** A vertebra from above. */
export function drawVertebra(vary: Variation): Sketch {
  const long = vary.within(0.9, 1.15);
  const half: Point[] = [
    [0, 0],
    [22, 3],
    [32, 16],
    [32, 32],
    [26, 42],
    [30, 48],
    [44 * long, 50],
    [58 * long, 46],
    [62 * long, 52],
    [50 * long, 60],
    [36, 62],
    [33, 70],
    [24, 72],
    [14, 74],
    [8, 88],
    [7, 104],
    [0, 110],
  ];
  const outline = bothHalves(half);
  const canal = bothHalves(at("0,46 12,47 17,55 10,66 0,69"));
  return {
    shapes: [
      ...mass(outline, "bone", 1, 4, [0.93, 0.86]),
      filled("hollow", ring(canal), "outline"),
      stroked("line", arc(0, 22, 26, 18, 0.2, Math.PI - 0.2)),
      stroked(
        "hatch",
        ...[0.9, 0.72, 0.54].map((f) => arc(0, 22, 24 * f, 16 * f, 0.1, 1.6)),
        smooth(at("3,76 3,104")),
      ),
      stroked("line", arc(28, 64, 8, 6, -1, 2), arc(-28, 64, 8, 6, 1.1, 4.2)),
    ],
    callouts: [
      { structure: "vertebral-body", at: [-12, 18] },
      { structure: "vertebral-foramen", at: [4, 58] },
      { structure: "transverse-process", at: [-50, 52] },
      { structure: "spinous-process", at: [2, 98] },
    ],
  };
}

/** The thigh bone from the front, laid with its head to the left. */
export function drawFemur(vary: Variation): Sketch {
  const bow = vary.within(0, 5);
  const neck = vary.within(-3, 3);
  const shaft = (x: number, y: number): Point => [x, y - bow * Math.sin((Math.PI * (x - 60)) / 230)];
  const outline: Point[] = [
    [21 + neck, -27],
    [34 + neck, -29],
    [45 + neck, -22],
    [50 + neck, -10],
    [60, 2],
    [76, 9],
    shaft(110, 12),
    shaft(180, 13),
    shaft(240, 11),
    [276, 5],
    [298, -4],
    [318, -7],
    [332, 2],
    [333, 14],
    [323, 21],
    [333, 29],
    [337, 41],
    [326, 51],
    [304, 48],
    [276, 38],
    shaft(240, 33),
    shaft(180, 31),
    shaft(110, 32),
    [74, 34],
    [56, 39],
    [40, 42],
    [25, 36],
    [18, 24],
    [24, 13],
    [14, 4],
    [9, -8],
    [12, -20],
  ];
  return {
    shapes: [
      filled("bone", ring(outline, 0.9), "outline"),
      stroked(
        "hatch",
        contours(outline, 21, 28, [0.985]),
        smooth([shaft(70, 29), shaft(130, 28), shaft(220, 28), [284, 36]]),
        smooth([shaft(96, 26), shaft(150, 25), shaft(220, 25)]),
        arc(29 + neck, -10, 14, 14, 0.5, 2.4),
        arc(29 + neck, -10, 9, 9, 0.5, 2.4),
        arc(318, 7, 10, 9, -0.6, 1),
        arc(321, 37, 10, 9, -0.9, 0.9),
      ),
      stroked(
        "line",
        smooth([
          [46 + neck, -20],
          [45, -4],
          [58, 6],
        ]),
        smooth(at("24,13 40,18 50,30")),
      ),
      stroked("fine", smooth(at("296,12 306,22 298,32"))),
    ],
    callouts: [
      { structure: "head-of-femur", at: [26 + neck, -16] },
      { structure: "greater-trochanter", at: [32, 32] },
      { structure: "shaft-of-femur", at: shaft(170, 20) },
      { structure: "medial-condyle-of-femur", at: [322, 4] },
    ],
  };
}

/** The shoulder blade from behind. */
export function drawScapula(vary: Variation): Sketch {
  const outline: Point[] = vary.loosen(
    at(`
      58,6 72,0 82,10 84,30 92,36 110,40 122,46 124,58 116,66 104,64 98,78 88,104 74,138 60,164 50,168
      46,156 42,120 38,76 40,40 46,18
    `),
    1,
  );
  const spine: Point[] = at("38,62 64,52 92,38 116,22 134,16");
  return {
    shapes: [
      ...mass(outline, "bone", 10, 14, [0.94, 0.88, 0.82]),
      filled("bone", ring(at("100,34 112,20 122,22 120,34 110,42")), "line"),
      filled("bone", roundBand(spine, [2, 4, 5, 6, 8]), "outline"),
      stroked(
        "hatch",
        smooth(at("48,66 60,84 64,120 58,152")),
        smooth(at("54,66 70,84 72,116 64,146")),
        smooth(at("48,28 60,32 74,26")),
      ),
      stroked("line", arc(114, 56, 8, 11, -1.3, 1.4)),
    ],
    callouts: [
      { structure: "spine-of-scapula", at: [70, 50] },
      { structure: "acromion", at: [128, 18] },
      { structure: "glenoid-cavity", at: [118, 56] },
      { structure: "inferior-angle-of-scapula", at: [54, 160] },
      { structure: "infraspinous-fossa", at: [58, 100] },
    ],
  };
}

/** The hip bones with the sacrum, from the front. */
export function drawPelvis(vary: Variation): Sketch {
  const wide = vary.within(0.92, 1.08);
  const half: Point[] = at(`
    22,26 34,12 56,2 82,6 98,22 100,42 92,56 90,70 94,82 90,98 80,108 78,124 66,140 52,142 44,132
    30,122 16,126 6,132 4,116 8,106 28,100 44,92 50,76 42,62 26,52
  `).map(([x = 0, y = 0]): Point => [x * wide, y]);
  const hole: Point[] = at("34,112 48,106 60,112 62,124 52,130 40,122").map(
    ([x = 0, y = 0]): Point => [x * wide, y],
  );
  const sides = (draw: (points: readonly Point[]) => Shape[], points: readonly Point[]): Shape[] => [
    ...draw(points),
    ...draw(mirrored(points)),
  ];
  return {
    shapes: [
      ...sides((points) => [filled("bone", ring(points, 0.9), "outline")], half),
      ...sides((points) => [filled("paper", ring(points), "line")], hole),
      ...sides(
        (points) => [filled("bone", ring(points), "line")],
        at("74,76 88,72 94,84 86,96 74,92").map(([x = 0, y = 0]): Point => [x * wide, y]),
      ),
      stroked(
        "hatch",
        ...[1, -1].flatMap((side) =>
          [0.9, 0.8, 0.7, 0.6].map((f) =>
            arc(
              62 * wide * side,
              36,
              34 * f,
              28 * f,
              side > 0 ? -1.6 : Math.PI - 1,
              side > 0 ? 1 : Math.PI + 1.6,
            ),
          ),
        ),
      ),
      filled("bone", ring(bothHalves(at("0,16 14,14 30,20 28,40 20,62 10,84 4,94 0,98"))), "outline"),
      ...[1, -1].flatMap((side) =>
        [0, 1, 2, 3].map(
          (row): Shape => filled("hollow", ellipse((14 - row * 2.2) * side, 32 + row * 13, 3, 2.4), "fine"),
        ),
      ),
      stroked(
        "fine",
        ...[27, 40, 53, 66].map((y, row) =>
          smooth([
            [-12 + row * 2, y],
            [0, y + 1.6],
            [12 - row * 2, y],
          ]),
        ),
      ),
      filled("glass", ring(at("-4,108 0,105 4,108 4,128 0,132 -4,128")), "line"),
    ],
    callouts: [
      { structure: "ilium", at: [-64, 30] },
      { structure: "sacrum", at: [4, 60] },
      { structure: "acetabulum", at: [86 * wide, 84] },
      { structure: "pubic-symphysis", at: [-1, 120] },
      { structure: "obturator-foramen", at: [50 * wide, 118] },
    ],
  };
}

/** The rib cage from the front, for a plate of its own and for the skeleton. */
export function ribCage(vary: Variation): Shape[] {
  const lean = vary.within(0.95, 1.05);
  const ribs = Array.from({ length: 10 }, (_, index): { near: Point[]; far: Point[] } => {
    const top = 8 + index * 11.4;
    const taper = index > 7 ? 1 - (index - 7) * 0.05 : 1;
    const reach = (20 + 31 * Math.sin(Math.min(1, (index + 1.4) / 8) * (Math.PI / 2))) * lean * taper;
    const drop = 10 + index * 2.6;
    const end: Point =
      index < 7 ? [7, top + drop + 2 - index * 3.4] : [12 + (index - 6) * 8, top + drop + 2 - index * 2.4];
    return {
      near: [
        [5, top],
        [reach * 0.55, top - 2],
        [reach * 0.88, top + drop * 0.28],
        [reach, top + drop * 0.66],
      ],
      far: [
        [reach, top + drop * 0.6],
        [reach * 0.97, top + drop * 0.95],
        [reach * 0.78, top + drop * 1.24],
        [reach * 0.52, top + drop * 1.3],
        [Math.max(end[0], reach * 0.3), (top + drop * 1.26 + end[1]) / 2],
        end,
      ],
    };
  });
  const both = (
    points: readonly Point[],
    width: number | readonly number[],
    wash: "bone" | "glass",
    stroke: "fine" | "line",
  ): Shape[] => [
    filled(wash, roundBand(points, width), stroke),
    filled(wash, roundBand(mirrored(points), width), stroke),
  ];
  return [
    ...ribs.flatMap((rib) => both(rib.near, 1.9, "bone", "fine")),
    ...Array.from({ length: 12 }, (_, index) =>
      filled(
        "bone",
        ring(
          [
            [-5, 4 + index * 11],
            [5, 4 + index * 11],
            [4.6, 13 + index * 11],
            [-4.6, 13 + index * 11],
          ],
          0.5,
        ),
        "fine",
      ),
    ),
    ...ribs.flatMap((rib) => [
      ...both(rib.far.slice(3), 2, "glass", "fine"),
      ...both(rib.far.slice(0, 4), [0.7, 2.2, 2.4, 2.4], "bone", "line"),
    ]),
    filled("bone", ring(bothHalves(at("0,12 9,13 10,20 5,26 6,44 7,66 5,76 2,88 0,91")), 0.9), "outline"),
    stroked("fine", smooth(at("-6,26 0,27 6,26"))),
  ];
}

export function drawRibCage(vary: Variation): Sketch {
  const shapes = ribCage(vary);
  return {
    shapes,
    callouts: [
      { structure: "sternum", at: [2, 50] },
      { structure: "first-rib", at: [-20, 12] },
      { structure: "costal-cartilage", at: [22, 92] },
      { structure: "true-ribs", at: [46, 104] },
    ],
  };
}
