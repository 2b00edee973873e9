/** Numbers and codes as they are typed. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readCodes, writeCodes } from "#app/_parts/typed-codes.ts";
import { fractionToPercent, percentToFraction, readNumber, writeNumber } from "#app/_parts/typed-number.ts";

describe("a typed number", () => {
  test.each([
    ["45", 45],
    ["45.5", 45.5],
    ["45,5", 45.5],
    [" 1 234,5 ", 1234.5],
    ["1\u202f234", 1234],
    ["-3", -3],
    ["\u22123", -3],
    [".5", 0.5],
    ["0", 0],
  ])("%j reads as %d", (text, value) => {
    expect(readNumber(text)).toBe(value);
  });

  test.each(["", "   "])("nothing in %j is no number", (text) => {
    expect(readNumber(text)).toBeNull();
  });

  test.each(["about 45", "1,234.5", "45 %", "1..2", "-", "0x10", "Infinity"])("%j is refused", (text) => {
    expect(readNumber(text)).toBeNaN();
  });

  test("comes back from the field as it was put there", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(readNumber(writeNumber(value))).toBe(value === 0 ? 0 : value);
      }),
    );
    expect(writeNumber(null)).toBe("");
    expect(writeNumber(Number.NaN)).toBe("");
  });
});

describe("a percentage", () => {
  test("is kept as the fraction a person would write", () => {
    for (let percent = 0; percent < 100; percent += 1)
      expect(percentToFraction(percent)).toBe(Number(`0.${String(percent).padStart(2, "0")}`));
    expect(percentToFraction(100)).toBe(1);
    expect(percentToFraction(47.5)).toBe(0.475);
  });

  test("is shown as it was typed", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), (thousandths) => {
        const percent = thousandths / 1_000;
        expect(fractionToPercent(percentToFraction(percent))).toBe(percent);
      }),
    );
  });
});

describe("typed codes", () => {
  test("are parted by commas, semicolons and spaces, and stand once", () => {
    expect(readCodes(" NO, DE;AT  NO ")).toEqual(["NO", "DE", "AT"]);
    expect(readCodes("")).toEqual([]);
  });

  test("come back as they were written", () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.stringMatching(/^[A-Z]{2}$/)), (codes) => {
        expect(readCodes(writeCodes(codes))).toEqual(codes);
      }),
    );
  });
});
