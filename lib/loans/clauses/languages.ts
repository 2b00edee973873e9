/** The languages that clauses are written in. One more is one more file and one more line here. */
import { english } from "#lib/loans/clauses/english.ts";
import { french } from "#lib/loans/clauses/french.ts";
import { german } from "#lib/loans/clauses/german.ts";
import type { ClauseLanguage, ClauseLanguageCode } from "#lib/loans/clauses/language.ts";

export const clausesIn: Readonly<Record<ClauseLanguageCode, ClauseLanguage>> = {
  en: english,
  de: german,
  fr: french,
};
