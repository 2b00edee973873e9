/** Many accession numbers in few words. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { numberRanges, numbersInWords } from "#app/_words/number-range.ts";

test("numbers that follow each other are a range, in any order", () => {
  expect(numberRanges(["SR 03.043", "SR 03.041", "SR 03.042", "AN 2019.0142"])).toEqual([
    "AN 2019.0142",
    "SR 03.041–.043",
  ]);
});

test("a gap and another series begin a new range", () => {
  expect(numberRanges(["SR 03.041", "SR 03.043", "SR 07.044"])).toEqual([
    "SR 03.041",
    "SR 03.043",
    "SR 07.044",
  ]);
});

test("what has no figures at its end stands alone", () => {
  expect(numberRanges(["Heart", "Brain"])).toEqual(["Brain", "Heart"]);
});

test("of many the first are told, and how many there are more", () => {
  expect(numbersInWords(["A 1", "A 3", "A 5"], 2)).toBe("A 1, A 3 and 1 more");
  expect(numbersInWords([], 2)).toBe("");
});

test("no number is lost and none is told twice", () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 60 }), { minLength: 1 }), (values) => {
      const numbers = values.map((value) => `SR 03.${String(value).padStart(3, "0")}`);
      const told = numberRanges(numbers).flatMap((range) => {
        const [first = "", last] = range.replace("SR 03.", "").split("–.");
        const [from, to] = [Number(first), Number(last ?? first)];
        return Array.from({ length: to - from + 1 }, (_, index) => from + index);
      });
      expect([...told].sort((a, b) => a - b)).toEqual([...values].sort((a, b) => a - b));
    }),
  );
});
