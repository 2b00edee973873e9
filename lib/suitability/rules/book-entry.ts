/**
 * The shape of one rule in the book, and a short way to write it down. A rule is
 * data here; what it decides is the small function of the same number.
 */

import type { DateText } from "#lib/platform/dates.ts";
import type { offices, RuleGroup } from "#lib/suitability/schema.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

export const standingsOfRules = [
  "read",
  "read in summary",
  "from memory",
  "common practice, no source",
  "worked out here",
] as const;
export type StandingOfRule = (typeof standingsOfRules)[number];

export type RuleEntry<Id extends string = string> = {
  id: Id;
  group: RuleGroup;
  /** Where it counts: a country or part of one, the border of one, or everywhere. */
  place: string;
  /** First day on which it counts; null where no beginning is known. */
  validFrom: DateText | null;
  /** First day on which it counts no more; null while it counts. */
  validTo: DateText | null;
  /** Names of what it looks at. */
  inputs: readonly string[];
  /** Outcomes that it can give. */
  outcomes: readonly Outcome[];
  citation: string;
  standing: StandingOfRule;
  /** When somebody last held it against its source. */
  checkedOn: DateText;
  /** Whose reasoned word may go against it; empty for nobody. */
  overriddenBy: readonly (typeof offices)[number][];
  /** Such a word needs evidence on file. */
  needsEvidence: boolean;
  /** It touches law, so its sentences send the reader to the local authority. */
  isLegal: boolean;
};

const outcomeOfLetter = { c: "clear", a: "attend", b: "bar" } as const;
type Letter = keyof typeof outcomeOfLetter;

/** The day on which the book was last held against its sources as a whole. */
export const bookCheckedOn: DateText = "2026-11-25";

/** One rule: its number, outcomes by their first letters, inputs with commas between, citation and standing. */
export function entry<const Id extends string>(
  id: Id,
  outcomes: string,
  inputs: string,
  citation: string,
  standing: StandingOfRule,
  rest: Partial<RuleEntry>,
): RuleEntry<Id> {
  return {
    group: "consent",
    place: "everywhere",
    validFrom: null,
    validTo: null,
    checkedOn: bookCheckedOn,
    overriddenBy: ["curator"],
    needsEvidence: false,
    isLegal: false,
    ...rest,
    id,
    outcomes: [...outcomes].map((letter) => outcomeOfLetter[letter as Letter]),
    inputs: inputs.split(", "),
    citation,
    standing,
  };
}
