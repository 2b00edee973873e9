/** The languages that clauses are written in. One more is one more file and one more line here. */
import { english } from "#lib/agreements/clauses/english.ts";
import { french } from "#lib/agreements/clauses/french.ts";
import { german } from "#lib/agreements/clauses/german.ts";
import type { ClauseLanguage, ClauseLanguageCode } from "#lib/agreements/clauses/language.ts";

export const clausesIn: Readonly<Record<ClauseLanguageCode, ClauseLanguage>> = {
  en: english,
  de: german,
  fr: french,
};
