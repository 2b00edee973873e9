/**
 * A loan's own state, computed from its lines, its signatures and its crates;
 * never typed and never stored. Lines move separately, so the loan stands where
 * the least advanced of its lines stands that is still in it; a missing line keeps
 * the loan on its way home. Lines that were declined or withdrawn count only when
 * nothing else is left.
 */

import type { LineState, LoanState } from "#lib/loans/schema.ts";
import { endedStates } from "#lib/loans/transitions.ts";

export type LoanStanding = {
  lines: readonly LineState[];
  signedByBoth: boolean;
  hasCrates: boolean;
  /** The file was closed; a slip without lines was then withdrawn. */
  isEnded: boolean;
};

/** Live states in the order of the way; the first that any line is in decides. */
const way: readonly (readonly [LineState, LoanState])[] = [
  ["requested", "requested"],
  ["accepted", "accepted"],
  ["packed", "accepted"],
  ["travelling out", "travelling out"],
  ["resting at venue", "at venue"],
  ["at venue", "at venue"],
  ["travelling home", "travelling home"],
  ["missing", "travelling home"],
  ["resting at home", "home, to be checked"],
  ["checked in", "checked in"],
  ["closed", "closed"],
];

export function loanState({ lines, signedByBoth, hasCrates, isEnded }: LoanStanding): LoanState {
  const states = new Set(lines);
  const found = way.find(([lineState]) => states.has(lineState));
  if (found === undefined) {
    if (states.has("noted")) return "enquiry";
    if (states.size === 0) return isEnded ? "withdrawn" : "enquiry";
    return states.has("declined") ? "declined" : "withdrawn";
  }
  const [, state] = found;
  if (state !== "accepted" || !signedByBoth) return state;
  return hasCrates ? "preparing" : "agreed";
}

/** States in which nothing of the loan has left its place. */
export const statesBeforeRelease: readonly LoanState[] = [
  "enquiry",
  "requested",
  "accepted",
  "agreed",
  "preparing",
];

/** Decided, and nothing of it has left: what is agreed, planned and packed may still change. */
export const statesInPreparation: readonly LoanState[] = ["accepted", "agreed", "preparing"];

/** States that a specimen reaches only once it has left the house. */
export const lineStatesSinceRelease: readonly LineState[] = [
  "travelling out",
  "resting at venue",
  "at venue",
  "travelling home",
  "resting at home",
  "checked in",
  "closed",
  "missing",
];

/** Whether a line still counts towards the loan. */
export function isLive(state: LineState): boolean {
  return !endedStates.includes(state);
}

/** Whether a specimen may still be put on the loan or taken off it. */
export function mayChangeSpecimens(state: LoanState): boolean {
  return state === "enquiry" || state === "requested";
}
