import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compactNumber, followsPattern, sheetAccessionNumber } from "#lib/specimens/accession-number.ts";

describe("the centre's pattern", () => {
  const pattern = "AN \\d{4}\\.\\d{4}(?:/\\d{3})?";

  test.each([
    ["AN 2019.0142", true],
    ["AN 2019.0142/007", true],
    ["an 2019.0142", false],
    ["AN 2019.142", false],
    [" AN 2019.0142", false],
    ["AN 2019.0142\nx", false],
    ["xAN 2019.0142x", false],
    ["", false],
  ])("%j: %s", (number, follows) => expect(followsPattern(number, pattern)).toBe(follows));

  test("an alternative holds for the whole number", () => {
    expect(followsPattern("A1", "A\\d|B\\d")).toBe(true);
    expect(followsPattern("A1x", "A\\d|B\\d")).toBe(false);
  });
});

test.each(["AN 2019.0042", "an-2019/0042", "AN20190042", " an 2019 . 0042 "])(
  "%j is the same number without its strokes",
  (text) => expect(compactNumber(text)).toBe("an20190042"),
);

test("a sheet's number is filled up with zeros", () => {
  expect(sheetAccessionNumber("AN 2019.0100/", 7, 3)).toBe("AN 2019.0100/007");
  expect(sheetAccessionNumber("S", 1234, 3)).toBe("S1234");
});

test("a compact number holds nothing but letters and digits, and stays as it is", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (text) => {
      const compact = compactNumber(text);
      expect(compact).toMatch(/^[\p{L}\p{N}]*$/u);
      expect(compactNumber(compact)).toBe(compact);
    }),
  );
});
