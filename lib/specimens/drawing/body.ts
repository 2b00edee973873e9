/**
 * The whole body standing, from the front, and one system drawn into its outline:
 * muscles, vessels, nerves, or the organs of the trunk. The outline is plain; no
 * face is drawn.
 */
import { belly, pouchedTube, tube } from "#lib/specimens/drawing/forms.ts";
import {
  along,
  arc,
  at,
  bothHalves,
  ellipse,
  mapPath,
  mirrored,
  type Path,
  type Point,
  ring,
  roundBand,
  smooth,
} from "#lib/specimens/drawing/pen.ts";
import {
  type Callout,
  filled,
  finer,
  type Shape,
  type Sketch,
  stroked,
} from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export const systems = ["muscles", "vessels", "nerves", "organs"] as const;
export type BodySystem = (typeof systems)[number];

const half: readonly Point[] = at(`
  0,0 9,1.5 15,9 15.6,21 13.6,32 10,41 8.4,46 9.2,54 16,60 30,64 41,70 47,82 50,104 53,124 59,146
  64,168 68,178 70.5,190 70,203 67,212 63,211 63.5,198 60.4,199 57.4,193 58,183 58.5,172 51.5,150
  46,130 42,110 38.5,92 37,106 34,122 32,138 34,152 37.4,166 39,184 38,208 35,236 31,258 29.4,272
  31,288 28.6,314 24.4,338 24.4,346 29,354 27,360 17,360 14.6,350 15,338 13.4,316 10.6,290
  12.6,270 12.4,254 8.4,228 4.4,202 1.6,186 0,182
`);

function bothSides(shapes: readonly Shape[]): Shape[] {
  return [
    ...shapes,
    ...shapes.map((shape) => ({ ...shape, path: mapPath(shape.path, ([x, y]) => [-x, y]) })),
  ];
}

function both(line: readonly Point[]): Path[] {
  return [smooth(line), smooth(mirrored(line))];
}

function muscles(vary: Variation): { shapes: Shape[]; callouts: Callout[] } {
  const few = [-0.5, 0, 0.5] as const;
  const strap = (spine: readonly Point[], widths: readonly number[]): Shape[] =>
    belly(spine, widths, "muscle", few);
  const tone = vary.within(0.94, 1.06);
  return {
    shapes: bothSides([
      ...strap(at("2,74 16,78 30,84 40,92"), [12, 13 * tone, 9, 3]),
      ...strap(at("38,68 46,80 47,98"), [5, 7, 3]),
      ...strap(at("42,96 47,114 51,132"), [3, 5.4 * tone, 2]),
      ...strap(at("48,132 55,152 62,176"), [3, 5, 2]),
      ...strap(at("53,128 61,152 66,176"), [2.4, 4, 1.6]),
      ...[0, 1, 2, 3].map(
        (row): Shape =>
          filled(
            "muscle",
            ring(
              [
                [1, 98 + row * 15],
                [12, 98 + row * 15],
                [12.6, 111 + row * 15],
                [1, 112 + row * 15],
              ],
              0.5,
            ),
            "line",
          ),
      ),
      ...strap(at("18,92 26,116 28,142 16,164"), [4, 8, 8, 4]),
      ...strap(at("32,160 30,196 22,236 17,260"), [4, 9 * tone, 8, 3]),
      ...strap(at("24,182 20,214 17,246"), [3, 6, 5]),
      ...strap(at("36,170 35,206 30,248"), [3, 4.6, 3]),
      ...strap(at("34,162 20,200 11,242 13,268"), [1.6, 2.2, 2.2, 1.4]),
      ...strap(at("24,276 23,306 21,340"), [3, 4.6, 1.6]),
      ...strap(at("14,278 14.4,304 18,338"), [2.4, 3.6, 1.4]),
      ...strap(at("9,42 6,52 2,62"), [2, 2.6, 1.6]),
      filled("bone", ellipse(20, 266, 5.4, 6), "line"),
    ]),
    callouts: [
      { text: "m. pectoralis major", at: [18, 78] },
      { text: "m. deltoideus", at: [-46, 82] },
      { text: "m. rectus abdominis", at: [-8, 120] },
      { text: "m. sartorius", at: [18, 206] },
      { text: "m. tibialis anterior", at: [-23, 306] },
    ],
  };
}

function vessels(vary: Variation): { shapes: Shape[]; callouts: Callout[] } {
  const limb: Point[][] = [
    at("2,70 20,66 38,74 45,100 49,124 58,152 66,188"),
    at("49,124 53,152 60,184"),
    at("0,160 10,174 20,196 20,236 16,262 18,300 20,342 24,356"),
    at("17,270 22,306 25,338"),
    at("20,192 27,214 25,236"),
  ];
  const neck: Point[] = at("2,66 6,50 9,34 10,18");
  return {
    shapes: [
      filled("organ", ring(at("-6,82 2,80 13,90 18,104 8,110 -6,102")), "line"),
      ...bothSides([filled("organ", ring(at("19,130 25,130 26,142 20,146 18,138")), "fine")]),
      stroked(
        "vein",
        ...limb.flatMap((line) => both(line.map(([x, y]): Point => [x + 2.6, y + 1]))),
        ...both(neck.map(([x, y]): Point => [x + 3, y])),
        smooth(at("-5,160 -5,112 -5,68")),
      ),
      stroked(
        "artery",
        smooth(at("4,84 3,70 8,66 10,74 4,110 1,140 0,160")),
        ...limb.flatMap((line) => both(vary.loosen(line, 0.4))),
        ...both(neck),
        ...both(at("1,136 12,136 20,138")),
        smooth(at("1,122 8,120 14,124")),
        smooth(at("1,128 -10,122 -18,118")),
        ...both(at("6,168 3,178 2,186")),
      ),
      stroked(
        "twig",
        ...[0, 1, 2, 3, 4].flatMap((row) =>
          both([
            [3, 84 + row * 9],
            [18, 82 + row * 10],
            [29, 90 + row * 10],
          ]),
        ),
      ),
    ],
    callouts: [
      { text: "a. carotis communis", at: [5, 54] },
      { text: "arcus aortae", at: [6, 66] },
      { text: "a. brachialis", at: [-46, 104] },
      { text: "a. femoralis", at: [20, 214] },
      { text: "v. cava inferior", at: [-5, 140] },
    ],
  };
}

function nerves(vary: Variation): { shapes: Shape[]; callouts: Callout[] } {
  const cord: Point[] = at("0,36 0,80 1,120 0,152");
  const arms: Point[][] = [
    at("1,56 18,62 37,76 44,102 50,126 58,154 64,186 66,204"),
    at("1,60 20,67 38,82 42,106 46,130 54,156 61,186"),
    at("1,64 22,70 40,80 49,104 55,128 63,156 68,182"),
  ];
  const legs: Point[][] = [
    at("1,140 12,152 22,176 26,204 22,236 18,262 16,300 19,342"),
    at("1,150 10,168 16,200 18,236 20,264 24,290 22,330 25,352"),
    at("1,136 16,150 32,164 34,200"),
  ];
  const brain: Point[] = at("0,4 8,5.5 12.5,13 12.6,22 8,30 0,33");
  return {
    shapes: [
      filled("organ", ring(bothHalves(brain)), "line"),
      stroked(
        "fine",
        smooth(at("0,5 0,31")),
        ...[0, 1, 2].flatMap((row) =>
          both([
            [1, 10 + row * 7],
            [5, 11 + row * 7],
            [7, 8 + row * 7],
            [11, 12 + row * 6],
          ]),
        ),
      ),
      stroked(
        "nerve",
        ...along(cord, 20)
          .slice(4, 17)
          .flatMap((point, index) =>
            both([
              [point[0], point[1]],
              [16, point[1] + 3],
              [27 - index * 0.3, point[1] + 11],
            ]),
          ),
      ),
      stroked("nerve", ...[...arms, ...legs].flatMap((line) => both(vary.loosen(line, 0.5)))),
      filled("nerve", roundBand(cord, [2.6, 2, 2.2, 0.9]), "line"),
    ],
    callouts: [
      { text: "cerebrum", at: [-6, 18] },
      { text: "plexus brachialis", at: [20, 64] },
      { text: "medulla spinalis", at: [-1, 100] },
      { text: "n. femoralis", at: [25, 196] },
      { text: "n. ischiadicus", at: [-17, 216] },
    ],
  };
}

function organs(vary: Variation): { shapes: Shape[]; callouts: Callout[] } {
  const frame: Point[] = at("-24,166 -26,146 -24,134 -12,136 4,139 18,131 26,136 26,156 22,168 10,170 4,178");
  const loops = [0, 1, 2].flatMap((row): Shape[] => [
    filled(
      "tissue",
      roundBand(
        [
          [-17, 146 + row * 8],
          [-6, 143 + row * 8 + vary.within(-1, 1)],
          [6, 148 + row * 8],
          [18, 144 + row * 8],
        ],
        4,
      ),
      "fine",
    ),
  ]);
  return {
    shapes: [
      ...tube(at("0,46 0,66 0,76"), 2.6, "glass"),
      ...bothSides([filled("tissue", ring(at("4,70 14,66 25,82 29,108 24,116 8,110 4,92")), "line")]),
      filled("organ", ring(at("-5,86 4,84 15,94 18,108 8,111 -5,104")), "line"),
      stroked("line", smooth(at("-31,118 -16,108 0,113 16,108 31,118"))),
      filled("muscle", ring(at("4,116 14,112 24,118 22,132 10,138 0,136 6,128")), "line"),
      filled("deep", ring(at("-28,120 -16,111 2,114 12,118 -4,126 -16,134 -26,136")), "line"),
      filled("duct", ellipse(-10, 133, 3, 4.6), "fine"),
      ...loops,
      ...pouchedTube(frame, 4.4, 12, "organ"),
      filled("fluid", ellipse(0, 178, 7, 5), "line"),
      stroked("fine", arc(0, 178, 4, 2.4, 0.4, 5)),
    ],
    callouts: [
      { text: "trachea", at: [0, 62] },
      { text: "pulmo", at: [-22, 90] },
      { text: "cor", at: [8, 98] },
      { text: "hepar", at: [-20, 122] },
      { text: "gaster", at: [16, 122] },
      { text: "intestinum tenue", at: [10, 156] },
    ],
  };
}

export function drawBody(vary: Variation, system: BodySystem): Sketch {
  const build = vary.within(0.95, 1.06);
  const outline = bothHalves(half).map(([x, y]): Point => [x * build, y]);
  const drawnSystem = { muscles, vessels, nerves, organs }[system](vary);
  const inner = finer({ shapes: drawnSystem.shapes, callouts: [] });
  return {
    shapes: [
      filled("tissue", ring(outline, 0.9), "outline"),
      ...inner.shapes.map((shape) => ({ ...shape, path: mapPath(shape.path, ([x, y]) => [x * build, y]) })),
    ],
    callouts: drawnSystem.callouts,
  };
}
