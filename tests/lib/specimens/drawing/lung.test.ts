import { describe, expect, it } from "vitest";
import {
  drawDiaphragm,
  drawHeartWithLungs,
  drawLung,
  drawThoracicWall,
} from "#lib/specimens/drawing/lung.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { describePlates, namedBy } from "./looking.ts";

describePlates("lungs and the wall of the chest", {
  "a left lung": (vary) => drawLung(vary, "left"),
  "a right lung": (vary) => drawLung(vary, "right"),
  drawHeartWithLungs,
  drawThoracicWall,
  drawDiaphragm,
});

describe("one lung", () => {
  it("has its own fissures and lobes", () => {
    const left = namedBy(drawLung(variation("AN 1"), "left"));
    const right = namedBy(drawLung(variation("AN 1"), "right"));
    expect(left).toContain("lingula-of-left-lung");
    expect(left).not.toContain("horizontal-fissure-of-right-lung");
    expect(right).toContain("horizontal-fissure-of-right-lung");
    expect(right).not.toContain("lingula-of-left-lung");
  });
});
