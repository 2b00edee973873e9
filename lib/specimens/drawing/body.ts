/**
 * The whole body standing, from the front, with muscles, arteries or nerves drawn into
 * its outline; sitting, from its left side; and the nerves alone on a board. The
 * outline is plain; no face is drawn.
 */
import { belly } from "#lib/specimens/drawing/forms.ts";
import {
  along,
  at,
  bothHalves,
  bothLines,
  ellipse,
  mapPath,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import {
  bothSides,
  type Callout,
  filled,
  finer,
  type Shape,
  type Sketch,
  stroked,
  turnSketch,
} from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

export const systems = ["muscles", "arteries", "nerves"] as const;
export type BodySystem = (typeof systems)[number];

const half: readonly Point[] = at(`
  0,0 9,1.5 15,9 15.6,21 13.6,32 10,41 8.4,46 9.2,54 16,60 30,64 41,70 47,82 50,104 53,124 59,146
  64,168 68,178 70.5,190 70,203 67,212 63,211 63.5,198 60.4,199 57.4,193 58,183 58.5,172 51.5,150
  46,130 42,110 38.5,92 37,106 34,122 32,138 34,152 37.4,166 39,184 38,208 35,236 31,258 29.4,272
  31,288 28.6,314 24.4,338 24.4,346 29,354 27,360 17,360 14.6,350 15,338 13.4,316 10.6,290
  12.6,270 12.4,254 8.4,228 4.4,202 1.6,186 0,182
`);

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
      { structure: "pectoralis-major", at: [18, 78] },
      { structure: "deltoid", at: [-46, 82] },
      { structure: "rectus-abdominis", at: [-8, 120] },
      { structure: "sartorius", at: [18, 206] },
      { structure: "tibialis-anterior", at: [-23, 306] },
    ],
  };
}

function arteries(vary: Variation): { shapes: Shape[]; callouts: Callout[] } {
  const limbs: Point[][] = [
    at("2,70 20,66 38,74 45,100 49,124 58,152 66,188"),
    at("49,124 53,152 60,184"),
    at("0,160 10,174 20,196 20,236 16,262 18,300 20,342 24,356"),
    at("17,270 22,306 25,338"),
  ];
  return {
    shapes: [
      stroked(
        "artery",
        ...limbs.flatMap((line) => bothLines(vary.loosen(line, 0.4))),
        ...bothLines(at("2,66 6,50 9,34 10,18")),
        smooth(at("4,84 3,70 8,66 10,74 4,110 1,140 0,160")),
      ),
    ],
    callouts: [
      { structure: "common-carotid-artery", at: [5, 54] },
      { structure: "arch-of-aorta", at: [6, 66] },
      { structure: "brachial-artery", at: [-46, 104] },
      { structure: "femoral-artery", at: [20, 214] },
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
          bothLines([
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
            bothLines([
              [point[0], point[1]],
              [16, point[1] + 3],
              [27 - index * 0.3, point[1] + 11],
            ]),
          ),
      ),
      stroked("nerve", ...[...arms, ...legs].flatMap((line) => bothLines(vary.loosen(line, 0.5)))),
      filled("nerve", roundBand(cord, [2.6, 2, 2.2, 0.9]), "line"),
    ],
    callouts: [
      { structure: "brain", at: [-6, 18] },
      { structure: "brachial-plexus", at: [20, 64] },
      { structure: "spinal-cord", at: [-1, 100] },
      { structure: "femoral-nerve", at: [25, 196] },
      { structure: "sciatic-nerve", at: [-17, 216] },
    ],
  };
}

const parts = { muscles, arteries, nerves };

/** @param shown what is drawn into the outline, one over the other */
export function drawBody(vary: Variation, shown: readonly BodySystem[]): Sketch {
  const build = vary.within(0.95, 1.06);
  const outline = bothHalves(half).map(([x, y]): Point => [x * build, y]);
  const drawn = shown.map((system) => parts[system](vary));
  const inner = finer({ shapes: drawn.flatMap((part) => part.shapes), callouts: [] });
  return {
    shapes: [
      filled("tissue", ring(outline, 0.9), "outline"),
      ...inner.shapes.map((shape) => ({ ...shape, path: mapPath(shape.path, ([x, y]) => [x * build, y]) })),
    ],
    callouts: drawn.flatMap((part) => part.callouts),
  };
}

/** Brain, cord and the nerves of the limbs taken out and laid on a board. */
export function drawNervousSystem(vary: Variation): Sketch {
  const { shapes, callouts } = nerves(vary);
  const board = filled("glass", straight(at("-94,-14 94,-14 94,368 -94,368"), true), "line");
  return turnSketch({ shapes: [board, ...shapes], callouts }, -Math.PI / 2);
}

/** Sitting on a bench, from the left side, with the nervous system where it is asked for. */
export function drawSeatedBody(vary: Variation, withNerves: boolean): Sketch {
  const outline = vary.loosen(
    at(`
      62,6 74,2 88,4 98,14 100,28 96,40 90,48 92,56 104,66 112,84 114,112 112,140 118,158 118,174 108,182
      80,184 52,184 46,190 48,220 46,250 46,268 36,274 14,274 14,266 28,258 30,226 28,192 28,176 36,164
      60,158 78,152 76,128 74,100 72,76 74,60 72,52 64,50 58,44 56,30 54,22 58,12
    `),
    0.5,
  );
  const arm = at("92,72 96,96 94,118 84,138 66,148 44,154");
  const lines = [
    at("94,56 92,76 94,100 92,122 82,140 62,149 42,154"),
    at("94,60 98,84 98,108 92,128 76,146 52,154"),
    at("104,150 96,162 70,170 44,174 38,184 39,220 38,258 24,270"),
    at("106,156 98,168 70,176 40,180 35,200 36,240 34,262"),
    at("104,142 92,156 66,164 40,168"),
  ];
  const cord = at("88,40 94,56 104,76 108,104 107,132 106,148");
  const segments = along(cord, 14).slice(2, 12);
  const nervous: Shape[] = [
    filled("organ", ring(at("64,16 74,8 86,10 94,18 94,28 88,34 76,32 66,26")), "line"),
    filled("deep", ellipse(89, 34, 5, 4), "fine"),
    stroked("fine", smooth(at("68,22 78,18 90,22")), smooth(at("72,14 80,14 88,14"))),
    stroked(
      "nerve",
      ...segments.map(([x, y]) =>
        smooth([
          [x, y],
          [x - 14, y + 4],
          [x - 26, y + 12],
        ]),
      ),
    ),
    stroked("nerve", ...lines.map((line) => smooth(vary.loosen(line, 0.5)))),
    filled("nerve", roundBand(cord, [2.4, 2, 2, 1.8, 1.6, 1]), "line"),
  ];
  return {
    shapes: [
      filled("fat", straight(at("34,184 136,184 136,196 34,196"), true), "outline"),
      filled("fat", straight(at("120,196 130,196 130,276 120,276"), true), "line"),
      filled("fat", straight(at("58,196 68,196 68,276 58,276"), true), "line"),
      filled("tissue", ring(outline, 0.9), "outline"),
      filled("tissue", roundBand(arm, [9, 8.4, 7.4, 7, 6, 5]), "line"),
      ...(withNerves ? finer({ shapes: nervous, callouts: [] }).shapes : []),
    ],
    callouts: [
      { structure: "brain", at: [76, 20] },
      { structure: "cerebellum", at: [89, 34] },
      { structure: "spinal-cord", at: [107, 92] },
      { structure: "brachial-plexus", at: [94, 64] },
      { structure: "median-nerve", at: [93, 110] },
      { structure: "femoral-nerve", at: [80, 160] },
      { structure: "sciatic-nerve", at: [84, 172] },
      { structure: "tibial-nerve", at: [36, 230] },
    ],
  };
}
