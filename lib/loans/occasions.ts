/**
 * On which occasion a specimen of a loan is checked, from where its line stands
 * and whether its crate is open, the likeliest first; and from which day on. Who
 * borrows looks at arrival, before it leaves them and after an incident; the house
 * at both ends. What lies in a closed crate is not looked at for arrival or return.
 */
import type { DayFloor } from "#lib/condition/check-day.ts";
import { borrowerOccasions } from "#lib/condition/recording.ts";
import type { Occasion } from "#lib/condition/schema.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { toDateText } from "#lib/platform/dates.ts";
import type { CrateEventKind, CrateState } from "#lib/shipments/schema.ts";

/** A line that rests at the venue is in its crate: opened and counted, it stands at the venue. */
const occasionsAt: Partial<Record<LineState, readonly Occasion[]>> = {
  accepted: ["out", "incident"],
  packed: ["out", "incident"],
  "travelling out": ["incident"],
  "resting at venue": ["incident"],
  "at venue": ["arrival", "departure", "incident"],
  "travelling home": ["incident"],
  "resting at home": ["home", "incident"],
  "checked in": ["incident"],
};

/** Where a specimen is in the hands of who borrows. */
const withBorrower: readonly LineState[] = ["resting at venue", "at venue"];

/**
 * @param inClosedCrate at home the line alone does not say whether the crate was opened
 * @returns none where no check belongs to the loan, or not one of theirs
 */
export function occasionsFor(state: LineState, byBorrower: boolean, inClosedCrate = false): Occasion[] {
  const occasions = (occasionsAt[state] ?? []).filter((occasion) => occasion !== "home" || !inClosedCrate);
  if (!byBorrower) return occasions;
  if (!withBorrower.includes(state)) return [];
  return occasions.filter((occasion) => borrowerOccasions.includes(occasion));
}

/** What decides on a check of one specimen of a loan. */
export type CheckedLine = {
  state: LineState;
  stateSince: Date;
  /** The first time that the curator accepted the loan. */
  acceptedAt: Date | null;
  /** Its crate came last, and was opened last. */
  arrivedAt: Date | null;
  openedAt: Date | null;
  closedCrate: { code: string; notBefore: string | null } | null;
};

type Moment = Date | string;
type Crate = {
  code: string;
  state: CrateState;
  notBefore: string | null;
  contents: readonly { specimenId: string }[];
  events: readonly { kind: CrateEventKind; at: string }[];
};
type Decided = { office: string; outcome: string; decidedAt: Moment };

const toMoment = (at: Moment | undefined): Date | null => (at === undefined ? null : new Date(at));

/** @param decisions in the order in which they were given */
export function checkedLineOf(
  { specimenId, state, stateSince }: { specimenId: string; state: LineState; stateSince: Moment },
  crates: readonly Crate[],
  decisions: readonly Decided[],
): CheckedLine {
  const crate = crates.findLast(({ contents }) => contents.some((one) => one.specimenId === specimenId));
  const last = (kind: CrateEventKind) => toMoment(crate?.events.findLast((event) => event.kind === kind)?.at);
  const acceptance = decisions.find(({ office, outcome }) => office === "curator" && outcome === "accept");
  return {
    state,
    stateSince: new Date(stateSince),
    acceptedAt: toMoment(acceptance?.decidedAt),
    arrivedAt: last("arrived"),
    openedAt: last("opened"),
    closedCrate: crate?.state === "resting closed" ? { code: crate.code, notBefore: crate.notBefore } : null,
  };
}

/** The first day on which a check for the occasion can have been made; null where a loan says nothing of it. */
export function occasionFloor(occasion: Occasion, line: CheckedLine, byBorrower: boolean): DayFloor | null {
  const floor = (code: DayFloor["code"], at: Date | null): DayFloor => ({
    code,
    day: toDateText(at ?? line.stateSince),
  });
  switch (occasion) {
    case "out":
      return floor("check.before-accepted", line.acceptedAt);
    case "arrival":
    case "departure":
      return floor("check.before-opened", line.openedAt);
    case "home":
      return floor("check.before-counted", line.openedAt);
    case "incident":
      return byBorrower
        ? floor("check.before-arrived", line.arrivedAt)
        : floor("check.before-accepted", line.acceptedAt);
    case "periodic":
      return null;
  }
}
