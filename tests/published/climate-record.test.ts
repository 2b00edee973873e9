/** Readings of loggers against published limits. */
import { expect, test } from "vitest";
import { defaultLimits, judgeReadings } from "#lib/environment/logger-judgement.ts";

// Green protocol of the Bizot Group, refreshed September 2023: 16–25 °C, 40–60 % RH, at most 10 % RH in 24 hours.
// The case is derived: from 48 to 59 % within 20 hours is + 11 %, which is too quick though inside the band.
test("humidity that rises from 48 to 59 % within 20 hours is an excursion inside 40–60 %", () => {
  const readings = [0, 20].flatMap((from) =>
    [0, 1].map((hour) => ({
      at: new Date(Date.UTC(2027, 0, 1, from === 0 ? hour : from - 1 + hour)).toISOString(),
      temperatureC: 20,
      humidity: from === 0 ? 0.48 : 0.59,
      illuminanceLx: null,
      uvMicrowattPerLumen: null,
    })),
  );
  const { lines } = judgeReadings(readings, defaultLimits);
  const line = (quantity: string) => lines.find((one) => one.quantity === quantity);
  expect(line("humidity")).toMatchObject({ outcome: "clear", hoursOutsideAlarm: 0 });
  expect(line("humidityChange24h")).toMatchObject({ outcome: "bar", highest: 0.11 });
});

// The same source: a change of 10 % is the most that is allowed.
test("a change of exactly 10 % within a day is none", () => {
  const readings = [0.48, 0.58].map((humidity, day) => ({
    at: new Date(Date.UTC(2027, 0, 1, day * 20)).toISOString(),
    temperatureC: null,
    humidity,
    illuminanceLx: null,
    uvMicrowattPerLumen: null,
  }));
  const { lines } = judgeReadings(readings, defaultLimits);
  expect(lines.find(({ quantity }) => quantity === "humidityChange24h")?.outcome).toBe("clear");
});
