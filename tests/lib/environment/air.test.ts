import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  absoluteHumidityGPerM3,
  air,
  dewPointC,
  enthalpyKjPerKg,
  humidityFromDewPoint,
  humidityFromWetBulb,
  humidityRatio,
  saturationPressurePa,
  specificVolumeM3PerKg,
  standardPressure,
  standardPressurePa,
  vapourPressureDeficitPa,
  vapourPressurePa,
  wetBulbC,
} from "#lib/environment/air.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const temperature = fc.double({ min: -40, max: 60, noNaN: true });
const humidity = fc.double({ min: 0.01, max: 1, noNaN: true });

describe("properties of moist air", () => {
  test("saturation pressure rises with temperature, across the triple point too", () => {
    fc.assert(
      fc.property(temperature, fc.double({ min: 1e-3, max: 20, noNaN: true }), (temperatureC, step) => {
        expect(saturationPressurePa(temperatureC + step)).toBeGreaterThan(saturationPressurePa(temperatureC));
      }),
    );
    expect(saturationPressurePa(0.011)).toBeGreaterThan(saturationPressurePa(0.01));
  });

  test("the curves over ice and over water meet at the triple point within 10 ppm", () => {
    expect(saturationPressurePa(0.01 + 1e-9) / saturationPressurePa(0.01)).toBeCloseTo(1, 5);
  });

  test("the dew point gives the humidity back", () => {
    fc.assert(
      fc.property(temperature, humidity, (temperatureC, fraction) => {
        const back = humidityFromDewPoint(temperatureC, dewPointC(temperatureC, fraction));
        expect(Math.abs(back / fraction - 1)).toBeLessThan(2e-5);
      }),
    );
  });

  test("the wet bulb gives the humidity back", () => {
    fc.assert(
      fc.property(fc.double({ min: 3, max: 50, noNaN: true }), humidity, (temperatureC, fraction) => {
        const wetBulb = wetBulbC(temperatureC, fraction);
        // At 0 °C the constants change from water to ice and the inverse has a step.
        fc.pre(Math.abs(wetBulb) > 0.01);
        expect(Math.abs(humidityFromWetBulb(temperatureC, wetBulb) - fraction)).toBeLessThan(1e-6);
      }),
    );
  });

  test("dew point, wet bulb and temperature stand in this order and meet in saturated air", () => {
    fc.assert(
      fc.property(temperature, humidity, (temperatureC, fraction) => {
        const dewPoint = dewPointC(temperatureC, fraction);
        const wetBulb = wetBulbC(temperatureC, fraction);
        expect(dewPoint).toBeLessThanOrEqual(wetBulb + 1e-6);
        expect(wetBulb).toBeLessThanOrEqual(temperatureC + 1e-6);
      }),
    );
    expect(dewPointC(18, 1)).toBe(18);
    expect(wetBulbC(18, 1)).toBeCloseTo(18, 6);
  });

  test("more humidity means more water, more heat and a larger volume", () => {
    fc.assert(
      fc.property(temperature, fc.double({ min: 0.01, max: 0.9, noNaN: true }), (temperatureC, fraction) => {
        const more = fraction + 0.1;
        expect(humidityRatio(temperatureC, more)).toBeGreaterThan(humidityRatio(temperatureC, fraction));
        expect(absoluteHumidityGPerM3(temperatureC, more)).toBeGreaterThan(
          absoluteHumidityGPerM3(temperatureC, fraction),
        );
        expect(enthalpyKjPerKg(temperatureC, more)).toBeGreaterThan(enthalpyKjPerKg(temperatureC, fraction));
        expect(specificVolumeM3PerKg(temperatureC, more)).toBeGreaterThan(
          specificVolumeM3PerKg(temperatureC, fraction),
        );
      }),
    );
  });

  test("vapour pressure and deficit add up to saturation", () => {
    fc.assert(
      fc.property(temperature, humidity, (temperatureC, fraction) => {
        const sum =
          vapourPressurePa(temperatureC, fraction) + vapourPressureDeficitPa(temperatureC, fraction);
        expect(sum / saturationPressurePa(temperatureC)).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe("refused figures", () => {
  test.each<[string, () => number]>([
    ["a temperature that is not a number", () => saturationPressurePa(Number.NaN)],
    ["a temperature above the equations", () => saturationPressurePa(201)],
    ["a humidity in percent", () => dewPointC(20, 50)],
    ["a humidity just above one, as some loggers report", () => dewPointC(20, 1.003)],
    ["a dew point of dry air", () => dewPointC(20, 0)],
    ["a dew point below −100 °C", () => dewPointC(-90, 0.01)],
    ["a wet bulb of humidity that is not a number", () => wetBulbC(20, Number.NaN)],
    ["a wet bulb above the temperature", () => humidityFromWetBulb(20, 21)],
    ["a wet bulb that no air has", () => humidityFromWetBulb(40, 5)],
    ["a dew point above the temperature", () => humidityFromDewPoint(20, 21)],
    ["a pressure in kilopascal", () => humidityRatio(20, 0.5, 101.325)],
    ["air that boils", () => humidityRatio(150, 1)],
    ["an altitude above the standard", () => standardPressurePa(20_000)],
  ])("%s", (_what, run) => expect(run).toThrow(RangeError));
});

describe("the working", () => {
  test("gives what the functions give, at standard pressure where none is stated", () => {
    const result = air({ temperatureC: 20, humidity: 0.5 });
    expect(result).toEqual({
      saturationPressurePa: saturationPressurePa(20),
      vapourPressurePa: vapourPressurePa(20, 0.5),
      dewPointC: dewPointC(20, 0.5),
      deposit: "dew",
      wetBulbC: wetBulbC(20, 0.5, standardPressure),
      humidityRatio: humidityRatio(20, 0.5, standardPressure),
      absoluteHumidityGPerM3: absoluteHumidityGPerM3(20, 0.5),
      enthalpyKjPerKg: enthalpyKjPerKg(20, 0.5, standardPressure),
    });
  });

  test("calls it frost below freezing", () =>
    expect(air({ temperatureC: 0, humidity: 0.5 }).deposit).toBe("frost"));

  test("shows its steps with units", () => {
    const { steps, sources, cautions } = air.explain({ temperatureC: 20, humidity: 0.5 });
    expect(steps.find((step) => step.label === "Dew or frost point")).toMatchObject({ unit: "°C" });
    expect(steps).toHaveLength(7);
    expect(sources).toHaveLength(1);
    expect(cautions.length).toBeGreaterThan(0);
  });

  test("refuses a humidity in percent with the field's name", () => {
    const attempt = () => air({ temperatureC: 20, humidity: 50 });
    expect(attempt).toThrow(Refusal);
    try {
      attempt();
    } catch (error) {
      expect((error as Refusal).issues.map((issue) => issue.path)).toEqual(["humidity"]);
    }
  });
});
