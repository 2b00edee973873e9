import { describe, expect, it } from "vitest";
import { drawSlides } from "#lib/specimens/drawing/slide.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates } from "./looking.ts";

describePlates("slides", {
  gland: (vary) => drawSlides(vary, "gland"),
  muscle: (vary) => drawSlides(vary, "muscle"),
  "nerve cells": (vary) => drawSlides(vary, "nerve cells"),
  bone: (vary) => drawSlides(vary, "bone"),
  kidney: (vary) => drawSlides(vary, "kidney"),
  "spinal cord": (vary) => drawSlides(vary, "spinal cord"),
  eyeball: (vary) => drawSlides(vary, "eyeball"),
  "of nothing known": (vary) => drawSlides(vary, null),
  "three of a kidney": (vary) => drawSlides(vary, "kidney", 3),
});

describe("a slide of nothing known", () => {
  it("has a broken outline and no roundel", () => {
    const unknown = drawSlides(variation("AN 1"), null);
    expect(unknown.shapes.filter(({ stroke }) => stroke === "hidden")).toHaveLength(1);
    expect(unknown.shapes.length).toBeLessThan(8);
  });

  it("lies on as many as there are, up to three", () => {
    const glasses = (count: number) =>
      drawSlides(variation("AN 1"), "bone", count).shapes.filter(({ fill }) => fill === "glass").length;
    expect([1, 2, 3, 6].map(glasses)).toEqual([1, 2, 3, 3]);
  });
});
