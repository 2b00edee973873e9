import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  blueWools,
  budgetShare,
  doseLxHours,
  lightDose,
  noticeableFades,
  yearsToNoticeableFade,
} from "#lib/environment/light-dose.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const span = fc.record({
  illuminanceLx: fc.integer({ min: 0, max: 1000 }),
  hours: fc.integer({ min: 0, max: 5000 }),
});

describe("the dose", () => {
  test("does not ask in what order or in how many parts the light came", () => {
    fc.assert(
      fc.property(fc.array(span, { maxLength: 20 }), (spans) => {
        const halves = spans.flatMap(({ illuminanceLx, hours }) => [
          { illuminanceLx, hours: hours / 2 },
          { illuminanceLx, hours: hours / 2 },
        ]);
        expect(doseLxHours([...spans].reverse())).toBe(doseLxHours(spans));
        expect(doseLxHours(halves)).toBeCloseTo(doseLxHours(spans), 6);
      }),
    );
  });

  test("of nothing is nothing", () => expect(doseLxHours([])).toBe(0));

  test.each([
    [{ illuminanceLx: -1, hours: 1 }],
    [{ illuminanceLx: 50, hours: -1 }],
    [{ illuminanceLx: Number.NaN, hours: 1 }],
  ])("refuses %o", (bad) => expect(() => doseLxHours([bad])).toThrow(RangeError));
});

describe("fades", () => {
  test("a sturdier Blue Wool fades less, and ultraviolet never helps", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000_000 }), (dose) => {
        for (const blueWool of blueWools) {
          expect(noticeableFades(dose, blueWool, true)).toBeLessThan(noticeableFades(dose, blueWool, false));
          if (blueWool === 8) continue;
          const next = blueWools[blueWool] ?? 8;
          expect(noticeableFades(dose, next, true)).toBeLessThan(noticeableFades(dose, blueWool, true));
        }
      }),
    );
  });

  test("years to a fade are the inverse of fades in a year", () => {
    expect(noticeableFades(150_000 * yearsToNoticeableFade(150_000, 3, true), 3, true)).toBeCloseTo(1, 12);
  });

  test("refuses darkness without end and a budget of nothing", () => {
    expect(() => yearsToNoticeableFade(0, 1, true)).toThrow(RangeError);
    expect(() => noticeableFades(Number.NaN, 1, true)).toThrow(RangeError);
    expect(() => budgetShare(1, 0)).toThrow(RangeError);
    expect(() => budgetShare(-1, 10)).toThrow(RangeError);
  });
});

describe("the working", () => {
  const show = { illuminanceLx: 50, days: 100, hoursPerDay: 10 };

  test("counts what is already spent in the share, not in the dose", () => {
    const result = lightDose({ spans: [show], spentLxHours: 25_000, lxHoursPerYear: 150_000 });
    expect(result).toMatchObject({ doseLxHours: 50_000, share: 0.5, remainingLxHours: 75_000 });
  });

  test("pools years only when that is asked for", () => {
    const result = lightDose({ spans: [show], lxHoursPerYear: 25_000, years: 4 });
    expect(result).toMatchObject({ budgetLxHours: 100_000, share: 0.5 });
  });

  test("names each span and the work light among its steps", () => {
    const { steps } = lightDose.explain({ spans: [show, show], workHours: 20, lxHoursPerYear: 150_000 });
    expect(steps.map((step) => step.label).slice(0, 4)).toEqual([
      "On show 1",
      "On show 2",
      "Work light",
      "Dose",
    ]);
    expect(steps[2]).toMatchObject({ value: 3000, unit: "lx·h" });
    expect(steps[3]).toMatchObject({ value: 103_000 });
  });

  test("refuses a day of 25 hours", () =>
    expect(() => lightDose({ spans: [{ ...show, hoursPerDay: 25 }], lxHoursPerYear: 150_000 })).toThrow(
      Refusal,
    ));
});
