/** Names of the program read as words. */
import { expect, test } from "vitest";
import { wordsOfName, wordsOfValue } from "#app/_words/names.ts";

test.each([
  ["massKg", "Mass", "kg"],
  ["mass_kg", "Mass", "kg"],
  ["outer_length_mm", "Outer length", "mm"],
  ["temperatureHighC", "Temperature high", "°C"],
  ["peakG", "Peak", "G"],
  ["extent_percent", "Extent", "%"],
  ["accession_number", "Accession number", ""],
  ["borrower_id", "Borrower", ""],
  ["value.accessionPattern", "Value accession pattern", ""],
  ["c", "C", ""],
  ["id", "Id", ""],
])("%s is read as %s in %j", (name, words, unit) => {
  expect(wordsOfName(name)).toEqual({ words, unit });
});

test("a value's hyphens are spaces, but only between words", () => {
  expect(wordsOfValue("corridor-turn")).toBe("corridor turn");
  expect(wordsOfValue("polyethylene-35")).toBe("polyethylene 35");
  expect(wordsOfValue("D-4K7QX")).toBe("D-4K7QX");
  expect(wordsOfValue("D65/10°")).toBe("D65/10°");
  expect(wordsOfValue("loan-in")).toBe("loan in");
});
