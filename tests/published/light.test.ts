/** Light classes, reciprocity and Blue Wool doses against what is published. */
import { describe, expect, test } from "vitest";
import {
  type BlueWool,
  doseLxHours,
  lightClasses,
  lightDose,
  noticeableFades,
  yearsToNoticeableFade,
} from "#lib/environment/light-dose.ts";
import { limitsFor } from "#lib/environment/limits.ts";

// CIE 157:2004, limiting illuminance and annual exposure; from memory.
describe("CIE 157:2004, from memory", () => {
  test.each([
    ["low", 200, 600_000],
    ["medium", 50, 150_000],
    ["high", 50, 15_000],
  ] as const)("%s responsivity: %d lx, %d lx·h a year", (name, illuminanceLx, lxHoursPerYear) => {
    expect(lightClasses[name]).toEqual({ illuminanceLx, lxHoursPerYear });
  });

  test("irresponsive material has no limit", () =>
    expect(lightClasses.irresponsive).toEqual({ illuminanceLx: null, lxHoursPerYear: null }));

  test("bone is of low responsivity, sheets and tissue of medium, stained slides of high", () => {
    expect(limitsFor("bone").lightLxHoursPerYear.max).toBe(600_000);
    expect(limitsFor("polyester-sheet").lightLxHoursPerYear.max).toBe(150_000);
    expect(limitsFor("silicone-body").lightLxHoursPerYear.max).toBe(150_000);
    expect(limitsFor("slide").lightLxHoursPerYear.max).toBe(15_000);
  });

  test("50 lx in a gallery open 3000 hours is the whole medium budget of a year", () =>
    expect(doseLxHours([{ illuminanceLx: 50, hours: 3000 }])).toBe(150_000));
});

// Public guide to lighting of light-sensitive exhibits; exact.
test("50 lx for 10 hours equals 250 lx for 2 hours, 500 lx·h", () => {
  expect(doseLxHours([{ illuminanceLx: 50, hours: 10 }])).toBe(500);
  expect(doseLxHours([{ illuminanceLx: 250, hours: 2 }])).toBe(500);
});

// A tour of three venues, medium class; worked separately, exact.
describe("a tour of three venues", () => {
  const tour = {
    spans: [
      { illuminanceLx: 50, days: 90, hoursPerDay: 9 },
      { illuminanceLx: 80, days: 120, hoursPerDay: 8 },
      { illuminanceLx: 50, days: 150, hoursPerDay: 10 },
    ],
    lxHoursPerYear: 150_000,
  };

  test("takes 192 300 lx·h, 128.2 % of the year, 42 300 too many", () => {
    const result = lightDose(tour);
    expect(result.doseLxHours).toBe(192_300);
    expect(result.share).toBeCloseTo(1.282, 12);
    expect(result.remainingLxHours).toBe(-42_300);
  });

  test("with three installations of 20 hours at 150 lx takes 201 300 lx·h", () =>
    expect(lightDose({ ...tour, workIlluminanceLx: 150, workHours: 60 }).doseLxHours).toBe(201_300));

  test.each([
    [1, 0.64],
    [2, 0.19],
    [3, 0.064],
    [4, 0.019],
  ] as const)("is that part of a fade of Blue Wool %d: %d", (blueWool, fades) => {
    expect(noticeableFades(192_300, blueWool, true) / fades).toBeCloseTo(1, 1);
  });
});

// Canadian conservation institute, chapter on light: years to a just noticeable fade at 3000 h a year.
// From memory; the ranges are printed to one or two figures, so each end may differ by a fifth.
describe("years to a just noticeable fade, from memory", () => {
  test.each<[string, number, BlueWool, boolean, number]>([
    ["50 lx, high, with ultraviolet, soonest", 50, 1, false, 1.5],
    ["50 lx, high, without ultraviolet, latest", 50, 3, true, 20],
    ["50 lx, medium, with ultraviolet, soonest", 50, 4, false, 20],
    ["50 lx, medium, without ultraviolet, latest", 50, 6, true, 700],
    ["50 lx, low, with ultraviolet, soonest", 50, 7, false, 300],
    ["50 lx, low, without ultraviolet, latest", 50, 8, true, 7000],
    ["150 lx, high, with ultraviolet, soonest", 150, 1, false, 0.5],
    ["150 lx, high, without ultraviolet, latest", 150, 3, true, 7],
    ["500 lx, high, with ultraviolet, soonest", 500, 1, false, 1 / 7],
    ["500 lx, high, without ultraviolet, latest", 500, 3, true, 2],
  ])("%s", (_name, illuminanceLx, blueWool, uvRemoved, years) => {
    const worked = yearsToNoticeableFade(doseLxHours([{ illuminanceLx, hours: 3000 }]), blueWool, uvRemoved);
    expect(worked / years).toBeGreaterThan(0.8);
    expect(worked / years).toBeLessThan(1.2);
  });

  // Worked separately.
  test("Blue Wool 2 at 50 lx, 8 hours, 300 days lasts 8.33 years", () =>
    expect(yearsToNoticeableFade(50 * 8 * 300, 2, true)).toBeCloseTo(8.33, 2));
});

// Canadian conservation institute, table of doses in Mlx·h; from memory.
describe("doses to one just noticeable fade, from memory", () => {
  test.each<[BlueWool, number, number]>([
    [1, 0.22, 0.3],
    [2, 0.6, 1],
    [3, 1.5, 3],
    [4, 3.5, 10],
    [5, 8, 30],
    [6, 20, 100],
    [7, 50, 300],
    [8, 120, 1100],
  ])("Blue Wool %d: %d with, %d without ultraviolet", (blueWool, withUv, withoutUv) => {
    expect(noticeableFades(withUv * 1e6, blueWool, false)).toBeCloseTo(1, 12);
    expect(noticeableFades(withoutUv * 1e6, blueWool, true)).toBeCloseTo(1, 12);
  });
});
