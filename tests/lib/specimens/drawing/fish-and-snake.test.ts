import { describe, expect, it } from "vitest";
import { animalViews, drawFish, drawSnake } from "#lib/specimens/drawing/fish-and-snake.ts";
import { drawnUnderSeeds, strayPoints, textOf } from "./looking.ts";

describe("fish and snake", () => {
  it.each(animalViews)("lie inside the view box as %s", (view) => {
    for (const draw of [drawFish, drawSnake]) {
      const drawings = drawnUnderSeeds((vary) => draw(vary, view));
      for (const drawing of drawings) expect(strayPoints(drawing)).toEqual([]);
      expect(new Set(drawings.map(textOf)).size).toBe(drawings.length);
    }
  });

  it("shows a skeleton that the whole animal hides", () => {
    const named = (view: "skeleton" | "muscles") =>
      drawnUnderSeeds((vary) => drawFish(vary, view))[0]?.labels.map((label) => label.text);
    expect(named("skeleton")).toContain("columna vertebralis");
    expect(named("muscles")).not.toContain("columna vertebralis");
  });
});
