/**
 * Whose turn it is. A borrower is told what the borrower can do; everything else
 * that is due on a loan waits for the centre, and is told as that.
 */
import type { DueItem } from "#lib/desk/due.ts";

/** What the people of the borrowing institution do themselves. */
const borrowersActs: readonly string[] = [
  "due.missing",
  "due.consent-withdrawn",
  "due.cover-ends",
  "due.overdue",
  "due.recalled",
  "due.stop-use",
  "due.borrower-signs",
  "due.message",
  "due.arrives",
  "due.open",
];

export const waitsForBorrower = ({ code }: Pick<DueItem, "code">): boolean => borrowersActs.includes(code);

export type Turn = "borrower" | "centre" | "nobody";

/** Whose turn it is on one loan: the borrower's as soon as one thing is theirs. */
export function turnOn(loanId: string, due: readonly DueItem[]): Turn {
  const own = due.filter(({ about }) => about.kind === "loan" && about.id === loanId);
  if (own.some(waitsForBorrower)) return "borrower";
  return own.length > 0 ? "centre" : "nobody";
}
