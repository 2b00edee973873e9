import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  likenessText,
  meetsPatterns,
  searchPatterns,
  specimenSearchKey,
} from "#lib/specimens/search-text.ts";

const key = specimenSearchKey({
  accessionNumber: "AN 2019.0042",
  formerNumbers: [{ number: "Dept. B/17" }],
  title: "Oesophagus with vagus nerves",
  latinTitle: "oesophagus et nn. vagi",
});

/** What LIKE does with patterns that hold no other wildcard than %. */
const like = (line: string, pattern: string) =>
  new RegExp(
    `^${pattern
      .split("%")
      .map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"))
      .join(".*")}$`,
    "s",
  ).test(line);
const meets = (line: string, text: string) =>
  searchPatterns(text).some((list) => list.every((pattern) => like(line, pattern)));

describe("a specimen is found by", () => {
  test.each([
    ["its number", "AN 2019.0042"],
    ["its number with other strokes", "an-2019-0042"],
    ["its number without strokes", "AN20190042"],
    ["a part of its number", "2019.0042"],
    ["the last digits", "0042"],
    ["a former number", "dept b 17"],
    ["a word of its title", "oesophagus"],
    ["the American spelling", "esophagus"],
    ["the beginning of a word", "oesoph"],
    ["the plural", "vagus nerve"],
    ["the Latin title, abbreviated", "n. vagus"],
    ["words in another order", "nerve vagus oesophagus"],
  ])("%s", (_what, text) => expect(meets(key, text)).toBe(true));
});

describe("a specimen is not found by", () => {
  test.each([
    ["another number", "AN 2019.0043"],
    ["the middle of a word", "sophagus"],
    ["a word that is not there", "oesophagus trachea"],
    ["a single letter that is no word of it", "x"],
  ])("%s", (_what, text) => expect(meets(key, text)).toBe(false));

  test("a word that shares no more than the stem's beginning", () =>
    expect(
      meets(
        specimenSearchKey({ accessionNumber: "1", formerNumbers: [], title: "Vagina", latinTitle: "" }),
        "vagus",
      ),
    ).toBe(false));
});

describe("whole words only", () => {
  const meetsWhole = (text: string) => meetsPatterns(key, searchPatterns(text, "whole words"));

  test.each(["oesophagus", "esophagus", "n. vagus", "AN 2019.0042", "0042", "nerve vagus"])(
    "find by %j",
    (text) => expect(meetsWhole(text)).toBe(true),
  );
  test.each(["oesoph", "004", "vagus trachea"])("do not find by %j", (text) =>
    expect(meetsWhole(text)).toBe(false),
  );
});

test("a line is compared as the database compares it", () => {
  const text = fc.constantFrom(
    "vagus",
    "oesoph",
    "x",
    "0042",
    "dept b 17",
    "nerve oesophagus",
    "trachea",
    "vag n",
  );
  fc.assert(
    fc.property(text, fc.constantFrom("beginnings", "whole words"), (typed, extent) => {
      const lists = searchPatterns(typed, extent);
      const byLike = lists.some((patterns) => patterns.every((pattern) => like(key, pattern)));
      expect(meetsPatterns(key, lists)).toBe(byLike);
    }),
  );
});

test("a text without a word asks for nothing", () => {
  expect(searchPatterns("…")).toEqual([]);
  expect(searchPatterns("")).toEqual([]);
});

test("likeness compares the folded words", () =>
  expect(likenessText("Oesophagus, n. vagus")).toBe("esofagus nervus vagus"));

test("whatever is typed, patterns hold no wildcard of it, and a line stands between blanks", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 120 }), (text) => {
      for (const pattern of searchPatterns(text).flat()) expect(pattern).toMatch(/^% [\p{L}\p{N}]+(?: ?)%$/u);
      expect(
        specimenSearchKey({ accessionNumber: text, formerNumbers: [], title: text, latinTitle: "" }),
      ).toMatch(/^ (?:[\p{L}\p{N} ]* )?$/u);
    }),
  );
});

test("a specimen is found by its own number and by its own title", () => {
  const number = fc.stringMatching(/^[A-Z]{2} [0-9]{4}\.[0-9]{4}$/);
  const title = fc
    .array(fc.stringMatching(/^[a-z]{4,12}$/), { minLength: 1, maxLength: 5 })
    .map((words) => words.join(" "));
  fc.assert(
    fc.property(number, title, (accessionNumber, text) => {
      const line = specimenSearchKey({ accessionNumber, formerNumbers: [], title: text, latinTitle: "" });
      expect(meets(line, accessionNumber)).toBe(true);
      expect(meets(line, text)).toBe(true);
    }),
  );
});
