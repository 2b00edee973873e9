/**
 * Whether a place lies on a drawing: inside something that is filled, or so near
 * to a line that a mark drawn there covers it. Places and the drawing are in the
 * plate's own units. What only stands for paper is no part of a specimen.
 */
import type { Drawing, DrawnShape } from "#lib/specimens/drawing/plate.ts";

type Place = readonly [x: number, y: number];

const piecesOfCurve = 12;

/** The lines of a path, curves as short straight pieces. */
export function linesOf(d: string): Place[][] {
  const words = d.match(/[MLCZ]|-?\d+(?:\.\d+)?/g) ?? [];
  const lines: Place[][] = [];
  let here: Place = [0, 0];
  let at = 0;
  const take = (): Place => [Number(words[at++]), Number(words[at++])];
  const draw = (to: Place) => {
    here = to;
    lines.at(-1)?.push(to);
  };
  let letter = "M";
  while (at < words.length) {
    const word = words[at] ?? "";
    if (/[MLCZ]/.test(word)) {
      letter = word;
      at += 1;
    }
    if (letter === "M") {
      lines.push([]);
      draw(take());
      letter = "L";
    } else if (letter === "L") draw(take());
    else if (letter === "C") {
      const from = here;
      const [first, second, to] = [take(), take(), take()];
      for (let piece = 1; piece <= piecesOfCurve; piece += 1) {
        const t = piece / piecesOfCurve;
        const along = (axis: 0 | 1) =>
          (1 - t) ** 3 * from[axis] +
          3 * (1 - t) ** 2 * t * first[axis] +
          3 * (1 - t) * t ** 2 * second[axis] +
          t ** 3 * to[axis];
        draw([along(0), along(1)]);
      }
    } else if (lines.at(-1)?.[0]) draw(lines.at(-1)?.[0] as Place);
  }
  return lines;
}

/** How often the closed lines wind round a place. */
function winding(lines: readonly Place[][], [x, y]: Place): number {
  let turns = 0;
  for (const line of lines)
    for (const [index, from] of line.entries()) {
      const to = line[(index + 1) % line.length] ?? from;
      const side = (to[0] - from[0]) * (y - from[1]) - (x - from[0]) * (to[1] - from[1]);
      if (from[1] <= y && to[1] > y && side > 0) turns += 1;
      if (from[1] > y && to[1] <= y && side < 0) turns -= 1;
    }
  return turns;
}

function distanceTo(lines: readonly Place[][], [x, y]: Place): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const line of lines)
    for (const [index, from] of line.entries()) {
      const to = line[index + 1] ?? from;
      const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
      const length = dx * dx + dy * dy;
      const share =
        length === 0 ? 0 : Math.min(1, Math.max(0, ((x - from[0]) * dx + (y - from[1]) * dy) / length));
      nearest = Math.min(nearest, Math.hypot(x - from[0] - share * dx, y - from[1] - share * dy));
    }
  return nearest;
}

const isOn = ({ d, fill }: DrawnShape, place: Place, near: number): boolean => {
  const lines = linesOf(d);
  if (fill !== null && fill !== "paper" && winding(lines, place) !== 0) return true;
  return distanceTo(lines, place) <= near;
};

/** @param near how far from a line a place may be and still be on it, in units of the plate */
export function liesOnDrawing(drawing: Drawing, place: Place, near = 3): boolean {
  return drawing.shapes.some((shape) => isOn(shape, place, near));
}
