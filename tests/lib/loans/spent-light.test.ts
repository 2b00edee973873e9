import { expect, test } from "vitest";
import { type PastLoan, spentLxHours } from "#lib/loans/spent-light.ts";

// 100 lx · 8 h · 6 d · 26 weeks = 124 800 lx·h
const halfYear: PastLoan = {
  startsOn: "2026-03-02",
  endsOn: "2026-08-31",
  illuminanceLx: 100,
  hoursOpenPerDay: 8,
  daysOpenPerWeek: 6,
};

test("26 weeks at 100 lx, 8 h on 6 days, are 124 800 lx·h", () => {
  expect(spentLxHours([halfYear], "2026-11-25")).toBe(124_800);
});

test("only the days of the past year count", () => {
  expect(spentLxHours([halfYear], "2027-06-01")).toBe(Math.round((91 * 6 * 8 * 100) / 7));
  expect(spentLxHours([halfYear], "2027-08-31")).toBe(0);
});

test("a loan that still runs counts up to today", () => {
  expect(spentLxHours([halfYear], "2026-03-09")).toBe(4_800);
});

test("a figure that a venue has not stated makes the sum unknown", () => {
  expect(spentLxHours([halfYear, { ...halfYear, hoursOpenPerDay: null }], "2026-11-25")).toBeNull();
  expect(spentLxHours([{ ...halfYear, hoursOpenPerDay: null }], "2028-11-25")).toBe(0);
});

test("no loan is no light", () => {
  expect(spentLxHours([], "2026-11-25")).toBe(0);
});
