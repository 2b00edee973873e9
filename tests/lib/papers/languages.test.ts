import { expect, test } from "vitest";
import { paperLanguages, paperLanguagesFor, paperLanguagesOf, paperWordsIn } from "#lib/papers/languages.ts";

test("every language has its words", () => {
  const titles = paperLanguages.map((language) => paperWordsIn(language).agreement.name);
  expect(titles).toEqual(["Loan agreement", "Leihvertrag", "Contrat de prêt"]);
});

test("languages among tags keep the order of the tags, regions or not", () => {
  expect(paperLanguagesOf(["fr-CH", "de", "en-GB", "fr"])).toEqual(["fr", "de", "en"]);
  expect(paperLanguagesOf(["da", "en"])).toEqual(["en"]);
  expect(paperLanguagesOf(["sv", "nl"])).toEqual([]);
  expect(paperLanguagesOf(["DE-at"])).toEqual(["de"]);
  expect(paperLanguagesOf([])).toEqual([]);
});

test("all languages are at hand, and the one that is spoken comes first", () => {
  expect(paperLanguagesFor(["fr-CH", "de"])).toEqual(["fr", "de", "en"]);
  expect(paperLanguagesFor(["sv", "de-AT"])).toEqual(["de", "en", "fr"]);
  expect(paperLanguagesFor(["sv"])).toEqual(["en", "de", "fr"]);
  expect(paperLanguagesFor([])).toEqual(["en", "de", "fr"]);
});
