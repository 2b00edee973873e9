import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { kineticTemperature, meanKineticTemperatureC } from "#lib/environment/kinetic-temperature.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const span = fc.record({
  temperatureC: fc.double({ min: -40, max: 60, noNaN: true }),
  hours: fc.double({ min: 0.1, max: 1000, noNaN: true }),
});
const record = fc.array(span, { minLength: 1, maxLength: 50 });

function meanOf(spans: readonly { temperatureC: number; hours: number }[]): number {
  const hours = spans.reduce((sum, one) => sum + one.hours, 0);
  return spans.reduce((sum, one) => sum + one.hours * one.temperatureC, 0) / hours;
}

describe("mean kinetic temperature", () => {
  test("lies between the mean and the highest reading", () => {
    // The mean is a lower bound where the exponential is convex, far below ΔH/2R.
    fc.assert(
      fc.property(record, (spans) => {
        const kinetic = meanKineticTemperatureC(spans);
        expect(kinetic).toBeGreaterThanOrEqual(meanOf(spans) - 1e-9);
        expect(kinetic).toBeLessThanOrEqual(Math.max(...spans.map((one) => one.temperatureC)) + 1e-9);
      }),
    );
  });

  test("of one steady temperature is that temperature", () => {
    fc.assert(
      fc.property(span, (one) => {
        expect(meanKineticTemperatureC([one, one, one])).toBeCloseTo(one.temperatureC, 9);
      }),
    );
  });

  test("does not depend on the order or on the unit of time", () => {
    fc.assert(
      fc.property(record, (spans) => {
        const minutes = spans.map((one) => ({ ...one, hours: one.hours * 60 })).reverse();
        expect(meanKineticTemperatureC(minutes)).toBeCloseTo(meanKineticTemperatureC(spans), 9);
      }),
    );
  });

  test("survives an activation energy whose exponentials would all underflow", () => {
    const spans = [
      { temperatureC: -60, hours: 1 },
      { temperatureC: -50, hours: 1 },
    ];
    expect(Math.exp(-2500 / 8.3144e-3 / 223.15)).toBe(0);
    const kinetic = meanKineticTemperatureC(spans, 2500);
    expect(kinetic).toBeGreaterThan(-50.2);
    expect(kinetic).toBeLessThan(-50);
  });

  test("ignores a reading that stands for no time", () => {
    const spans = [
      { temperatureC: 20, hours: 1 },
      { temperatureC: 90, hours: 0 },
    ];
    expect(meanKineticTemperatureC(spans)).toBeCloseTo(20, 9);
  });

  test.each([
    [[]],
    [[{ temperatureC: 20, hours: 0 }]],
    [[{ temperatureC: -273.15, hours: 1 }]],
    [[{ temperatureC: Number.NaN, hours: 1 }]],
    [[{ temperatureC: 20, hours: -1 }]],
    [[{ temperatureC: 20, hours: Number.NaN }]],
  ])("refuses %j", (spans) => expect(() => meanKineticTemperatureC(spans)).toThrow(RangeError));

  test("refuses an activation energy of nothing", () =>
    expect(() => meanKineticTemperatureC([{ temperatureC: 20, hours: 1 }], 0)).toThrow(RangeError));
});

describe("the working", () => {
  test("shows mean, highest and kinetic temperature", () => {
    const spans = [
      { temperatureC: 20, hours: 6 },
      { temperatureC: 30, hours: 6 },
    ];
    const result = kineticTemperature({ spans });
    expect(result).toMatchObject({ meanTemperatureC: 25, highestTemperatureC: 30, hours: 12 });
    expect(result.kineticTemperatureC).toBe(meanKineticTemperatureC(spans));
  });

  test("refuses an empty record", () => expect(() => kineticTemperature({ spans: [] })).toThrow(Refusal));
});
