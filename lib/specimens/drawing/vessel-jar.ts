/**
 * How a specimen is kept, drawn round it: a jar filled with fluid for what is kept
 * wet, a pane of resin for a sheet. The specimen inside is any other sketch.
 */
import {
  arc,
  band,
  box,
  ellipse,
  type Path,
  type Point,
  ring,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import {
  boundsOf,
  filled,
  finer,
  fitSketch,
  moveSketch,
  type Sketch,
  stroked,
} from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

/** Straight sides and a rounded foot; `left` is the half width, negative. */
function jarWall(left: number, top: number, bottom: number, corner: number): Path {
  const pull = corner * 0.45;
  return [
    ["M", left, top],
    ["L", left, bottom - corner],
    ["C", left, bottom - pull, left + pull, bottom, left + corner, bottom],
    ["L", -left - corner, bottom],
    ["C", -left - pull, bottom, -left, bottom - pull, -left, bottom - corner],
    ["L", -left, top],
    ["Z"],
  ];
}

/** A glass jar with a ground lid, the specimen hung on two threads from a bar. */
export function drawInJar(vary: Variation, content: Sketch): Sketch {
  const inner = boundsOf(content.shapes);
  const broad = inner.width > inner.height * 1.15;
  const slim = inner.height > inner.width * 2.2;
  const width = broad ? 232 : slim ? 92 : 138;
  const height = broad ? 168 : slim ? 226 : 182;
  const left = -width / 2;
  const level = 16 + vary.within(0, 8);
  const held = finer(
    fitSketch(content, { x: left + 16, y: level + 18, width: width - 32, height: height - level - 46 }),
  );
  const bounds = boundsOf(held.shapes);
  const plateAt = left + width * vary.within(0.3, 0.42);
  const wall: Point[] = [
    [left, 8],
    [left, height - 12],
  ];
  const rim = 7;
  return {
    shapes: [
      filled("glass", jarWall(left, 4, height, 14), "outline"),
      filled("fluid", jarWall(left + 4, level, height - 4, 12)),
      stroked(
        "fine",
        arc(0, level, width / 2 - 4, 4, 0, Math.PI),
        arc(0, level, width / 2 - 4, 4, Math.PI, 2 * Math.PI),
      ),
      stroked(
        "hatch",
        straight([
          [bounds.x + bounds.width * 0.34, 2],
          [bounds.x + bounds.width * 0.36, bounds.y + bounds.height * 0.12],
        ]),
        straight([
          [bounds.x + bounds.width * 0.66, 2],
          [bounds.x + bounds.width * 0.64, bounds.y + bounds.height * 0.12],
        ]),
      ),
      ...held.shapes,
      stroked(
        "hatch",
        smooth(wall.map(([x, y]): Point => [x + 9, y + 14])),
        smooth([
          [left + 13, 40],
          [left + 13, height * 0.55],
        ]),
        straight([
          [plateAt + width * 0.52, level + 20],
          [plateAt + width * 0.52, height * 0.4],
        ]),
      ),
      filled(
        "glass",
        band(
          [
            [left - 5, -3],
            [0, -3],
            [-left + 5, -3],
          ],
          rim,
        ),
        "outline",
      ),
      filled(
        "glass",
        ring(
          [
            [left + 8, -10],
            [left + 12, -17],
            [0, -19],
            [-left - 12, -17],
            [-left - 8, -10],
          ],
          0.7,
        ),
        "line",
      ),
      filled("paper", box(-20, height - 26, 40, 17), "line"),
      stroked(
        "fine",
        straight([
          [-15, height - 20],
          [15, height - 20],
        ]),
        straight([
          [-15, height - 15],
          [8, height - 15],
        ]),
      ),
    ],
    callouts: held.callouts,
  };
}

/** The clear pane of resin that a sheet is cast in; its size is the series', so that sheets keep one scale. */
export function drawInPane(content: Sketch, halfWidth: number, halfHeight: number): Sketch {
  const corner = 5;
  const outline: Point[] = [
    [-halfWidth, -halfHeight + corner],
    [-halfWidth + corner, -halfHeight],
    [halfWidth - corner, -halfHeight],
    [halfWidth, -halfHeight + corner],
    [halfWidth, halfHeight - corner],
    [halfWidth - corner, halfHeight],
    [-halfWidth + corner, halfHeight],
    [-halfWidth, halfHeight - corner],
  ];
  return {
    shapes: [
      filled("glass", straight(outline, true), "fine"),
      ...content.shapes,
      stroked(
        "hatch",
        straight([
          [halfWidth - 16, -halfHeight + 5],
          [halfWidth - 5, -halfHeight + 16],
        ]),
        straight([
          [halfWidth - 24, -halfHeight + 5],
          [halfWidth - 5, -halfHeight + 24],
        ]),
      ),
      filled("hollow", ellipse(-halfWidth + 7, halfHeight - 7, 2.4), "hatch"),
    ],
    callouts: content.callouts,
  };
}

/** Moved so that its middle lies at the origin. */
export function centred(content: Sketch): Sketch {
  const bounds = boundsOf(content.shapes);
  return moveSketch(content, ([x, y]) => [x - bounds.x - bounds.width / 2, y - bounds.y - bounds.height / 2]);
}
