import { describe, expect, it } from "vitest";
import { drawThighSection } from "#lib/specimens/drawing/limb-section.ts";
import { setOnPlate } from "#lib/specimens/drawing/plate.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";
import { falseCallouts, latinNames, namedBy, strayPoints, textOf } from "./looking.ts";

const levels = Array.from({ length: 41 }, (_, index) => index / 40);
const drawLevel = (level: number, seed = "SR 03") =>
  setOnPlate(drawThighSection(variation(seed), level), latinNames);

describe("a sheet of the thigh", () => {
  it("lies inside the view box at every level", () => {
    for (const level of levels) expect(strayPoints(drawLevel(level)), `level ${level}`).toEqual([]);
  });

  it("names only what it shows, in words of the vocabulary", () => {
    for (const level of levels)
      expect(falseCallouts(drawThighSection(variation("SR 03"), level)), `level ${level}`).toEqual([]);
  });

  it("is the same for one series and level, and differs from level to level", () => {
    const once = levels.map((level) => textOf(drawLevel(level)));
    expect(levels.map((level) => textOf(drawLevel(level)))).toEqual(once);
    expect(new Set(once).size).toBe(once.length);
  });

  it("differs from series to series", () => {
    expect(textOf(drawLevel(0.4, "SR 03"))).not.toBe(textOf(drawLevel(0.4, "SR 04")));
  });

  it("shows the thigh bone, its muscles and the great vessels", () => {
    expect(namedBy(drawThighSection(variation("SR 03"), 0.2))).toEqual(
      expect.arrayContaining(["femur", "sartorius", "femoral-artery", "sciatic-nerve"]),
    );
  });
});
