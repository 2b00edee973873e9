import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  daysLikeLastTime,
  earliestStart,
  faultOfStart,
  firstDays,
  furthestStartDays,
} from "#lib/loans/asked-days.ts";
import { addDays, daysBetween, rangesOverlap } from "#lib/platform/dates.ts";
import { busyRange } from "#lib/suitability/period.ts";
import { faultOfDays, longestLoanDays } from "#lib/suitability/schema.ts";

const today = "2026-11-25";
const small = { daysBefore: 14, daysAfter: 14 };

describe("a loan of some days", () => {
  test.each([
    ["2027-03-01", "2027-03-02", null],
    ["2027-03-01", "2027-03-01", "loan.period-reversed"],
    ["2027-03-01", addDays("2027-03-01", longestLoanDays), null],
    ["2027-03-01", addDays("2027-03-01", longestLoanDays + 1), "loan.too-long"],
    ["2028-10-01", "2499-12-30", "loan.too-long"],
  ] as const)("from %s to %s: %s", (startsOn, endsOn, fault) => {
    expect(faultOfDays({ startsOn, endsOn })).toBe(fault);
  });
});

describe("a loan that starts", () => {
  const asked = { today, daysBefore: 14, mayHurry: false };
  test.each([
    ["today", today, "loan.starts-in-past"],
    ["a day before there is time to pack", "2026-12-08", "loan.starts-too-soon"],
    ["on the first possible day", "2026-12-09", null],
    ["five years ahead", addDays(today, furthestStartDays), null],
    ["a day more than five years ahead", addDays(today, furthestStartDays + 1), "loan.starts-too-late"],
  ] as const)("%s: %s, %s", (_when, startsOn, code) => {
    const fault = faultOfStart(startsOn, asked);
    expect(fault?.code ?? null).toBe(code);
    if (fault) expect(fault.earliest).toBe("2026-12-09");
  });
  test("tomorrow is possible where the house agrees on a shorter preparation, and never today", () => {
    expect(faultOfStart("2026-11-26", { ...asked, mayHurry: true })).toBeNull();
    expect(faultOfStart(today, { ...asked, mayHurry: true })?.code).toBe("loan.starts-in-past");
  });
});

describe("the days that a slip begins with", () => {
  test("are those that were looked for", () => {
    const wish = { startsOn: "2027-02-01", endsOn: "2027-05-01" };
    expect(firstDays(today, small, [], wish)).toEqual(wish);
  });
  test("begin with the first possible day where somebody looked from a nearer one", () => {
    expect(firstDays(today, small, [], { startsOn: "2026-11-26", endsOn: "2027-05-01" })).toEqual({
      startsOn: "2026-12-09",
      endsOn: "2027-05-01",
    });
  });
  test.each([
    ["that end before it can begin", "2026-11-26", "2026-12-01"],
    ["longer than a loan", "2027-02-01", "2040-01-01"],
    ["years away", "2040-02-01", "2040-05-01"],
  ])("are the usual ones where somebody looked for days %s", (_what, startsOn, endsOn) => {
    expect(firstDays(today, small, [], { startsOn, endsOn })).toEqual(firstDays(today, small, []));
  });
  test("are six weeks ahead, or later where more days are kept before", () => {
    expect(firstDays(today, small, []).startsOn).toBe(addDays(today, 42));
    expect(firstDays(today, { daysBefore: 60, daysAfter: 60 }, []).startsOn).toBe(addDays(today, 60));
  });
  test("come after days that somebody else has, the days around them included", () => {
    const busy = [{ startsOn: "2027-01-01", endsOn: "2027-03-01" }];
    expect(firstDays(today, small, busy).startsOn).toBe("2027-03-15");
  });
  test("can always be asked for, and meet nobody's days", () => {
    const day = fc.integer({ min: 0, max: 900 }).map((days) => addDays(today, days));
    const period = fc
      .tuple(day, fc.integer({ min: 1, max: 200 }))
      .map(([startsOn, days]) => ({ startsOn, endsOn: addDays(startsOn, days) }));
    fc.assert(
      fc.property(fc.array(period, { maxLength: 6 }), fc.constantFrom(14, 30, 60), (busy, days) => {
        const buffers = { daysBefore: days, daysAfter: days };
        const first = firstDays(today, buffers, busy);
        expect(faultOfDays(first)).toBeNull();
        expect(faultOfStart(first.startsOn, { today, daysBefore: days, mayHurry: false })).toBeNull();
        const taken = busyRange({ ...first, ...buffers });
        expect(busy.some((one) => rangesOverlap(one, taken))).toBe(false);
        expect(daysBetween(earliestStart(today, buffers), first.startsOn)).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe("days like last time", () => {
  const last = { startsOn: "2025-02-10", endsOn: "2025-06-10" };
  test.each([
    ["fall on the same day of the first year that is possible", last, "2026-12-09", null, "2027-02-10"],
    ["fall in this year where that is still possible", last, "2027-02-10", null, "2027-02-10"],
    ["go on to the next year a day later", last, "2027-02-11", null, "2028-02-10"],
    ["begin on the day that is wished", last, "2026-12-09", "2027-09-01", "2027-09-01"],
    [
      "of a leap day begin on the first of March",
      { startsOn: "2024-02-29", endsOn: "2024-05-29" },
      "2026-12-09",
      null,
      "2027-03-01",
    ],
  ])("%s", (_what, days, earliest, wished, startsOn) => {
    const again = daysLikeLastTime(days, earliest, wished);
    expect(again.startsOn).toBe(startsOn);
    expect(daysBetween(again.startsOn, again.endsOn)).toBe(daysBetween(days.startsOn, days.endsOn));
  });
});
