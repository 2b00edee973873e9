/**
 * Handling marks for crates, drawn by this program as paths on a field of 100 by 100.
 * What each mark means follows ISO 780 (the list and the forms from memory; the text
 * of the standard was not at hand): black on a contrasting ground, without words in
 * the drawing, so that they are read in every country. They say how to handle a
 * crate and are no marks of dangerous goods.
 */
import {
  circle,
  type DrawnPath,
  ellipse,
  type PathPoint,
  type PathStep,
  polygon,
  polyline,
  rectangle,
  type VectorDrawing,
} from "#lib/papers/drawing.ts";

export const handlingMarks = [
  "this way up",
  "fragile",
  "keep dry",
  "keep from sunlight and heat",
  "centre of gravity",
  "do not stack",
  "stacking limit",
  "no hand hooks",
  "sling here",
  "temperature limits",
  "do not roll",
] as const;
export type HandlingMark = (typeof handlingMarks)[number];

const solid = (...steps: readonly PathStep[][]): DrawnPath => ({ steps: steps.flat(), fill: "black" });
const line = (width: number, ...steps: readonly PathStep[][]): DrawnPath => ({
  steps: steps.flat(),
  stroke: { ink: "black", width },
});
const hollow = (width: number, ...steps: readonly PathStep[][]): DrawnPath => ({
  steps: steps.flat(),
  fill: "white",
  stroke: { ink: "black", width },
});

/** Two bars across what must not be done, with white beside them so that both are seen. */
const bars = [
  polyline([
    [12, 12],
    [88, 88],
  ]),
  polyline([
    [88, 12],
    [12, 88],
  ]),
];
const crossedOut: readonly DrawnPath[] = [
  { steps: bars.flat(), stroke: { ink: "white", width: 7.5 } },
  line(4.2, ...bars),
];

/** An arrow upwards with its tip at the point. */
function arrowUp(x: number, y: number, length: number): PathStep[] {
  const points: PathPoint[] = [
    [x, y],
    [x + 14, y + 20],
    [x + 5, y + 20],
    [x + 5, y + length],
    [x - 5, y + length],
    [x - 5, y + 20],
    [x - 14, y + 20],
  ];
  return polygon(points);
}

function turned(points: readonly PathPoint[], about: PathPoint, angleDeg: number): PathPoint[] {
  const angle = (angleDeg * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return points.map(([x, y]) => {
    const [dx, dy] = [x - about[0], y - about[1]];
    return [about[0] + dx * cosine - dy * sine, about[1] + dx * sine + dy * cosine];
  });
}

const thisWayUp = [solid(arrowUp(32, 14, 58), arrowUp(68, 14, 58), rectangle(12, 80, 76, 7))];

/** A goblet. */
const fragile = [
  solid(
    [
      ["M", 28, 12],
      ["L", 72, 12],
      ["C", 74, 34, 70, 52, 54, 56],
      ["L", 54, 78],
      ["L", 70, 84],
      ["L", 70, 90],
      ["L", 30, 90],
      ["L", 30, 84],
      ["L", 46, 78],
      ["L", 46, 56],
      ["C", 30, 52, 26, 34, 28, 12],
      ["Z"],
    ],
    [],
  ),
  {
    steps: polyline([
      [50, 12],
      [44, 22],
      [54, 30],
      [46, 40],
    ]),
    stroke: { ink: "white", width: 2.6 },
  } satisfies DrawnPath,
];

function drop(x: number, y: number): PathStep[] {
  return [
    ["M", x, y],
    ["C", x - 5, y + 8, x - 5, y + 13, x, y + 13],
    ["C", x + 5, y + 13, x + 5, y + 8, x, y],
    ["Z"],
  ];
}

/** An umbrella under drops. */
const keepDry = [
  solid([
    ["M", 14, 58],
    ["C", 16, 34, 34, 24, 50, 24],
    ["C", 66, 24, 84, 34, 86, 58],
    ["C", 78, 51, 68, 51, 62, 58],
    ["C", 56, 52, 44, 52, 38, 58],
    ["C", 32, 51, 22, 51, 14, 58],
    ["Z"],
  ]),
  line(4.4, [
    ["M", 50, 54],
    ["L", 50, 82],
    ["C", 50, 93, 34, 93, 34, 82],
  ]),
  solid(drop(22, 10), drop(38, 6), drop(62, 6), drop(78, 10)),
];

/** A sun above a roof, a crate below it. */
const keepFromSun = [
  solid(circle(50, 24, 9)),
  line(
    3.4,
    ...[0, 45, 90, 135, 180, 225, 270, 315].map((angle) =>
      polyline(
        turned(
          [
            [50, 12],
            [50, 6],
          ],
          [50, 24],
          angle,
        ),
      ),
    ),
  ),
  line(
    5,
    polyline([
      [12, 72],
      [50, 48],
      [88, 72],
    ]),
  ),
  solid(rectangle(31, 72, 38, 20)),
];

/** A circle on crossed lines, two of its quarters filled. */
const centreOfGravity = [
  hollow(4, circle(50, 50, 26)),
  solid(
    [["M", 50, 50], ["L", 50, 24], ["C", 64.4, 24, 76, 35.6, 76, 50], ["Z"]],
    [["M", 50, 50], ["L", 50, 76], ["C", 35.6, 76, 24, 64.4, 24, 50], ["Z"]],
  ),
  line(
    3,
    polyline([
      [50, 8],
      [50, 92],
    ]),
    polyline([
      [8, 50],
      [92, 50],
    ]),
  ),
];

const doNotStack = [
  hollow(4.5, rectangle(28, 54, 44, 34)),
  hollow(4.5, rectangle(28, 14, 44, 34)),
  ...crossedOut,
];

/** What presses down on a crate; the figure stands beside the mark. */
const stackingLimit = [
  solid(
    polygon([
      [50, 52],
      [36, 32],
      [45, 32],
      [45, 10],
      [55, 10],
      [55, 32],
      [64, 32],
    ]),
    rectangle(18, 55, 64, 5),
  ),
  hollow(4.5, rectangle(26, 64, 48, 26)),
];

const noHandHooks = [
  line(6.5, [
    ["M", 50, 12],
    ["L", 50, 46],
    ["C", 50, 56, 34, 58, 34, 72],
    ["C", 34, 96, 68, 96, 70, 68],
  ]),
  solid(rectangle(32, 6, 36, 8)),
  ...crossedOut,
];

function link(x: number, y: number): DrawnPath {
  return { steps: ellipse(x, y, 7.5, 13), stroke: { ink: "black", width: 5 } };
}

/** Links of a chain, one in the other. */
const slingHere = [link(50, 18), link(50, 39), link(50, 60), link(50, 81)];

/** A thermometer between a highest and a lowest mark. */
const temperatureLimits = [
  hollow(4, [
    ["M", 41, 62],
    ["L", 41, 18],
    ["C", 41, 6, 59, 6, 59, 18],
    ["L", 59, 62],
    ["C", 72, 70, 68, 92, 50, 92],
    ["C", 32, 92, 28, 70, 41, 62],
    ["Z"],
  ]),
  solid(circle(50, 77, 9), rectangle(47, 40, 6, 34)),
  line(
    3.6,
    polyline([
      [62, 26],
      [88, 26],
    ]),
    polyline([
      [12, 54],
      [38, 54],
    ]),
  ),
];

/** A crate on its edge with the way it would roll. */
const doNotRoll = [
  solid(
    polygon(
      turned(
        [
          [32, 44],
          [68, 44],
          [68, 80],
          [32, 80],
        ],
        [50, 62],
        20,
      ),
    ),
  ),
  line(5, [
    ["M", 20, 46],
    ["C", 24, 14, 66, 8, 80, 30],
  ]),
  solid(
    polygon([
      [88, 44],
      [70, 36],
      [86, 22],
    ]),
  ),
  ...crossedOut,
];

const drawings: Readonly<Record<HandlingMark, readonly DrawnPath[]>> = {
  "this way up": thisWayUp,
  fragile,
  "keep dry": keepDry,
  "keep from sunlight and heat": keepFromSun,
  "centre of gravity": centreOfGravity,
  "do not stack": doNotStack,
  "stacking limit": stackingLimit,
  "no hand hooks": noHandHooks,
  "sling here": slingHere,
  "temperature limits": temperatureLimits,
  "do not roll": doNotRoll,
};

/** One mark in its frame. */
export function drawHandlingMark(mark: HandlingMark): VectorDrawing {
  return {
    width: 100,
    height: 100,
    paths: [hollow(2, rectangle(1, 1, 98, 98)), ...drawings[mark]],
  };
}
