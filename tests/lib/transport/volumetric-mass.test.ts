import fc from "fast-check";
import { expect, test } from "vitest";
import { volumetricMass, volumetricMassKg } from "#lib/transport/volumetric-mass.ts";

const outer = { lengthMm: 1200, widthMm: 800, heightMm: 1000 };

test("the larger of gross and volumetric mass is charged, up to the half kilogram", () => {
  expect(volumetricMass({ outer, grossMassKg: 90 })).toEqual({
    volumetricMassKg: 160,
    chargeableMassKg: 160,
  });
  expect(volumetricMass({ outer, grossMassKg: 160.01 }).chargeableMassKg).toBe(160.5);
});

test("a parcel divisor charges more", () => {
  expect(volumetricMass({ outer, grossMassKg: 90, divisorCm3PerKg: 5000 }).volumetricMassKg).toBe(192);
});

test("the charge is at least both masses and less than half a kilogram above the larger", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 2000, noNaN: true }),
      fc.integer({ min: 100, max: 3000 }),
      (grossMassKg, lengthMm) => {
        const found = volumetricMass({ outer: { ...outer, lengthMm }, grossMassKg });
        const largerKg = Math.max(grossMassKg, found.volumetricMassKg);
        expect(found.chargeableMassKg).toBeGreaterThanOrEqual(largerKg - 1e-6);
        expect(found.chargeableMassKg).toBeLessThan(largerKg + 0.5);
      },
    ),
  );
});

test("a divisor of nothing is out of range", () => {
  expect(() => volumetricMassKg(outer, 0)).toThrow(RangeError);
});
