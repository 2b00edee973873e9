/** Files of loggers as they come: marks, heads, dates, clocks; and what is refused because it could be read twice. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readLoggerFile, textOfLoggerFile } from "#lib/environment/logger-file.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const asIs = { utcOffsetMinutes: null, dateOrder: null };
const reasonOf = (text: string, said: Parameters<typeof readLoggerFile>[1] = asIs): string => {
  try {
    readLoggerFile(text, said);
    return "read";
  } catch (error) {
    return error instanceof Refusal ? error.reason : String(error);
  }
};

describe("the shapes of loggers", () => {
  test("commas, points, ISO times in UTC, percent", () => {
    const { readings, how } = readLoggerFile(
      "timestamp,Temp (°C),RH %,lux\n2026-01-01T00:00:00Z,20.5,48.0,0\n2026-01-01T01:00:00Z,20.0,50,120\n",
      asIs,
    );
    expect(readings).toEqual([
      {
        at: "2026-01-01T00:00:00.000Z",
        temperatureC: 20.5,
        humidity: 0.48,
        illuminanceLx: 0,
        uvMicrowattPerLumen: null,
      },
      {
        at: "2026-01-01T01:00:00.000Z",
        temperatureC: 20,
        humidity: 0.5,
        illuminanceLx: 120,
        uvMicrowattPerLumen: null,
      },
    ]);
    expect(how).toMatchObject({ separator: ",", decimal: ".", headerLine: 1, humidityUnit: "percent" });
  });

  test("semicolons, decimal commas, lines before the heads, day first, two columns of time, a clock in the head", () => {
    const { readings, how } = readLoggerFile(
      "\ufeffLogger 7;\r\nClock;UTC+01:00\r\nDatum;Zeit;Temperatur °C;rel. Feuchte %\r\n24.12.2025;00:30;19,5;48,2\r\n24.12.2025;01:00;19,4;---\r\n",
      asIs,
    );
    expect(readings.map(({ at, humidity }) => [at, humidity])).toEqual([
      ["2025-12-23T23:30:00.000Z", 0.482],
      ["2025-12-24T00:00:00.000Z", null],
    ]);
    expect(how).toMatchObject({
      separator: ";",
      decimal: ",",
      headerLine: 3,
      dateOrder: "day first",
      utcOffsetMinutes: 60,
    });
  });

  test("tabs, quoted cells, twelve-hour clock, degrees Fahrenheit, fractions", () => {
    const { readings, how } = readLoggerFile(
      '"Date Time, GMT+00:00"\t"Temp, °F"\t"RH"\n"01/31/2026 11:30 PM"\t"68"\t"0.45"\n"02/01/2026 12:00 AM"\t"50"\t"0.46"\n',
      asIs,
    );
    expect(readings.map(({ at, temperatureC, humidity }) => [at, temperatureC, humidity])).toEqual([
      ["2026-01-31T23:30:00.000Z", 20, 0.45],
      ["2026-02-01T00:00:00.000Z", 10, 0.46],
    ]);
    expect(how).toMatchObject({
      separator: "tab",
      dateOrder: "month first",
      humidityUnit: "fraction",
      temperatureUnit: "°F",
    });
  });

  test("rows out of order and twice, impossible readings and lines without one are told and not kept", () => {
    const { readings, how } = readLoggerFile(
      "time,temperature °C\n2026-01-02T00:00Z,20\n2026-01-01T00:00Z,19\n2026-01-01T00:00Z,18\n2026-01-03T00:00Z,-999\n2026-01-04T00:00Z,95\n",
      { utcOffsetMinutes: null, dateOrder: null },
    );
    expect(readings.map(({ temperatureC }) => temperatureC)).toEqual([19, 20]);
    expect(how.passedOver).toEqual({ withoutReading: 1, impossible: 1, twice: 1 });
  });

  test("bytes of UTF-8, of UTF-16 and of the western code page give the same head", () => {
    const head = "Temp °C";
    const wide = new Uint8Array([0xff, 0xfe, ...[...head].flatMap((letter) => [letter.charCodeAt(0), 0])]);
    const western = new Uint8Array([...head].map((letter) => letter.charCodeAt(0)));
    for (const bytes of [wide, western, new TextEncoder().encode(head)])
      expect(textOfLoggerFile(bytes).replace(/^\ufeff/, "")).toBe(head);
  });
});

describe("what could be read in two ways is refused", () => {
  const rows = (...lines: string[]) => `${lines.join("\n")}\n`;
  test.each([
    ["no heads", rows("2026-01-01T00:00Z,20,48", "2026-01-01T01:00Z,20,48"), "logger.no-table"],
    ["prose", "Dear registrar,\nthe room is fine.\n", "logger.no-table"],
    [
      "two temperatures",
      rows("time,temp 1 °C,temp 2 °C", "2026-01-01T00:00Z,20,21", "2026-01-01T01:00Z,20,21"),
      "logger.two-columns",
    ],
    [
      "both decimal marks",
      rows("time;temp °C", "2026-01-01T00:00Z;20,5", "2026-01-01T01:00Z;20.5"),
      "logger.two-decimal-marks",
    ],
    ["one reading", rows("time,temp °C", "2026-01-01T00:00Z,20"), "logger.too-few"],
    [
      "warm without a unit",
      rows("time,temp", "2026-01-01T00:00Z,68", "2026-01-01T01:00Z,69"),
      "logger.temperature-unit",
    ],
    [
      "percent that are fractions",
      rows("time,RH %", "2026-01-01T00:00Z,0.45", "2026-01-01T01:00Z,0.5"),
      "logger.humidity-unit",
    ],
    ["no clock", rows("time,temp °C", "2026-01-01 00:00,20", "2026-01-01 01:00,20"), "logger.offset-unknown"],
    [
      "days below thirteen",
      rows("time UTC,temp °C", "01/02/2026 00:00,20", "02/02/2026 01:00,20"),
      "logger.date-order",
    ],
    [
      "a time that is none",
      rows("time,temp °C", "2026-01-01T25:00Z,20", "2026-01-01T01:00Z,20"),
      "logger.time-unreadable",
    ],
    [
      "a clock that was lost",
      rows("time,temp °C", "2000-01-01T00:00Z,20", "2000-01-01T01:00Z,20"),
      "logger.clock-reset",
    ],
  ])("%s", (_what, text, reason) => {
    expect(reasonOf(text)).toBe(reason);
  });

  test("what somebody says settles it", () => {
    const text = rows("time,temp °C", "01/02/2026 00:00,20", "02/02/2026 01:00,20");
    const { readings } = readLoggerFile(text, { utcOffsetMinutes: 120, dateOrder: "day first" });
    expect(readings[0]?.at).toBe("2026-01-31T22:00:00.000Z");
  });
});

test("whatever a logger wrote is read as it was, with any marks", () => {
  const reading = fc.record({
    temperatureC: fc.integer({ min: -300, max: 400 }).map((tenth) => tenth / 10),
    percent: fc.integer({ min: 20, max: 1000 }).map((tenth) => tenth / 10),
  });
  const marks = fc.constantFrom<readonly [string, string]>([";", ","], [";", "."], ["\t", ","], [",", "."]);
  fc.assert(
    fc.property(
      fc.array(reading, { minLength: 2, maxLength: 40 }),
      marks,
      (written, [separator, decimal]) => {
        const number = (value: number) => value.toFixed(1).replace(".", decimal);
        // One reading that is surely a percentage keeps the unit from being in doubt.
        const all = [{ temperatureC: 20, percent: 50 }, ...written];
        const lines = all.map(({ temperatureC, percent }, at) => {
          const time = new Date(Date.UTC(2026, 0, 1, at)).toISOString();
          return [time, number(temperatureC), number(percent)].join(separator);
        });
        const text = [["time", "Temp °C", "RH %"].join(separator), ...lines].join("\r\n");
        const { readings, how } = readLoggerFile(text, asIs);
        expect(readings.map(({ temperatureC, humidity }) => [temperatureC, humidity])).toEqual(
          all.map(({ temperatureC, percent }) => [temperatureC, Math.round(percent * 1000) / 1e5]),
        );
        expect(how.decimal).toBe(decimal);
      },
    ),
  );
});
