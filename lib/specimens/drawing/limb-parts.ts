/**
 * Parts of the limbs as right ones: the shoulder joint opened from the front, the
 * forearm with the back of the hand, the hollow of the knee from behind, the sole.
 */
import { across, belly } from "#lib/specimens/drawing/forms.ts";
import {
  arc,
  at,
  beside,
  contours,
  ellipse,
  ellipsePoints,
  type Point,
  ring,
  roundBand,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import { filled, moveSketch, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import { handOutline } from "#lib/specimens/drawing/upper-limb.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export function drawShoulderJoint(vary: Variation): Sketch {
  const head = vary.loosen(at("34,76 40,60 56,50 74,52 88,64 92,82 84,98 66,106 48,104 36,92"), 0.7);
  return {
    shapes: [
      filled(
        "bone",
        ring(at("118,64 140,54 176,50 196,62 190,110 176,160 158,196 146,190 134,150 118,110 108,90")),
        "outline",
      ),
      ...belly(at("84,96 118,112 160,122 186,112"), [7, 22, 34, 24]),
      ...belly(at("62,48 96,44 140,46 184,52"), [5, 10, 12, 8]),
      filled("bone", ring(at("30,104 38,92 84,98 88,112 82,132 80,214 46,214 44,140 34,120")), "outline"),
      filled("bone", ellipse(63, 214, 17, 4.4), "line"),
      filled("glass", ring(head, 0.9), "outline"),
      stroked("hatch", contours(head, 2, 6, [0.88, 0.76, 0.64])),
      filled("bone", ring(at("30,74 24,88 28,106 38,112 44,100 38,86")), "line"),
      filled("glass", ring(at("90,60 100,62 106,78 104,96 94,102 96,82")), "outline"),
      filled("tissue", ring(vary.loosen(at("92,100 108,104 116,124 104,138 88,130 84,114"), 0.8)), "line"),
      stroked("hatch", smooth(at("96,106 106,112 108,126")), smooth(at("92,110 98,118 100,128"))),
      filled(
        "sinew",
        roundBand(
          vary.loosen(at("96,58 76,48 54,56 44,76 46,110 52,150 56,190"), 0.7),
          [2, 2.6, 2.8, 2.8, 2.8, 3, 4],
        ),
        "line",
      ),
      filled("sinew", roundBand(at("36,110 46,106 56,110"), 3), "line"),
      filled("bone", roundBand(at("128,70 112,60 104,50 100,42"), [9, 8, 7, 5]), "outline"),
      filled("bone", roundBand(at("38,22 60,14 84,12 104,18"), [9, 10, 9, 6]), "outline"),
      filled("bone", roundBand(at("100,14 136,4 180,8 214,2"), [8, 6, 6, 7]), "outline"),
      filled("sinew", ring(at("70,22 94,18 108,44 100,50 86,34"), 0.7), "line"),
      stroked("hatch", smooth(at("80,23 104,46")), smooth(at("88,21 106,45"))),
      filled("sinew", roundBand(at("112,50 116,34 122,16"), [4, 3.4, 4]), "line"),
      filled("sinew", roundBand(at("100,48 80,44 58,50"), 2.6), "line"),
      filled("fluid", roundBand(at("42,40 62,34 84,34"), [3, 5, 3]), "fine"),
      stroked("line", smooth(at("101,12 106,20 104,26"))),
    ],
    callouts: [
      { structure: "head-of-humerus", at: [64, 84] },
      { structure: "tendon-of-long-head-of-biceps-brachii", at: [50, 136] },
      { structure: "glenoid-labrum", at: [100, 84] },
      { structure: "subscapularis", at: [150, 126] },
      { structure: "coracoid-process", at: [116, 62] },
      { structure: "coraco-acromial-ligament", at: [86, 30] },
      { structure: "acromion", at: [56, 16] },
      { structure: "supraspinatus", at: [150, 46] },
      { structure: "capsule-of-shoulder-joint", at: [104, 126] },
    ],
  };
}

/** The back of the hand up, elbow to the left, the thumb's side at the top. */
export function drawForearmFromBehind(vary: Variation): Sketch {
  const { outline: palm, digits } = handOutline(vary, 0.8);
  const flip = (points: readonly Point[]): Point[] => points.map(([x, y]): Point => [x, -y]);
  const ulnar = at("268,30 300,36 350,32 410,25 452,21");
  const radial = at("452,-21 410,-26 350,-38 305,-44 270,-40 264,-10");
  const hand = flip(palm);
  const tendons = digits.map((finger): Point[] => [
    [430, 4 - finger.base[1] * 0.1],
    [474, -finger.base[1] * 0.2],
    [516, -finger.base[1] * 0.6],
    [finger.base[0] + 4, -finger.base[1]],
    [
      finger.base[0] + Math.cos(finger.angle) * finger.length * 0.6,
      -finger.base[1] - Math.sin(finger.angle) * finger.length * 0.6,
    ],
  ]);
  const nails = digits.map((finger): Shape => {
    const reach = finger.length * 0.88;
    const middle: Point = [
      finger.base[0] + Math.cos(finger.angle) * reach,
      -finger.base[1] - Math.sin(finger.angle) * reach,
    ];
    return filled("sinew", ellipse(middle[0], middle[1], 5.6, 3.6, -finger.angle), "line");
  });
  const knuckles = digits.flatMap((finger) =>
    [0.04, 0.44, 0.74].map((share) =>
      across(
        [
          finger.base[0] + Math.cos(finger.angle) * finger.length * share,
          -finger.base[1] - Math.sin(finger.angle) * finger.length * share,
        ],
        -finger.angle,
        finger.half * 0.5,
      ),
    ),
  );
  const sketch: Sketch = {
    shapes: [
      filled(
        "tissue",
        ring([...ulnar.reverse(), ...radial.slice().reverse(), ...hand.slice().reverse()], 0.9),
        "outline",
      ),
      filled("muscle", ellipse(266, -5, 6, 34), "line"),
      ...belly(at("268,-32 310,-34 360,-26 420,-18"), [8, 11, 8, 3]),
      ...belly(at("268,-16 310,-16 360,-10 424,-4"), [8, 12, 10, 4]),
      ...belly(at("268,4 310,8 360,8 426,6"), [9, 13, 10, 4]),
      ...belly(at("268,22 310,24 360,20 440,16"), [6, 10, 7, 2.4]),
      ...belly(at("380,-4 410,-20 446,-24"), [3, 7, 3]),
      stroked("outline", ...tendons.map((line) => smooth(line))),
      stroked(
        "line",
        smooth(at("404,-18 450,-26 490,-40 520,-60 536,-74")),
        smooth(at("410,-24 450,-29 488,-44 516,-62")),
      ),
      stroked("line", smooth(at("520,-4 524,6 518,14")), smooth(at("524,12 526,18 520,24"))),
      filled("sinew", roundBand(at("436,-22 442,0 440,21"), 7), "line"),
      stroked(
        "hatch",
        ...[-4, 0, 4].map((shift) =>
          smooth([
            [436 + shift, -20],
            [442 + shift, 0],
            [440 + shift, 20],
          ]),
        ),
      ),
      filled("muscle", roundBand(at("506,-30 526,-36 546,-32"), [3, 8, 3]), "line"),
      stroked(
        "vein",
        smooth(at("300,-40 360,-34 430,-30 480,-30 506,-22 520,-8 518,12 500,26 460,22 400,24")),
        ...[0, 1, 2, 3].map((index) => {
          const base = digits[index]?.base ?? [550, 0];
          return smooth([
            [518, -8 + index * -4],
            [536, -base[1] * 0.8],
            [base[0] + 8, -base[1] + 8],
          ]);
        }),
      ),
      stroked(
        "nerve",
        smooth(at("400,-36 450,-34 486,-38 520,-50")),
        smooth(at("470,-32 506,-20 546,-24")),
        smooth(at("420,28 470,26 510,26 548,32")),
      ),
      stroked("fine", ...knuckles),
      ...nails,
      filled("sinew", ellipse(566, -78, 6, 4, -0.7), "line"),
    ],
    callouts: [
      { structure: "extensor-digitorum", at: [330, -16] },
      { structure: "extensor-retinaculum-of-hand", at: [442, 4] },
      { structure: "dorsal-venous-network-of-hand", at: [519, 4] },
      { structure: "superficial-branch-of-radial-nerve", at: [452, -34] },
      { structure: "extensor-pollicis-longus", at: [500, -46] },
      { structure: "extensor-carpi-ulnaris", at: [330, 24] },
      { structure: "brachioradialis", at: [300, -34] },
      { structure: "dorsal-branch-of-ulnar-nerve", at: [480, 26] },
    ],
  };
  const tilt = 0.3;
  return moveSketch(sketch, ([x, y]) => [
    x * Math.cos(tilt) - y * Math.sin(tilt),
    x * Math.sin(tilt) + y * Math.cos(tilt),
  ]);
}

/** Thigh to the left, heel to the right; the outer side at the top. */
export function drawPoplitealFossa(vary: Variation): Sketch {
  return moveSketch(hollowOfKnee(vary), ([x, y]) => [x, y * 1.3]);
}

function hollowOfKnee(vary: Variation): Sketch {
  const skin = vary.loosen(
    at(
      "4,-46 70,-42 130,-36 190,-42 250,-38 310,-24 360,-17 400,-20 420,-12 424,4 416,20 390,20 350,14 300,26 240,42 180,44 120,38 60,44 4,50 -4,0",
    ),
    0.8,
  );
  return {
    shapes: [
      filled("tissue", ring(skin, 0.9), "outline"),
      filled("muscle", ellipse(2, 2, 6, 44), "line"),
      ...belly(at("2,-26 50,-26 100,-30 140,-32"), [14, 13, 7, 3]),
      ...belly(at("2,24 50,24 100,26 142,26"), [17, 16, 10, 4]),
      ...belly(at("2,6 50,12 96,20 140,24"), [4, 4, 2.4, 1.6], "sinew"),
      filled("fat", ring(at("60,0 96,-18 126,-22 150,-4 156,2 148,8 122,18 92,14")), "fine"),
      ...belly(at("128,-18 170,-22 220,-20 268,-8"), [6, 18, 17, 5]),
      ...belly(at("126,18 170,24 226,22 280,6"), [7, 20, 19, 5]),
      ...belly(at("240,-26 290,-16 330,-8"), [3, 6, 3], "deep"),
      filled("sinew", roundBand(at("262,0 310,0 360,0 402,0"), [14, 8, 6, 9]), "line"),
      stroked("hatch", smooth(at("280,-3 340,-2 396,-4")), smooth(at("280,3 340,2 396,4"))),
      filled("vein", roundBand(at("50,2 90,3 130,4 160,2"), 4), "line"),
      filled("artery", roundBand(at("56,9 92,10 130,9 158,6"), 3.2), "line"),
      filled("nerve", roundBand(at("4,-6 50,-5 100,-3 150,-1 180,0"), [5, 5, 4.4, 4, 3.4]), "line"),
      filled("nerve", roundBand(at("40,-6 84,-18 124,-28 158,-34 180,-32"), [4, 3.4, 3, 3, 2.4]), "line"),
      stroked("vein", smooth(vary.loosen(at("134,2 190,4 250,2 310,-6 360,-14 412,-16"), 1))),
      stroked("nerve", smooth(vary.loosen(at("112,-2 180,-3 240,-2 300,-9 360,-17 410,-19"), 1))),
      stroked("artery", smooth(at("120,9 140,18 170,20")), smooth(at("120,8 144,-10 172,-18"))),
      stroked("fine", arc(158, -36, 7, 6, 0, 6)),
      stroked("hatch", smooth(beside(at("180,44 240,42 300,26 350,14"), 4))),
    ],
    callouts: [
      { structure: "tibial-nerve", at: [76, -4] },
      { structure: "common-fibular-nerve", at: [120, -27] },
      { structure: "popliteal-artery", at: [100, 10] },
      { structure: "popliteal-vein", at: [70, 2] },
      { structure: "medial-head-of-gastrocnemius", at: [200, 26] },
      { structure: "lateral-head-of-gastrocnemius", at: [196, -24] },
      { structure: "sural-nerve", at: [320, -12] },
      { structure: "small-saphenous-vein", at: [260, 2] },
      { structure: "calcaneal-tendon", at: [370, 0] },
      { structure: "semimembranosus", at: [50, 26] },
    ],
  };
}

/** Heel to the left, the great toe at the lower right. */
export function drawSole(vary: Variation): Sketch {
  const outline = vary.loosen(
    at(
      "14,40 30,22 56,18 96,24 138,22 178,14 206,10 224,16 232,26 240,30 246,40 250,50 254,58 262,72 262,88 250,98 236,96 222,104 190,106 150,94 110,82 70,86 36,84 16,66",
    ),
    0.8,
  );
  const toes = at("228,20 240,33 248,46 253,60 250,84");
  const heads = at("196,20 202,34 206,50 208,66 212,86");
  return {
    shapes: [
      filled("tissue", ring(outline, 0.9), "outline"),
      ...toes.map(
        ([x, y], index): Shape =>
          filled(
            "tissue",
            ellipse(x + 3, y, 8 + index * 1.4, index === 4 ? 11 : 6, 0.1 - index * 0.05),
            "line",
          ),
      ),
      filled("fat", ring(ellipsePoints(40, 52, 24, 27, 0, 14)), "line"),
      stroked(
        "stipple",
        ...at("30,40 38,34 48,40 34,52 46,54 38,64 50,64 28,60").map(([x, y]) => arc(x, y, 1, 1, 0, 6)),
      ),
      ...belly(at("48,30 100,32 150,26 196,20"), [5, 8, 6, 2.4]),
      ...belly(at("48,78 100,74 150,82 208,88"), [5, 8, 8, 3]),
      ...belly(at("56,52 100,50 140,52 164,50"), [9, 12, 12, 8]),
      stroked(
        "outline",
        ...heads
          .slice(0, 4)
          .map((head, index) =>
            smooth([[150, 46 + index * 4], [head[0] - 14, head[1]], toes[index] ?? head]),
          ),
      ),
      stroked("outline", smooth(at("96,66 150,76 208,84 252,84"))),
      ...heads.slice(0, 4).map(([x, y]) =>
        filled(
          "muscle",
          roundBand(
            [
              [x - 26, y + 4],
              [x - 14, y + 6],
              [x - 2, y + 6],
            ],
            [1.6, 3, 1.4],
          ),
          "fine",
        ),
      ),
      ...belly(at("160,72 182,62 204,70"), [3, 6, 3], "deep"),
      stroked(
        "nerve",
        smooth(at("56,70 96,66 140,68 184,72 222,74")),
        smooth(at("120,66 160,62 200,58 236,58")),
        smooth(at("52,62 92,42 130,38 180,30 214,26")),
        smooth(at("130,38 170,42 206,42 234,44")),
      ),
      stroked(
        "artery",
        smooth(at("56,74 100,70 150,70 196,76")),
        smooth(at("54,66 94,38 140,34 168,38 184,52 184,68")),
        ...heads.slice(0, 4).map((head) =>
          smooth([
            [180, 44 + (head[1] - 20) * 0.4],
            [head[0] - 4, head[1] + 7],
            [head[0] + 16, head[1] + 6],
          ]),
        ),
      ),
      ...[0, 1].map((index) =>
        filled(
          "sinew",
          ring(
            at("58,46 72,38 96,40 96,62 72,64 58,58").map(([x, y]): Point => [x - index * 4, y + index * 2]),
          ),
          "line",
        ),
      ),
      stroked(
        "hatch",
        ...[44, 50, 56].map((y) =>
          smooth([
            [60, y + 1],
            [78, y],
            [94, y],
          ]),
        ),
      ),
    ],
    callouts: [
      { structure: "plantar-aponeurosis", at: [72, 50] },
      { structure: "abductor-hallucis", at: [110, 76] },
      { structure: "flexor-digitorum-brevis", at: [124, 52] },
      { structure: "abductor-digiti-minimi-of-foot", at: [110, 30] },
      { structure: "lateral-plantar-artery", at: [140, 34] },
      { structure: "medial-plantar-nerve", at: [166, 70] },
      { structure: "deep-plantar-arch", at: [184, 58] },
      { structure: "flexor-hallucis-longus", at: [196, 83] },
    ],
  };
}
