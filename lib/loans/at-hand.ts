/**
 * A loan as a command has it at hand, and what it may refuse by: the loan's state,
 * a line's place in the table of moves, bars of suitability. Refusals carry codes
 * and parameters.
 */
import { isLive } from "#lib/loans/loan-state.ts";
import type { LineState, LoanState } from "#lib/loans/schema.ts";
import { mayMove } from "#lib/loans/transitions.ts";
import type { DateText } from "#lib/platform/dates.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import { barsOf } from "#lib/suitability/suitability.ts";

export type LineOnLoan = { id: string; specimenId: string; accessionNumber: string; state: LineState };

export type LoanAtHand = {
  id: string;
  number: string;
  borrowerId: string;
  venueId: string;
  submittedAt: Date | null;
  startsOn: DateText;
  /** Return-by. */
  endsOn: DateText;
  state: LoanState;
  lines: LineOnLoan[];
};

/** @throws {Refusal} "loan.not-now" when the loan is in another state */
export function requireState(
  loan: Pick<LoanAtHand, "state" | "number">,
  allowed: readonly LoanState[],
): void {
  if (!allowed.includes(loan.state))
    throw new Refusal("conflict", "loan.not-now", { state: loan.state, loan: loan.number });
}

/** Lines of a loan in one of these states. */
export function linesIn(loan: Pick<LoanAtHand, "lines">, ...states: LineState[]): LineOnLoan[] {
  return loan.lines.filter((line) => states.includes(line.state));
}

export function liveLines(loan: Pick<LoanAtHand, "lines">): LineOnLoan[] {
  return loan.lines.filter((line) => isLive(line.state));
}

/** @throws {Refusal} "loan.move-not-allowed" for the first line that may not move there */
export function requireMoves(lines: readonly LineOnLoan[], to: LineState): void {
  const stuck = lines.find((line) => !mayMove(line.state, to));
  if (stuck)
    throw new Refusal("conflict", "loan.move-not-allowed", {
      specimen: stuck.accessionNumber,
      from: stuck.state,
      to,
    });
}

/** @throws {Refusal} naming the first bar, the specimen that it stands on, and how many there are */
export function refuseBars(
  lines: readonly Pick<LineOnLoan, "specimenId" | "accessionNumber">[],
  findings: readonly Finding[],
  reason: "decision.barred" | "agreement.barred",
): void {
  const bars = barsOf(findings);
  const [first] = bars;
  if (!first) return;
  const line = lines.find((one) => one.specimenId === first.specimenId);
  throw new Refusal("conflict", reason, {
    ...first.parameters,
    specimen: line?.accessionNumber ?? "",
    rule: first.rule,
    group: first.group,
    fact: first.fact,
    wayOut: first.wayOut,
    bars: bars.length,
  });
}

/** Accession numbers for a sentence: all of a few, the first of many. */
export function numbersInWords(lines: readonly { accessionNumber: string }[], most = 5): string {
  const numbers = lines.map((line) => line.accessionNumber);
  const rest = numbers.length - most;
  return rest > 0 ? `${numbers.slice(0, most).join(", ")} and ${rest} more` : numbers.join(", ");
}
