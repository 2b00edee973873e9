/**
 * Plates that say how a specimen is kept and nothing of what it is, for what no
 * drawing fits: a jar, a sheet's outline, a slide, a stand, an empty dome for a cast, a
 * closed box. Whatever would claim a shape is a broken line.
 */
import {
  arc,
  band,
  box,
  ellipsePoints,
  type Path,
  type Point,
  ring,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, type Sketch, stroked } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** A shape without meaning: round, a little uneven, the same for ever under one seed. */
export function drawSomething(vary: Variation, rx = 60, ry = 46): Sketch {
  const outline = ellipsePoints(0, 0, rx, ry, vary.within(-0.2, 0.2), 9).map(([x, y]): Point => {
    const reach = vary.within(0.88, 1.08);
    return [x * reach, y * reach];
  });
  return { shapes: [stroked("hidden", ring(outline))], callouts: [] };
}

function plinth(y: number, half: number): Shape[] {
  return [
    filled(
      "fat",
      straight(
        [
          [-half, y],
          [half, y],
          [half, y + 12],
          [-half, y + 12],
        ],
        true,
      ),
      "outline",
    ),
    filled("paper", box(-22, y + 2.6, 44, 7), "fine"),
    stroked(
      "fine",
      straight([
        [-16, y + 6],
        [10, y + 6],
      ]),
    ),
  ];
}

export function drawOnStand(vary: Variation): Sketch {
  return {
    shapes: [
      ...plinth(96, 70),
      filled(
        "glass",
        band(
          [
            [0, 96],
            [0, 70],
            [0, 44],
          ],
          2,
        ),
        "line",
      ),
      ...drawSomething(vary, 66, 50).shapes,
    ],
    callouts: [],
  };
}

export function drawUnderDome(vary: Variation): Sketch {
  const dome: Path = [["M", -62, 96], ["L", -62, 0], ["C", -62, -78, 62, -78, 62, 0], ["L", 62, 96], ["Z"]];
  return {
    shapes: [
      filled("glass", dome, "outline"),
      filled(
        "glass",
        band(
          [
            [0, 96],
            [0, 70],
            [0, 52],
          ],
          1.6,
        ),
        "line",
      ),
      ...drawSomething(vary, 40, 46).shapes,
      stroked(
        "hatch",
        smooth([
          [-52, 80],
          [-52, 4],
          [-40, -30],
        ]),
        smooth([
          [52, 84],
          [52, 40],
        ]),
      ),
      ...plinth(96, 78),
    ],
    callouts: [],
  };
}

/** A box that is closed and labelled. */
export function drawClosedBox(vary: Variation): Sketch {
  const high = vary.within(52, 66);
  const lid = 16;
  const front = (x: number, y: number): Point => [x, 60 + y];
  return {
    shapes: [
      filled(
        "bone",
        straight(
          [
            [0, 60],
            [34, 34],
            [206, 34],
            [172, 60],
          ],
          true,
        ),
        "outline",
      ),
      filled(
        "deep",
        straight(
          [
            [172, 60],
            [206, 34],
            [206, 34 + high],
            [172, 60 + high],
          ],
          true,
        ),
        "outline",
      ),
      filled(
        "fat",
        straight([front(0, 0), front(172, 0), front(172, high), front(0, high)], true),
        "outline",
      ),
      stroked("line", straight([front(0, lid), front(172, lid), [206, 34 + lid]])),
      stroked(
        "hatch",
        ...[0.25, 0.45, 0.65, 0.85].map((share) =>
          straight([
            [176, 58 + lid + share * (high - lid)],
            [203, 37 + lid + share * (high - lid)],
          ]),
        ),
      ),
      stroked(
        "fine",
        straight([
          [40, 40],
          [196, 40],
        ]),
        straight([
          [18, 52],
          [178, 52],
        ]),
      ),
      filled("paper", box(52, 60 + lid + 8, 68, high - lid - 18), "line"),
      stroked(
        "fine",
        ...[0.3, 0.52, 0.74].map((share, index) =>
          straight([
            [60, 68 + lid + share * (high - lid - 18)],
            [index === 2 ? 88 : 110, 68 + lid + share * (high - lid - 18)],
          ]),
        ),
      ),
    ],
    callouts: [],
  };
}

/** The floor that a whole body or animal stands or lies on, and nothing above it but a hint. */
export function drawOnPlinth(vary: Variation): Sketch {
  return {
    shapes: [
      ...drawSomething(vary, 84, 44).shapes,
      ...plinth(52, 110),
      stroked("hatch", arc(0, 52, 90, 3, 0.1, 3)),
    ],
    callouts: [],
  };
}
