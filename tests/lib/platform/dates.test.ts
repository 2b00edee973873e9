/** Calendar arithmetic without time zones: a day is a day, leap years included. */
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  addDays,
  DateText,
  daysBetween,
  isToCome,
  rangesOverlap,
  toDate,
  toDateText,
} from "#lib/platform/dates.ts";

test.each([
  ["2027-02-28", 1, "2027-03-01"],
  ["2028-02-28", 1, "2028-02-29"],
  ["2027-03-28", 1, "2027-03-29"],
  ["2027-01-01", -1, "2026-12-31"],
])("%s and %i days is %s", (from, days, to) => {
  expect(addDays(from, days)).toBe(to);
  expect(daysBetween(from, to)).toBe(days);
});

test.each(["2027-02-29", "2027-13-01", "1.2.2027", "", "2027-2-1"])("%s is not a date", (text) => {
  expect(DateText.safeParse(text).success).toBe(false);
});

const day = fc.integer({ min: -20_000, max: 40_000 }).map((n) => toDateText(new Date(n * 86_400_000)));

test("a date survives the way into the database and back", () => {
  fc.assert(fc.property(day, (text) => toDateText(toDate(text)) === text));
});

test("adding days and counting them are inverse", () => {
  fc.assert(
    fc.property(
      day,
      fc.integer({ min: -5000, max: 5000 }),
      (text, days) => daysBetween(text, addDays(text, days)) === days,
    ),
  );
});

test("ranges overlap both ways or not at all, and meeting ends do not", () => {
  fc.assert(
    fc.property(
      day,
      fc.integer({ min: 1, max: 90 }),
      fc.integer({ min: 1, max: 90 }),
      (start, first, second) => {
        const a = { startsOn: start, endsOn: addDays(start, first) };
        const b = { startsOn: a.endsOn, endsOn: addDays(a.endsOn, second) };
        expect(rangesOverlap(a, b)).toBe(false);
        expect(rangesOverlap(b, a)).toBe(false);
        const c = { ...b, startsOn: addDays(b.startsOn, -1) };
        expect(rangesOverlap(a, c)).toBe(true);
        expect(rangesOverlap(c, a)).toBe(true);
      },
    ),
  );
});

test.each([
  ["2026-11-25", "2026-11-25T12:00:00Z", false],
  ["2026-11-26", "2026-11-25T09:59:59Z", true],
  ["2026-11-26", "2026-11-25T10:00:00Z", false],
  ["2026-11-27", "2026-11-25T23:59:59Z", true],
  ["2026-11-26", "2026-11-25T00:00:00Z", true],
  ["2099-01-01", "2026-11-25T12:00:00Z", true],
])("whether %s is still to come at %s everywhere: %s", (day, now, toCome) => {
  expect(isToCome(day, new Date(now))).toBe(toCome);
});
