/** The languages that papers speak. One more is one more file of words and one more line here. */
import { englishPaper } from "#lib/papers/english.ts";
import type { PaperWords } from "#lib/papers/words.ts";

export const paperLanguages = ["en"] as const;
export type PaperLanguage = (typeof paperLanguages)[number];

const byLanguage: Readonly<Record<PaperLanguage, PaperWords>> = { en: englishPaper };

export function paperWordsIn(language: PaperLanguage): PaperWords {
  return byLanguage[language];
}
