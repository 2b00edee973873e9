/**
 * Makes the parameters of a code fit for its sentence: days and moments are
 * written out, a country is called by its name, whole minor units become money,
 * a state or a gate its word, and a code inside a code its own sentence.
 */
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { planStepNames } from "#app/_words/en/loan-time.ts";
import { requestFieldWords } from "#app/_words/en/slip.ts";
import { formatDate, formatMoment, formatMoney, formatNumber } from "#app/_words/format.ts";

export type Parameters = Readonly<Record<string, string | number | boolean | null>>;

const countryNames = new Intl.DisplayNames(["en"], { type: "region", fallback: "code" });

export function countryName(code: string): string {
  return /^[A-Z]{2}$/.test(code) ? (countryNames.of(code) ?? code) : code;
}

/** Amounts and the parameter that holds their currency. */
const amounts: readonly (readonly [amount: string, currency: string])[] = [
  ["minor", "currency"],
  ["neededMinor", "neededCurrency"],
];

/** Below this a number may be a year or a version, and is written without gaps. */
const groupedFrom = 10_000;

/** Things of which one is enough for a no: "show, travel" is "show or travel". */
const anyOf = new Intl.ListFormat("en", { type: "disjunction" });

const words: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  step: planStepNames,
  before: planStepNames,
  gate: loanWords.gates,
  audience: { "general public": "the general public" },
  state: { ...loanWords.crateStates, ...loanWords.lineStates, ...loanWords.states },
};

function readableText(
  name: string,
  text: string,
  parameters: Parameters,
  sentenceOf: (code: string, parameters: Parameters) => string | null,
): string {
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return formatDate(text);
  if (/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}/.test(text)) return formatMoment(text);
  if (name === "country" || name === "countryCode") return countryName(text);
  if (name === "countries") return text.split(", ").map(countryName).join(", ");
  if (name === "fields")
    return text
      .split(", ")
      .map((field) => requestFieldWords[field] ?? field)
      .join(", ");
  if (name === "unfitTo") return anyOf.format(text.split(", "));
  if (name === "fact" || name === "wayOut")
    return sentenceOf(text, { ...parameters, fact: null, wayOut: null }) ?? text;
  return words[name]?.[text] ?? text;
}

/** @param sentenceOf the sentence of a code, or null for what is no code */
export function readable(
  parameters: Parameters,
  sentenceOf: (code: string, parameters: Parameters) => string | null = () => null,
): Parameters {
  const said: Record<string, string | number | boolean | null> = {};
  for (const [name, value] of Object.entries(parameters)) {
    if (typeof value === "string") said[name] = readableText(name, value, parameters, sentenceOf);
    else if (typeof value === "number" && (!Number.isInteger(value) || Math.abs(value) >= groupedFrom))
      said[name] = formatNumber(value);
    else said[name] = value;
  }
  for (const [amount, currency] of amounts) {
    const minor = parameters[amount];
    const code = parameters[currency];
    if (typeof minor === "number" && typeof code === "string" && /^[A-Z]{3}$/.test(code))
      said[amount] = formatMoney({ minor, currency: code });
  }
  return said;
}
