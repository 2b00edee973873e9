/** Heads of many loggers, and what they were taken for. */
import { expect, test } from "vitest";
import { columnsOf } from "#lib/environment/logger-columns.ts";
import { Refusal } from "#lib/platform/refusal.ts";

test.each([
  ["time,temperature,humidity", [0], ["temperature", "humidity"]],
  ["Date,Time,Temp (°C),RH (%),Dew point (°C)", [0, 1], ["temperature", "humidity"]],
  ["Datum,Uhrzeit,Temperatur °C,Feuchte %,Taupunkt", [0, 1], ["temperature", "humidity"]],
  ["Zeit,Beleuchtung lx,UV µW/lm", [0], ["light", "ultraviolet"]],
  ["Timestamp UTC,Celsius(°C),Humidity(%rh),Battery", [0], ["temperature", "humidity"]],
  ["#,Date Time GMT+01:00,Temp °C,Intensity lux", [1], ["temperature", "light"]],
])("%s", (line, clock, quantities) => {
  const columns = columnsOf(line.split(","));
  expect(columns?.clock).toEqual(clock);
  expect(columns?.quantities.map(({ quantity }) => quantity)).toEqual(quantities);
});

test("a line without a time or without a quantity is no line of heads", () => {
  for (const line of ["Logger;7", "Interval;30 min", "Date;Time", "Temp;RH"])
    expect(columnsOf(line.split(";"))).toBeNull();
});

test("two columns of one quantity are refused with their heads", () => {
  expect(() => columnsOf(["time", "Temp A", "Temp B"])).toThrow(Refusal);
  expect(() => columnsOf(["time", "Temp A", "Temp B"])).toThrow(
    expect.objectContaining({ parameters: { heads: "Temp A, Temp B" } }),
  );
});
