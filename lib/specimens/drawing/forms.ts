/**
 * Forms that many plates share: a muscle's belly with its fibres, a long bone, a
 * stalk of vertebrae, a tube of gut. Each gives shapes in the sketch's coordinates,
 * shaded by lines as an engraver would, never by grey.
 */
import {
  along,
  band,
  beside,
  between,
  contours,
  dots,
  type Path,
  type Point,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";
import { filled, type Shape, stroked, type Wash } from "#lib/specimens/drawing/plate.ts";
import type { Variation } from "#lib/specimens/drawing/variation.ts";

const fibrePlaces = [-0.7, -0.42, -0.14, 0.14, 0.42, 0.7] as const;

/** A muscle: an outline along its line of pull, and fibres that gather at both ends. */
export function belly(
  spine: readonly Point[],
  halfWidths: readonly number[],
  wash: Wash = "muscle",
  fibres: readonly number[] = fibrePlaces,
): Shape[] {
  return [
    filled(wash, roundBand(spine, halfWidths), "line"),
    stroked(
      "hatch",
      ...fibres.map((place) =>
        smooth(
          beside(
            spine,
            halfWidths.map((width) => width * place),
          ),
        ),
      ),
    ),
  ];
}

/** A long bone between two joints, thicker at its ends. */
export function longBone(from: Point, to: Point, halfWidth: number, ends = 1.9, bow = 0): Shape[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const sideways: Point = [(to[1] - from[1]) / length, -(to[0] - from[0]) / length];
  const shares = [0, 0.06, 0.16, 0.34, 0.66, 0.84, 0.94, 1];
  const spine = shares.map((share): Point => {
    const [x, y] = between(from, to, share);
    const lift = bow * Math.sin(Math.PI * share);
    return [x + sideways[0] * lift, y + sideways[1] * lift];
  });
  const widths = [ends * 0.8, ends, ends * 0.72, 1, 1, ends * 0.72, ends, ends * 0.8].map(
    (w) => w * halfWidth,
  );
  return [
    filled("bone", roundBand(spine, widths), "line"),
    stroked(
      "hatch",
      smooth(
        beside(
          spine.slice(1, 7),
          widths.slice(1, 7).map((width) => -width * 0.5),
        ),
      ),
      smooth(
        beside(
          spine.slice(2, 6),
          widths.slice(2, 6).map((width) => -width * 0.1),
        ),
      ),
    ),
  ];
}

/** Vertebral bodies from the side or the front: blocks along a line, larger towards its end. */
export function vertebralColumn(
  line: readonly Point[],
  count: number,
  halfWidths: readonly [number, number],
  gap = 0.16,
): Shape[] {
  const joints = along(line, count + 1);
  return Array.from({ length: count }, (_, index): Shape => {
    const start = joints[index] ?? [0, 0];
    const end = joints[index + 1] ?? start;
    const width = halfWidths[0] + ((halfWidths[1] - halfWidths[0]) * index) / Math.max(count - 1, 1);
    const one = between(start, end, gap / 2);
    const two = between(start, end, 1 - gap / 2);
    const waist = between(one, two, 0.5);
    return filled("bone", band([one, waist, two], [width, width * 0.86, width]), "line");
  });
}

/** A gut-like tube with pouches: bulges on both sides at even steps; `cut` leaves its ends flat. */
export function pouchedTube(
  line: readonly Point[],
  halfWidth: number,
  pouches: number,
  wash: Wash,
  cut = false,
): Shape[] {
  const steps = pouches * 4 + 1;
  const spine = along(line, steps);
  const widths = spine.map((_, index) => halfWidth * (index % 4 === 0 ? 0.78 : index % 4 === 2 ? 1.12 : 1));
  const folds = spine.flatMap((_, index): Path[] => {
    if (index % 4 !== 0 || index === 0 || index === steps - 1) return [];
    const part = spine.slice(index - 1, index + 2);
    const near = beside(part, halfWidth * 0.78)[1];
    const far = beside(part, -halfWidth * 0.78)[1];
    const middle = part[1];
    const on = part[2];
    if (near === undefined || far === undefined || middle === undefined || on === undefined) return [];
    return [smooth([near, between(middle, on, 0.5), far])];
  });
  return [
    filled(wash, cut ? band(spine, widths) : roundBand(spine, widths), "outline"),
    stroked("fine", ...folds),
    stroked(
      "hatch",
      smooth(
        beside(
          spine,
          widths.map((width) => -width * 0.66),
        ),
      ),
    ),
  ];
}

/** A smooth tube with one line of light along it. */
export function tube(line: readonly Point[], halfWidth: number | readonly number[], wash: Wash): Shape[] {
  const inner = typeof halfWidth === "number" ? halfWidth * 0.45 : halfWidth.map((width) => width * 0.45);
  return [filled(wash, band(line, halfWidth), "line"), stroked("hatch", smooth(beside(line, inner)))];
}

/** A vertebra or a bone cut across: outline, spongy inside. */
export function spongyBone(outline: readonly Point[], vary: Variation, grains = 26): Shape[] {
  const xs = outline.map((point) => point[0]);
  const ys = outline.map((point) => point[1]);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const grain: Point[] = [];
  for (let attempt = 0; attempt < grains * 4 && grain.length < grains; attempt += 1) {
    const spot: Point = [vary.within(left, right), vary.within(top, bottom)];
    if (liesInside(spot, outline)) grain.push(spot);
  }
  return [filled("bone", ring(outline), "line"), stroked("stipple", dots(grain))];
}

/** Whether a spot lies inside a closed outline (crossing number). */
export function liesInside(spot: Point, outline: readonly Point[]): boolean {
  let inside = false;
  for (let index = 0; index < outline.length; index += 1) {
    const a = outline[index];
    const b = outline[(index + 1) % outline.length];
    if (a === undefined || b === undefined) continue;
    const crosses = a[1] > spot[1] !== b[1] > spot[1];
    if (crosses && spot[0] < ((b[0] - a[0]) * (spot[1] - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
  }
  return inside;
}

/** How far one can go from a spot at an angle before leaving a closed outline; 0 when it never leaves. */
export function reachInside(spot: Point, angle: number, outline: readonly Point[]): number {
  const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
  let farthest = 0;
  for (let index = 0; index < outline.length; index += 1) {
    const a = outline[index];
    const b = outline[(index + 1) % outline.length];
    if (a === undefined || b === undefined) continue;
    const [ex, ey] = [b[0] - a[0], b[1] - a[1]];
    const turn = dx * ey - dy * ex;
    if (Math.abs(turn) < 1e-9) continue;
    const [ax, ay] = [a[0] - spot[0], a[1] - spot[1]];
    const distance = (ax * ey - ay * ex) / turn;
    const share = (ax * dy - ay * dx) / turn;
    if (distance > 0 && share >= 0 && share <= 1) farthest = Math.max(farthest, distance);
  }
  return farthest;
}

/** A body of soft tissue: outline, wash, and engraver's lines along one side of it. */
export function mass(
  outline: readonly Point[],
  wash: Wash,
  shadeFrom: number,
  shadeTo: number,
  factors: readonly number[] = [0.93, 0.86, 0.79],
): Shape[] {
  return [
    filled(wash, ring(outline), "outline"),
    stroked("hatch", contours(outline, shadeFrom, shadeTo, factors)),
  ];
}

/** Points of a finger or toe, from one side of its base round the tip to the other. */
export function digit(base: Point, angle: number, length: number, halfWidth: number): Point[] {
  const place = (forward: number, sideways: number): Point => [
    base[0] + Math.cos(angle) * forward + Math.sin(angle) * sideways,
    base[1] + Math.sin(angle) * forward - Math.cos(angle) * sideways,
  ];
  return [
    place(0, halfWidth),
    place(length * 0.38, halfWidth * 0.98),
    place(length * 0.52, halfWidth * 1.04),
    place(length * 0.82, halfWidth * 0.86),
    place(length * 0.96, halfWidth * 0.58),
    place(length, 0),
    place(length * 0.96, -halfWidth * 0.58),
    place(length * 0.82, -halfWidth * 0.86),
    place(length * 0.52, -halfWidth * 1.04),
    place(length * 0.38, -halfWidth * 0.98),
    place(0, -halfWidth),
  ];
}

/** A crease or a tie across a band: a short line square to it. */
export function across(point: Point, angle: number, halfWidth: number): Path {
  const dx = Math.sin(angle) * halfWidth;
  const dy = -Math.cos(angle) * halfWidth;
  return straight([
    [point[0] + dx, point[1] + dy],
    [point[0] - dx, point[1] - dy],
  ]);
}
