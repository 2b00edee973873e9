/** The languages that papers speak. One more is one more file of words and one more line here. */
import { englishPaper } from "#lib/papers/english.ts";
import { frenchPaper } from "#lib/papers/french.ts";
import { germanPaper } from "#lib/papers/german.ts";
import type { PaperWords } from "#lib/papers/words.ts";

export const paperLanguages = ["en", "de", "fr"] as const;
export type PaperLanguage = (typeof paperLanguages)[number];

const byLanguage: Readonly<Record<PaperLanguage, PaperWords>> = {
  en: englishPaper,
  de: germanPaper,
  fr: frenchPaper,
};

export function paperWordsIn(language: PaperLanguage): PaperWords {
  return byLanguage[language];
}

/** Papers' languages among BCP 47 tags, in the order of the tags; "de-AT" is German. */
export function paperLanguagesOf(tags: readonly string[]): PaperLanguage[] {
  const spoken = tags.flatMap((tag) => {
    const [primary] = tag.toLowerCase().split("-");
    return paperLanguages.filter((language) => language === primary);
  });
  return [...new Set(spoken)];
}

/** All of them, those among the tags first; the first is that of a paper where nobody chooses. */
export function paperLanguagesFor(tags: readonly string[]): [PaperLanguage, ...PaperLanguage[]] {
  const [first = "en", ...others] = new Set([...paperLanguagesOf(tags), ...paperLanguages]);
  return [first, ...others];
}
