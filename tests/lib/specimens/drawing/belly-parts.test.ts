import { describe, expect, it } from "vitest";
import {
  drawCaecum,
  drawLiverBelow,
  drawStomachOpened,
  drawUpperAbdomen,
  drawUrinarySystem,
} from "#lib/specimens/drawing/belly-parts.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates, namedBy } from "./looking.ts";

describePlates("parts of the belly", {
  drawStomachOpened,
  drawCaecum,
  drawLiverBelow,
  drawUpperAbdomen,
  "urinary organs of a man": (vary) => drawUrinarySystem(vary, true),
  "urinary organs of a woman": (vary) => drawUrinarySystem(vary, false),
});

describe("the urinary organs", () => {
  it("have a prostate in a man alone", () => {
    expect(namedBy(drawUrinarySystem(variation("AN 1"), true))).toContain("prostate");
    expect(namedBy(drawUrinarySystem(variation("AN 1"), false))).not.toContain("prostate");
  });
});
