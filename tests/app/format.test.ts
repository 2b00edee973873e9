/** Moments on another clock than the universal one, its zone named. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { formatDateShort, formatLocal, formatMoment } from "#app/_words/format.ts";

// Offsets from the time zone database: Oslo UTC+1, in summer UTC+2; Kolkata UTC+5:30; Lima UTC-5; Kiritimati UTC+14.
test.each([
  ["2026-11-25T14:20:00Z", "Europe/Oslo", "15:20 CET"],
  ["2026-07-25T14:20:00Z", "Europe/Oslo", "16:20 CEST"],
  ["2026-11-25T23:30:00Z", "Europe/Oslo", "26 Nov, 00:30 CET"],
  ["2026-11-25T14:20:00Z", "Asia/Kolkata", "19:50 GMT+5:30"],
  ["2026-09-01T03:00:00Z", "America/Lima", "31 Aug, 22:00 GMT-5"],
  ["2026-11-25T10:00:00Z", "Pacific/Kiritimati", "26 Nov, 00:00 GMT+14"],
  ["2026-11-25T14:20:00Z", "Europe/London", null],
  ["2026-07-25T14:20:00Z", "Europe/London", "15:20 BST"],
  ["2026-11-25T14:20:00Z", "UTC", null],
])("%s is in %s: %s", (moment, timeZone, local) => {
  expect(formatLocal(moment, timeZone)).toBe(local);
});

test("a clock that shows universal time adds nothing, whenever it is looked at", () => {
  const moment = fc.date({ min: new Date("1990-01-01"), max: new Date("2100-01-01"), noInvalidDate: true });
  fc.assert(
    fc.property(moment, (date) => {
      expect(formatLocal(date, "Etc/UTC")).toBeNull();
      expect(formatLocal(date, "Africa/Abidjan")).toBeNull();
      expect(formatMoment(date)).toMatch(/UTC$/);
    }),
  );
});

test("a day for a row of a table has its month in short", () => {
  expect(formatDateShort("2026-09-03")).toBe("3 Sep 2026");
  expect(formatDateShort("2027-01-25")).toBe("25 Jan 2027");
});
