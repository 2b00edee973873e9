import { describe, expect, it } from "vitest";
import type { DrawingRequest } from "#lib/specimens/drawing/choose.ts";
import { mirrorSketch } from "#lib/specimens/drawing/plate.ts";
import type { SheetPlace } from "#lib/specimens/drawing/sheet-place.ts";
import { drawSheet } from "#lib/specimens/drawing/sheets.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates, namedBy } from "./looking.ts";

const request = (title: string, more: Partial<DrawingRequest> = {}): DrawingRequest => ({
  kind: "sheet",
  preparation: "epoxy sheet",
  species: "Homo sapiens",
  title,
  latinTitle: "",
  side: "right",
  shown: [],
  sheet: null,
  seed: "AN 1",
  ...more,
});
const trunk = (vertebra: number | null, imagedFace = "lower"): SheetPlace => ({
  code: "SR 03",
  title: "Trunk, transverse sheets",
  plane: "transverse",
  imagedFace,
  number: 1,
  vertebra,
  fromMedianMm: null,
});
const head = (fromMedianMm: number | null, imagedFace = "left"): SheetPlace => ({
  ...trunk(null, imagedFace),
  title: "Head, sagittal sheets",
  plane: "sagittal",
  fromMedianMm,
});
const drawn = (sheet: SheetPlace) => drawSheet(variation("SR 03"), request("", { sheet }));
const horse = { species: "Equus caballus" };

describePlates("a sheet", {
  "at the heart": (vary) => drawSheet(vary, request("", { sheet: trunk(14) })),
  "at the bladder": (vary) => drawSheet(vary, request("", { sheet: trunk(27) })),
  "of no known level": (vary) => drawSheet(vary, request("", { sheet: trunk(null) })),
  "of a head in the middle": (vary) => drawSheet(vary, request("", { sheet: head(0) })),
  "of a head at the eye": (vary) => drawSheet(vary, request("", { sheet: head(-34) })),
  "at the level of the eyes": (vary) =>
    drawSheet(vary, request("Transverse sheet of a head at the level of the eyes")),
  "of a brain": (vary) => drawSheet(vary, request("Coronal sheet of a brain through the mammillary bodies")),
  "of a foot": (vary) => drawSheet(vary, request("Sagittal sheet of a right foot")),
  "of a horse's digit": (vary) => drawSheet(vary, request("Horse, sagittal sheet of the digit", horse)),
});

describe("a sheet", () => {
  it("shows what lies at its level", () => {
    expect(namedBy(drawn(trunk(14)))).toContain("heart");
    expect(namedBy(drawn(trunk(20)))).toEqual(expect.arrayContaining(["kidney", "liver"]));
    expect(namedBy(drawn(trunk(20)))).not.toContain("heart");
    expect(namedBy(drawn(head(0)))).toContain("corpus-callosum");
    expect(namedBy(drawn(head(34)))).toContain("eyeball");
  });

  it("is a broken outline without a level", () => {
    for (const sheet of [trunk(null), head(null)]) {
      const { shapes, callouts } = drawn(sheet);
      expect(callouts).toEqual([]);
      expect(shapes.filter(({ stroke }) => stroke === "hidden")).toHaveLength(1);
    }
    expect(namedBy(drawSheet(variation("AN 1"), request("Transverse sheet of a head")))).toEqual([]);
  });

  it("is turned to the face that was imaged", () => {
    const names = (sketch: ReturnType<typeof drawn>) =>
      Object.fromEntries(sketch.callouts.map(({ structure, at }) => [structure, at[0]]));
    for (const [face, other] of [
      [trunk(20), trunk(20, "upper")],
      [head(4), head(4, "right")],
    ] as const)
      expect(names(drawn(other))).toEqual(names(mirrorSketch(drawn(face))));
  });
});
