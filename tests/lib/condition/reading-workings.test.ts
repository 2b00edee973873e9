/** From one way of telling a colour to the other. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { yellownessIndex } from "#lib/condition/colour.ts";
import { labOfReading, xyzOfReading } from "#lib/condition/reading-workings.ts";
import { Refusal } from "#lib/platform/refusal.ts";

test("the white of the illuminant has the lightness 100 and no hue", () => {
  const lab = labOfReading({ reading: { x: 94.811, y: 100, z: 107.304 } });
  expect(lab.lightness).toBeCloseTo(100, 9);
  expect(lab.a).toBeCloseTo(0, 9);
  expect(lab.b).toBeCloseTo(0, 9);
});

// A sheet after some years, D65/10°; the same figure as among the published checks.
test("a reading in L*a*b* can be asked for its yellowness", () => {
  const xyz = xyzOfReading({ reading: { lightness: 90.5, a: -0.8, b: 6 } });
  expect(Math.abs(yellownessIndex(xyz, "D65/10°") - 11.059)).toBeLessThan(1e-3);
});

test("there and back is the same reading, under every illuminant", () => {
  const value = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      value(20, 100),
      value(-20, 20),
      value(-20, 20),
      fc.constantFrom("C/2°", "D65/2°", "C/10°", "D65/10°"),
      (lightness, a, b, illuminantObserver) => {
        const xyz = xyzOfReading({ reading: { lightness, a, b }, illuminantObserver });
        const back = labOfReading({ reading: xyz, illuminantObserver });
        expect(back.lightness).toBeCloseTo(lightness, 6);
        expect(back.a).toBeCloseTo(a, 6);
        expect(back.b).toBeCloseTo(b, 6);
      },
    ),
  );
});

test("the steps are shown, and a lightness above 100 is refused", () => {
  const { steps } = xyzOfReading.explain({ reading: { lightness: 100, a: 0, b: 0 } });
  expect(steps.map(({ label }) => label)).toEqual(["X", "Y", "Z"]);
  expect(() => xyzOfReading({ reading: { lightness: 101, a: 0, b: 0 } })).toThrow(Refusal);
});
