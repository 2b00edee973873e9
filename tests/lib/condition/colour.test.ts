import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  colourChange,
  deltaE76,
  deltaE2000,
  greyScaleGrade,
  type Lab,
  labFromXyz,
  whitePoints,
  xyzFromLab,
  yellownessIndex,
} from "#lib/condition/colour.ts";

const channel = fc.double({ min: -100, max: 100, noNaN: true });
const lab: fc.Arbitrary<Lab> = fc.record({
  lightness: fc.double({ min: 0, max: 100, noNaN: true }),
  a: channel,
  b: channel,
});
const grey: Lab = { lightness: 50, a: 0, b: 0 };

describe("colour differences", () => {
  test("are nothing between a colour and itself, and never negative", () => {
    fc.assert(
      fc.property(lab, lab, (first, second) => {
        expect(deltaE2000(first, first)).toBe(0);
        expect(deltaE76(first, first)).toBe(0);
        expect(deltaE2000(first, second)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test("do not ask which colour came first", () => {
    fc.assert(
      fc.property(lab, lab, (first, second) => {
        expect(deltaE76(first, second)).toBe(deltaE76(second, first));
        // At hues 180° apart rounding may choose the other branch of the mean hue.
        const apart = Math.abs(Math.atan2(first.b, first.a) - Math.atan2(second.b, second.a));
        fc.pre(Math.abs(apart - Math.PI) > 0.1);
        expect(deltaE2000(first, second)).toBeCloseTo(deltaE2000(second, first), 9);
      }),
    );
  });

  test("the plain distance keeps the triangle", () => {
    fc.assert(
      fc.property(lab, lab, lab, (first, second, third) => {
        expect(deltaE76(first, third)).toBeLessThanOrEqual(
          deltaE76(first, second) + deltaE76(second, third) + 1e-9,
        );
      }),
    );
  });

  test("at mid grey a step of lightness counts whole", () =>
    expect(deltaE2000({ ...grey, lightness: 49.5 }, { ...grey, lightness: 50.5 })).toBeCloseTo(1, 9));

  test("refuse what is not a number", () => {
    expect(() => deltaE2000({ ...grey, a: Number.NaN }, grey)).toThrow(RangeError);
    expect(() => deltaE76(grey, { ...grey, b: Number.POSITIVE_INFINITY })).toThrow(RangeError);
  });
});

describe("CIELAB and XYZ", () => {
  test("are inverse to each other, dark colours too", () => {
    const value = fc.double({ min: 0, max: 100, noNaN: true });
    fc.assert(
      fc.property(value, value, value, fc.constantFrom(...Object.values(whitePoints)), (x, y, z, white) => {
        const back = xyzFromLab(labFromXyz({ x, y, z }, white), white);
        expect(back.x).toBeCloseTo(x, 8);
        expect(back.y).toBeCloseTo(y, 8);
        expect(back.z).toBeCloseTo(z, 8);
      }),
    );
  });

  test.each(Object.entries(whitePoints))(
    "the white of %s is L* 100 without colour, black is 0",
    (_name, white) => {
      expect(labFromXyz(white, white)).toEqual({ lightness: 100, a: 0, b: 0 });
      expect(labFromXyz({ x: 0, y: 0, z: 0 }, white).lightness).toBeCloseTo(0, 12);
    },
  );

  test("lightness rises with Y, over the join of the two branches too", () => {
    const white = whitePoints["D65/10°"];
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.double({ min: 1e-6, max: 1, noNaN: true }),
        (y, step) => {
          const low = labFromXyz({ x: y, y, z: y }, white).lightness;
          expect(labFromXyz({ x: y, y: y + step, z: y }, white).lightness).toBeGreaterThan(low);
        },
      ),
    );
  });

  test("refuse negative light and a black white", () => {
    expect(() => labFromXyz({ x: -1, y: 1, z: 1 }, whitePoints["C/2°"])).toThrow(RangeError);
    expect(() => labFromXyz({ x: 1, y: 1, z: 1 }, { x: 1, y: 0, z: 1 })).toThrow(RangeError);
  });
});

describe("yellowness", () => {
  test("does not ask how bright the colour is", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 2, noNaN: true }), (factor) => {
        const scaled = { x: 80 * factor, y: 85 * factor, z: 70 * factor };
        expect(yellownessIndex(scaled, "C/2°")).toBeCloseTo(
          yellownessIndex({ x: 80, y: 85, z: 70 }, "C/2°"),
          9,
        );
      }),
    );
  });

  test("rises when blue is lost", () =>
    expect(yellownessIndex({ x: 80, y: 85, z: 70 }, "D65/10°")).toBeGreaterThan(
      yellownessIndex({ x: 80, y: 85, z: 80 }, "D65/10°"),
    ));

  test("of black is refused", () =>
    expect(() => yellownessIndex({ x: 0, y: 0, z: 0 }, "D65/10°")).toThrow(RangeError));
});

describe("words for a difference", () => {
  test.each([
    [0, "noise"],
    [0.499, "noise"],
    [0.5, "watch"],
    [1, "noticeable"],
    [1.8, "noticeable"],
    [1.81, "significant"],
    [5, "significant"],
    [5.01, "severe"],
  ] as const)("%d is %s", (difference, word) => expect(colourChange(difference)).toBe(word));

  test("a difference on the midpoint of two grades takes the poorer", () =>
    expect(greyScaleGrade(0.4)).toBe("4–5"));
  test("a difference beyond the scale is grade 1", () => expect(greyScaleGrade(60)).toBe("1"));
  test("a negative difference is refused", () => {
    expect(() => greyScaleGrade(-0.1)).toThrow(RangeError);
    expect(() => colourChange(Number.NaN)).toThrow(RangeError);
  });
});
