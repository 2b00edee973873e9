/**
 * Where a specimen stands among its loans, and what a withdrawn consent asks of
 * each. Only lines that still claim the specimen are told; a slip that was never
 * sent claims nothing. The way home is never barred, so what is away comes home.
 */
import { announceDays } from "#lib/desk/due.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { awayStates } from "#lib/loans/transitions.ts";
import { addDays, type DateText, daysBetween } from "#lib/platform/dates.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

/** One line of a loan that still claims its specimen. */
export type LentLine = {
  specimenId: string;
  accessionNumber: string;
  title: string;
  loanId: string;
  loanNumber: string;
  borrower: string;
  venue: string;
  state: LineState;
  startsOn: DateText;
  /** The first day after the loan: the specimen is due home on it. */
  endsOn: DateText;
  homeStagePlanned: boolean;
};

/** What a withdrawal asks of a line, the most pressing first. */
export const withdrawalEffects = [
  "stops being shown",
  "is not shown",
  "is found first",
  "goes on home",
  "does not leave",
  "is not granted",
  "is not lent again",
] as const;
export type WithdrawalEffect = (typeof withdrawalEffects)[number];

const effects: Record<LineState, WithdrawalEffect | null> = {
  noted: null,
  requested: "is not granted",
  accepted: "does not leave",
  packed: "does not leave",
  "travelling out": "is not shown",
  "resting at venue": "is not shown",
  "at venue": "stops being shown",
  "travelling home": "goes on home",
  "resting at home": "is not lent again",
  "checked in": null,
  closed: null,
  declined: null,
  withdrawn: null,
  missing: "is found first",
};

/** @returns null where the line claims nothing, so that nothing follows */
export const effectOfWithdrawal = (state: LineState): WithdrawalEffect | null => effects[state];

export const isAway = ({ state }: Pick<LentLine, "state">): boolean => awayStates.includes(state);

const urgency = ({ state }: LentLine) => {
  const effect = effects[state];
  return effect === null ? withdrawalEffects.length : withdrawalEffects.indexOf(effect);
};

/** What is away first, then by the day it is due home. */
export function orderLent(lines: readonly LentLine[]): LentLine[] {
  return [...lines].sort(
    (one, other) =>
      urgency(one) - urgency(other) ||
      one.endsOn.localeCompare(other.endsOn) ||
      one.accessionNumber.localeCompare(other.accessionNumber),
  );
}

export const lentStandings = [
  "missing",
  "overdue",
  "way home not planned",
  "way home planned",
  "on the way out",
  "on the way home",
  "promised",
  "asked for",
  "home, to be checked",
] as const;
export type LentStanding = {
  standing: (typeof lentStandings)[number];
  outcome: Outcome;
  /** Days past the day it was due home; 0 before it. */
  daysLate: number;
};

const inTheHouse: Partial<Record<LineState, LentStanding["standing"]>> = {
  requested: "asked for",
  accepted: "promised",
  packed: "promised",
  "resting at home": "home, to be checked",
};

/** @returns null where there is nothing to say of the line */
export function standingOfLent(line: LentLine, today: DateText): LentStanding | null {
  const daysLate = Math.max(0, daysBetween(line.endsOn, today));
  const say = (standing: LentStanding["standing"], outcome: Outcome): LentStanding => ({
    standing,
    outcome,
    daysLate,
  });
  if (line.state === "missing") return say("missing", "bar");
  if (!isAway(line)) {
    const standing = inTheHouse[line.state];
    return standing ? say(standing, "clear") : null;
  }
  if (line.state === "travelling home") return say("on the way home", "clear");
  if (line.endsOn <= today) return say("overdue", "bar");
  if (line.state === "travelling out") return say("on the way out", "clear");
  if (line.homeStagePlanned) return say("way home planned", "clear");
  const isNear = line.endsOn <= addDays(today, announceDays.return);
  return say("way home not planned", isNear ? "attend" : "clear");
}
