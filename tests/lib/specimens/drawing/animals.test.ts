import { describe, expect, it } from "vitest";
import { animals, animalViews, drawAnimal } from "#lib/specimens/drawing/animals.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates, namedBy } from "./looking.ts";

const flesh = animalViews.filter((view) => view !== "skeleton");
const fleshed = animals.filter((animal) => !["falcon", "fish", "snake"].includes(animal));

describePlates(
  "an animal",
  Object.fromEntries([
    ...animals.map((animal) => [
      `the skeleton of a ${animal}`,
      (vary: ReturnType<typeof variation>) => drawAnimal(vary, animal, "skeleton"),
    ]),
    ...fleshed.flatMap((animal) =>
      flesh.map((view) => [
        `a ${animal}, ${view}`,
        (vary: ReturnType<typeof variation>) => drawAnimal(vary, animal, view),
      ]),
    ),
  ]),
);

describe("an animal", () => {
  it("names muscles and arteries only where they are drawn", () => {
    const names = (view: (typeof animalViews)[number]) => namedBy(drawAnimal(variation("AN 1"), "cat", view));
    expect(names("plain")).toEqual([]);
    expect(names("muscles")).not.toContain("femoral-artery");
    expect(names("muscles and arteries")).toContain("femoral-artery");
    expect(names("skeleton")).toContain("scapula");
  });
});
