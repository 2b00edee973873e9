import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  along,
  at,
  band,
  beside,
  between,
  bothHalves,
  bothLines,
  box,
  centreOf,
  drawnIn,
  ellipse,
  ellipsePoints,
  mapPath,
  mirrored,
  type Point,
  pathData,
  pathPoints,
  ring,
  roundBand,
  smooth,
  straight,
} from "#lib/specimens/drawing/pen.ts";

const points = fc.array(fc.tuple(fc.integer({ min: -200, max: 200 }), fc.integer({ min: -200, max: 200 })), {
  minLength: 2,
  maxLength: 12,
});

describe("the pen", () => {
  it("reads points from text and refuses what is none", () => {
    expect(at("0,-50 60.5,2\n 3,4")).toEqual([
      [0, -50],
      [60.5, 2],
      [3, 4],
    ]);
    expect(() => at("1,2 3")).toThrow(RangeError);
    expect(() => at("1,x")).toThrow(RangeError);
  });

  it("draws a smooth line through every point it is given", () => {
    fc.assert(
      fc.property(points, (line) => {
        const path = smooth(line);
        const ends = path.map((segment) => (segment[0] === "Z" ? null : segment.slice(-2)));
        expect(ends).toEqual(line.map(([x, y]) => [x, y]));
      }),
    );
  });

  it("closes a ring where it began", () => {
    const path = ring(at("0,0 10,0 10,10 0,10"));
    expect(path.at(-1)).toEqual(["Z"]);
    expect(path.at(-2)?.slice(-2)).toEqual([0, 0]);
  });

  it("keeps an ellipse within a hundredth of its radii", () => {
    for (const [x, y] of pathPoints(ellipse(0, 0, 40, 20)).filter((_, index) => index % 3 === 0)) {
      expect((x / 40) ** 2 + (y / 20) ** 2).toBeCloseTo(1, 9);
    }
    expect(ellipsePoints(0, 0, 10, 10, 0, 5, 0, Math.PI).at(-1)?.[0]).toBeCloseTo(-10, 9);
  });

  it("sets the line beside a line at the distance asked", () => {
    expect(beside(at("0,0 10,0 20,0"), 4)).toEqual(at("0,-4 10,-4 20,-4"));
    expect(beside(at("0,0 10,0"), [1, 3])).toEqual(at("0,-1 10,-3"));
  });

  it("makes a band twice as wide as its half widths", () => {
    const ys = (path: Parameters<typeof pathPoints>[0]) => pathPoints(path).map((point) => point[1]);
    expect(Math.max(...ys(band(at("0,0 50,0 100,0"), 5)))).toBe(5);
    expect(Math.min(...ys(roundBand(at("0,0 50,0 100,0"), 5)))).toBe(-5);
    const xs = pathPoints(roundBand(at("0,0 50,0 100,0"), 5)).map((point) => point[0]);
    expect(Math.max(...xs)).toBeGreaterThan(104);
    expect(Math.min(...xs)).toBeLessThan(-4);
  });

  it("walks along a line in even steps", () => {
    expect(along(at("0,0 10,0 10,10"), 5)).toEqual(at("0,0 5,0 10,0 10,5 10,10"));
    expect(along(at("3,3"), 2)).toEqual(at("3,3 3,3"));
  });

  it("mirrors twice into the same points", () => {
    fc.assert(
      fc.property(points, (line) => {
        expect(mirrored(mirrored(line, 7), 7)).toEqual(line.map(([x, y]) => [x, y]));
      }),
    );
  });

  it("makes a symmetric outline of its right half", () => {
    expect(bothHalves(at("0,0 5,5 0,10"))).toEqual(at("0,0 5,5 0,10 -5,5"));
  });

  it("draws a line at both sides of the middle", () => {
    const [right, left] = bothLines(at("1,2 3,4 5,6"));
    expect(mapPath(left ?? [], ([x, y]) => [-x, y])).toEqual(right);
  });

  it("draws points in to their middle", () => {
    const square = at("0,0 10,0 10,10 0,10");
    expect(centreOf(square)).toEqual([5, 5]);
    expect(drawnIn(square, 0)).toEqual(at("5,5 5,5 5,5 5,5"));
    expect(between([0, 0], [10, 20], 0.5)).toEqual([5, 10]);
  });

  it("moves every point of a path and no other thing", () => {
    const path = [...box(0, 0, 4, 4), ...smooth(at("0,0 5,5 9,0"))];
    const back = (point: Point): Point => [point[0] / 4, point[1] / 2];
    const there = (point: Point): Point => [point[0] * 4, point[1] * 2];
    expect(mapPath(mapPath(path, there), back)).toEqual(path);
    expect(mapPath(path, there).map((segment) => segment[0])).toEqual(path.map((segment) => segment[0]));
  });

  it("writes path data to a tenth, or to whole units for a small picture", () => {
    expect(pathData(straight(at("0.04,-0.04 1.26,2"), true))).toBe("M0 0L1.3 2Z");
    expect(pathData(straight(at("0.4,-0.4 1.6,2")), 1)).toBe("M0 0L2 2");
  });
});
