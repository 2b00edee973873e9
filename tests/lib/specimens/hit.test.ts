import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hitOf } from "#lib/specimens/hit.ts";
import { meetsPatterns, searchPatterns, specimenSearchKey } from "#lib/specimens/search-text.ts";

const skull = {
  accessionNumber: "AN 2019.0042",
  formerNumbers: [{ number: "Jar B-17" }, { number: "X 12" }],
  title: "Opened skull with vagus nerve",
  latinTitle: "cranium apertum",
};

describe("a specimen answers by", () => {
  test.each([
    ["its number", "an-2019/0042", { by: "number", number: "AN 2019.0042" }],
    ["a part of its number", "0042", { by: "number", number: "AN 2019.0042" }],
    ["a former number", "b17", { by: "number", number: "Jar B-17" }],
    ["a letter of a former number", "X", { by: "number", number: "X 12" }],
    ["its title", "opened skull", { by: "title" }],
    ["its Latin title", "cranium", { by: "title" }],
    ["the beginning of a word of its title", "vag", { by: "title" }],
    ["both together", "skull 0042", { by: "number and title" }],
  ])("%s", (_what, text, hit) => expect(hitOf(skull, text)).toEqual(hit));

  test.each(["femur", "0043", "", "…", "skull femur"])("nothing of its own to %j", (text) =>
    expect(hitOf(skull, text)).toBeNull(),
  );
});

test("there is a reason exactly where the database finds the row", () => {
  const word = fc.constantFrom("skull", "opened", "0042", "jar", "x", "femur", "an", "b 17", "2019");
  fc.assert(
    fc.property(fc.array(word, { minLength: 1, maxLength: 3 }), (words) => {
      const text = words.join(" ");
      const isFound = meetsPatterns(specimenSearchKey(skull), searchPatterns(text));
      expect(hitOf(skull, text) !== null).toBe(isFound);
    }),
  );
});
