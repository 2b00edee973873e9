/** What a plain form has sent, read by name: text, numbers, a choice of yes or no, and what stands under many names. */
import { percentToFraction, readNumber } from "#app/_parts/typed-number.ts";

export function textIn(fields: FormData, name: string): string {
  const value = fields.get(name);
  return typeof value === "string" ? value.trim() : "";
}

/** The number in a field; null where it is empty, NaN for what is no number. */
export function numberIn(fields: FormData, name: string): number | null {
  return readNumber(textIn(fields, name));
}

/** A percentage as a fraction; null where the field is empty. */
export function shareIn(fields: FormData, name: string): number | null {
  const percent = numberIn(fields, name);
  return percent === null ? null : percentToFraction(percent);
}

/** "yes", "no", or nothing chosen. */
export function answerIn(fields: FormData, name: string): boolean | null {
  const text = textIn(fields, name);
  return text === "yes" ? true : text === "no" ? false : null;
}

export function isTicked(fields: FormData, name: string): boolean {
  return fields.get(name) !== null;
}

/** All values of one name, such as the ids of the rows of a list. */
export function allIn(fields: FormData, name: string): string[] {
  return fields.getAll(name).filter((value): value is string => typeof value === "string" && value !== "");
}

/** An amount in whole minor units, from what people type; null where the field is empty. */
export function minorIn(fields: FormData, name: string, currency: string): number | null {
  const amount = numberIn(fields, name);
  return amount === null ? null : Math.round(amount * 10 ** digitsOf(currency));
}

/** Decimals of a currency; two where the code is not one. */
export function digitsOf(currency: string): number {
  if (!/^[A-Z]{3}$/.test(currency)) return 2;
  return (
    new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2
  );
}
