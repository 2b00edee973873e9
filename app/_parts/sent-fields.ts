/**
 * What a plain form has sent, read by name: text, numbers, a choice of yes or no,
 * and what stands under many names. A number that cannot be read is refused here,
 * where it still stands as it was typed and the sentence can say how to write it.
 */
import {
  kindOfField,
  type NumberKind,
  percentToFraction,
  readMinor,
  readNumber,
} from "#app/_parts/typed-number.ts";
import { numberSentence } from "#app/_words/number-problem.ts";
import { minorDigits } from "#lib/platform/money.ts";
import { Refusal } from "#lib/platform/refusal.ts";

export function textIn(fields: FormData, name: string): string {
  const value = fields.get(name);
  return typeof value === "string" ? value.trim() : "";
}

/** @throws {Refusal} "input.invalid" at the field, for what is no number or may be either of two */
function refuseUnreadable(name: string, text: string, kind: NumberKind): void {
  const message = numberSentence(text, kind);
  if (message !== undefined) throw new Refusal("invalid", "input.invalid", {}, [{ path: name, message }]);
}

/** The number in a field; null where it is empty. @throws {Refusal} for what is no number */
export function numberIn(fields: FormData, name: string): number | null {
  const [text, kind] = [textIn(fields, name), kindOfField(name)];
  refuseUnreadable(name, text, kind);
  return readNumber(text, kind);
}

/** A percentage as a fraction; null where the field is empty. @throws {Refusal} for what is no number */
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

/** An amount in whole minor units, from what people type; null where it is empty. @throws {Refusal} for no amount */
export function minorIn(fields: FormData, name: string, currency: string): number | null {
  const [text, decimals] = [textIn(fields, name), digitsOf(currency)];
  refuseUnreadable(name, text, { decimals });
  return readMinor(text, decimals);
}

/** Decimals of a currency; two where the code is not one. */
export function digitsOf(currency: string): number {
  return minorDigits(currency);
}
