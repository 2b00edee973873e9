/** Clocks of loggers: orders of dates, offsets from UTC, days that do not exist. */
import { expect, test } from "vitest";
import { type DateOrder, readClock } from "#lib/environment/logger-clock.ts";

const rows = (...clocks: string[]) => clocks.map((clock, at) => ({ line: at + 2, clock }));
const nothing = { utcOffsetMinutes: null, dateOrder: null };

test.each<[string, string, DateOrder, string]>([
  ["2026-03-01 06:07:08", "UTC", "year first", "2026-03-01T06:07:08.000Z"],
  ["2026/03/01 06:07", "GMT+02:00", "year first", "2026-03-01T04:07:00.000Z"],
  ["13.03.2026 06:07", "UTC-05:00", "day first", "2026-03-13T11:07:00.000Z"],
  ["03/13/26 6:07 PM", "GMT", "month first", "2026-03-13T18:07:00.000Z"],
  ["13/03/2026 12:00 AM", "UTC+05:45", "day first", "2026-03-12T18:15:00.000Z"],
])("%s by %s", (clock, preamble, order, moment) => {
  expect(readClock(rows(clock), preamble, nothing)).toMatchObject({ dateOrder: order, moments: [moment] });
});

test("an offset in the times is taken, and one that changes is refused", () => {
  expect(readClock(rows("2026-01-01T00:00+01:00"), "", nothing).utcOffsetMinutes).toBe(60);
  expect(() => readClock(rows("2026-01-01T00:00+01:00", "2026-07-01T00:00+02:00"), "", nothing)).toThrow(
    expect.objectContaining({ reason: "logger.offset-changes" }),
  );
});

test("what is said against what the file says is refused", () => {
  expect(() =>
    readClock(rows("2026-01-01 00:00"), "UTC+01:00", { utcOffsetMinutes: 0, dateOrder: null }),
  ).toThrow(expect.objectContaining({ reason: "logger.offset-differs" }));
});

test.each(["2026-02-30 10:00", "2026-13-01 10:00", "2026-01-01 24:01", "2026-01-01"])(
  "%s is no moment",
  (clock) => {
    expect(() => readClock(rows(clock), "UTC", nothing)).toThrow(
      expect.objectContaining({ reason: "logger.time-unreadable", parameters: { line: 2, text: clock } }),
    );
  },
);

test("dates that are day first and month first by turns are refused", () => {
  expect(() => readClock(rows("13/01/2026 10:00", "01/13/2026 10:00"), "UTC", nothing)).toThrow(
    expect.objectContaining({ reason: "logger.date-order" }),
  );
});
