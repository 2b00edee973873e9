/** Numbers and codes as they are typed, in the ways of many countries. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readCodes, writeCodes } from "#app/_parts/typed-codes.ts";
import {
  fractionToPercent,
  kindOfField,
  type NumberKind,
  numberProblem,
  percentToFraction,
  readMinor,
  readNumber,
  writeNumber,
} from "#app/_parts/typed-number.ts";
import { numberSentence } from "#app/_words/number-problem.ts";

describe("a typed number", () => {
  test.each([
    ["45", 45],
    ["45.5", 45.5],
    ["45,5", 45.5],
    [" 1 234,5 ", 1234.5],
    ["1\u202f234", 1234],
    ["1\u2009234\u00a0567", 1_234_567],
    ["1'234.5", 1234.5],
    ["1\u2019234", 1234],
    ["12,345.67", 12_345.67],
    ["12.345,67", 12_345.67],
    ["1,234,567", 1_234_567],
    ["1.234.567", 1_234_567],
    ["12,34,567.8", 1_234_567.8],
    ["-3", -3],
    ["\u22123", -3],
    ["+3,5", 3.5],
    [".5", 0.5],
    ["0,500", 0.5],
    ["30000.000", 30_000],
    ["0", 0],
    ["1.5e3", 1_500],
  ])("%j reads as %d", (text, value) => {
    for (const kind of ["measure", "large measure"] as const) expect(readNumber(text, kind)).toBe(value);
  });

  test.each(["", "   ", "\u00a0"])("nothing in %j is no number", (text) => {
    expect(readNumber(text)).toBeNull();
    expect(readMinor(text, 2)).toBeNull();
    expect(numberProblem(text)).toBeNull();
  });

  test.each([
    "about 45",
    "45 %",
    "1..2",
    "1,2,3",
    "1.23.456,7",
    "1,234.567,8",
    "1'234,567.8",
    "12 34",
    "1 23 4",
    "0 123",
    "1234 567",
    "-",
    ".",
    "0x10",
    "Infinity",
    "1 000 e3 e",
    "٣",
  ])("%j is refused", (text) => {
    expect(readNumber(text)).toBeNaN();
    expect(readMinor(text, 2)).toBeNaN();
    expect(numberProblem(text)).toEqual({ why: "not a number" });
  });

  test.each(["1.234", "1,234", "30.000", "-12,345", "999.999"])(
    "%j is thousandths of a mass, and nobody's guess where thousands are usual",
    (text) => {
      expect(readNumber(text)).toBe(Number(text.replace(",", ".")));
      expect(readNumber(text, "large measure")).toBeNaN();
    },
  );

  test("a field is known by the unit in its name", () => {
    const kinds = ["massKg", "passages.0.loadKg", "passages.0.widthMm", "illuminanceLx", "roomC", "peakG"];
    expect(kinds.map(kindOfField)).toEqual([
      "measure",
      "large measure",
      "large measure",
      "large measure",
      "measure",
      "measure",
    ]);
  });

  test("comes back from the field as it was put there", () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        fc.constantFrom<NumberKind>("measure", "large measure"),
        (value, kind) => {
          expect(readNumber(writeNumber(value, kind), kind)).toBe(value === 0 ? 0 : value);
        },
      ),
    );
    for (const kind of ["measure", "large measure"] as const)
      expect(readNumber(writeNumber(12.345, kind), kind)).toBe(12.345);
    expect(writeNumber(null)).toBe("");
    expect(writeNumber(Number.NaN)).toBe("");
  });

  test("means the same in every country's way of writing it", () => {
    const ways = [
      ["", "."],
      ["", ","],
      [" ", ","],
      ["\u202f", "."],
      ["'", "."],
      [",", "."],
      [".", ","],
    ] as const;
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 99_999_999 }),
        fc.integer({ min: 0, max: 99 }),
        (whole, hundredths) => {
          const fraction = String(hundredths).padStart(2, "0");
          for (const [group, decimal] of ways) {
            const text = `${new Intl.NumberFormat("en").format(whole).replaceAll(",", group)}${decimal}${fraction}`;
            expect(readNumber(text, "large measure"), text).toBe(Number(`${whole}.${fraction}`));
            expect(readMinor(text, 2), text).toBe(whole * 100 + hundredths);
          }
        },
      ),
    );
  });
});

describe("a typed amount", () => {
  test.each([
    ["30000", 2, 3_000_000],
    ["30000.00", 2, 3_000_000],
    ["30 000,5", 2, 3_000_050],
    ["12,345.67", 2, 1_234_567],
    ["12.345,67", 2, 1_234_567],
    ["1.005", 3, 1_005],
    ["1.15", 2, 115],
    ["30.000", 3, 30_000],
    ["30.000", 0, 30_000],
    ["30,000", 0, 30_000],
    ["0.500", 2, 50],
    ["12.5000", 2, 1_250],
    ["-5", 2, -500],
    ["90000000000000.93", 2, 9_000_000_000_000_093],
  ])("%j with %d decimals is %d minor units", (text, decimals, minor) => {
    expect(readMinor(text, decimals)).toBe(minor);
    expect(numberProblem(text, { decimals })).toBeNull();
  });

  test.each([
    ["30.000", 2, "This can be read in two ways. Write 30000 or 30.00, with no mark between the thousands."],
    ["12,345", 2, "This can be read in two ways. Write 12345 or 12.34, with no mark between the thousands."],
    ["12.3456", 2, "This currency has 2 decimals. Write no more of them."],
    ["12.5", 0, "This currency has no decimals. Write a whole number, for example 30000."],
    ["thirty", 2, "Write an amount, for example 30000 or 30000.50."],
    ["1e3", 2, "Write an amount, for example 30000 or 30000.50."],
  ])("%j with %d decimals is refused: %s", (text, decimals, sentence) => {
    expect(readMinor(text, decimals)).toBeNaN();
    expect(numberSentence(text, { decimals })).toBe(sentence);
  });

  test("a large measure that may be two says both", () => {
    expect(numberSentence("1.234", "large measure")).toBe(
      "This can be read in two ways. Write 1234 or 1.2340, with no mark between the thousands.",
    );
    expect(numberSentence("1.234", "measure")).toBeUndefined();
    expect(readNumber("1.2340", "large measure")).toBe(1.234);
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
