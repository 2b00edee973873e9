import fc from "fast-check";
import { expect, test } from "vitest";
import { daysToBeHad, stripWindow } from "#app/(signed-in)/specimens/strip-window.ts";
import { addDays, daysBetween } from "#lib/platform/dates.ts";

const today = "2027-01-15";
const lines = [
  { upToKg: 25, before: 14, after: 14 },
  { before: 30, after: 20 },
];

test.each([
  ["nothing was looked for", null, "2027-01-15", "2029-01-14"],
  ["days were", { startsOn: "2027-06-01", endsOn: "2027-07-01" }, "2027-05-02", "2027-07-21"],
  [
    "the days around begin in the past",
    { startsOn: "2027-02-01", endsOn: "2027-02-08" },
    "2027-01-15",
    "2027-02-28",
  ],
  ["the days are past", { startsOn: "2026-02-01", endsOn: "2026-02-08" }, "2027-01-15", "2029-01-14"],
  ["very many days were", { startsOn: "2027-06-01", endsOn: "2400-01-01" }, "2027-05-02", "2030-05-01"],
])("where %s", (_what, asked, from, until) =>
  expect(stripWindow(today, asked, lines)).toEqual({ from, until }),
);

test("a strip has days, begins today at the earliest and is never too long", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -2_000, max: 9_000 }),
      fc.integer({ min: 1, max: 9_000 }),
      (start, days) => {
        const startsOn = addDays(today, start);
        const { from, until } = stripWindow(today, { startsOn, endsOn: addDays(startsOn, days) }, lines);
        expect(from >= today).toBe(true);
        expect(daysBetween(from, until)).toBeGreaterThan(0);
        expect(daysBetween(from, until)).toBeLessThanOrEqual(3 * 365);
      },
    ),
  );
});

const window = { from: today, until: "2029-01-14" };
const around = { before: 14, after: 20 };
test.each([
  ["the days before are taken off from today", today, "2027-06-01", "2027-01-29", "2027-05-12"],
  ["and between two loans on both sides", "2027-03-01", "2027-06-01", "2027-03-15", "2027-05-12"],
  ["where only the window ends nothing is taken off", "2027-03-01", "2029-02-03", "2027-03-15", "2029-01-14"],
])("of free days, %s", (_what, startsOn, endsOn, first, last) => {
  expect(daysToBeHad([{ startsOn, endsOn }], window, around)).toEqual([{ startsOn: first, endsOn: last }]);
});

test("free days that the days around fill are none to be had", () => {
  const filled = [{ startsOn: "2027-03-01", endsOn: addDays("2027-03-01", 34) }];
  expect(daysToBeHad(filled, window, around)).toEqual([]);
});
