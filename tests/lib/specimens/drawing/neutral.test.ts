import { describe, expect, it } from "vitest";
import {
  drawClosedBox,
  drawOnPlinth,
  drawOnStand,
  drawSomething,
  drawUnderDome,
} from "#lib/specimens/drawing/neutral.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates, namedBy } from "./looking.ts";

describePlates("a plate that says nothing of the specimen", {
  drawOnStand,
  drawUnderDome,
  drawOnPlinth,
  drawClosedBox,
});

describe("a shape without meaning", () => {
  it("is a broken line and names nothing", () => {
    for (const draw of [drawOnStand, drawUnderDome, drawOnPlinth, drawClosedBox])
      expect(namedBy(draw(variation("AN 1")))).toEqual([]);
    expect(drawSomething(variation("AN 1")).shapes.map(({ fill, stroke }) => [fill, stroke])).toEqual([
      [undefined, "hidden"],
    ]);
  });
});
