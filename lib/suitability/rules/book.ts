/**
 * The rule book: every rule as data, in one list, with a version that a stored
 * evaluation names. A rule counts on the days of a loan that its own days meet.
 * Its citation says what it rests on, its standing how well that is known; the
 * book screens, and never decides what the law of a place asks.
 */

import type { DateText } from "#lib/platform/dates.ts";
import type { RuleEntry } from "#lib/suitability/rules/book-entry.ts";
import { lawRules } from "#lib/suitability/rules/book-law.ts";
import { practiceRules } from "#lib/suitability/rules/book-practice.ts";

export type { RuleEntry } from "#lib/suitability/rules/book-entry.ts";

/** Changes whenever a rule, its days, its inputs or what it decides changes. */
export const rulebookVersion = "2026-11-25.3";

export const ruleBook = [...practiceRules, ...lawRules];

export type RuleId = (typeof ruleBook)[number]["id"];

const entryOf: ReadonlyMap<string, RuleEntry> = new Map(ruleBook.map((one) => [one.id, one]));

/** @throws {RangeError} for a number that is not in the book */
export function ruleEntry(id: string, book: readonly RuleEntry[] = ruleBook): RuleEntry {
  const found = book === ruleBook ? entryOf.get(id) : book.find((one) => one.id === id);
  if (!found) throw new RangeError(`The rule book has no rule ${id}.`);
  return found;
}

/** What a rule rests on, with its standing, in words. */
export function sourceOfRule(id: string): string {
  const { citation, standing } = ruleEntry(id);
  return `${citation} (${standing})`;
}

/** Whether a rule counts on any day of a loan. */
export function countsOn(
  id: string,
  { startsOn, endsOn }: { startsOn: DateText; endsOn: DateText },
  book: readonly RuleEntry[] = ruleBook,
): boolean {
  const { validFrom, validTo } = ruleEntry(id, book);
  return (validFrom === null || validFrom < endsOn) && (validTo === null || startsOn < validTo);
}
