/**
 * Drawings on papers: paths in units of their own, as wide and high as they say, y
 * downwards. Straight lines and cubic curves only, which every printer knows; round
 * things are made of four curves. A drawing is scaled to its place and never cut.
 */
import type { Ink } from "#lib/papers/sheet.ts";

export type PathStep =
  | readonly ["M" | "L", x: number, y: number]
  | readonly ["C", x1: number, y1: number, x2: number, y2: number, x: number, y: number]
  | readonly ["Z"];
export type PathPoint = readonly [x: number, y: number];

export type DrawnPath = {
  steps: readonly PathStep[];
  fill?: Ink;
  /** Round ends and corners are those of a pen. */
  stroke?: { ink: Ink; width: number; isRound?: boolean };
};
export type VectorDrawing = { width: number; height: number; paths: readonly DrawnPath[] };

export type Picture = { mime: "image/png" | "image/jpeg"; bytes: Uint8Array };

/** A drawing or a picture with its size on the sheet; who cannot see it is told the alternative. */
export type Figure = {
  image: VectorDrawing | Picture;
  widthPt: number;
  heightPt: number;
  alternative: string;
};

export const isPicture = (image: VectorDrawing | Picture): image is Picture => "bytes" in image;

/** Straight lines through the points. */
export function polyline(points: readonly PathPoint[]): PathStep[] {
  return points.map(([x, y], index) => [index === 0 ? "M" : "L", x, y] as const);
}

export function polygon(points: readonly PathPoint[]): PathStep[] {
  return [...polyline(points), ["Z"]];
}

export function rectangle(x: number, y: number, width: number, height: number): PathStep[] {
  return polygon([
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ]);
}

/** How far the handles of a quarter reach, in radii: the usual figure for four curves. */
const QUARTER = 0.5523;

export function ellipse(x: number, y: number, radiusX: number, radiusY: number): PathStep[] {
  const [handleX, handleY] = [radiusX * QUARTER, radiusY * QUARTER];
  return [
    ["M", x + radiusX, y],
    ["C", x + radiusX, y + handleY, x + handleX, y + radiusY, x, y + radiusY],
    ["C", x - handleX, y + radiusY, x - radiusX, y + handleY, x - radiusX, y],
    ["C", x - radiusX, y - handleY, x - handleX, y - radiusY, x, y - radiusY],
    ["C", x + handleX, y - radiusY, x + radiusX, y - handleY, x + radiusX, y],
    ["Z"],
  ];
}

export const circle = (x: number, y: number, radius: number): PathStep[] => ellipse(x, y, radius, radius);

const figuresOf: Readonly<Record<string, number>> = { M: 2, L: 2, C: 6, Z: 0 };

/** The path that "M 1 2 L 3 4 C … Z" writes, absolute steps only. @throws {RangeError} for any other step */
export function readPath(written: string): PathStep[] {
  const steps: PathStep[] = [];
  for (const [, letter = "", rest = ""] of written.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const count = figuresOf[letter];
    const figures = (rest.match(/-?\d*\.?\d+(?:e-?\d+)?/g) ?? []).map(Number);
    if (count === undefined || (count === 0 ? figures.length > 0 : figures.length % count !== 0))
      throw new RangeError(`A path of a paper has no step ${letter}${rest}.`);
    if (count === 0) steps.push(["Z"]);
    for (let from = 0; count > 0 && from < figures.length; from += count) {
      const step = letter === "M" && from > 0 ? "L" : letter;
      steps.push([step, ...figures.slice(from, from + count)] as unknown as PathStep);
    }
  }
  return steps;
}

/** The point that each step ends at or bends towards. */
export function pointsOf(steps: readonly PathStep[]): PathPoint[] {
  return steps.flatMap((step): PathPoint[] => {
    if (step[0] === "Z") return [];
    if (step[0] !== "C") return [[step[1], step[2]]];
    return [
      [step[1], step[2]],
      [step[3], step[4]],
      [step[5], step[6]],
    ];
  });
}

/** A figure of a drawing, as high as asked. */
export function figureOf(image: VectorDrawing, heightPt: number, alternative: string): Figure {
  return { image, heightPt, widthPt: (image.width / image.height) * heightPt, alternative };
}
