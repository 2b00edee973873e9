import { describe, expect, it } from "vitest";
import { animals, drawAnimal } from "#lib/specimens/drawing/animals.ts";
import { animalViews } from "#lib/specimens/drawing/fish-and-snake.ts";
import { drawnUnderSeeds, strayPoints, textOf } from "./looking.ts";

const cases = animals.flatMap((animal) => animalViews.map((view) => ({ animal, view })));

describe("an animal", () => {
  it.each(cases)("$animal lies inside the view box as $view", ({ animal, view }) => {
    for (const drawing of drawnUnderSeeds((vary) => drawAnimal(vary, animal, view))) {
      expect(strayPoints(drawing)).toEqual([]);
    }
  });

  it("is told from every other animal and view, and stays the same", () => {
    const all = () =>
      cases.map(({ animal, view }) =>
        drawnUnderSeeds((vary) => drawAnimal(vary, animal, view))
          .map(textOf)
          .join(),
      );
    const once = all();
    expect(all()).toEqual(once);
    expect(new Set(once).size).toBe(
      cases.length - 1, // a snake shows its skin whether muscles or organs are asked for
    );
  });
});
