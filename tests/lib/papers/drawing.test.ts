import fc from "fast-check";
import { expect, test } from "vitest";
import {
  circle,
  figureOf,
  isPicture,
  pointsOf,
  polygon,
  polyline,
  readPath,
  rectangle,
} from "#lib/papers/drawing.ts";

test("a written path is read step by step, and further points of a move are lines", () => {
  expect(readPath("M1 2L3 4C1 1 2 2 3 3Z")).toEqual([
    ["M", 1, 2],
    ["L", 3, 4],
    ["C", 1, 1, 2, 2, 3, 3],
    ["Z"],
  ]);
  expect(readPath("M0-1.5 2,3")).toEqual([
    ["M", 0, -1.5],
    ["L", 2, 3],
  ]);
});

test.each(["m1 2", "M1", "Q1 2 3 4", "M1 2Z3"])("%s is no path of a paper", (written) => {
  expect(() => readPath(written)).toThrow(RangeError);
});

test("whatever is written as a polyline is read back", () => {
  const figure = fc.integer({ min: -1_000, max: 1_000 }).map((value) => value / 10 + 0);
  fc.assert(
    fc.property(fc.array(fc.tuple(figure, figure), { minLength: 1 }), (points) => {
      const steps = polyline(points);
      expect(pointsOf(readPath(steps.map((step) => step.join(" ")).join("")))).toEqual(points);
    }),
  );
});

test("a circle keeps within its radius and touches it on four sides", () => {
  const ends = circle(10, 10, 4).flatMap((step) => (step[0] === "C" ? [[step[5], step[6]]] : []));
  expect(ends).toEqual([
    [10, 14],
    [6, 10],
    [10, 6],
    [14, 10],
  ]);
});

test("polygons and rectangles are closed", () => {
  expect(polygon([[0, 0]]).at(-1)).toEqual(["Z"]);
  expect(rectangle(1, 2, 3, 4)).toHaveLength(5);
});

test("a figure keeps the proportions of its drawing", () => {
  const figure = figureOf({ width: 320, height: 240, paths: [] }, 48, "x");
  expect(figure).toMatchObject({ widthPt: 64, heightPt: 48 });
  expect(isPicture(figure.image)).toBe(false);
  expect(isPicture({ mime: "image/png", bytes: new Uint8Array() })).toBe(true);
});
