import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { girthAt, presence, wallOutline } from "#lib/specimens/drawing/trunk-wall.ts";

describe("the girth of the trunk", () => {
  it("is read between the levels that are known, without a jump", () => {
    expect(girthAt(0)).toEqual({ halfWidth: 120, halfDepth: 50 });
    expect(girthAt(0.03).halfWidth).toBeCloseTo(127, 9);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.999, noNaN: true }), (level) => {
        const step = girthAt(level + 0.001).halfWidth - girthAt(level).halfWidth;
        expect(Math.abs(step)).toBeLessThan(0.5);
      }),
    );
  });
});

describe("the presence of an organ", () => {
  it("is none outside its span and full in the middle of it", () => {
    expect(presence(0.2, 0.2, 0.4)).toBe(0);
    expect(presence(0.5, 0.2, 0.4)).toBe(0);
    expect(presence(0.3, 0.2, 0.4)).toBeCloseTo(1, 12);
    expect(presence(Number.NaN, 0.2, 0.4)).toBe(0);
  });
});

describe("the outline of the wall", () => {
  it("is as broad and as deep as asked, and dips at the back by the groove", () => {
    const outline = wallOutline(100, 60, 8, 0);
    const ys = outline.map((point) => point[1]);
    expect(Math.max(...outline.map((point) => point[0]))).toBeCloseTo(100, 9);
    expect(Math.min(...ys)).toBeCloseTo(-60, 9);
    expect(outline[7]?.[1]).toBeCloseTo(52, 6);
  });
});
