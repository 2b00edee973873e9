import { describe, expect, it } from "vitest";
import { drawHalfPelvis } from "#lib/specimens/drawing/half-pelvis.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates, namedBy } from "./looking.ts";

describePlates("half a pelvis", {
  "of a woman": (vary) => drawHalfPelvis(vary, "female"),
  "of a man": (vary) => drawHalfPelvis(vary, "male"),
});

describe("half a pelvis", () => {
  it("shows the organs of its sex", () => {
    expect(namedBy(drawHalfPelvis(variation("AN 1"), "female"))).toEqual(
      expect.arrayContaining(["uterus", "ovary"]),
    );
    expect(namedBy(drawHalfPelvis(variation("AN 1"), "male"))).toEqual(
      expect.arrayContaining(["prostate", "testis"]),
    );
  });
});
