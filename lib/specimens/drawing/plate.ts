/**
 * What a plate is made of, and how a sketch is set on it. A sketch is drawn in
 * coordinates of its own; `setOnPlate` scales and centres it, lays the Latin names of
 * what is recorded in columns at the sides with leader lines, and gives a drawing whose
 * every point lies inside the view box.
 *
 * Tones are named by what they stand for, never by a colour: the screen, the
 * printer and the dark scheme each give them their own.
 */
import {
  mapPath,
  type Path,
  type Point,
  pathData,
  pathPoints,
  straight,
} from "#lib/specimens/drawing/pen.ts";

export const plateWidth = 320;
export const plateHeight = 240;

/** "sinew" is what is white in a body: tendons, ligaments, white matter, teeth. */
export const washes = [
  "paper",
  "sinew",
  "tissue",
  "muscle",
  "bone",
  "organ",
  "deep",
  "fat",
  "fluid",
  "glass",
  "hollow",
  "ink",
  "artery",
  "vein",
  "nerve",
  "duct",
] as const;
export type Wash = (typeof washes)[number];

export const strokes = [
  "outline",
  "line",
  "fine",
  "hatch",
  "stipple",
  "hidden",
  "artery",
  "vein",
  "nerve",
  "duct",
  "artery-twig",
  "vein-twig",
  "nerve-twig",
  "duct-twig",
] as const;
export type Stroke = (typeof strokes)[number];

export type Shape = { path: Path; fill?: Wash; stroke?: Stroke };

/** A structure by its id in the vocabulary, and the point that shows it, in the sketch's coordinates. */
export type Callout = { structure: string; at: Point };

export type Sketch = { shapes: readonly Shape[]; callouts: readonly Callout[] };

export type DrawnShape = { d: string; fill: Wash | null; stroke: Stroke | null };
export type DrawnLabel = { text: string; x: number; y: number; anchor: "start" | "end"; leader: string };
export type Drawing = {
  width: number;
  height: number;
  shapes: readonly DrawnShape[];
  labels: readonly DrawnLabel[];
};

export type Box = { x: number; y: number; width: number; height: number };

export function filled(fill: Wash, path: Path, stroke?: Stroke): Shape {
  return stroke === undefined ? { path, fill } : { path, fill, stroke };
}

export function stroked(stroke: Stroke, ...paths: readonly Path[]): Shape {
  return { path: paths.flat(), stroke };
}

export function boundsOf(shapes: readonly Shape[]): Box {
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  for (const shape of shapes) {
    for (const [x, y] of pathPoints(shape.path)) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
    }
  }
  if (!(right >= left && bottom >= top)) return { x: 0, y: 0, width: 0, height: 0 };
  return { x: left, y: top, width: right - left, height: bottom - top };
}

/** Shapes of the right half, and the same mirrored about the middle line. */
export function bothSides(shapes: readonly Shape[]): Shape[] {
  return [
    ...shapes,
    ...shapes.map((shape) => ({ ...shape, path: mapPath(shape.path, ([x, y]) => [-x, y]) })),
  ];
}

export function moveSketch(sketch: Sketch, move: (point: Point) => Point): Sketch {
  return {
    shapes: sketch.shapes.map((shape) => ({ ...shape, path: mapPath(shape.path, move) })),
    callouts: sketch.callouts.map((callout) => ({ ...callout, at: move(callout.at) })),
  };
}

function scaleInto(bounds: Box, into: Box): number {
  return Math.min(into.width / (bounds.width || 1), into.height / (bounds.height || 1));
}

/** Scales without distortion so that what has these bounds lies in the middle of a box. */
function fitting(bounds: Box, into: Box): (point: Point) => Point {
  const scale = scaleInto(bounds, into);
  const left = into.x + (into.width - bounds.width * scale) / 2;
  const top = into.y + (into.height - bounds.height * scale) / 2;
  return ([x, y]) => [left + (x - bounds.x) * scale, top + (y - bounds.y) * scale];
}

export function fitSketch(sketch: Sketch, into: Box): Sketch {
  return moveSketch(sketch, fitting(boundsOf(sketch.shapes), into));
}

const finerStroke: Partial<Record<Stroke, Stroke>> = { outline: "line", line: "fine", fine: "hatch" };

/** The same sketch with thinner lines, for a part drawn small inside a larger one. */
export function finer(sketch: Sketch): Sketch {
  return {
    callouts: sketch.callouts,
    shapes: sketch.shapes.map((shape) =>
      shape.stroke === undefined ? shape : { ...shape, stroke: finerStroke[shape.stroke] ?? shape.stroke },
    ),
  };
}

export function turnSketch(sketch: Sketch, angle: number): Sketch {
  const cosine = Math.cos(angle);
  const sine = Math.sin(angle);
  return moveSketch(sketch, ([x, y]) => [x * cosine - y * sine, x * sine + y * cosine]);
}

export function mirrorSketch(sketch: Sketch): Sketch {
  return moveSketch(sketch, ([x, y]) => [-x, y]);
}

export function mergeSketches(...sketches: readonly Sketch[]): Sketch {
  return {
    shapes: sketches.flatMap((sketch) => sketch.shapes),
    callouts: sketches.flatMap((sketch) => sketch.callouts),
  };
}

const edge = 10;
const labelHeight = 13;
const labelGap = 9;
/** Half the height of a small letter: a leader meets its name at mid height. */
const labelMiddle = 2.8;

/** The room that a name takes, reckoned from its letters at nine units of type. */
export function labelWidth(text: string): number {
  return text.length * 4.4;
}

/** Places pushed apart until each keeps its distance to the one before, each inside its own span. */
function spread(
  wanted: readonly number[],
  distances: readonly number[],
  spans: readonly (readonly [low: number, high: number])[],
): number[] {
  const held = (place: number, index: number): number => {
    const [low, high] = spans[index] ?? [0, 0];
    return Math.min(Math.max(place, low), high);
  };
  const places = wanted.map(held);
  for (let pass = 0; pass < 80; pass += 1) {
    for (let index = 1; index < places.length; index += 1) {
      const before = places[index - 1] ?? 0;
      const here = places[index] ?? 0;
      const missing = (distances[index] ?? 0) - (here - before);
      if (missing > 0) {
        places[index - 1] = held(before - missing / 2, index - 1);
        places[index] = held(here + missing / 2, index);
      }
    }
  }
  for (let index = places.length - 1; index > 0; index -= 1) {
    const room = (places[index] ?? 0) - (distances[index] ?? 0);
    places[index - 1] = Math.min(places[index - 1] ?? 0, room);
  }
  return places;
}

type Name = { text: string; at: Point };

const shortForms: Readonly<Record<string, string>> = {
  arteria: "a.",
  arteriae: "aa.",
  articulatio: "art.",
  glandula: "gl.",
  ligamentum: "lig.",
  ligamenta: "ligg.",
  musculus: "m.",
  musculi: "mm.",
  nervus: "n.",
  nervi: "nn.",
  processus: "proc.",
  ramus: "r.",
  rami: "rr.",
  vena: "v.",
  venae: "vv.",
};

/** A Latin name as plates have it: "a. radialis". */
export function shortName(latin: string): string {
  const [first = "", ...rest] = latin.split(" ");
  const short = shortForms[first];
  return short === undefined || rest.length === 0 ? latin : [short, ...rest].join(" ");
}

const mostNames = 7;
/** A longer name would press the drawing together. */
const longestName = 34;

/** The callouts whose structure has a name, the first of a sketch before the later ones. */
function namedCallouts(callouts: readonly Callout[], names: ReadonlyMap<string, string>): Name[] {
  const seen = new Set<string>();
  return callouts
    .flatMap(({ structure, at }): Name[] => {
      const latin = names.get(structure);
      if (latin === undefined || latin === "" || seen.has(structure)) return [];
      seen.add(structure);
      const text = shortName(latin);
      return text.length > longestName ? [] : [{ text, at }];
    })
    .slice(0, mostNames);
}

/** Names at one side, in the order of what they point at. */
function columnOfLabels(callouts: readonly Name[], side: "left" | "right", width: number): DrawnLabel[] {
  const sorted = [...callouts].sort((a, b) => a.at[1] - b.at[1]);
  const places = spread(
    sorted.map((callout) => callout.at[1]),
    sorted.map(() => labelHeight),
    sorted.map(() => [14, plateHeight - 10] as const),
  );
  const textX = side === "left" ? width : plateWidth - width;
  const leaderX = side === "left" ? textX + 3 : textX - 3;
  return sorted.map((callout, index) => {
    const y = places[index] ?? callout.at[1];
    return {
      text: callout.text,
      x: textX,
      y: y + labelMiddle,
      anchor: side === "left" ? "end" : "start",
      leader: pathData(straight([[leaderX, y], callout.at])),
    };
  });
}

/** The first names that find room beside one another. */
function inOneRow(names: readonly Name[]): Name[] {
  let room = plateWidth - 2 * edge;
  return names.filter(({ text }) => {
    const width = labelWidth(text) + labelGap;
    if (width > room + labelGap) return false;
    room -= width;
    return true;
  });
}

/** Names in a row above or below a sketch that is wider than the plate. */
function rowOfLabels(callouts: readonly Name[], side: "above" | "below"): DrawnLabel[] {
  const sorted = [...callouts].sort((a, b) => a.at[0] - b.at[0]);
  const halves = sorted.map((callout) => labelWidth(callout.text) / 2);
  const middles = spread(
    sorted.map((callout) => callout.at[0]),
    halves.map((half, index) => half + (halves[index - 1] ?? 0) + labelGap),
    halves.map((half) => [edge + half, plateWidth - edge - half] as const),
  );
  const y = side === "above" ? 17 : plateHeight - 11;
  return sorted.map((callout, index) => {
    const half = halves[index] ?? 0;
    const middle = middles[index] ?? callout.at[0];
    return {
      text: callout.text,
      x: middle - half,
      y,
      anchor: "start",
      leader: pathData(straight([[middle, side === "above" ? y + 3.5 : y - 8.5], callout.at])),
    };
  });
}

function drawn(sketch: Pick<Sketch, "shapes">, labels: readonly DrawnLabel[]): Drawing {
  return {
    width: plateWidth,
    height: plateHeight,
    shapes: sketch.shapes.map((shape) => ({
      d: pathData(shape.path),
      fill: shape.fill ?? null,
      stroke: shape.stroke ?? null,
    })),
    labels,
  };
}

/** Between a column of names and the sketch. */
const clear = 12;

function columnWidth(callouts: readonly Name[]): number {
  return callouts.length === 0
    ? edge
    : edge + Math.max(...callouts.map((callout) => labelWidth(callout.text)));
}

/** @param names Latin names by structure; null for a plate without names */
export function setOnPlate(sketch: Sketch, names: ReadonlyMap<string, string> | null): Drawing {
  const full: Box = { x: edge, y: edge, width: plateWidth - 2 * edge, height: plateHeight - 2 * edge };
  const named = names === null ? [] : namedCallouts(sketch.callouts, names);
  if (named.length === 0) return drawn(fitSketch(sketch, full), []);
  const bounds = boundsOf(sketch.shapes);
  const axis = bounds.x + bounds.width / 2;
  const left = columnWidth(named.filter(({ at }) => at[0] < axis));
  const right = columnWidth(named.filter(({ at }) => at[0] >= axis));
  const betweenColumns: Box = {
    x: left + clear,
    y: edge,
    width: plateWidth - left - right - 2 * clear,
    height: full.height,
  };
  const betweenRows: Box = { x: edge, y: 34, width: full.width, height: plateHeight - 68 };
  const inRows = scaleInto(bounds, betweenRows) > scaleInto(bounds, betweenColumns) * 1.04;
  const move = fitting(bounds, inRows ? betweenRows : betweenColumns);
  const fitted = moveSketch({ shapes: sketch.shapes, callouts: [] }, move);
  const placed = named.map(({ text, at }): Name & { onLeft: boolean } => ({
    text,
    at: move(at),
    onLeft: at[0] < axis,
  }));
  if (inRows) {
    const byHeight = [...placed].sort((a, b) => a.at[1] - b.at[1]);
    const above = byHeight.slice(0, Math.ceil(byHeight.length / 2));
    const below = byHeight.slice(above.length);
    const inOrder = (row: readonly Name[]): Name[] => placed.filter((name) => row.includes(name));
    return drawn(fitted, [
      ...rowOfLabels(inOneRow(inOrder(above)), "above"),
      ...rowOfLabels(inOneRow(inOrder(below)), "below"),
    ]);
  }
  return drawn(fitted, [
    ...columnOfLabels(
      placed.filter(({ onLeft }) => onLeft),
      "left",
      left,
    ),
    ...columnOfLabels(
      placed.filter(({ onLeft }) => !onLeft),
      "right",
      right,
    ),
  ]);
}
