/**
 * Whether a loan can be made longer, and what stands against it: rules that bar it
 * for the longer time, days that somebody else has, hours that nobody covers. And
 * what else wants somebody, such as papers of the customs that end with the loan.
 * Codes and parameters only; nothing here grants anything.
 */

import { addDays, type DateText, daysBetween } from "#lib/platform/dates.ts";
import type { CoverGap } from "#lib/suitability/cover-gaps.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

/** A temporary import on one carnet runs for a year. @source glossaries of the carnet, read second-hand */
export const carnetDays = 365;

export type ExtensionReason = {
  outcome: Outcome;
  code: string;
  parameters: Record<string, string | number | boolean | null>;
};

export type ExtensionFacts = {
  today: DateText;
  /** Asked for later than this before the end, it is late. */
  noticeDays: number;
  /** Return-by now, and as it is asked for. */
  endsOn: DateText;
  newEndsOn: DateText;
  leftOn: DateText;
  crossesBorder: boolean;
  findings: readonly Finding[];
  numbers: ReadonlyMap<string, string>;
  taken: readonly { accessionNumber: string; takenFrom: DateText }[];
  gaps: readonly CoverGap[];
  /** A way home is planned for these days. */
  homeDepartsOn: DateText | null;
};

const reason = (
  outcome: Outcome,
  code: string,
  parameters: ExtensionReason["parameters"] = {},
): ExtensionReason => ({ outcome, code, parameters });

/** Everything that speaks against it, bars first; empty where nothing does. */
export function extensionReasons(facts: ExtensionFacts): ExtensionReason[] {
  const { today, endsOn, newEndsOn, findings, numbers, taken, gaps } = facts;
  const bars = findings
    .filter(({ outcome }) => outcome === "bar")
    .map(({ specimenId, fact, parameters, wayOut }) =>
      reason("bar", "extension.barred", {
        ...parameters,
        specimen: numbers.get(specimenId) ?? "",
        fact,
        wayOut,
      }),
    );
  const days = taken.map(({ accessionNumber, takenFrom }) =>
    reason("bar", "extension.days-taken", { specimen: accessionNumber, takenFrom }),
  );
  const [gap] = gaps;
  const attends = [
    ...(gap ? [reason("attend", "extension.cover-ends", { from: gap.from, to: gap.to })] : []),
    ...(facts.crossesBorder && daysBetween(facts.leftOn, newEndsOn) > carnetDays
      ? [reason("attend", "extension.carnet-ends", { date: addDays(facts.leftOn, carnetDays) })]
      : []),
    ...(facts.crossesBorder && daysBetween(facts.leftOn, newEndsOn) <= carnetDays
      ? [reason("attend", "extension.customs", { date: endsOn })]
      : []),
    ...(daysBetween(today, endsOn) < facts.noticeDays
      ? [reason("attend", "extension.asked-late", { days: daysBetween(today, endsOn) })]
      : []),
    ...(facts.homeDepartsOn !== null && facts.homeDepartsOn < newEndsOn
      ? [reason("attend", "extension.way-home-planned", { date: facts.homeDepartsOn })]
      : []),
  ];
  return [...bars, ...days, ...attends];
}

/** Grounds on which the centre asks for specimens back. */
export const recallGrounds = [
  "consent withdrawn",
  "conditions broken",
  "condition of the specimen",
  "an authority asks",
  "own need",
] as const;
export type RecallGround = (typeof recallGrounds)[number];

/** The first day by which specimens may be asked back on this ground: at once, but for the centre's own need, which gives notice. */
export function earliestReturnBy(ground: RecallGround, today: DateText, noticeDays: number): DateText {
  return ground === "own need" ? addDays(today, noticeDays) : today;
}
