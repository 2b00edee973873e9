import { describe, expect, it } from "vitest";
import { setOnPlate } from "#lib/specimens/drawing/plate.ts";
import { drawTrunkSection } from "#lib/specimens/drawing/trunk-section.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { falseCallouts, latinNames, namedBy, strayPoints, textOf } from "./looking.ts";

const levels = Array.from({ length: 41 }, (_, index) => index / 40);
const drawLevel = (level: number, seed = "SR 03") =>
  setOnPlate(drawTrunkSection(variation(seed), level), latinNames);

describe("a transverse sheet of the trunk", () => {
  it("lies inside the view box at every level", () => {
    for (const level of levels) expect(strayPoints(drawLevel(level)), `level ${level}`).toEqual([]);
  });

  it("names only what it shows, in words of the vocabulary", () => {
    for (const level of levels)
      expect(falseCallouts(drawTrunkSection(variation("SR 03"), level)), `level ${level}`).toEqual([]);
  });

  it("is the same for one series and level, and differs from level to level", () => {
    const once = levels.map((level) => textOf(drawLevel(level)));
    expect(levels.map((level) => textOf(drawLevel(level)))).toEqual(once);
    expect(new Set(once).size).toBe(once.length);
  });

  it("differs from series to series", () => {
    expect(textOf(drawLevel(0.4, "SR 03"))).not.toBe(textOf(drawLevel(0.4, "SR 04")));
  });

  it("comes upon heart, liver, kidneys and thighs in their order", () => {
    const names = (level: number) => namedBy(drawTrunkSection(variation("SR 03"), level));
    expect(names(0.3)).toContain("heart");
    expect(names(0.5)).toContain("liver");
    expect(names(0.6)).toContain("kidney");
    expect(names(0.92)).toContain("head-of-femur");
    expect(names(0.99)).toContain("femur");
  });

  it("holds a level outside the body at its ends", () => {
    expect(textOf(drawLevel(-3))).toBe(textOf(drawLevel(0)));
    expect(textOf(drawLevel(7))).toBe(textOf(drawLevel(1)));
  });
});
