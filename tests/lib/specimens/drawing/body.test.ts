import { describe, expect, it } from "vitest";
import { drawBody, systems } from "#lib/specimens/drawing/body.ts";
import { drawnUnderSeeds, strayPoints, textOf } from "./looking.ts";

describe("the whole body", () => {
  it.each(systems)("lies inside the view box with its %s", (system) => {
    for (const drawing of drawnUnderSeeds((vary) => drawBody(vary, system)))
      expect(strayPoints(drawing)).toEqual([]);
  });

  it("is the same for one seed, and another for each system and seed", () => {
    const all = () =>
      systems.flatMap((system) => drawnUnderSeeds((vary) => drawBody(vary, system)).map(textOf));
    const once = all();
    expect(all()).toEqual(once);
    expect(new Set(once).size).toBe(once.length);
  });
});
