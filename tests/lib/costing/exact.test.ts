/** Decimals as text, fractions of any size, one rounding. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  Decimal,
  decimalFrom,
  decimalOf,
  dividedBy,
  exactOf,
  roundHalfUp,
  times,
} from "#lib/costing/exact.ts";

describe("a decimal", () => {
  test.each(["0", "1", "2.5", "0.0041", "999999999.999999999", "0.000000001"])("%s is one", (text) => {
    expect(Decimal.safeParse(text).success).toBe(true);
  });

  test.each(["", "-1", "1.", ".5", "01", "2.50", "1e3", "1,5", "1000000000", "0.0000000001", "NaN"])(
    "%j is none, or is written another way",
    (text) => {
      expect(Decimal.safeParse(text).success).toBe(false);
      expect(() => exactOf(text)).toThrow(RangeError);
    },
  );

  test.each([
    [0, "0"],
    [20, "20"],
    [2.5, "2.5"],
    [0.1 + 0.2, "0.3"],
    [0.0041, "0.0041"],
    [1e-7, "0.0000001"],
  ])("%d, as it was typed, is %s", (value, text) => {
    expect(decimalFrom(value)).toBe(text);
  });

  test.each([-1, 1e9, Number.NaN, Number.POSITIVE_INFINITY])("%d is refused", (value) => {
    expect(() => decimalFrom(value)).toThrow(RangeError);
  });

  test("comes back from its whole parts, whatever it was", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e12 }), fc.integer({ min: 0, max: 9 }), (whole, scale) => {
        fc.pre(whole / 10 ** scale < 1e9);
        const text = decimalOf(whole, scale);
        const { over, under } = exactOf(text);
        expect(over * 10n ** BigInt(scale)).toBe(BigInt(whole) * under);
      }),
    );
  });
});

describe("rounding", () => {
  test.each([
    [1n, 2n, 1],
    [-1n, 2n, -1],
    [49n, 100n, 0],
    [5n, 10n, 1],
    [15n, 10n, 2],
    [25n, 10n, 3],
    [0n, 7n, 0],
  ])("%s/%s is %i", (over, under, whole) => {
    expect(roundHalfUp({ over, under })).toBe(whole);
  });

  test("is never off by more than half", () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: -(10n ** 15n), max: 10n ** 15n }),
        fc.bigInt({ min: 1n, max: 10n ** 9n }),
        (over, under) => {
          const off = 2n * (BigInt(roundHalfUp({ over, under })) * under - over);
          expect(off <= under && off >= -under).toBe(true);
        },
      ),
    );
  });

  test("a sum beyond what a whole number holds exactly is refused", () => {
    expect(() => roundHalfUp({ over: 2n ** 60n, under: 1n })).toThrow(RangeError);
  });

  test("a third times three is one again", () => {
    const third = dividedBy(exactOf(1), exactOf(3));
    expect(roundHalfUp(times(third, exactOf(3), exactOf(100)))).toBe(100);
    expect(() => dividedBy(exactOf(1), exactOf(0))).toThrow(RangeError);
  });
});
