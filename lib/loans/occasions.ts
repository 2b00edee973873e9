/**
 * On which occasion a specimen of a loan is checked, from where its line stands;
 * the likeliest first. Who borrows looks at arrival, before it leaves them and
 * after an incident; the house at both ends.
 */
import { borrowerOccasions } from "#lib/condition/recording.ts";
import type { Occasion } from "#lib/condition/schema.ts";
import type { LineState } from "#lib/loans/schema.ts";

const occasionsAt: Partial<Record<LineState, readonly Occasion[]>> = {
  accepted: ["out", "incident"],
  packed: ["out", "incident"],
  "travelling out": ["incident"],
  "resting at venue": ["arrival", "incident"],
  "at venue": ["arrival", "departure", "incident"],
  "travelling home": ["incident"],
  "resting at home": ["home", "incident"],
  "checked in": ["incident"],
};

/** Where a specimen is in the hands of who borrows. */
const withBorrower: readonly LineState[] = ["resting at venue", "at venue"];

/** @returns none where no check belongs to the loan, or not one of theirs */
export function occasionsFor(state: LineState, byBorrower: boolean): Occasion[] {
  const occasions = occasionsAt[state] ?? [];
  if (!byBorrower) return [...occasions];
  if (!withBorrower.includes(state)) return [];
  return occasions.filter((occasion) => borrowerOccasions.includes(occasion));
}
