/**
 * Makes the parameters of a code fit for its sentence: days and moments are
 * written out, a country is called by its name, whole minor units become money,
 * and a code inside a code becomes its own sentence.
 */
import { formatDate, formatMoment, formatMoney, formatNumber } from "#app/_words/format.ts";
import { hasSentence, type Parameters, sentence } from "#app/_words/sentences.ts";

const countryNames = new Intl.DisplayNames(["en"], { type: "region", fallback: "code" });
const countryParameters: readonly string[] = ["country", "countryCode"];
/** Amounts and the parameter that holds their currency. */
const amounts: readonly (readonly [amount: string, currency: string])[] = [
  ["minor", "currency"],
  ["neededMinor", "neededCurrency"],
];

export function countryName(code: string): string {
  return /^[A-Z]{2}$/.test(code) ? (countryNames.of(code) ?? code) : code;
}

function readableText(name: string, text: string, parameters: Parameters): string {
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return formatDate(text);
  if (/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}/.test(text)) return formatMoment(text);
  if (countryParameters.includes(name)) return countryName(text);
  if ((name === "fact" || name === "wayOut") && hasSentence(text))
    return sentence(text, readable({ ...parameters, [name]: null }));
  return text;
}

export function readable(parameters: Parameters): Parameters {
  const said: Record<string, string | number | boolean | null> = {};
  for (const [name, value] of Object.entries(parameters)) {
    if (typeof value === "string") said[name] = readableText(name, value, parameters);
    else if (typeof value === "number") said[name] = formatNumber(value);
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

/** A code's sentence with its parameters as people read them. */
export function readableSentence(code: string, parameters: Parameters = {}): string {
  return sentence(code, readable(parameters));
}
