/**
 * The program's schematic drawing of a specimen as a figure on a paper: its outlines
 * in black, its tones as white and one grey, so that a copy of a copy still shows it.
 * The same request gives the same figure.
 */
import { type DrawnPath, type Figure, figureOf, readPath } from "#lib/papers/drawing.ts";
import type { Ink } from "#lib/papers/sheet.ts";
import type { DrawingRequest } from "#lib/specimens/drawing/choose.ts";
import { drawSpecimen } from "#lib/specimens/drawing/draw.ts";
import type { DrawnShape, Stroke, Wash } from "#lib/specimens/drawing/plate.ts";

const dark: ReadonlySet<Wash> = new Set(["deep", "hollow", "artery", "vein", "nerve", "duct", "fluid"]);
const inkOf = (wash: Wash): Ink => (wash === "ink" ? "ink" : dark.has(wash) ? "shade" : "white");

/** As on the screen; in units of the plate. */
const fineStrokes: Readonly<Partial<Record<Stroke, number>>> = {
  outline: 1.25,
  line: 0.8,
  fine: 0.55,
  hatch: 0.42,
  stipple: 0.75,
};
const ownWidth = (stroke: Stroke) => fineStrokes[stroke] ?? (stroke.endsWith("twig") ? 0.6 : 1.1);

/** As a thumbnail a plate is printed without what would run together, and with lines that a printer still shows. */
const smallBelowPt = 60;
const tooFine: ReadonlySet<Stroke> = new Set(["hatch", "stipple", "fine"]);
const leastPrintedPt = 0.25;

function toPath({ d, fill, stroke }: DrawnShape, leastWidth: number): DrawnPath {
  return {
    steps: readPath(d),
    ...(fill === null ? {} : { fill: inkOf(fill) }),
    ...(stroke === null
      ? {}
      : { stroke: { ink: "ink" as const, width: Math.max(leastWidth, ownWidth(stroke)) } }),
  };
}

/** @param alternative what it shows, in the language of the paper */
export function plateFigure(request: DrawingRequest, heightPt: number, alternative: string): Figure {
  const { width, height, shapes } = drawSpecimen(request);
  const isSmall = heightPt < smallBelowPt;
  const leastWidth = isSmall ? (leastPrintedPt * height) / heightPt : 0;
  const paths = shapes
    .filter(({ fill, stroke }) => !isSmall || fill !== null || stroke === null || !tooFine.has(stroke))
    .map((shape) => toPath(shape, leastWidth));
  return figureOf({ width, height, paths }, heightPt, alternative);
}
