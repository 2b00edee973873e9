import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { defaultPractice } from "#lib/people/practice.ts";
import { addDays, rangesOverlap } from "#lib/platform/dates.ts";
import {
  bookedRange,
  bufferDaysOf,
  buffersFor,
  busyRange,
  keptDays,
  travelSizeOf,
} from "#lib/suitability/period.ts";

/** 1 March to 30 June 2027 in words: the return-by is 1 July. */
const loan = { startsOn: "2027-03-01", endsOn: "2027-07-01", daysBefore: 14, daysAfter: 14 };

describe("a loan of 1 March to 30 June with 14 days on either side", () => {
  const busy = busyRange(loan);
  test("is busy from 15 February up to, not including, 15 July", () => {
    expect(busy).toEqual({ startsOn: "2027-02-15", endsOn: "2027-07-15" });
  });
  test.each([
    ["2027-07-10", true],
    ["2027-07-14", true],
    ["2027-07-15", false],
  ] as const)("meets a request whose busy days begin on %s: %s", (startsOn, meets) => {
    expect(rangesOverlap(busy, { startsOn, endsOn: "2027-10-01" })).toBe(meets);
  });
});

test("days that are past are not booked", () => {
  expect(bookedRange(loan, "2027-02-20")).toEqual({ startsOn: "2027-02-20", endsOn: "2027-07-15" });
  expect(bookedRange(loan, "2026-11-25")).toEqual(busyRange(loan));
  expect(() => bookedRange(loan, "2027-07-15")).toThrow(RangeError);
});

describe("what is kept for a loan", () => {
  const inside = { departsOn: "2027-02-27", arrivesOn: "2027-03-01" };
  test("is the busy days where its stages lie within them", () => {
    expect(keptDays(loan, [], null)).toEqual(busyRange(loan));
    expect(keptDays(loan, [inside], null)).toEqual(busyRange(loan));
  });
  test("reaches from the first day of its stages to the day after the last", () => {
    const early = { departsOn: "2027-01-10", arrivesOn: "2027-01-12" };
    const late = { departsOn: "2027-07-18", arrivesOn: "2027-07-20" };
    expect(keptDays(loan, [early, late], null)).toEqual({ startsOn: "2027-01-10", endsOn: "2027-07-21" });
  });
  test("goes on for the days after the loan, counted from today, while it is not back", () => {
    expect(keptDays(loan, [], "2027-05-01")).toEqual(busyRange(loan));
    expect(keptDays(loan, [], "2027-08-01").endsOn).toBe("2027-08-15");
    expect(keptDays({ ...loan, daysAfter: 0 }, [], "2027-08-01").endsOn).toBe("2027-08-02");
  });
});

test("a loan that ends before it starts is refused", () => {
  expect(() => busyRange({ ...loan, endsOn: loan.startsOn })).toThrow(RangeError);
  expect(() => busyRange({ ...loan, daysBefore: Number.NaN })).toThrow(RangeError);
});

const weighing = (kind: "organ" | "body region" | "whole body", massKg: number | null) => ({
  kind,
  massKg,
  mountedMassKg: null,
});

test.each([
  ["an organ of 1 kg", weighing("organ", 1), "small", 14],
  ["an organ of 25 kg", weighing("organ", 25), "small", 14],
  ["an organ of 26 kg", weighing("organ", 26), "crate", 30],
  ["an organ that nobody has weighed", weighing("organ", null), "crate", 30],
  ["a body region", weighing("body region", 8), "crate", 30],
  ["a whole body", weighing("whole body", 80), "whole body", 60],
] as const)("%s travels as %s and takes its days", (_what, specimen, size, days) => {
  expect(travelSizeOf(specimen)).toBe(size);
  expect(buffersFor([weighing("organ", 1), specimen], bufferDaysOf(defaultPractice))).toEqual({
    daysBefore: days,
    daysAfter: days,
  });
});

test("busy days grow with the days around and never shrink the loan", () => {
  fc.assert(
    fc.property(
      fc.nat(400),
      fc.integer({ min: 1, max: 400 }),
      fc.nat(90),
      fc.nat(90),
      (offset, length, before, after) => {
        const startsOn = addDays("2027-01-01", offset);
        const endsOn = addDays(startsOn, length);
        const busy = busyRange({ startsOn, endsOn, daysBefore: before, daysAfter: after });
        expect(addDays(busy.startsOn, before)).toBe(startsOn);
        expect(addDays(busy.endsOn, -after)).toBe(endsOn);
      },
    ),
  );
});
