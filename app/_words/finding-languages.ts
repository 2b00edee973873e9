/**
 * The languages in which the reasons of rules are told besides that of the screens,
 * and how one is filled: days, figures, money and countries are written as that
 * language's papers write them, and what the program calls by a word of its own is
 * called by the language's. A word that is nobody's but a house's stays as it is.
 */
import { germanFindings } from "#app/_words/de/findings.ts";
import type { FindingWords } from "#app/_words/finding-words.ts";
import { frenchFindings } from "#app/_words/fr/findings.ts";
import type { Parameters } from "#app/_words/readable.ts";
import { type PaperLanguage, paperWordsIn } from "#lib/papers/languages.ts";

/** English is told by the words of the screens. */
export type OtherLanguage = Exclude<PaperLanguage, "en">;

export const findingsIn: Readonly<Record<OtherLanguage, FindingWords>> = {
  de: germanFindings,
  fr: frenchFindings,
};

const amounts = { minor: "currency", neededMinor: "neededCurrency" } as const;
/** Numbers of sheets are names, and are never cut into thousands. */
const names: readonly string[] = ["first", "last"];

type Value = Parameters[string];

function amountText(name: string, minor: number, parameters: Parameters, language: OtherLanguage) {
  const currency = parameters[amounts[name as keyof typeof amounts]];
  return typeof currency === "string" && /^[A-Z]{3}$/.test(currency)
    ? `${paperWordsIn(language).write.amount({ minor, currency })}\u00A0${currency}`
    : null;
}

function textOf(name: string, text: string, language: OtherLanguage): string {
  const { write } = paperWordsIn(language);
  const words = findingsIn[language].values[name] ?? {};
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return write.day(text);
  if (name === "country") return write.country(text);
  const each = (separator: string) => text.split(separator).map((word) => words[word] ?? word);
  if (name === "unfitTo") return write.either(each(", "));
  if (name === "licence") return each(" / ").join(" / ");
  return words[text] ?? (name in listed ? write.list(each(", ")) : text);
}

/** Parameters that name several things. */
const listed = { substances: true, lacking: true, neededCurrency: true } as const;

function valueText(name: string, value: Value | undefined, parameters: Parameters, language: OtherLanguage) {
  if (value === null || value === undefined) return "–";
  if (typeof value === "boolean" || names.includes(name)) return String(value);
  if (typeof value === "string") return textOf(name, value, language);
  const amount = amountText(name, value, parameters, language);
  return amount ?? paperWordsIn(language).write.number(value, { least: 0, most: 2 });
}

/** The sentence of a code, or null where the language has none. */
export function sentenceIn(language: OtherLanguage, code: string, parameters: Parameters): string | null {
  const pattern = findingsIn[language].sentences[code];
  if (pattern === undefined) return null;
  const rules = new Intl.PluralRules(language);
  return pattern
    .replace(/\[(\w+):([^|\]]*)\|([^\]]*)\]/g, (_whole, name: string, one: string, many: string) =>
      rules.select(Number(parameters[name])) === "one" ? one : many,
    )
    .replace(/\{(\w+)\}/g, (_whole, name: string) => valueText(name, parameters[name], parameters, language));
}
