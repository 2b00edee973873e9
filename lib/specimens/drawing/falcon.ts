/** A falcon's skeleton on its perch, looking left, the wings half spread; the feathers are only hinted at. */
import { longBone, vertebralColumn } from "#lib/specimens/drawing/forms.ts";
import { at, band, ellipse, type Point, ring, roundBand, smooth } from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

function wing(joints: string, feathers: string): Shape[] {
  const [shoulder = [0, 0], elbow = [0, 0], wrist = [0, 0], knuckle = [0, 0], tip = [0, 0]] = at(joints);
  const beside = ([x, y]: Point): Point => [x + 2.4, y + 5];
  return [
    stroked("hidden", ring(at(feathers), 0.9)),
    ...longBone(shoulder, elbow, 2.6, 1.7),
    ...longBone(beside(elbow), beside(wrist), 1.4, 1.5),
    ...longBone(elbow, wrist, 1.9, 1.6),
    ...longBone(wrist, knuckle, 1.7, 1.5),
    ...longBone(knuckle, tip, 1.2, 1.4),
    ...longBone(
      [wrist[0], wrist[1] - 2],
      [wrist[0] + (knuckle[0] - wrist[0]) * 0.3, wrist[1] - 10],
      0.9,
      1.3,
    ),
  ];
}

function leg(joints: string): Shape[] {
  const points = at(joints);
  const foot = points[3] ?? [0, 0];
  return [
    ...points
      .slice(0, 3)
      .flatMap((joint, index) => longBone(joint, points[index + 1] ?? joint, 2.2 - index * 0.3, 1.7)),
    ...[-14, -7, 9].map((reach) =>
      stroked(
        "outline",
        smooth([foot, [foot[0] + reach * 0.6, foot[1] + 1], [foot[0] + reach, foot[1] + 6]]),
      ),
    ),
  ];
}

export function drawFalconSkeleton(vary: Variation): Sketch {
  const spine = vary.loosen(
    at("92,48 102,56 104,66 102,76 108,84 122,94 140,108 154,122 164,134 170,146"),
    0.5,
  );
  const _breast = at("92,92 92,106 102,124 122,138");
  const ribs = Array.from({ length: 6 }, (_, index): Shape => {
    const top = spine[4 + Math.floor(index / 2)] ?? [0, 0];
    const start: Point = [top[0] + (index % 2) * 7, top[1] + (index % 2) * 6];
    const end: Point = [96 + index * 5, 102 + index * 6];
    return filled(
      "bone",
      roundBand([start, [(start[0] + end[0]) / 2 + 3, (start[1] + end[1]) / 2 + 4], end], 0.9),
      "fine",
    );
  });
  return {
    shapes: [
      filled("fat", band(at("80,204 140,204 190,204"), 4), "outline"),
      filled("fat", band(at("138,208 138,218 138,228"), 3), "line"),
      filled("fat", ring(at("96,228 180,228 190,238 86,238"), 0.4), "outline"),
      ...wing("104,86 74,70 46,38 26,24 10,26", "104,84 74,60 46,26 8,16 -8,36 4,64 26,86 56,104 90,112"),
      stroked("hidden", ring(at("154,126 176,142 206,182 214,204 196,206 170,182 150,152"), 0.9)),
      ...leg("146,128 124,144 146,172 140,196"),
      ...ribs,
      filled("bone", ring(at("92,88 88,104 94,124 110,140 126,142 122,132 106,118 98,102"), 0.9), "outline"),
      filled("bone", roundBand(at("104,84 98,92 94,98"), 2), "line"),
      stroked("outline", smooth(at("106,84 92,88 90,98"))),
      ...vertebralColumn(spine, 24, [2.2, 2.4]),
      filled("bone", ring(at("132,102 150,108 166,126 172,140 160,140 144,130 132,116"), 0.9), "line"),
      ...leg("152,128 136,148 158,174 156,196"),
      filled(
        "bone",
        ring(at("96,46 94,34 82,26 68,28 60,36 50,40 46,50 50,56 54,50 64,50 76,54 90,54"), 0.9),
        "outline",
      ),
      filled("hollow", ellipse(73, 40, 7, 6.4), "line"),
      stroked("line", smooth(at("54,51 66,54 82,56"))),
      filled("hollow", ellipse(56, 43, 2, 1.4), "fine"),
      ...wing(
        "112,88 152,72 184,36 212,26 232,34",
        "112,84 152,60 184,24 218,12 250,34 258,66 236,96 200,116 156,118 126,106",
      ),
    ],
    callouts: [
      { structure: "skull", at: [84, 32] },
      { structure: "beak", at: [48, 48] },
      { structure: "keel", at: [96, 120] },
      { structure: "humerus", at: [132, 80] },
      { structure: "ulna", at: [170, 58] },
      { structure: "carpometacarpus", at: [198, 31] },
      { structure: "synsacrum", at: [154, 122] },
      { structure: "tibiotarsus", at: [148, 162] },
      { structure: "tarsometatarsus", at: [157, 186] },
    ],
  };
}
