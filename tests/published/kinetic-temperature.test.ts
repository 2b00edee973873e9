/**
 * Mean kinetic temperature by the equation of USP 29, chapter 1160 (ΔH 83.144 kJ/mol,
 * R 8.3144e-3 kJ/(mol·K), so ΔH/R = 10 000 K). No public page prints a whole example
 * with its inputs; the rows were worked from the equation separately, to 1e-4.
 */
import { expect, test } from "vitest";
import {
  customaryActivationKjPerMol,
  meanKineticTemperatureC,
} from "#lib/environment/kinetic-temperature.ts";

const equal = (...temperatures: number[]) => temperatures.map((temperatureC) => ({ temperatureC, hours: 1 }));

test("the customary activation energy is 10 000 K times the gas constant", () =>
  expect(customaryActivationKjPerMol / 8.3144e-3).toBeCloseTo(10_000, 9));

test.each([
  [equal(20, 20, 20), 20],
  [equal(20, 30), 26.2599],
  [equal(15, 25), 21.3004],
  [equal(20, 22, 24, 26, 28), 24.421],
  [equal(15, 16, 17, 18, 20, 22, 25, 26, 22, 19, 17, 15), 20.0649],
  [
    [
      { temperatureC: 20, hours: 29 * 24 },
      { temperatureC: 40, hours: 24 },
    ],
    22.0076,
  ],
])("row %#", (spans, expected) => {
  expect(Math.abs(meanKineticTemperatureC(spans) - expected)).toBeLessThan(1e-4);
});
