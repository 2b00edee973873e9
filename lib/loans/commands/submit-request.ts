/**
 * Submitting a request: it is checked whole, with what is kept of the borrower confirmed, its days are held for 14 days, the
 * rules run and what they found is kept. Days that somebody else has are refused
 * with the day from which the specimen is free; bars of the other rules are shown
 * and left to the decision.
 */
import { faultOfStart } from "#lib/loans/asked-days.ts";
import { type LoanAtHand, linesIn, requireState } from "#lib/loans/at-hand.ts";
import { settleBuffers, withdrawLines } from "#lib/loans/commands/note-specimen.ts";
import { keepRun, moveLines, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { LoanOnly, SubmittedRequest } from "#lib/loans/inputs.ts";
import { statesBeforeRelease } from "#lib/loans/loan-state.ts";
import { loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { toRequest } from "#lib/loans/stored-request.ts";
import { command, type Work } from "#lib/people/command.ts";
import { practiceHere } from "#lib/people/queries.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { toDateText } from "#lib/platform/dates.ts";
import { parseInput } from "#lib/platform/parse.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { bookedRange } from "#lib/suitability/period.ts";
import { judgeSuitability, officesNeeded } from "#lib/suitability/suitability.ts";
import { holdSpecimens } from "#lib/whereabouts/commands.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

const dayMs = 86_400_000;

export type Submitted = Record<Outcome, number>;

/** Holds the days of a loan's specimens, anew where they were held before. */
export async function holdDays(work: Work, loan: LoanAtHand): Promise<void> {
  const row = await work.transaction.loan.findUniqueOrThrow({ where: { id: loan.id } });
  const request = toRequest(row);
  const days = bookedRange({ ...request, daysBefore: row.daysBefore, daysAfter: row.daysAfter }, work.today);
  const { holdDays: held } = await practiceHere(work.transaction);
  const expiresAt = new Date(work.now.getTime() + held * dayMs);
  await holdSpecimens(
    work,
    linesIn(loan, "noted", "requested").map(({ id, specimenId }) => ({
      loanLineId: id,
      specimenId,
      ...days,
      expiresAt,
    })),
  );
}

/**
 * Whether the days can be asked for at all. Who asks from outside leaves the days
 * for checks, packing and travel; the house may agree on a shorter preparation, and
 * a request that was in time stays so while it asks for nothing more.
 * @param loan as it was before the request was stated anew
 */
async function requirePossibleStart({ transaction, viewer, today }: Work, loan: LoanAtHand): Promise<void> {
  const row = await transaction.loan.findUniqueOrThrow({ where: { id: loan.id } });
  const startsOn = toDateText(row.startsOn);
  const asksForMore = linesIn(loan, "noted").length > 0 || startsOn < loan.startsOn;
  const mayHurry = !isBorrower(viewer) || !asksForMore;
  const fault = faultOfStart(startsOn, { today, daysBefore: row.daysBefore, mayHurry });
  if (fault === null) return;
  const { code, earliest } = fault;
  throw new Refusal("invalid", code, { earliest, days: row.daysBefore }, [
    { path: "startsOn", message: "loan.another-start" },
  ]);
}

/** Takes a request in as it stands. @returns how many findings of each outcome there are */
export async function takeInRequest(work: Work, loan: LoanAtHand): Promise<Submitted> {
  const row = await work.transaction.loan.findUniqueOrThrow({ where: { id: loan.id } });
  parseInput(SubmittedRequest, toRequest(row));
  await settleBuffers(work, loan.id);
  await requirePossibleStart(work, loan);
  await holdDays(work, loan);
  await work.transaction.loan.update({ where: { id: loan.id }, data: { submittedAt: work.now } });
  await moveLines(work, linesIn(loan, "noted"), "requested");
  const { request: facts, subjects } = await loanCaseOf(work.transaction, loan.id, work.today);
  const findings = judgeSuitability(facts, subjects);
  await keepRun(work, loan.id, "request", findings, { request: facts, subjects });
  await writeLetters(work, loan.id, "submitted", {
    count: subjects.length,
    days: (await practiceHere(work.transaction)).holdDays,
  });
  if (officesNeeded(findings).includes("donor officer"))
    await writeLetters(work, loan.id, "donor-office-asked");
  const count = (outcome: Outcome) => findings.filter((finding) => finding.outcome === outcome).length;
  return { clear: count("clear"), attend: count("attend"), bar: count("bar") };
}

export const submitRequest = command(
  "submitRequest",
  LoanOnly,
  async (work, { loanId }): Promise<Submitted> => {
    const loan = await takeLoan(work, loanId, "submitRequest");
    requireState(loan, ["enquiry", "requested"]);
    if (linesIn(loan, "noted", "requested").length === 0) throw new Refusal("conflict", "loan.no-specimens");
    return await takeInRequest(work, loan);
  },
);

/** Ends a loan that has not left. What is away comes home first. */
export const withdrawRequest = command("withdrawRequest", LoanOnly, async (work, { loanId }) => {
  const loan = await takeLoan(work, loanId, "withdrawRequest");
  requireState(loan, statesBeforeRelease);
  await withdrawLines(work, loan, linesIn(loan, "noted", "requested", "accepted", "packed"));
  await work.transaction.loan.update({ where: { id: loan.id }, data: { closedAt: work.now } });
  if (loan.submittedAt !== null)
    await writeLetters(work, loan.id, loan.state === "requested" ? "withdrawn" : "cancelled");
});
