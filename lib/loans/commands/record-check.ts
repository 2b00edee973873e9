/**
 * Recording a check, of a specimen in the house or on a loan. On a loan the
 * occasion follows from where the specimen is. A borrower records only checks of
 * specimens that are with it, on its own loan.
 */
import type { DayFloor } from "#lib/condition/check-day.ts";
import { type RecordedCheck, writeCheck } from "#lib/condition/commands.ts";
import { borrowerOccasions, CheckRecord } from "#lib/condition/recording.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { type CheckedLine, checkedLineOf, occasionFloor, occasionsFor } from "#lib/loans/occasions.ts";
import { command, type Work } from "#lib/people/command.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { cratesOf } from "#lib/shipments/queries.ts";

/** @throws {Refusal} where the loan is not theirs or the specimen is not on it */
async function takeLine(
  work: Work,
  loanId: string,
  specimenId: string,
): Promise<CheckedLine & { accessionNumber: string }> {
  const { transaction, viewer } = work;
  const loan = await takeLoan(work, loanId, "recordCheck");
  const line = loan.lines.find((one) => one.specimenId === specimenId);
  if (!line) throw isBorrower(viewer) ? notFound("loan") : new Refusal("conflict", "check.not-on-loan");
  const { stateSince } = await transaction.loanLine.findUniqueOrThrow({
    where: { id: line.id },
    select: { stateSince: true },
  });
  const decisions = await transaction.decision.findMany({
    where: { loanId },
    orderBy: { decidedAt: "asc" },
    select: { office: true, outcome: true, decidedAt: true },
  });
  const crates = await cratesOf(transaction, loanId);
  return {
    ...checkedLineOf({ ...line, stateSince }, crates, decisions),
    accessionNumber: line.accessionNumber,
  };
}

/** @returns the first day that the occasion allows @throws {Refusal} where it does not fit where the specimen is */
async function requireOccasion(work: Work, input: CheckRecord, loanId: string): Promise<DayFloor[]> {
  const { specimenId, occasion } = input;
  const byBorrower = isBorrower(work.viewer);
  const line = await takeLine(work, loanId, specimenId);
  const { state, closedCrate, accessionNumber: specimen } = line;
  if (!occasionsFor(state, byBorrower, closedCrate !== null).includes(occasion)) {
    if (closedCrate !== null && (occasion === "arrival" || occasion === "home"))
      throw new Refusal("conflict", "check.crate-closed", { specimen, crate: closedCrate.code });
    throw new Refusal("conflict", "check.not-where-it-is", { specimen, state });
  }
  const floor = occasionFloor(occasion, line, byBorrower);
  return floor === null ? [] : [floor];
}

export const recordCheck = command(
  "recordCheck",
  CheckRecord,
  async (work, input): Promise<RecordedCheck> => {
    const { loanId, occasion } = input;
    if (isBorrower(work.viewer) && (loanId === null || !borrowerOccasions.includes(occasion)))
      throw new Refusal("conflict", "check.not-on-this-occasion", { occasion });
    const floors = loanId === null ? [] : await requireOccasion(work, input, loanId);
    const written = await writeCheck(work, input, floors);
    const isHarm =
      occasion === "incident" || (written.totals !== null && written.totals.new + written.totals.worse > 0);
    if (loanId !== null && isHarm) await writeLetters(work, loanId, "harm");
    return written;
  },
);
