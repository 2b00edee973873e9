import { describe, expect, it } from "vitest";
import { drawSpineWithPelvis } from "#lib/specimens/drawing/spine.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates } from "./looking.ts";

describePlates("the spine with the pelvis", {
  drawSpineWithPelvis,
});

describe("the spine", () => {
  it("has its twenty-four vertebrae above the sacrum", () => {
    const blocks = drawSpineWithPelvis(variation("AN 1")).shapes.filter(
      ({ fill, stroke, path }) =>
        fill === "bone" && stroke === "line" && path.length === 8 && path.every(([letter]) => letter !== "L"),
    );
    expect(blocks.length).toBeGreaterThanOrEqual(24);
  });
});
