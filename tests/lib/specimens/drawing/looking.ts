/**
 * What the tests of the plates look at: whether a drawing lies inside its view box,
 * and the text by which two drawings are told apart.
 */
import type { Drawing, Sketch } from "#lib/specimens/drawing/plate.ts";
import { setOnPlate } from "#lib/specimens/drawing/plate.ts";
import { type Variation, variation } from "#lib/specimens/drawing/variation.ts";

export const seeds = ["AN 2019.0142", "AN 2021.0007", "SR 03.044", "", "ö"] as const;

/** Every number pair of a path, whatever its letters. */
export function coordinates(d: string): [number, number][] {
  const numbers = d.match(/-?\d+(?:\.\d+)?/g)?.map(Number) ?? [];
  return Array.from({ length: Math.floor(numbers.length / 2) }, (_, index) => [
    numbers[index * 2] ?? Number.NaN,
    numbers[index * 2 + 1] ?? Number.NaN,
  ]);
}

/** Points that lie outside the view box, or are no numbers. */
export function strayPoints(drawing: Drawing): [number, number][] {
  const paths = [...drawing.shapes.map((shape) => shape.d), ...drawing.labels.map((label) => label.leader)];
  return paths
    .flatMap(coordinates)
    .filter(([x, y]) => !(x >= 0 && x <= drawing.width && y >= 0 && y <= drawing.height));
}

export function textOf(drawing: Drawing): string {
  return JSON.stringify(drawing);
}

/** A sketch's drawing under each of the seeds, with names. */
export function drawnUnderSeeds(draw: (vary: Variation) => Sketch): Drawing[] {
  return seeds.map((seed) => setOnPlate(draw(variation(seed)), true));
}
