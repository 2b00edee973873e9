/**
 * The lower limb from its inner side, laid with the hip to the left, as a left one; the
 * knee joint opened, from the front, as a right one.
 */
import { belly, longBone } from "#lib/specimens/drawing/forms.ts";
import {
  arc,
  at,
  band,
  beside,
  contours,
  ellipse,
  ellipsePoints,
  mirrored,
  type Point,
  ring,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked, turnSketch } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

const front: readonly Point[] = at(`
  0,-70 60,-73 140,-64 210,-51 248,-46 274,-51 300,-44 320,-37 380,-34 450,-27 516,-23 548,-27
`);
const foot: readonly Point[] = at(`
  564,-40 576,-66 583,-98 585,-116 591,-127 601,-126 608,-114 611,-96 605,-74 602,-50 609,-26
  617,-4 617,14 606,25 588,24
`);
const back: readonly Point[] = at(
  "562,12 520,13 470,25 410,41 362,45 322,34 290,27 252,31 200,45 130,62 60,76 4,80",
);

function vesselsAndNerves(artery: readonly Point[]): Shape[] {
  return [
    stroked(
      "artery",
      smooth(artery),
      smooth(at("40,-34 90,-6 150,26 190,32")),
      smooth(at("310,10 340,18 380,26")),
      smooth(at("530,-2 572,4 600,-16 606,-60 604,-96")),
    ),
    stroked(
      "nerve",
      smooth(at("-8,-26 50,-28 120,-14 200,6 268,-6 340,-16 440,-8 530,-20 566,-34")),
      smooth(at("240,20 300,16 380,18 460,8 536,2 580,10 606,-6 609,-60")),
    ),
  ];
}

/** Fine vessels that keep to the great vein, with the nodes of the groin and of the hollow of the knee. */
function lymphVessels(vary: Variation): Shape[] {
  const lanes = [-15, -11, -7, -3, 2, 7, 11].map((lane) =>
    smooth(
      vary.loosen(
        at("12,-30 80,-6 150,10 220,18 280,12 350,-6 430,-14 510,-16").map(
          ([x, y]): Point => [x, y + lane * (0.6 + x / 900)],
        ),
        2,
      ),
    ),
  );
  const nodes = at("4,-36 16,-44 26,-30 8,-20 34,-40 20,-16 264,22 276,26");
  return [
    stroked("artery", smooth(at("-10,-34 60,-34 130,-22 200,2"))),
    stroked("duct", ...lanes),
    stroked(
      "duct-twig",
      ...[0, 1, 2, 3].map((toe) =>
        smooth([
          [510, -16],
          [556, -30 - toe * 3],
          [584 + toe * 4, -70 - toe * 9],
        ]),
      ),
    ),
    ...nodes.map(([x, y]) => filled("duct", ellipse(x, y, 6, 4.4, 0.4), "line")),
  ];
}

export type LimbVessels = "vessels and nerves" | "lymph vessels";

/** @param seen which of the conducting ways are laid free */
export function drawLowerLimb(vary: Variation, seen: LimbVessels): Sketch {
  const bulk = vary.within(0.92, 1.08);
  const widen = (point: Point): Point => [point[0], point[1] * (point[0] < 540 ? bulk : 1)];
  const fronts = front.map(widen);
  const backs = back.map(widen);
  const cut: Point[] = at("-14,44 -18,4 -12,-40");
  const artery: Point[] = at("-10,-34 60,-34 130,-22 200,2 262,12 310,10 370,12 450,4 530,-2");
  const saphena: Point[] = at("-6,-44 70,-12 150,8 220,22 280,14 350,-8 430,-14 520,-14 562,-30 576,-64");
  const shapes: Shape[] = [
    filled("tissue", ring([...fronts, ...foot, ...backs, ...cut], 0.9), "outline"),
    ...belly(at("0,60 80,50 160,38 232,22 282,14"), [6, 18 * bulk, 16 * bulk, 9, 3]),
    ...belly(at("-4,18 60,18 130,20 200,16"), [14, 20 * bulk, 16, 3]),
    ...belly(at("10,-54 80,-50 160,-38 230,-34 266,-36"), [6, 17 * bulk, 19 * bulk, 12, 4]),
    ...belly(at("150,-20 200,-24 244,-26 270,-22"), [4, 14, 15, 4]),
    ...belly(at("-6,-60 70,-22 150,0 220,8 286,-4 322,-14"), [5, 8, 8, 8, 6, 3]),
    ...belly(at("292,20 345,26 405,20 450,12 500,8"), [8, 16 * bulk, 17 * bulk, 9, 3]),
    ...belly(at("330,2 390,4 450,2 500,2"), [3, 9, 7, 3]),
    filled("bone", band(at("322,-26 380,-22 450,-16 524,-12"), [8, 6, 5, 6]), "line"),
    filled("bone", ring(ellipsePoints(272, -44, 15, 7, 0.1)), "line"),
    filled("bone", ring(ellipsePoints(548, -8, 12, 10)), "line"),
    stroked("line", smooth(at("498,8 540,8 584,16")), smooth(at("500,2 546,6 590,-20 602,-52"))),
    stroked("hatch", smooth(beside(backs.slice(0, 8), -4)), smooth(beside(fronts.slice(1, 6), -5))),
    stroked("vein", smooth(vary.loosen(saphena, 2.5)), smooth(at("350,-8 380,16 400,34"))),
    ...(seen === "lymph vessels" ? lymphVessels(vary) : vesselsAndNerves(artery)),
    stroked("fine", ...[0, 1, 2].map((step) => arc(589, -118 + step * 6, 6, 4, 2.6, 4.2))),
  ];
  return turnSketch(
    {
      shapes,
      callouts: [
        { structure: "sartorius", at: [150, 0] },
        { structure: "femoral-artery", at: [60, -34] },
        { structure: "saphenous-nerve", at: [440, -8] },
        { structure: "great-saphenous-vein", at: [350, -8] },
        { structure: "gastrocnemius", at: [390, 28] },
        { structure: "tibial-nerve", at: [536, 2] },
        { structure: "gracilis", at: [100, 24] },
        { structure: "superficial-inguinal-lymph-nodes", at: [18, -42] },
        { structure: "popliteal-lymph-nodes", at: [268, 23] },
      ],
    },
    vary.within(0.16, 0.3),
  );
}

export function drawKnee(vary: Variation): Sketch {
  const femur: Point[] = at(`
    -17,0 -18,34 -24,58 -42,76 -47,96 -40,113 -24,116 -12,106 -4,95 5,95 13,107 26,117 42,112 47,94
    41,74 24,57 18,34 17,0
  `);
  const tibia: Point[] = at(`
    -47,131 -34,126 -12,127 0,122 12,127 34,126 47,131 44,146 30,164 20,190 18,232 -17,232 -18,190
    -26,164 -43,148
  `);
  const patellaShift = vary.within(-3, 3);
  const patella: Point[] = ellipsePoints(78 + patellaShift, 118, 17, 20, 0.1, 10);
  return {
    shapes: [
      ...longBone([-50, 148], [-42, 232], 6, 1.5),
      filled("bone", ring(tibia, 0.9), "outline"),
      stroked("hatch", contours(tibia, 6, 10, [0.93, 0.86, 0.79]), smooth(at("-4,150 2,160 4,178"))),
      filled("bone", ring(femur, 0.9), "outline"),
      stroked(
        "hatch",
        contours(femur, 10, 14, [0.94, 0.88, 0.82], [0, 60]),
        contours(femur, 3, 6, [0.95, 0.9], [0, 60]),
      ),
      filled("glass", ring(at("-46,121 -30,117 -12,119 -14,125 -34,126 -46,130"), 0.8), "line"),
      filled("glass", ring(mirrored(at("-46,121 -30,117 -12,119 -14,125 -34,126 -46,130")), 0.8), "line"),
      ...belly(at("7,97 2,110 -3,125"), [4, 4, 5], "nerve", [-0.5, 0, 0.5]),
      ...belly(at("-6,98 0,110 6,124"), [3.5, 3.5, 4.5], "nerve", [-0.5, 0, 0.5]),
      ...belly(at("-48,82 -54,112 -50,146"), [4, 5, 4], "sinew", [-0.5, 0, 0.5]),
      ...belly(at("48,82 53,118 42,156"), [5, 6, 5], "sinew", [-0.5, 0, 0.5]),
      ...belly(at("34,36 58,76 72,104"), [17, 16, 12]),
      ...belly(at("72,130 46,154 14,168"), [11, 10, 9], "sinew"),
      filled("bone", ring(patella), "outline"),
      stroked("hatch", contours(patella, 0, 4, [0.84, 0.68, 0.52])),
      stroked("artery", smooth(at("-26,14 -34,54 -58,84 -60,118 -52,136"))),
    ],
    callouts: [
      { structure: "femur", at: [-10, 40] },
      { structure: "anterior-cruciate-ligament", at: [0, 118] },
      { structure: "lateral-meniscus", at: [-32, 121] },
      { structure: "patella", at: [78, 116] },
      { structure: "posterior-cruciate-ligament", at: [4, 106] },
      { structure: "medial-meniscus", at: [34, 121] },
      { structure: "tibial-collateral-ligament", at: [52, 130] },
      { structure: "fibular-collateral-ligament", at: [-53, 116] },
      { structure: "patellar-ligament", at: [46, 153] },
      { structure: "tibia", at: [6, 205] },
      { structure: "fibula", at: [-45, 200] },
    ],
  };
}
