import { describe, expect, test } from "vitest";
import { fontBytes, fontFiles, measureText, runsOf } from "#lib/papers/fonts.ts";
import { faces } from "#lib/papers/sheet.ts";
import { manyLetters } from "#tests/lib/papers/agreement-cases.ts";

test("every face has its font", () => {
  for (const name of [...faces, "reserve"] as const) {
    expect(fontFiles[name]).toMatch(/^DejaVu/);
    expect(fontBytes(name).byteLength).toBeGreaterThan(50_000);
  }
});

describe.each(faces)("%s", (face) => {
  test("prints the letters that papers need by itself", () => {
    expect(runsOf(manyLetters, face)).toEqual([{ font: face, text: manyLetters }]);
  });

  test("is as wide as the sum of its letters, at any size", () => {
    const words = "Plexus fibularis, 12 µm";
    const letters = [...words].reduce((sum, letter) => sum + measureText(letter, face, 8), 0);
    expect(measureText(words, face, 8)).toBeCloseTo(letters, 9);
    expect(measureText(words, face, 16)).toBeCloseTo(2 * letters, 9);
    expect(measureText("", face, 8)).toBe(0);
  });
});

test("the mono has one width, the bold is wider than the plain", () => {
  expect(measureText("iiii", "mono", 10)).toBe(measureText("WWWW", "mono", 10));
  expect(measureText("Schedule", "sans bold", 10)).toBeGreaterThan(measureText("Schedule", "sans", 10));
});

test("what a face lacks is taken from the reserve, what the family lacks is spelled", () => {
  expect(runsOf("a\u05D0b", "serif")).toEqual([
    { font: "serif", text: "a" },
    { font: "reserve", text: "\u05D0" },
    { font: "serif", text: "b" },
  ]);
  expect(runsOf("王 a", "sans")).toEqual([{ font: "sans", text: "[U+738B] a" }]);
});
