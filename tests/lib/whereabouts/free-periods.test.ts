import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, daysBetween } from "#lib/platform/dates.ts";
import { freePeriods, mergePeriods, nextFreeStart, withBuffers } from "#lib/whereabouts/free-periods.ts";
import type { Period } from "#lib/whereabouts/schema.ts";

const period = (startsOn: string, endsOn: string): Period => ({ startsOn, endsOn });
const march = period("2027-03-01", "2027-04-01");

describe("free periods", () => {
  const rows: [what: string, busy: Period[], free: Period[]][] = [
    ["of an empty calendar are the whole window", [], [march]],
    ["of a full one are none", [period("2027-02-01", "2027-05-01")], []],
    [
      "stand before and after",
      [period("2027-03-10", "2027-03-12")],
      [period("2027-03-01", "2027-03-10"), period("2027-03-12", "2027-04-01")],
    ],
    [
      "begin on the day a booking ends",
      [period("2027-02-01", "2027-03-05")],
      [period("2027-03-05", "2027-04-01")],
    ],
    [
      "end on the day a booking begins",
      [period("2027-03-20", "2027-04-20")],
      [period("2027-03-01", "2027-03-20")],
    ],
    [
      "have no gap between bookings that touch",
      [period("2027-03-12", "2027-03-20"), period("2027-03-01", "2027-03-12")],
      [period("2027-03-20", "2027-04-01")],
    ],
    [
      "leave out what lies outside the window",
      [period("2027-01-01", "2027-03-01"), period("2027-04-01", "2027-05-01")],
      [march],
    ],
  ];
  test.each(rows)("%s", (_what, busy, free) => {
    expect(freePeriods(busy, march)).toEqual(free);
  });
  test("are refused for a window without days", () => {
    expect(() => freePeriods([], period("2027-03-02", "2027-03-02"))).toThrow(RangeError);
    expect(() => freePeriods([period("2027-03-05", "2027-03-04")], march)).toThrow(RangeError);
  });
});

describe("the busy range of a loan with 14 days before and after", () => {
  // derived for this project: loan 2027-03-01 to 2027-06-30, both included
  const busy = withBuffers(period("2027-03-01", "2027-07-01"), 14, 14);
  test("is 2027-02-15 up to 2027-07-15", () => {
    expect(busy).toEqual(period("2027-02-15", "2027-07-15"));
  });
  test("meets a request delivered on 2027-07-10 and not one on 2027-07-15", () => {
    expect(nextFreeStart([busy], period("2027-07-10", "2027-07-20"))).toBe("2027-07-15");
    expect(nextFreeStart([busy], period("2027-07-15", "2027-07-20"))).toBe("2027-07-15");
  });
  test("refuses buffers that are none", () => {
    expect(() => withBuffers(march, -1, 0)).toThrow(RangeError);
    expect(() => withBuffers(march, Number.NaN, 0)).toThrow(RangeError);
  });
});

describe("the next free days", () => {
  const busy = [period("2027-03-01", "2027-03-10"), period("2027-03-12", "2027-03-20")];
  test("passes over a gap that is too short for what is wanted", () => {
    expect(nextFreeStart(busy, period("2027-03-04", "2027-03-07"))).toBe("2027-03-20");
    expect(nextFreeStart(busy, period("2027-03-04", "2027-03-06"))).toBe("2027-03-10");
  });
});

const anyPeriod = fc
  .record({ from: fc.integer({ min: 0, max: 400 }), days: fc.integer({ min: 1, max: 60 }) })
  .map(({ from, days }) => period(addDays("2027-01-01", from), addDays("2027-01-01", from + days)));
const anyCalendar = fc.array(anyPeriod, { maxLength: 25 });
const daysOf = ({ startsOn, endsOn }: Period) =>
  Array.from({ length: daysBetween(startsOn, endsOn) }, (_, at) => addDays(startsOn, at));
const has = (periods: Period[], day: string) =>
  periods.some(({ startsOn, endsOn }) => startsOn <= day && day < endsOn);

describe("whatever is booked", () => {
  test("each day of the window is either busy or free, and no day is lost", () => {
    fc.assert(
      fc.property(anyCalendar, anyPeriod, (busy, window) => {
        const free = freePeriods(busy, window);
        for (const day of daysOf(window)) expect(has(free, day)).toBe(!has(busy, day));
        for (const day of free.flatMap(daysOf)) expect(has([window], day)).toBe(true);
      }),
    );
  });

  test("free periods stand in order and never touch", () => {
    fc.assert(
      fc.property(anyCalendar, anyPeriod, (busy, window) => {
        const free = freePeriods(busy, window);
        free.slice(1).forEach((next, at) => {
          expect((free[at] as Period).endsOn < next.startsOn).toBe(true);
        });
      }),
    );
  });

  test("joined periods hold the same days, and joining again changes nothing", () => {
    fc.assert(
      fc.property(anyCalendar, (busy) => {
        const merged = mergePeriods(busy);
        expect(new Set(merged.flatMap(daysOf))).toEqual(new Set(busy.flatMap(daysOf)));
        expect(mergePeriods(merged)).toEqual(merged);
      }),
    );
  });

  test("the next free start is free for as long as wanted, and no earlier day is", () => {
    fc.assert(
      fc.property(anyCalendar, anyPeriod, (busy, wanted) => {
        const length = daysBetween(wanted.startsOn, wanted.endsOn);
        const fits = (start: string) =>
          daysOf(period(start, addDays(start, length))).every((day) => !has(busy, day));
        const start = nextFreeStart(busy, wanted);
        expect(fits(start)).toBe(true);
        for (let day = wanted.startsOn; day < start; day = addDays(day, 1)) expect(fits(day)).toBe(false);
      }),
    );
  });
});
