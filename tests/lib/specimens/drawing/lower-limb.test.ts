import { describe, expect, it } from "vitest";
import { drawKnee, drawLowerLimb, type LimbVessels } from "#lib/specimens/drawing/lower-limb.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates } from "./looking.ts";

describePlates("the lower limb", {
  "with vessels and nerves": (vary) => drawLowerLimb(vary, "vessels and nerves"),
  "with lymph vessels": (vary) => drawLowerLimb(vary, "lymph vessels"),
  drawKnee,
});

describe("the lower limb", () => {
  it("shows nerves or lymph vessels, as asked", () => {
    const tones = (seen: LimbVessels) =>
      drawLowerLimb(variation("AN 1"), seen).shapes.map(({ stroke }) => stroke);
    expect(tones("vessels and nerves")).toContain("nerve");
    expect(tones("vessels and nerves")).not.toContain("duct");
    expect(tones("lymph vessels")).toContain("duct");
    expect(tones("lymph vessels")).not.toContain("nerve");
  });
});
