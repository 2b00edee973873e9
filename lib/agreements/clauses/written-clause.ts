/**
 * A clause with its words filled in: {name} is the value of a parameter in the words
 * of the language, {name|day|days} a number with the word that agrees with it. Pure:
 * the same values in the same language give the same text, letter by letter.
 */
import type { ClauseLanguage } from "#lib/agreements/clauses/language.ts";
import type { ClauseId } from "#lib/agreements/clauses/library.ts";
import { type ParameterName, parameterOf } from "#lib/agreements/clauses/parameters.ts";
import type { PaperOnRecord, ParameterValue } from "#lib/agreements/terms-annexes.ts";
import type { DateText } from "#lib/platform/dates.ts";
import { minorDigits } from "#lib/platform/money.ts";
import type { Money } from "#lib/specimens/schema.ts";

export type ClauseValues = Readonly<Partial<Record<ParameterName, ParameterValue>>>;

/** Narrow spaces that a language puts between thousands become ones that every typeface has. */
const plainSpaces = (text: string) => text.replaceAll("\u202F", "\u00A0");

export function numberWords(value: number, { locale }: ClauseLanguage): string {
  return plainSpaces(new Intl.NumberFormat(locale, { maximumFractionDigits: 3 }).format(value));
}

/** Money for a sentence: 1234500 cents as "12,345.00 EUR", in the way of the language. */
export function moneyWords({ minor, currency }: Money, { locale }: ClauseLanguage): string {
  const digits = minorDigits(currency);
  const amount = new Intl.NumberFormat(locale, {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
  return `${plainSpaces(amount.format(minor / 10 ** digits))} ${currency}`;
}

/** A day for a sentence: "2027-03-01" as "1 March 2027". */
export function dayWords(day: DateText, { locale, firstOfMonth }: ClauseLanguage): string {
  const format = new Intl.DateTimeFormat(locale, {
    day: "numeric",
    month: "long",
    year: "numeric",
    timeZone: "UTC",
  });
  const written = format.format(new Date(`${day}T00:00:00Z`));
  return firstOfMonth === undefined ? written : written.replace(/^1(?= )/, firstOfMonth);
}

function countryWords(code: string, { locale }: ClauseLanguage): string {
  return new Intl.DisplayNames([locale], { type: "region", fallback: "code" }).of(code) ?? code;
}

const listWords = (items: readonly string[], { locale }: ClauseLanguage) =>
  new Intl.ListFormat(locale, { type: "conjunction" }).format(items);

function paperWords({ number, authority, validUntil }: PaperOnRecord, language: ClauseLanguage): string {
  const day = validUntil === null ? "" : dayWords(validUntil, language);
  return (validUntil === null ? language.paperWithoutEnd : language.paper).replace(
    /\{(number|authority|day)\}/g,
    (_whole, name: string) => ({ number, authority, day })[name as "number"],
  );
}

/** The word for one option of a choice, or the option itself. */
function optionWords(name: ParameterName, option: string, { choices }: ClauseLanguage): string {
  const words: Readonly<Record<string, Readonly<Record<string, string>>>> = choices;
  return words[name]?.[option] ?? option;
}

function fluidWords({ name, percent }: { name: string; percent: number | null }, language: ClauseLanguage) {
  const words: Readonly<Record<string, string>> = language.fluids;
  const word = words[name] ?? name;
  return percent === null ? word : `${word} ${numberWords(percent, language)}\u00A0%`;
}

const isMoney = (value: ParameterValue): value is Money =>
  typeof value === "object" && value !== null && "minor" in value;

type Listed = Extract<ParameterValue, unknown[]>;

function listedWords(name: ParameterName, value: Listed, language: ClauseLanguage) {
  const { kind } = parameterOf(name);
  if (value.length === 0) return kind === "fact countries" ? language.noLimit : language.none;
  const words = value.map((item: Listed[number]) => {
    if (typeof item !== "string")
      return "authority" in item ? paperWords(item, language) : fluidWords(item, language);
    return kind === "fact countries" ? countryWords(item, language) : optionWords(name, item, language);
  });
  return kind === "fact papers" ? words.join("; ") : listWords(words, language);
}

function textWords(name: ParameterName, value: string, language: ClauseLanguage): string {
  const parameter = parameterOf(name);
  switch (parameter.kind) {
    case "choice":
    case "fact choice":
      return optionWords(name, value, language);
    case "fact day":
      return dayWords(value, language);
    case "fact country":
      return countryWords(value, language);
    case "fact language": {
      const words: Readonly<Record<string, string>> = language.languages;
      return words[value] ?? value;
    }
    default: {
      const standing: Readonly<Record<string, string>> = language.standardWords;
      return value.trim() === "" ? (standing[name] ?? language.notStated) : value;
    }
  }
}

/** What stands where there is nothing: a consent that names no end has none. */
function nothingWords(name: ParameterName, { noLimit, notStated }: ClauseLanguage): string {
  return parameterOf(name).kind === "fact countries" || name === "consentEndsOn" ? noLimit : notStated;
}

/** A value as the clauses say it. */
export function valueWords(name: ParameterName, value: ParameterValue, language: ClauseLanguage): string {
  if (value === null) return nothingWords(name, language);
  if (typeof value === "number") return numberWords(value, language);
  if (typeof value === "string") return textWords(name, value, language);
  return isMoney(value) ? moneyWords(value, language) : listedWords(name, value, language);
}

/** French counts nought with one, as its readers do; the rules of each language are those of its locale. */
function counted(value: ParameterValue, one: string, many: string, { locale }: ClauseLanguage): string {
  return typeof value === "number" && new Intl.PluralRules(locale).select(value) === "one" ? one : many;
}

/** @throws {RangeError} when a word of the clause has nothing to be filled with */
export function writeClause(
  id: ClauseId,
  values: ClauseValues,
  language: ClauseLanguage,
): { heading: string; text: string } {
  const { heading, text } = language.clauses[id];
  return {
    heading,
    text: text.replace(/\{(\w+)(?:\|([^|}]+)\|([^|}]+))?\}/g, (_whole, name: ParameterName, one, many) => {
      const value = values[name];
      if (value === undefined) throw new RangeError(`clause ${id}: nothing for {${name}}`);
      const words = valueWords(name, value, language);
      return one === undefined ? words : `${words}\u00A0${counted(value, one, many, language)}`;
    }),
  };
}
