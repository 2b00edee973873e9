/**
 * The pen of the schematic plates: points in, paths out. A path is a list of
 * absolute moves, lines and cubic curves, so that it can be mirrored, turned and
 * fitted before it becomes the `d` of an SVG path.
 *
 * Coordinates are the sketch's own (y downwards); nothing here knows the size of a plate.
 */
export type Point = readonly [x: number, y: number];

export type Segment =
  | readonly ["M", number, number]
  | readonly ["L", number, number]
  | readonly ["C", number, number, number, number, number, number]
  | readonly ["Z"];
export type Path = readonly Segment[];

/** Points written as text, "x,y x,y": how an outline is kept in a plate's file. */
export function at(text: string): Point[] {
  return text
    .trim()
    .split(/\s+/)
    .map((pair) => {
      const [x, y] = pair.split(",").map(Number);
      if (x === undefined || y === undefined || !(Number.isFinite(x) && Number.isFinite(y))) {
        throw new RangeError(`not a point: ${pair}`);
      }
      return [x, y] as const;
    });
}

/** A point list read as a ring or as an open line, by index that may run past either end. */
function pointAt(points: readonly Point[], index: number, closed: boolean): Point {
  const count = points.length;
  const wrapped = closed ? ((index % count) + count) % count : Math.min(Math.max(index, 0), count - 1);
  return points[wrapped] ?? [0, 0];
}

/** A smooth curve through every point (uniform Catmull-Rom, written as cubic curves). */
export function smooth(points: readonly Point[], closed = false, slack = 1): Path {
  const first = points[0];
  if (first === undefined) return [];
  const segments: Segment[] = [["M", first[0], first[1]]];
  const spans = closed ? points.length : points.length - 1;
  const pull = slack / 6;
  for (let index = 0; index < spans; index += 1) {
    const before = pointAt(points, index - 1, closed);
    const here = pointAt(points, index, closed);
    const next = pointAt(points, index + 1, closed);
    const after = pointAt(points, index + 2, closed);
    segments.push([
      "C",
      here[0] + (next[0] - before[0]) * pull,
      here[1] + (next[1] - before[1]) * pull,
      next[0] - (after[0] - here[0]) * pull,
      next[1] - (after[1] - here[1]) * pull,
      next[0],
      next[1],
    ]);
  }
  if (closed) segments.push(["Z"]);
  return segments;
}

export function ring(points: readonly Point[], slack = 1): Path {
  return smooth(points, true, slack);
}

/** Straight lines from point to point. */
export function straight(points: readonly Point[], closed = false): Path {
  const segments: Segment[] = points.map((point, index) => [index === 0 ? "M" : "L", point[0], point[1]]);
  if (closed) segments.push(["Z"]);
  return segments;
}

export function box(x: number, y: number, width: number, height: number): Path {
  return straight(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    true,
  );
}

/** Points of an ellipse, from its right end downwards round; `angle` in radians turns the whole. */
export function ellipsePoints(
  cx: number,
  cy: number,
  rx: number,
  ry: number,
  angle = 0,
  count = 12,
  from = 0,
  to = 2 * Math.PI,
): Point[] {
  const whole = to - from >= 2 * Math.PI - 1e-9;
  return Array.from({ length: count }, (_, index) => {
    const turn = from + ((to - from) * index) / (whole ? count : count - 1);
    const x = Math.cos(turn) * rx;
    const y = Math.sin(turn) * ry;
    return [
      cx + x * Math.cos(angle) - y * Math.sin(angle),
      cy + x * Math.sin(angle) + y * Math.cos(angle),
    ] as const;
  });
}

export function ellipse(cx: number, cy: number, rx: number, ry = rx, angle = 0): Path {
  return ring(ellipsePoints(cx, cy, rx, ry, angle, 12));
}

/** An open piece of an ellipse between two turns in radians. */
export function arc(
  cx: number,
  cy: number,
  rx: number,
  ry: number,
  from: number,
  to: number,
  angle = 0,
): Path {
  return smooth(ellipsePoints(cx, cy, rx, ry, angle, 7, from, to));
}

/** Small marks laid down as one path; the round end of the stroke makes them dots. */
export function dots(points: readonly Point[]): Path {
  return points.flatMap((point): Segment[] => [
    ["M", point[0], point[1]],
    ["L", point[0] + 0.02, point[1]],
  ]);
}

export function joinPaths(...paths: readonly Path[]): Path {
  return paths.flat();
}

function unit(from: Point, to: Point): Point {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const length = Math.hypot(dx, dy) || 1;
  return [dx / length, dy / length];
}

/** The line beside a line, at the given distances to its left (positive: left of the way it goes, y downwards). */
export function beside(points: readonly Point[], distance: number | readonly number[]): Point[] {
  return points.map((point, index) => {
    const along = unit(pointAt(points, index - 1, false), pointAt(points, index + 1, false));
    const by = typeof distance === "number" ? distance : (distance[index] ?? distance.at(-1) ?? 0);
    return [point[0] + along[1] * by, point[1] - along[0] * by] as const;
  });
}

/** The outline of a tapering band along a line: limbs, vessels, bowel, shafts of bone. */
export function bandPoints(points: readonly Point[], halfWidths: number | readonly number[]): Point[] {
  const other =
    typeof halfWidths === "number"
      ? -halfWidths
      : points.map((_, i) => -(halfWidths[i] ?? halfWidths.at(-1) ?? 0));
  return [...beside(points, halfWidths), ...beside(points, other).reverse()];
}

/** A band with flat ends whose sides are smooth. */
export function band(points: readonly Point[], halfWidths: number | readonly number[]): Path {
  const outline = bandPoints(points, halfWidths);
  const near = smooth(outline.slice(0, points.length));
  const far = smooth(outline.slice(points.length));
  const start = far[0];
  if (start === undefined || start[0] !== "M") return near;
  return [...near, ["L", start[1], start[2]], ...far.slice(1), ["Z"]];
}

/** A band with round ends. */
export function roundBand(points: readonly Point[], halfWidths: number | readonly number[]): Path {
  const outline = bandPoints(points, halfWidths);
  const near = smooth(outline.slice(0, points.length));
  const far = smooth(outline.slice(points.length));
  const cap = (from: Point, to: Point, way: Point): Segment => {
    const reach = Math.hypot(to[0] - from[0], to[1] - from[1]) * 0.66;
    return [
      "C",
      from[0] + way[0] * reach,
      from[1] + way[1] * reach,
      to[0] + way[0] * reach,
      to[1] + way[1] * reach,
      to[0],
      to[1],
    ];
  };
  const corner = (index: number): Point => outline[index] ?? [0, 0];
  const last = points.length - 1;
  const end = unit(pointAt(points, last - 1, false), pointAt(points, last, false));
  const start = unit(pointAt(points, 1, false), pointAt(points, 0, false));
  return [
    ...near,
    cap(corner(last), corner(last + 1), end),
    ...far.slice(1),
    cap(corner(outline.length - 1), corner(0), start),
    ["Z"],
  ];
}

export function centreOf(points: readonly Point[]): Point {
  const count = points.length || 1;
  return [
    points.reduce((sum, point) => sum + point[0], 0) / count,
    points.reduce((sum, point) => sum + point[1], 0) / count,
  ];
}

/** The same points drawn in towards a middle: 1 leaves them, 0 gathers them there. */
export function drawnIn(points: readonly Point[], factor: number, middle: Point = centreOf(points)): Point[] {
  return points.map(
    (point) =>
      [middle[0] + (point[0] - middle[0]) * factor, middle[1] + (point[1] - middle[1]) * factor] as const,
  );
}

/** Engraver's lines inside a closed outline, following it between two of its points. */
export function contours(
  points: readonly Point[],
  from: number,
  to: number,
  factors: readonly number[],
  middle: Point = centreOf(points),
): Path {
  const part = Array.from({ length: to - from + 1 }, (_, index) => pointAt(points, from + index, true));
  return joinPaths(
    ...factors.map((factor, index) => {
      const trim = Math.min(index, Math.floor((part.length - 2) / 2));
      return smooth(drawnIn(part.slice(trim, part.length - trim), factor, middle));
    }),
  );
}

/** Points at even steps along an open line of points. */
export function along(points: readonly Point[], count: number): Point[] {
  const lengths = points.map((point, index) => {
    const before = pointAt(points, index - 1, false);
    return Math.hypot(point[0] - before[0], point[1] - before[1]);
  });
  const total = lengths.reduce((sum, length) => sum + length, 0);
  return Array.from({ length: count }, (_, step) => {
    let rest = (total * step) / Math.max(count - 1, 1);
    for (let index = 1; index < points.length; index += 1) {
      const length = lengths[index] ?? 0;
      if (rest <= length || index === points.length - 1) {
        const share = length === 0 ? 0 : Math.min(rest / length, 1);
        return between(pointAt(points, index - 1, false), pointAt(points, index, false), share);
      }
      rest -= length;
    }
    return pointAt(points, 0, false);
  });
}

export function between(from: Point, to: Point, share: number): Point {
  return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
}

/** Mirrored about the vertical line x = 0, or about `axis`. */
export function mirrored(points: readonly Point[], axis = 0): Point[] {
  return points.map((point) => [2 * axis - point[0], point[1]] as const);
}

/** A line at both sides of the middle. */
export function bothLines(line: readonly Point[]): Path[] {
  return [smooth(line), smooth(mirrored(line))];
}

/** A symmetric outline from its right half, given from the top middle to the bottom middle. */
export function bothHalves(half: readonly Point[]): Point[] {
  const left = mirrored(half).reverse();
  return [...half, ...left.filter((point) => Math.abs(point[0]) > 1e-6)];
}

export function mapPath(path: Path, move: (point: Point) => Point): Path {
  return path.map((segment): Segment => {
    if (segment[0] === "Z") return segment;
    if (segment[0] === "C") {
      const [a, b] = move([segment[1], segment[2]]);
      const [c, d] = move([segment[3], segment[4]]);
      const [e, f] = move([segment[5], segment[6]]);
      return ["C", a, b, c, d, e, f];
    }
    const [x, y] = move([segment[1], segment[2]]);
    return [segment[0], x, y];
  });
}

/** Every point that a path names, its control points included: the path lies inside their hull. */
export function pathPoints(path: Path): Point[] {
  return path.flatMap((segment): Point[] => {
    if (segment[0] === "Z") return [];
    if (segment[0] === "C") {
      return [
        [segment[1], segment[2]],
        [segment[3], segment[4]],
        [segment[5], segment[6]],
      ];
    }
    return [[segment[1], segment[2]]];
  });
}

function short(value: number, perUnit: number): string {
  const rounded = Math.round(value * perUnit) / perUnit;
  return String(Object.is(rounded, -0) ? 0 : rounded);
}

/** The `d` of an SVG path, to a tenth of a unit unless told otherwise. */
export function pathData(path: Path, perUnit = 10): string {
  return path
    .map((segment) => {
      const [letter, ...numbers] = segment;
      return letter + numbers.map((value) => short(value as number, perUnit)).join(" ");
    })
    .join("");
}
