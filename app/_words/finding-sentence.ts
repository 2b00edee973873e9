/**
 * What a rule found and what would clear it, as sentences in a language. What rests
 * on law sends the reader to the local authority, also where other rules say the
 * same in the same words. A code that a language does not have is told in English.
 */
import { findingsIn, sentenceIn } from "#app/_words/finding-languages.ts";
import { sentence } from "#app/_words/sentences.ts";
import type { PaperLanguage } from "#lib/papers/languages.ts";
import { ruleEntry } from "#lib/suitability/rules/book.ts";
import type { Finding } from "#lib/suitability/schema.ts";

const englishEndOfLaw = "Check with the local authority.";

/** A rule that stands in the book no more, in a run of long ago, is told as it was. */
function isLegal(rule: string): boolean {
  try {
    return ruleEntry(rule).isLegal;
  } catch {
    return false;
  }
}

function told(
  code: string,
  parameters: Finding["parameters"],
  language: PaperLanguage,
): { said: string; endOfLaw: string } {
  const said = language === "en" ? null : sentenceIn(language, code, parameters);
  return said === null || language === "en"
    ? { said: sentence(code, parameters), endOfLaw: englishEndOfLaw }
    : { said, endOfLaw: findingsIn[language].endOfLaw };
}

export function findingSentence(
  { rule, fact, parameters }: Pick<Finding, "rule" | "fact" | "parameters">,
  language: PaperLanguage = "en",
): string {
  const { said, endOfLaw } = told(fact, parameters, language);
  return isLegal(rule) && !said.endsWith(endOfLaw) ? `${said} ${endOfLaw}` : said;
}

/** Empty where nothing is to be cleared. */
export function wayOutSentence(
  { wayOut, parameters }: Pick<Finding, "wayOut" | "parameters">,
  language: PaperLanguage = "en",
): string {
  return wayOut === "" ? "" : told(wayOut, parameters, language).said;
}
