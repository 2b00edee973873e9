/**
 * A number with its noun: "1 crate", "13 crates". English has two forms, and
 * which of them stands is decided by the language's own rule, not by a guess.
 */
import { formatNumber } from "#app/_words/format.ts";

const rules = new Intl.PluralRules("en");

/** The form of a word that goes with the number, without the number. */
export function formFor(count: number, one: string, many: string): string {
  return rules.select(count) === "one" ? one : many;
}

export function counted(count: number, one: string, many: string): string {
  return `${formatNumber(count)} ${formFor(count, one, many)}`;
}
