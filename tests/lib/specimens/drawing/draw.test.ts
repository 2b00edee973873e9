import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { DrawingRequest } from "#lib/specimens/drawing/choose.ts";
import { drawSpecimen } from "#lib/specimens/drawing/draw.ts";
import type { SheetPlace } from "#lib/specimens/drawing/sheet-place.ts";
import { preparations, specimenKinds, specimenSides } from "#lib/specimens/schema.ts";
import { latinNames, strayPoints, textOf } from "./looking.ts";

const plain: DrawingRequest = {
  kind: "organ",
  preparation: "silicone-impregnated",
  species: "Homo sapiens",
  title: "Heart",
  latinTitle: "",
  side: "median",
  shown: [],
  sheet: null,
  seed: "AN 1",
};
const drawn = (facts: Partial<DrawingRequest>, named = false) => drawSpecimen({ ...plain, ...facts }, named);
const everything = [...latinNames].map(([structure, latin]) => ({ structure, latin }));

const place = (vertebra: number | null): SheetPlace => ({
  code: "SR 03",
  title: "Trunk, transverse sheets",
  plane: "transverse",
  imagedFace: "lower",
  number: 67,
  vertebra,
  fromMedianMm: null,
});
const sheet = { kind: "sheet", preparation: "epoxy sheet" } as const;

describe("drawing a specimen", () => {
  it("gives something inside the view box for any facts", () => {
    fc.assert(
      fc.property(
        fc.record({
          kind: fc.constantFrom(...specimenKinds),
          preparation: fc.constantFrom(...preparations),
          title: fc.constantFrom(
            "Heart",
            "Right upper limb",
            "Femur",
            "Kidney, halved",
            "Vessels of a liver",
            "?",
            "",
          ),
          latinTitle: fc.constantFrom("", "Pulmo sinister", "Medulla spinalis"),
          species: fc.constantFrom(
            "Homo sapiens",
            "Equus caballus",
            "Columba livia",
            "Ambystoma mexicanum",
            "",
          ),
          side: fc.constantFrom(...specimenSides),
          seed: fc.string(),
          sheet: fc.option(fc.double({ min: 0, max: 40, noNaN: true }).map(place)),
          shown: fc.constantFrom([], everything),
        }),
        fc.boolean(),
        (facts, named) => {
          const drawing = drawSpecimen(facts, named);
          expect(drawing.shapes.length).toBeGreaterThan(2);
          expect(strayPoints(drawing)).toEqual([]);
        },
      ),
      { numRuns: 150 },
    );
  });

  it("is the same for the same facts and another for another specimen", () => {
    expect(textOf(drawn({}))).toBe(textOf(drawn({})));
    expect(textOf(drawn({ seed: "AN 2" }))).not.toBe(textOf(drawn({})));
  });

  it.each([
    ["Kidney", "organ"],
    ["Upper limb", "body region"],
    ["Lower limb", "body region"],
    ["Femur", "skeleton or bone"],
  ])("shows a left %s as the mirror of the right one", (title, kind) => {
    const [left, right] = ["left", "right"].map((side) => drawn({ title, kind, side }));
    const widths = [left, right].map((drawing) =>
      drawing?.shapes.flatMap(({ d }) => d.match(/-?[\d.]+/g)?.map(Number) ?? []),
    );
    const mirrored = widths[0]?.map((number, index) => (index % 2 === 0 ? 320 - number : number)) ?? [];
    expect(mirrored.every((number, index) => Math.abs(number - (widths[1]?.[index] ?? 0)) < 0.11)).toBe(true);
  });

  it("leaves a heart where it is", () => {
    expect(textOf(drawn({ side: "left" }))).toBe(textOf(drawn({ side: "right" })));
  });

  it("draws a left lung with its own parts, not as a mirrored right one", () => {
    const shown = everything;
    const names = (side: string) =>
      drawn({ title: `${side} lung`, side, shown }, true).labels.map(({ text }) => text);
    expect(names("left")).toContain("bronchus principalis sinister");
    expect(names("right")).toContain("a. pulmonalis dextra");
  });

  it("names only what is recorded as shown", () => {
    expect(drawn({ shown: everything }).labels).toEqual([]);
    expect(drawn({}, true).labels).toEqual([]);
    const shown = [{ structure: "arch-of-aorta", latin: "arcus aortae" }];
    expect(drawn({ shown }, true).labels.map(({ text }) => text)).toEqual(["arcus aortae"]);
  });

  it("puts what is kept wet into its jar", () => {
    const holdsFluid = (facts: Partial<DrawingRequest>) =>
      drawn(facts).shapes.some((shape) => shape.fill === "fluid");
    expect(holdsFluid({})).toBe(false);
    expect(holdsFluid({ preparation: "fluid-preserved" })).toBe(true);
    expect(holdsFluid({ preparation: "fluid-preserved", title: "Something" })).toBe(true);
  });

  it("draws a sheet by its series, number and level, not by its own number, title or side", () => {
    const one = drawn({ ...sheet, sheet: place(20), seed: "SR 03.067", title: "Sheet 67", side: "both" });
    const other = drawn({
      ...sheet,
      sheet: place(20),
      seed: "SR 03",
      title: "Head of the pancreas",
      side: "left",
    });
    expect(textOf(other)).toBe(textOf(one));
    expect(textOf(drawn({ ...sheet, sheet: place(14) }))).not.toBe(textOf(one));
  });

  it("gives all sheets of a series one pane at one scale", () => {
    const pane = (vertebra: number | null) => drawn({ ...sheet, sheet: place(vertebra) }).shapes[0]?.d;
    expect(pane(10)).toBe(pane(22));
    expect(pane(10)).toBe(pane(29));
    expect(pane(10)).toBe(pane(null));
  });
});
