import { expect, test } from "vitest";
import {
  easterSunday,
  isHoliday,
  isNoTravelDay,
  travelDayFrom,
  travelDayUntil,
} from "#lib/loans/no-travel-days.ts";

test.each([
  [1818, "1818-03-22"],
  [1943, "1943-04-25"],
  [2024, "2024-03-31"],
  [2025, "2025-04-20"],
  [2026, "2026-04-05"],
  [2027, "2027-03-28"],
  [2028, "2028-04-16"],
  [2038, "2038-04-25"],
])("Easter of %s is on %s", (year, day) => {
  expect(easterSunday(year)).toBe(day);
});

test("a year that the rule does not know is refused", () => {
  expect(() => easterSunday(1500)).toThrow(RangeError);
  expect(() => easterSunday(Number.NaN)).toThrow(RangeError);
});

test.each([
  ["a Saturday", "2027-05-15", "FI", true],
  ["a Monday", "2027-05-17", "FI", false],
  ["17 May in Norway", "2027-05-17", "NO", true],
  ["Whit Monday in Denmark, 2027", "2027-05-17", "DK", true],
  ["Good Friday in Finland, 2027", "2027-03-26", "FI", true],
  ["Independence Day of Finland", "2027-12-06", "FI", true],
  ["a holiday of a country that is not listed", "2027-07-01", "CA", false],
] as const)("%s: no travel is %s", (_what, day, country, isNone) => {
  expect(isNoTravelDay(day, country)).toBe(isNone);
});

test("over Christmas in Finland nothing leaves between 23 and 27 December 2027", () => {
  expect(travelDayUntil("2027-12-26", "FI")).toBe("2027-12-23");
  expect(travelDayFrom("2027-12-24", "FI")).toBe("2027-12-27");
  expect(isHoliday("2027-12-24", "GB")).toBe(false);
});
