import { describe, expect, it } from "vitest";
import { drawSlide, tissues } from "#lib/specimens/drawing/slide.ts";
import { drawnUnderSeeds, strayPoints, textOf } from "./looking.ts";

describe("a slide", () => {
  it.each(tissues)("of %s lies inside the view box", (tissue) => {
    for (const drawing of drawnUnderSeeds((vary) => drawSlide(vary, tissue)))
      expect(strayPoints(drawing)).toEqual([]);
  });

  it("shows another tissue and another section for each seed", () => {
    const all = () =>
      tissues.flatMap((tissue) => drawnUnderSeeds((vary) => drawSlide(vary, tissue)).map(textOf));
    const once = all();
    expect(all()).toEqual(once);
    expect(new Set(once).size).toBe(once.length);
  });
});
