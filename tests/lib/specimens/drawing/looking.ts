/**
 * What the tests of the plates look at: whether a drawing lies inside its view box,
 * whether what it can name lies on it and stands in the vocabulary, and the text by
 * which two drawings are told apart.
 */
import fs from "node:fs";
import { describe, expect, it } from "vitest";
import type { Drawing, Sketch } from "#lib/specimens/drawing/plate.ts";
import { fitSketch, plateHeight, plateWidth, setOnPlate } from "#lib/specimens/drawing/plate.ts";
import { type Variation, variation } from "#lib/specimens/drawing/variation.ts";
import { liesOnDrawing } from "#tests/support/on-drawing.ts";

export const seeds = ["AN 2019.0142", "AN 2021.0007", "SR 03.044", "", "ö"] as const;

const folder = new URL("../../../../seed/vocabulary/", import.meta.url);

/** Latin names of the vocabulary by structure. */
export const latinNames: ReadonlyMap<string, string> = new Map(
  fs
    .readdirSync(folder)
    .filter((file) => !file.startsWith("names-"))
    .flatMap((file) => fs.readFileSync(new URL(file, folder), "utf8").trim().split("\n").slice(1))
    .map((line): [string, string] => {
      const [id = "", , latin = ""] = line.split("\t");
      return [id, latin];
    }),
);

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

/** The structures that a sketch can name. */
export function namedBy(sketch: Pick<Sketch, "callouts">): string[] {
  return sketch.callouts.map(({ structure }) => structure);
}

/** A sketch's drawing under each of the seeds, with names. */
export function drawnUnderSeeds(draw: (vary: Variation) => Sketch): Drawing[] {
  return seeds.map((seed) => setOnPlate(draw(variation(seed)), latinNames));
}

/** What a sketch can name that is no word of the vocabulary, or that it does not show where it says. */
export function falseCallouts(sketch: Sketch): string[] {
  const edge = { x: 10, y: 10, width: plateWidth - 20, height: plateHeight - 20 };
  const { callouts } = fitSketch(sketch, edge);
  const drawing = setOnPlate(sketch, null);
  return callouts.flatMap(({ structure, at }) =>
    latinNames.has(structure) && liesOnDrawing(drawing, at, 4) ? [] : [structure],
  );
}

/** What holds for every plate. */
export function describePlates(name: string, plates: Readonly<Record<string, (vary: Variation) => Sketch>>) {
  describe(name, () => {
    const cases = Object.entries(plates);

    it.each(cases)("%s lies inside the view box under every seed", (_, draw) => {
      for (const drawing of drawnUnderSeeds(draw)) {
        expect(drawing.shapes.length).toBeGreaterThan(0);
        expect(strayPoints(drawing)).toEqual([]);
      }
    });

    it.each(cases)("%s is the same for one seed and another for another", (_, draw) => {
      const once = drawnUnderSeeds(draw).map(textOf);
      expect(drawnUnderSeeds(draw).map(textOf)).toEqual(once);
      expect(new Set(once).size).toBe(once.length);
    });

    it.each(cases)("%s names only what it shows, in words of the vocabulary", (_, draw) => {
      for (const seed of seeds) expect(falseCallouts(draw(variation(seed)))).toEqual([]);
    });

    it("tells its plates apart", () => {
      const texts = cases.map(([, draw]) => textOf(setOnPlate(draw(variation("AN 1")), null)));
      expect(new Set(texts).size).toBe(texts.length);
    });
  });
}
