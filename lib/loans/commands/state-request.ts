/**
 * Saving what a borrower states, half done or whole. A request that was submitted
 * is checked whole and taken in again: days are held anew, rules run anew, and
 * what the offices said about the earlier one counts no more.
 */
import { faultOfStart } from "#lib/loans/asked-days.ts";
import { linesIn, requireState } from "#lib/loans/at-hand.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { takeInRequest } from "#lib/loans/commands/submit-request.ts";
import { StateInput } from "#lib/loans/inputs.ts";
import { toColumns } from "#lib/loans/stored-request.ts";
import { command, type Work } from "#lib/people/command.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import type { DateText } from "#lib/platform/dates.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

/** A borrower names only venues of its own; that of somebody else does not exist for it. */
export async function requireVenue({ transaction, viewer }: Work, venueId: string): Promise<void> {
  const venue = await transaction.venue.findUnique({
    where: { id: venueId },
    select: { institutionId: true },
  });
  if (!venue || (isBorrower(viewer) && venue.institutionId !== viewer.institutionId)) throw notFound("venue");
}

/** A day years ahead is refused as soon as it is stated. A day that is too near is told when the request is submitted. */
export function requireStart({ today }: Work, startsOn: DateText): void {
  const fault = faultOfStart(startsOn, { today, daysBefore: 0, mayHurry: true });
  if (fault?.code === "loan.starts-too-late")
    throw new Refusal("invalid", "input.invalid", {}, [{ path: "request.startsOn", message: fault.code }]);
}

export const stateRequest = command("stateRequest", StateInput, async (work, { loanId, request }) => {
  const loan = await takeLoan(work, loanId, "stateRequest");
  requireState(loan, ["enquiry", "requested"]);
  await requireVenue(work, request.venueId);
  requireStart(work, request.startsOn);
  const { venueId, factsConfirmedAt } = await work.transaction.loan.findUniqueOrThrow({
    where: { id: loan.id },
    select: { venueId: true, factsConfirmedAt: true },
  });
  // What was confirmed of one venue says nothing of another.
  const confirmedAt = venueId === request.venueId ? (factsConfirmedAt ?? work.now) : work.now;
  await work.transaction.loan.update({ where: { id: loan.id }, data: toColumns(request, confirmedAt) });
  if (linesIn(loan, "requested").length > 0) await takeInRequest(work, loan);
});
