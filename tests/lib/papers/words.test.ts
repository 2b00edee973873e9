import { describe, expect, test } from "vitest";
import { paperLanguages, paperWordsIn } from "#lib/papers/languages.ts";
import { capital, fill, say } from "#lib/papers/words.ts";

test("names in a sentence are filled, and none is forgotten", () => {
  expect(fill("Version {version} of {day}", { version: 2, day: "1 May" })).toBe("Version 2 of 1 May");
  expect(() => fill("Version {version}", {})).toThrow(RangeError);
});

test("a code without a word is printed as it is", () => {
  expect(say({ teaching: "Teaching" }, "teaching")).toBe("Teaching");
  expect(say({ teaching: "Teaching" }, "healing")).toBe("healing");
  expect(say({}, "constructor")).toBe("constructor");
});

test("the first word of a sentence has a capital, and the rest stays", () => {
  expect(capital("émigré Č")).toBe("Émigré Č");
  expect(capital("")).toBe("");
});

describe.each(paperLanguages)("the words in %s", (language) => {
  const { write, ...words } = paperWordsIn(language);

  test("leave no entry empty", () => {
    const sentences: string[] = [];
    const collect = (entry: unknown) => {
      if (typeof entry === "string") sentences.push(entry);
      else if (typeof entry === "object" && entry !== null) Object.values(entry).forEach(collect);
    };
    collect(words);
    expect(sentences.length).toBeGreaterThan(100);
    expect(sentences.filter((sentence) => sentence.trim() === "")).toEqual([]);
  });

  test("write every figure with its digits and its sign", () => {
    expect(write.number(1234.5).replace(/\D/g, "")).toBe("12345");
    expect(write.amount({ minor: 1_234_500, currency: "EUR" }).replace(/\D/g, "")).toBe("1234500");
    expect(write.amount({ minor: 12_345, currency: "JPY" }).replace(/\D/g, "")).toBe("12345");
  });
});
