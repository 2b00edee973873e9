import fc from "fast-check";
import { expect, test } from "vitest";
import {
  afterStages,
  areaFromLinear,
  earlierStages,
  freshLengthMm,
  linearFromArea,
  linearFromVolume,
  volumeFromArea,
} from "#lib/specimens/shrinkage.ts";

const fraction = fc.integer({ min: 0, max: 9_000 }).map((parts) => parts / 10_000);

test("length and area are each other's inverse, volume follows from both", () => {
  fc.assert(
    fc.property(fraction, (area) => {
      expect(areaFromLinear(linearFromArea(area))).toBeCloseTo(area, 9);
      expect(linearFromVolume(volumeFromArea(area))).toBeCloseTo(linearFromArea(area), 9);
      expect(linearFromArea(area)).toBeLessThanOrEqual(area + 1e-12);
      expect(volumeFromArea(area)).toBeGreaterThanOrEqual(area - 1e-12);
    }),
  );
});

test("stages multiply in any order, and the last can be taken off again", () => {
  fc.assert(
    fc.property(fraction, fraction, (first, last) => {
      const total = afterStages([first, last]);
      expect(total).toBeCloseTo(afterStages([last, first]), 12);
      fc.pre(last <= total);
      expect(earlierStages(total, last)).toBeCloseTo(first, 6);
    }),
  );
});

test("no stage takes nothing", () => expect(afterStages([])).toBe(0));

test("a measure on a sheet that shrank by 19 % of its area was a ninth longer", () =>
  expect(freshLengthMm(90, 0.19)).toBeCloseTo(100, 9));

test.each([
  ["all of it", () => linearFromArea(1)],
  ["less than nothing", () => volumeFromArea(-0.1)],
  ["not a number", () => linearFromVolume(Number.NaN)],
  ["a stage of all", () => afterStages([0.1, 1])],
  ["a last stage above the total", () => earlierStages(0.1, 0.2)],
  ["a negative length", () => freshLengthMm(-1, 0.1)],
])("%s is refused", (_what, attempt) => expect(attempt).toThrow(RangeError));
