/** Readings against limits: hours outside, change within a day, gaps, light; and what always holds. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { limitsFor } from "#lib/environment/limits.ts";
import type { LoggerReadingRow } from "#lib/environment/logger-file.ts";
import {
  defaultLimits,
  gapsOf,
  judgeReadings,
  rangesWithin24h,
  readingLimitsOf,
  thinnedCurve,
} from "#lib/environment/logger-judgement.ts";

const hourMs = 3_600_000;
const start = Date.UTC(2026, 0, 1);
const reading = (hour: number, said: Partial<LoggerReadingRow>): LoggerReadingRow => ({
  at: new Date(start + hour * hourMs).toISOString(),
  temperatureC: null,
  humidity: null,
  illuminanceLx: null,
  uvMicrowattPerLumen: null,
  ...said,
});
const hourly = (count: number, said: (hour: number) => Partial<LoggerReadingRow>) =>
  Array.from({ length: count }, (_, hour) => reading(hour, said(hour)));
const lineOf = (readings: LoggerReadingRow[], quantity: string) =>
  judgeReadings(readings, defaultLimits).lines.find((line) => line.quantity === quantity);

describe("against the default limits", () => {
  test("a steady room is clear", () => {
    const judged = judgeReadings(
      hourly(48, () => ({ temperatureC: 20, humidity: 0.5, illuminanceLx: 50 })),
      defaultLimits,
    );
    expect(judged).toMatchObject({ outcome: "clear", gaps: [], hoursRead: 47, lightLxHours: 47 * 50 });
  });

  test("hours outside are those of the readings that begin them", () => {
    const readings = hourly(24, (hour) => ({ temperatureC: hour >= 10 && hour < 13 ? 27 : 20 }));
    expect(lineOf(readings, "temperatureC")).toMatchObject({
      outcome: "bar",
      hoursOutsideAlarm: 3,
      highest: 27,
      highestAt: readings[10]?.at,
    });
  });

  test("a gap of more than two hours counts against the record, and nothing is known of it", () => {
    const readings = [...hourly(3, () => ({ temperatureC: 30 })), reading(10, { temperatureC: 20 })];
    expect(gapsOf(readings)).toEqual([{ from: readings[2]?.at, until: readings[3]?.at, hours: 8 }]);
    expect(lineOf(readings, "temperatureC")?.hoursOutsideAlarm).toBe(2);
    expect(judgeReadings(readings, defaultLimits)).toMatchObject({ gapHours: 8, hoursRead: 2 });
  });

  test("two hours between readings are no gap", () => {
    expect(gapsOf([reading(0, {}), reading(2, {})])).toEqual([]);
  });
});

test("the limits of a specimen warn before they alarm", () => {
  const limits = readingLimitsOf(limitsFor("bone"));
  const judged = judgeReadings(
    hourly(10, () => ({ humidity: 0.62 })),
    limits,
  );
  expect(judged.lines[0]).toMatchObject({ outcome: "attend", hoursOutsideWarn: 9, hoursOutsideAlarm: 0 });
});

test("specimens that have no band in common are outside all the time", () => {
  const limits = { ...defaultLimits, humidity: { warn: null, alarm: null } };
  const readings = hourly(3, () => ({ humidity: 0.5 }));
  expect(judgeReadings(readings, limits).lines[0]).toMatchObject({ outcome: "bar", hoursOutsideAlarm: 2 });
});

test("a record without readings is refused", () => {
  expect(() => judgeReadings([], defaultLimits)).toThrow(RangeError);
});

const values = fc.array(
  fc.tuple(fc.double({ min: 0.2, max: 6, noNaN: true }), fc.integer({ min: 0, max: 100 })),
  {
    minLength: 1,
    maxLength: 60,
  },
);

test("the range within 24 hours is what a search of every pair finds", () => {
  fc.assert(
    fc.property(values, (steps) => {
      let ms = 0;
      const points = steps.map(([hours, value]) => {
        ms += hours * hourMs;
        return { ms, value };
      });
      const searched = points.map((end, index) => {
        const within = points.slice(0, index + 1).filter((point) => end.ms - point.ms <= 24 * hourMs);
        return Math.max(...within.map(({ value }) => value)) - Math.min(...within.map(({ value }) => value));
      });
      expect(rangesWithin24h(points)).toEqual(searched);
    }),
  );
});

test("hours read and hours in gaps are the whole, hours outside are never more, and a wider band never judges worse", () => {
  fc.assert(
    fc.property(values, (steps) => {
      let hour = 0;
      const readings = steps.map(([hours, value]) => {
        hour += hours;
        return reading(hour, { humidity: value / 100 });
      });
      const judged = judgeReadings(readings, defaultLimits);
      const [first, last] = [readings[0]?.at ?? "", readings.at(-1)?.at ?? ""];
      const whole = (Date.parse(last) - Date.parse(first)) / hourMs;
      expect(judged.hoursRead + judged.gapHours).toBeCloseTo(whole, 4);
      const band = judged.lines.find(({ quantity }) => quantity === "humidity");
      expect(band?.hoursOutsideWarn ?? 0).toBeLessThanOrEqual(judged.hoursRead + 1e-4);
      const wide = judgeReadings(readings, {
        ...defaultLimits,
        humidity: { warn: { low: 0, high: 1 }, alarm: { low: 0, high: 1 } },
      }).lines.find(({ quantity }) => quantity === "humidity");
      expect(wide).toMatchObject({ outcome: "clear", hoursOutsideAlarm: 0 });
    }),
  );
});

test("a thinned curve keeps the lowest and the highest, in order of time, in no more stretches than asked", () => {
  fc.assert(
    fc.property(values, fc.integer({ min: 1, max: 30 }), (steps, most) => {
      let hour = 0;
      const readings = steps.map(([hours, value]) => {
        hour += hours;
        return reading(hour, { temperatureC: value });
      });
      const curve = thinnedCurve(readings, "temperatureC", most);
      const all = steps.map(([, value]) => value);
      expect(Math.min(...curve.map(({ low }) => low))).toBe(Math.min(...all));
      expect(Math.max(...curve.map(({ high }) => high))).toBe(Math.max(...all));
      expect(curve.length).toBeLessThanOrEqual(most);
      expect(curve.map(({ at }) => at)).toEqual(curve.map(({ at }) => at).sort());
    }),
  );
});
