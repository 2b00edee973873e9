import { describe, expect, it } from "vitest";
import {
  drawBowel,
  drawKidney,
  drawKidneyHalved,
  drawLiver,
  drawPancreas,
  drawSpleen,
  drawStomach,
} from "#lib/specimens/drawing/abdomen-organs.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates, namedBy } from "./looking.ts";

describePlates("organs of the belly", {
  drawLiver,
  drawStomach,
  "a kidney": (vary) => drawKidney(vary, false),
  "a kidney with its gland": (vary) => drawKidney(vary, true),
  drawKidneyHalved,
  drawSpleen,
  drawPancreas,
  "the colon": (vary) => drawBowel(vary, false),
  "the bowel": (vary) => drawBowel(vary, true),
});

describe("an organ of the belly", () => {
  it("has beside it only what is asked for", () => {
    expect(namedBy(drawBowel(variation("AN 1"), true))).toContain("ileum");
    expect(namedBy(drawBowel(variation("AN 1"), false))).not.toContain("ileum");
    const shapes = (withGland: boolean) => drawKidney(variation("AN 1"), withGland).shapes.length;
    expect(shapes(true)).toBe(shapes(false) + 1);
  });
});
