import { describe, expect, it } from "vitest";
import { drawEquineFoot } from "#lib/specimens/drawing/animal-limb.ts";
import { drawnUnderSeeds, strayPoints, textOf } from "./looking.ts";

const plates = { drawEquineFoot };

describe("the equine foot", () => {
  it.each(Object.entries(plates))("%s lies inside the view box under every seed", (_, draw) => {
    for (const drawing of drawnUnderSeeds(draw)) {
      expect(drawing.shapes.length).toBeGreaterThan(3);
      expect(strayPoints(drawing)).toEqual([]);
    }
  });

  it.each(Object.entries(plates))("%s is the same for one seed and another for another", (_, draw) => {
    const once = drawnUnderSeeds(draw).map(textOf);
    expect(drawnUnderSeeds(draw).map(textOf)).toEqual(once);
    expect(new Set(once).size).toBe(once.length);
  });
});
