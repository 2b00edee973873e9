import { describe, expect, it } from "vitest";
import { castOrgans, drawCast } from "#lib/specimens/drawing/cast.ts";
import { drawnUnderSeeds, strayPoints, textOf } from "./looking.ts";

describe("a corrosion cast", () => {
  it.each(castOrgans)("of %s lies inside the view box and branches", (organ) => {
    for (const drawing of drawnUnderSeeds((vary) => drawCast(vary, organ))) {
      expect(strayPoints(drawing)).toEqual([]);
      const branches = drawing.shapes.map((shape) => shape.d.split("M").length - 1);
      expect(branches.reduce((sum, count) => sum + count, 0)).toBeGreaterThan(60);
    }
  });

  it("grows the same tree from one seed and another from another", () => {
    const all = () =>
      castOrgans.flatMap((organ) => drawnUnderSeeds((vary) => drawCast(vary, organ)).map(textOf));
    const once = all();
    expect(all()).toEqual(once);
    expect(new Set(once).size).toBe(once.length);
  });
});
