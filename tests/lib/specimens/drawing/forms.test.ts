import { describe, expect, it } from "vitest";
import {
  belly,
  digit,
  liesInside,
  longBone,
  pouchedTube,
  reachInside,
  spongyBone,
  vertebralColumn,
} from "#lib/specimens/drawing/forms.ts";
import { at, pathPoints } from "#lib/specimens/drawing/pen.ts";
import { boundsOf } from "#lib/specimens/drawing/plate.ts";
import { variation } from "#lib/specimens/drawing/variation.ts";

const square = at("0,0 10,0 10,10 0,10");

describe("shared forms", () => {
  it("knows what lies inside an outline and what does not", () => {
    expect(liesInside([5, 5], square)).toBe(true);
    expect(liesInside([15, 5], square)).toBe(false);
    expect(liesInside([5, 5], [])).toBe(false);
  });

  it("measures how far it is to the edge", () => {
    expect(reachInside([5, 5], 0, square)).toBeCloseTo(5, 9);
    expect(reachInside([5, 5], Math.PI / 4, square)).toBeCloseTo(Math.SQRT2 * 5, 9);
    expect(reachInside([5, 5], 0, [])).toBe(0);
  });

  it("keeps the fibres of a muscle inside its belly", () => {
    const [outline, fibres] = belly(at("0,0 20,0 40,0"), [3, 10, 3]);
    const whole = boundsOf(outline === undefined ? [] : [outline]);
    const lines = boundsOf(fibres === undefined ? [] : [fibres]);
    expect(lines.y).toBeGreaterThan(whole.y);
    expect(lines.y + lines.height).toBeLessThan(whole.y + whole.height);
  });

  it("makes a bone thicker at its ends than in its shaft", () => {
    const [bone] = longBone([0, 0], [100, 0], 5, 2);
    const widthNear = (x: number) =>
      Math.max(
        ...pathPoints(bone?.path ?? [])
          .filter((point) => Math.abs(point[0] - x) < 4)
          .map((point) => point[1]),
      );
    expect(widthNear(6)).toBeCloseTo(10, 0);
    expect(widthNear(34)).toBeLessThan(6);
  });

  it("lays as many vertebrae as asked", () => {
    expect(vertebralColumn(at("0,0 0,100"), 12, [4, 8])).toHaveLength(12);
  });

  it("draws grains of spongy bone only inside the bone", () => {
    const [, grains] = spongyBone(square, variation("x"), 20);
    for (const [x, y] of pathPoints(grains?.path ?? []))
      expect(liesInside([x - 0.01, y], at("-1,-1 11,-1 11,11 -1,11"))).toBe(true);
  });

  it("bulges between the folds of a pouched tube", () => {
    const [tube] = pouchedTube(at("0,0 100,0"), 10, 4, "organ");
    const heights = pathPoints(tube?.path ?? []).map((point) => Math.abs(point[1]));
    expect(Math.max(...heights)).toBeGreaterThan(10.5);
  });

  it("ends a finger at its length", () => {
    const points = digit([0, 0], 0, 40, 6);
    expect(Math.max(...points.map((point) => point[0]))).toBe(40);
    expect(points[0]).toEqual([0, -6]);
    expect(points.at(-1)?.[1]).toBe(6);
  });
});
