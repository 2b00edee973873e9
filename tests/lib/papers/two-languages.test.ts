import { expect, test } from "vitest";
import { englishPaper } from "#lib/papers/english.ts";
import { germanPaper } from "#lib/papers/german.ts";
import { inBoth } from "#lib/papers/two-languages.ts";

test("words stand in the language that rules first, and once where they are the same", () => {
  const both = inBoth(germanPaper, englishPaper);
  expect(both(({ sections }) => sections.clauses)).toBe("Klauseln / Clauses");
  expect(both(({ signatures }) => signatures.name)).toBe("Name");
});

test("words of one language stand alone", () => {
  expect(inBoth(germanPaper, null)(({ sections }) => sections.clauses)).toBe("Klauseln");
});
