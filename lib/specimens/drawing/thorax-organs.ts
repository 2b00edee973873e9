/**
 * Heart, lungs and larynx, from the front. The left of a body is at the right of
 * the plate, as one stands before it.
 */
import { mass, tube } from "#lib/specimens/drawing/forms.ts";
import {
  arc,
  at,
  band,
  beside,
  bothHalves,
  contours,
  ellipse,
  mirrored,
  type Point,
  ring,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

const heartOutline: readonly Point[] = at(`
  84,84 64,88 50,104 46,126 52,148 68,166 92,180 118,192 138,198 150,192 158,174 161,150 157,126
  148,106 138,94 120,88 102,90
`);

/** A window in the wall of the left ventricle: its trabeculae, the valve and the cords. */
export function drawHeartWithWindow(vary: Variation): Sketch {
  const heart = drawHeart(vary);
  return {
    shapes: [
      ...heart.shapes.filter((shape) => shape.stroke !== "vein" || shape.fill !== undefined),
      filled(
        "muscle",
        ring(at("118,106 140,104 156,120 160,148 154,172 142,186 128,176 118,152 112,124")),
        "outline",
      ),
      filled(
        "hollow",
        ring(at("123,112 138,111 150,124 153,148 148,168 140,178 131,170 123,150 118,126")),
        "line",
      ),
      filled("sinew", ring(at("121,116 136,113 142,122 132,128 123,126")), "line"),
      stroked(
        "line",
        smooth(at("126,126 130,140 134,152")),
        smooth(at("132,127 133,140 136,152")),
        smooth(at("138,124 138,138 138,152")),
      ),
      filled("muscle", ring(at("132,152 140,151 144,166 139,174 133,166")), "line"),
      stroked(
        "fine",
        smooth(at("124,148 130,156 132,166")),
        smooth(at("149,140 146,152 148,162")),
        smooth(at("146,130 143,142 145,150")),
      ),
    ],
    callouts: [
      { structure: "mitral-valve", at: [130, 120] },
      { structure: "left-ventricle", at: [156, 160] },
      { structure: "trabeculae-carneae", at: [146, 144] },
      { structure: "tendinous-cords-of-heart", at: [134, 140] },
      { structure: "left-auricle-of-heart", at: [148, 102] },
      { structure: "right-auricle-of-heart", at: [78, 104] },
      { structure: "ascending-aorta", at: [92, 76] },
      { structure: "apex-of-heart", at: [146, 194] },
    ],
  };
}

export function drawHeart(vary: Variation): Sketch {
  const outline = vary.loosen(heartOutline, 1.2);
  const leftDescending: Point[] = at("128,98 134,120 138,142 144,166 148,188");
  const rightCoronary: Point[] = at("96,96 82,110 76,130 82,150 98,170");
  const branches: Point[][] = [
    at("133,114 146,122 155,138"),
    at("137,138 148,150 153,168"),
    at("134,122 122,138 116,152"),
    at("78,140 92,150 112,156"),
    at("84,154 104,170 124,180"),
    at("79,120 66,124 56,122"),
  ];
  return {
    shapes: [
      ...tube(at("48,112 34,108 22,110"), 5, "artery"),
      ...tube(at("50,124 36,124 24,130"), 4.5, "artery"),
      ...tube(at("152,110 172,100 184,98"), 5, "artery"),
      ...tube(at("154,122 174,116 186,118"), 4.5, "artery"),
      ...tube(at("64,160 62,182 61,200"), 9, "vein"),
      ...tube(at("66,104 62,70 62,24"), [10, 9, 9], "vein"),
      ...tube(at("100,34 94,18 88,2"), [5, 4.2, 4], "artery"),
      ...tube(at("112,28 112,14 112,-2"), [4, 3.4, 3.2], "artery"),
      ...tube(at("124,32 128,16 134,2"), [4.4, 3.8, 3.6], "artery"),
      ...tube(
        at("146,96 147,74 142,52 128,36 110,32 94,40 86,58 88,80 98,106"),
        [9, 9.5, 10, 11, 12, 12.5, 13, 13, 12],
        "artery",
      ),
      filled("organ", ring(outline), "outline"),
      stroked(
        "hatch",
        contours(outline, 4, 8, [0.95, 0.9, 0.85, 0.8]),
        contours(outline, 10, 12, [0.95, 0.9]),
      ),
      ...tube(at("116,116 118,96 126,80 142,72 160,72"), [15, 13, 12, 10, 9], "vein"),
      filled("deep", ring(vary.loosen(at("86,86 98,92 100,104 90,116 76,118 66,108 70,94"), 1)), "line"),
      filled("deep", ring(at("138,96 150,92 158,102 154,114 142,112")), "line"),
      stroked("fine", smooth(at("76,100 84,104 92,112")), smooth(at("72,108 80,112"))),
      stroked("vein", smooth(beside(leftDescending, 3.2)), smooth(at("106,186 84,172 70,160"))),
      stroked(
        "artery",
        smooth(rightCoronary),
        smooth(leftDescending),
        ...branches.slice(0, vary.whole(4, 6)).map((line) => smooth(vary.loosen(line, 1.4))),
      ),
    ],
    callouts: [
      { structure: "arch-of-aorta", at: [112, 28] },
      { structure: "superior-vena-cava", at: [62, 48] },
      { structure: "pulmonary-trunk", at: [136, 76] },
      { structure: "right-auricle-of-heart", at: [78, 104] },
      { structure: "right-ventricle", at: [104, 160] },
      { structure: "anterior-interventricular-branch", at: [138, 142] },
      { structure: "right-coronary-artery", at: [78, 120] },
      { structure: "great-cardiac-vein", at: [142, 152] },
      { structure: "left-auricle-of-heart", at: [148, 102] },
      { structure: "brachiocephalic-trunk", at: [94, 18] },
    ],
  };
}

/** The heart cut open along its long axis: chambers, valves, the wall's thickness. */
export function drawHeartOpened(vary: Variation): Sketch {
  const outline = vary.loosen(heartOutline, 1);
  const left: Point[] = at("126,112 142,116 148,138 148,164 140,184 132,170 124,142");
  const right: Point[] = at("84,130 104,128 114,146 124,170 128,182 106,176 84,160 76,146");
  return {
    shapes: [
      ...tube(at("66,104 62,70 62,30"), [10, 9, 9], "vein"),
      ...tube(
        at("146,96 147,72 140,50 124,38 106,36 92,46 88,64 96,100"),
        [9, 9.5, 10, 11, 12, 12.5, 13, 12],
        "artery",
      ),
      filled("muscle", ring(outline), "outline"),
      filled("hollow", ring(at("58,108 74,96 88,100 92,114 80,126 62,132 54,122")), "line"),
      filled("hollow", ring(at("122,94 138,96 148,106 138,110 124,106")), "line"),
      filled("hollow", ring(vary.loosen(right, 0.8)), "line"),
      filled("hollow", ring(vary.loosen(left, 0.8)), "line"),
      ...[
        at("86,130 92,144 100,158"),
        at("102,129 98,144 104,160"),
        at("128,112 132,130 136,150"),
        at("142,116 138,132 138,150"),
      ].map((line) => stroked("line", smooth(line.map(([x = 0, y = 0]): Point => [x, y])))),
      filled("muscle", ring(at("99,158 106,158 116,176 104,172")), "line"),
      filled("muscle", ring(at("134,150 141,150 142,176 137,178")), "line"),
      stroked(
        "hatch",
        ...[0.97, 0.94].map((f) => contours(outline, 5, 12, [f])),
        smooth(at("116,128 120,150 130,186")),
        smooth(at("119,124 124,150 134,188")),
      ),
      stroked(
        "fine",
        smooth(at("82,168 92,166 100,174")),
        smooth(at("78,152 88,154")),
        smooth(at("143,176 148,170")),
      ),
    ],
    callouts: [
      { structure: "right-atrium", at: [70, 112] },
      { structure: "left-atrium", at: [134, 102] },
      { structure: "right-ventricle", at: [104, 150] },
      { structure: "mitral-valve", at: [130, 114] },
      { structure: "tricuspid-valve", at: [94, 131] },
      { structure: "interventricular-septum", at: [118, 150] },
      { structure: "left-ventricle", at: [144, 140] },
      { structure: "anterior-papillary-muscle-of-left-ventricle", at: [106, 168] },
      { structure: "ascending-aorta", at: [110, 38] },
    ],
  };
}

export function drawLungs(vary: Variation): Sketch {
  const right: Point[] = vary.loosen(
    at(`
      -34,30 -52,26 -70,42 -86,74 -96,116 -98,156 -88,172 -66,164 -44,154 -26,156 -20,132 -20,96
      -22,58
    `),
    1.2,
  );
  const left: Point[] = vary.loosen(
    at(`
      34,30 52,26 70,42 86,74 95,116 98,158 88,176 66,170 48,164 34,168 38,154 44,140 36,122 24,112
      20,84 22,56
    `),
    1.2,
  );
  const marbled = (points: readonly Point[]): Shape =>
    stroked(
      "fine",
      ...Array.from({ length: 16 }, () => {
        const x = vary.within(-0.62, 0.62);
        const y = vary.within(-0.7, 0.7);
        const xs = points.map((p) => p[0]);
        const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
        const centre: Point = [middle + x * 28, 104 + y * 60];
        return smooth([
          centre,
          [centre[0] + vary.within(3, 7), centre[1] + vary.within(-3, 3)],
          [centre[0] + vary.within(6, 10), centre[1] + vary.within(2, 7)],
        ]);
      }),
    );
  const trachea: Point[] = at("0,-6 0,30 0,62");
  return {
    shapes: [
      ...tube(at("0,58 -12,74 -30,88"), [6.5, 6, 5], "glass"),
      ...tube(at("0,58 14,76 34,92"), [6.5, 5.6, 4.6], "glass"),
      filled("glass", band(trachea, 7.5), "outline"),
      stroked(
        "line",
        ...Array.from({ length: 11 }, (_, index) => arc(0, -4 + index * 5.6, 7.2, 2.2, 0.2, Math.PI - 0.2)),
      ),
      ...mass(right, "tissue", 3, 8, [0.95, 0.9, 0.85]),
      ...mass(left, "tissue", 3, 7, [0.95, 0.9, 0.85]),
      marbled(right),
      marbled(left),
      stroked(
        "line",
        smooth(at("-94,112 -70,112 -44,110 -21,104")),
        smooth(at("-90,106 -70,124 -48,142 -34,155")),
        smooth(at("86,78 74,106 60,136 52,164")),
      ),
    ],
    callouts: [
      { structure: "trachea", at: [-4, 10] },
      { structure: "horizontal-fissure-of-right-lung", at: [-60, 111] },
      { structure: "right-lung", at: [-76, 90] },
      { structure: "left-lung", at: [66, 90] },
      { structure: "lingula-of-left-lung", at: [44, 158] },
      { structure: "superior-lobe-of-right-lung", at: [-62, 76] },
      { structure: "oblique-fissure-of-lung", at: [70, 114] },
      { structure: "cardiac-notch-of-left-lung", at: [36, 124] },
      { structure: "middle-lobe-of-right-lung", at: [-44, 124] },
    ],
  };
}

const thyroidGland = filled(
  "organ",
  ring(
    at(`
        12,100 27,96 31,116 28,146 16,152 9,146 0,143 -9,146 -16,152 -28,146 -31,116 -27,96 -12,100
        -16,124 -8,134 0,132 8,134 16,124
      `),
    0.9,
  ),
  "outline",
);

/** @param withGland with the thyroid gland on it */
export function drawLarynx(vary: Variation, withGland: boolean): Sketch {
  const plate = bothHalves([
    [0, 52],
    ...vary.loosen(at("6,46 22,40 28,28 31,30 31,60 28,84 24,88 14,90"), 0.8),
    [0, 94],
  ]);
  const rings = vary.whole(6, 8);
  return {
    shapes: [
      filled("tissue", ring(bothHalves(at("0,-26 9,-20 12,-4 8,14 0,20"))), "line"),
      filled(
        "glass",
        band(
          [
            [0, 96],
            [0, 128],
            [0, 120 + rings * 12],
          ],
          [19, 17, 17],
        ),
        "line",
      ),
      filled("bone", ring(bothHalves(at("0,10 14,8 30,0 44,-14 47,-12 36,8 20,19 0,22"))), "outline"),
      stroked(
        "hatch",
        ...[-18, -10, -2, 6, 14].map((x) =>
          straight([
            [x, 24],
            [x * 1.2, 46],
          ]),
        ),
      ),
      stroked("fine", smooth(at("-30,30 -38,6")), smooth(at("30,30 38,6"))),
      filled("glass", ring(plate, 0.9), "outline"),
      stroked("line", smooth(at("0,53 0,94"))),
      stroked("hatch", contours(plate, 4, 8, [0.9, 0.8, 0.7])),
      filled("muscle", ring(at("3,97 12,91 25,90 22,108 8,110")), "line"),
      filled("muscle", ring(mirrored(at("3,97 12,91 25,90 22,108 8,110"))), "line"),
      filled("glass", ring(bothHalves(at("0,99 8,104 20,103 21,114 10,118 0,118"))), "outline"),
      ...Array.from(
        { length: rings },
        (_, index): Shape =>
          filled(
            "bone",
            band(
              [
                [-17, 124 + index * 12],
                [0, 127 + index * 12],
                [17, 124 + index * 12],
              ],
              3.2,
            ),
            "line",
          ),
      ),
      ...(withGland ? [thyroidGland] : []),
      stroked("artery", smooth(at("46,60 36,84 28,100 26,118")), smooth(at("-46,60 -36,84 -28,100 -26,118"))),
      stroked("nerve", smooth(at("50,40 34,54 22,66")), smooth(at("-50,40 -34,54 -22,66"))),
      filled("artery", ellipse(46, 60, 2.2), "fine"),
      filled("artery", ellipse(-46, 60, 2.2), "fine"),
    ],
    callouts: [
      { structure: "hyoid-bone", at: [-24, 14] },
      { structure: "thyroid-cartilage", at: [20, 66] },
      { structure: "cricoid-cartilage", at: [-6, 112] },
      ...(withGland ? [{ structure: "thyroid-gland", at: [25, 128] } as const] : []),
      { structure: "trachea", at: [-6, 166] },
    ],
  };
}
