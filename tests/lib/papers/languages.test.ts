import { expect, test } from "vitest";
import { paperLanguages, paperWordsIn } from "#lib/papers/languages.ts";

test("every language has its words", () => {
  for (const language of paperLanguages) expect(paperWordsIn(language).sections.schedule).not.toBe("");
});
