import { describe, expect, it } from "vitest";
import { drawHandBones, drawWristLigaments } from "#lib/specimens/drawing/hand-bones.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates } from "./looking.ts";

describePlates("bones of the hand", {
  drawHandBones,
  drawWristLigaments,
});

describe("the ligaments of the wrist", () => {
  it("only hints at what lies beyond the metacarpus", () => {
    const hinted = (draw: typeof drawHandBones) =>
      draw(variation("AN 1")).shapes.filter(({ stroke }) => stroke === "hidden").length;
    expect(hinted(drawWristLigaments)).toBe(5);
    expect(hinted(drawHandBones)).toBe(0);
  });
});
