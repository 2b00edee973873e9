import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "#lib/platform/dates.ts";
import { freeMonths, monthsFrom } from "#lib/whereabouts/free-months.ts";

const today = "2027-01-15";

test("months follow each other without a gap, leap years and years' ends included", () => {
  expect(monthsFrom("2027-11-30", 4)).toEqual([
    { startsOn: "2027-11-01", endsOn: "2027-12-01" },
    { startsOn: "2027-12-01", endsOn: "2028-01-01" },
    { startsOn: "2028-01-01", endsOn: "2028-02-01" },
    { startsOn: "2028-02-01", endsOn: "2028-03-01" },
  ]);
});

describe("a month", () => {
  const months = monthsFrom(today, 3);
  const told = (startsOn: string, endsOn: string) => freeMonths([{ startsOn, endsOn }], months, today);
  test.each([
    ["is free where all its days are", "2027-02-01", "2027-03-01", "2027-02-01", "2027-03-01"],
    ["that has begun counts from today", today, "2027-02-01", "2027-01-01", "2027-02-01"],
    ["joins the next one", today, "2027-03-20", "2027-01-01", "2027-03-01"],
  ])("%s", (_what, from, until, startsOn, endsOn) => {
    expect(told(from, until)).toEqual([{ startsOn, endsOn }]);
  });
  test("is not free where one day is promised, whichever it is", () => {
    expect(told("2027-02-02", "2027-03-01")).toEqual([]);
    expect(told("2027-02-01", "2027-02-28")).toEqual([]);
  });
});

test("no day of a free month is promised, and which day is promised cannot be told from the month", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 1, max: 60 }), (start, length) => {
      const promised = addDays(today, start);
      const free = [
        { startsOn: today, endsOn: promised },
        { startsOn: addDays(promised, length), endsOn: "2028-12-01" },
      ].filter(({ startsOn, endsOn }) => startsOn < endsOn);
      for (const { startsOn, endsOn } of freeMonths(free, monthsFrom(today, 12), today)) {
        expect(startsOn.endsWith("-01") && endsOn.endsWith("-01")).toBe(true);
        expect(endsOn <= promised || startsOn >= addDays(promised, length)).toBe(true);
      }
    }),
  );
});
