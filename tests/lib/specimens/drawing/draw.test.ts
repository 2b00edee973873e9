import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawSpecimen } from "#lib/specimens/drawing/draw.ts";
import { strayPoints, textOf } from "./looking.ts";

const kinds = [
  "whole body",
  "body region",
  "organ",
  "organ system",
  "sheet",
  "skeleton or bone",
  "cast",
  "fluid-preserved specimen",
  "histological slide",
] as const;

describe("drawing a specimen", () => {
  it("gives something inside the view box for any facts", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.constantFrom("Heart", "Upper limb", "Head", "Femur", "Kidney", "Trunk", "Liver vessels", "?", ""),
        fc.constantFrom("Homo sapiens", "Equus caballus", "Columba livia", "Ambystoma mexicanum", ""),
        fc.constantFrom("left", "right", ""),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.string(),
        fc.boolean(),
        (kind, title, species, side, level, seed, named) => {
          const drawing = drawSpecimen({ kind, title, species, side, level, seed, named });
          expect(drawing.shapes.length).toBeGreaterThan(2);
          expect(strayPoints(drawing)).toEqual([]);
        },
      ),
      { numRuns: 120 },
    );
  });

  it("is the same for the same facts, and differs between kinds", () => {
    const titles: Partial<Record<(typeof kinds)[number], string>> = {
      "whole body": "Muscles",
      "body region": "Upper limb",
    };
    const all = () =>
      kinds.map((kind) => textOf(drawSpecimen({ kind, title: titles[kind] ?? "Heart", seed: "AN 1" })));
    const once = all();
    expect(all()).toEqual(once);
    expect(new Set(once).size).toBe(kinds.length);
  });

  it("mirrors a left specimen, and leaves the heart where it is", () => {
    const side = (title: string, which: string) =>
      textOf(drawSpecimen({ kind: "organ", title, side: which, seed: "AN 1" }));
    expect(side("Kidney", "left")).not.toBe(side("Kidney", "right"));
    expect(side("Heart", "left")).toBe(side("Heart", "right"));
  });

  it("puts what is kept wet into its jar", () => {
    const dry = drawSpecimen({ kind: "organ", title: "Heart", seed: "AN 1" });
    const wet = drawSpecimen({ kind: "organ", title: "Heart", seed: "AN 1", preparation: "fluid-preserved" });
    expect(dry.shapes.some((shape) => shape.fill === "fluid")).toBe(false);
    expect(wet.shapes.some((shape) => shape.fill === "fluid")).toBe(true);
  });

  it("gives all sheets of a series one pane at one scale", () => {
    const pane = (level: number) =>
      drawSpecimen({ kind: "sheet", title: "Trunk", seed: "SR 03", level }).shapes[0]?.d;
    expect(pane(0.1)).toBe(pane(0.6));
    expect(pane(0.1)).toBe(pane(0.99));
  });

  it.each([Number.NaN, -0.01, 1.01])("refuses a level of %s", (level) => {
    expect(() => drawSpecimen({ kind: "sheet", title: "Trunk", seed: "SR 03", level })).toThrow(RangeError);
  });
});
