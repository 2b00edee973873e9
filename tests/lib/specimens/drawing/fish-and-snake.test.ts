import { describe, expect, it } from "vitest";
import { drawFish, drawSnake } from "#lib/specimens/drawing/fish-and-snake.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates, namedBy } from "./looking.ts";

describePlates("fish and snake", {
  "a fish": (vary) => drawFish(vary, false),
  "a fish's skeleton": (vary) => drawFish(vary, true),
  "a snake": (vary) => drawSnake(vary, false),
  "a snake's skeleton": (vary) => drawSnake(vary, true),
});

describe("a fish", () => {
  it("shows a skeleton that the whole animal hides", () => {
    expect(namedBy(drawFish(variation("AN 1"), true))).toContain("vertebral-column");
    expect(namedBy(drawFish(variation("AN 1"), false))).toEqual([]);
  });
});
