/** Moist air against the tables of the ASHRAE handbook and against an independent library. */
import { createRequire } from "node:module";
import { describe, expect, test } from "vitest";
import {
  absoluteHumidityGPerM3,
  dewPointC,
  enthalpyKjPerKg,
  humidityFromDewPoint,
  humidityFromWetBulb,
  humidityRatio,
  saturationPressurePa,
  specificVolumeM3PerKg,
  standardPressurePa,
  vapourPressureDeficitPa,
  wetBulbC,
} from "#lib/environment/air.ts";

/** The parts of the package `psychrolib` used here; it ships no types. Humidity is a fraction. */
type Psychrometrics = {
  SI: unknown;
  SetUnitSystem(system: unknown): void;
  GetSatVapPres(temperatureC: number): number;
  GetTDewPointFromRelHum(temperatureC: number, humidity: number): number;
  GetHumRatioFromRelHum(temperatureC: number, humidity: number, pressurePa: number): number;
  GetTWetBulbFromRelHum(temperatureC: number, humidity: number, pressurePa: number): number;
  GetMoistAirEnthalpy(temperatureC: number, ratio: number): number;
  GetMoistAirVolume(temperatureC: number, ratio: number, pressurePa: number): number;
  GetVaporPressureDeficit(temperatureC: number, ratio: number, pressurePa: number): number;
};
const reference = createRequire(import.meta.url)("psychrolib") as Psychrometrics;
reference.SetUnitSystem(reference.SI);

const relative = (actual: number, expected: number) => Math.abs(actual / expected - 1);

// ASHRAE Handbook, Fundamentals 2017, chapter 1, table 3; tolerance 300 ppm as the table is printed.
// Read in the tests of an open psychrometric library that quotes the table.
describe("ASHRAE table 3, saturation pressure in Pa", () => {
  test.each([
    [-20, 103.24],
    [-5, 401.74],
    [5, 872.6],
    [25, 3169.7],
    [50, 12351.3],
    [100, 101418.0],
    [150, 476101.4],
  ])("at %d °C it is %d Pa", (temperatureC, pa) => {
    expect(relative(saturationPressurePa(temperatureC), pa)).toBeLessThan(3e-4);
  });

  test("at −60 °C it is 1.08 Pa, within the last printed digit", () => {
    expect(Math.abs(saturationPressurePa(-60) - 1.08)).toBeLessThan(0.01);
  });
});

// The same table at two more temperatures, from memory; the same 300 ppm.
describe("ASHRAE table 3, from memory", () => {
  test.each([
    [0, 611.2],
    [20, 2338.9],
  ])("at %d °C it is %d Pa", (temperatureC, pa) => {
    expect(relative(saturationPressurePa(temperatureC), pa)).toBeLessThan(3e-4);
  });
});

// ASHRAE Handbook, Fundamentals 2017, chapter 1, table 2, at 101 325 Pa; the tolerance is what the
// simplified equation of the humidity ratio needs against the table (no enhancement factor).
describe("ASHRAE table 2, saturation humidity ratio in kg/kg", () => {
  test.each([
    [-20, 0.0006373, 0.01],
    [-5, 0.0024863, 0.005],
    [5, 0.005425, 0.005],
    [25, 0.020173, 0.005],
    [50, 0.086863, 0.01],
  ])("at %d °C it is %d", (temperatureC, ratio, tolerance) => {
    expect(relative(humidityRatio(temperatureC, 1), ratio)).toBeLessThan(tolerance);
  });
});

// ASHRAE Handbook, Fundamentals 2017, chapter 1, example 1: 40 °C dry, 20 °C wet, 101.325 kPa.
// The handbook reads a chart: tolerances of a chart reading, 0.5 K for the dew point.
describe("ASHRAE example 1", () => {
  const humidity = humidityFromWetBulb(40, 20);
  test("the relative humidity is 14 %", () => expect(Math.abs(humidity - 0.14)).toBeLessThan(0.01));
  test("the humidity ratio is 6.5 g/kg", () =>
    expect(Math.abs(1000 * humidityRatio(40, humidity) - 6.5)).toBeLessThan(0.1));
  test("the dew point is 7 °C", () => expect(Math.abs(dewPointC(40, humidity) - 7)).toBeLessThan(0.5));
  test("the enthalpy is 56.7 kJ/kg", () =>
    expect(Math.abs(enthalpyKjPerKg(40, humidity) - 56.7)).toBeLessThan(0.1));
  test("the volume is 0.896 m³/kg", () =>
    expect(Math.abs(specificVolumeM3PerKg(40, humidity) - 0.896)).toBeLessThan(0.001));
});

// Values printed in the source and the tests of an open psychrometric library, with its tolerances.
describe("printed single values", () => {
  test("the dew point of 25 °C at 80 % is 21.3094 °C", () =>
    expect(Math.abs(dewPointC(25, 0.8) - 21.3094)).toBeLessThan(1e-3));
  test("the wet bulb of 7 °C at 61 % and 100 kPa is 3.92667 °C within 0.1 %", () =>
    expect(relative(wetBulbC(7, 0.61, 100_000), 3.92667)).toBeLessThan(1e-3));
  test("30 °C with 25 °C wet at 95 461 Pa holds 0.01922813 kg/kg", () => {
    const humidity = humidityFromWetBulb(30, 25, 95_461);
    expect(relative(humidityRatio(30, humidity, 95_461), 0.0192281274241096)).toBeLessThan(3e-4);
  });
  test("−1 °C with −5 °C wet at 95 461 Pa holds 0.00120400 kg/kg", () => {
    const humidity = humidityFromWetBulb(-1, -5, 95_461);
    expect(relative(humidityRatio(-1, humidity, 95_461), 0.001204)).toBeLessThan(3e-4);
  });
  test.each([
    [500, 95_461],
    [1000, 89_875],
    [4000, 61_640],
  ])("the standard pressure at %d m is %d Pa", (altitudeM, pa) => {
    expect(Math.abs(standardPressurePa(altitudeM) - pa)).toBeLessThan(1);
  });
});

// From memory of the handbook's tables and chart.
describe("dew points from memory", () => {
  test("20 °C at 50 % gives 9.3 °C", () => expect(Math.abs(dewPointC(20, 0.5) - 9.3)).toBeLessThan(0.05));
  test("25 °C at 60 % gives 16.7 °C", () => expect(Math.abs(dewPointC(25, 0.6) - 16.7)).toBeLessThan(0.05));
});

// Worked from the published equations separately, 101 325 Pa; tolerance 0.001 K and the last digit.
describe("worked rows", () => {
  test.each([
    [25, 0.8, 21.3094, 15.9618, 22.3803, 18.426],
    [20, 0.5, 9.2724, 7.2617, 13.7834, 8.644],
    [21, 0.5, 10.1914, 7.7297, 14.6045, 9.163],
    [18, 0.5, 7.4333, 6.4006, 12.1404, 7.682],
    [25, 0.6, 16.7011, 11.895, 19.4711, 13.82],
    [0, 0.5, -8.1636, 1.8813, -2.9752, 2.424],
  ])("%d °C at %d", (temperatureC, humidity, dewPoint, gPerKg, wetBulb, gPerM3) => {
    expect(Math.abs(dewPointC(temperatureC, humidity) - dewPoint)).toBeLessThan(1e-3);
    expect(Math.abs(1000 * humidityRatio(temperatureC, humidity) - gPerKg)).toBeLessThan(1e-4);
    expect(Math.abs(wetBulbC(temperatureC, humidity) - wetBulb)).toBeLessThan(1e-3);
    expect(Math.abs(absoluteHumidityGPerM3(temperatureC, humidity) - gPerM3)).toBeLessThan(1e-3);
  });
});

describe("an independent library agrees over the whole field", () => {
  const field = [-30, -12, -3, 0, 0.5, 8, 18, 24, 35, 50].flatMap((temperatureC) =>
    [0.05, 0.3, 0.55, 0.8, 1].map((humidity) => [temperatureC, humidity] as const),
  );
  test.each(field)("at %d °C and %d", (temperatureC, humidity) => {
    const pressurePa = 98_000;
    const ratio = reference.GetHumRatioFromRelHum(temperatureC, humidity, pressurePa);
    expect(relative(saturationPressurePa(temperatureC), reference.GetSatVapPres(temperatureC))).toBeLessThan(
      1e-12,
    );
    expect(
      Math.abs(dewPointC(temperatureC, humidity) - reference.GetTDewPointFromRelHum(temperatureC, humidity)),
    ).toBeLessThan(2e-3);
    expect(relative(humidityRatio(temperatureC, humidity, pressurePa), ratio)).toBeLessThan(1e-9);
    expect(
      Math.abs(
        wetBulbC(temperatureC, humidity, pressurePa) -
          reference.GetTWetBulbFromRelHum(temperatureC, humidity, pressurePa),
      ),
    ).toBeLessThan(2e-3);
    expect(
      Math.abs(
        enthalpyKjPerKg(temperatureC, humidity, pressurePa) -
          reference.GetMoistAirEnthalpy(temperatureC, ratio) / 1000,
      ),
    ).toBeLessThan(1e-6);
    expect(
      relative(
        specificVolumeM3PerKg(temperatureC, humidity, pressurePa),
        reference.GetMoistAirVolume(temperatureC, ratio, pressurePa),
      ),
    ).toBeLessThan(1e-6);
    expect(
      Math.abs(
        vapourPressureDeficitPa(temperatureC, humidity) -
          reference.GetVaporPressureDeficit(temperatureC, ratio, pressurePa),
      ),
    ).toBeLessThan(1e-6);
    expect(humidityFromDewPoint(temperatureC, dewPointC(temperatureC, humidity))).toBeCloseTo(humidity, 6);
  });
});
