/**
 * Checking a specimen in and closing the loan. Nothing goes back to its place
 * before somebody has looked: the check at home stands beside the one before it
 * left, the differences are computed, and the verdict may not say less than they
 * do. The days that are left are given back from tomorrow on. A loan is closed
 * only when every line is checked in and what crossed a customs border is discharged;
 * the refusal names what is not.
 */
import { type CheckComparison, compareChecks } from "#lib/condition/comparison.ts";
import { type CheckSheet, checksOfLoan } from "#lib/condition/queries.ts";
import { linesIn, liveLines } from "#lib/loans/at-hand.ts";
import { moveLines, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { CheckInInput, LoanOnly } from "#lib/loans/inputs.ts";
import { missingToClose } from "#lib/loans/queries/closing.ts";
import { command, type Work } from "#lib/people/command.ts";
import { addDays } from "#lib/platform/dates.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { writeCrateEvents } from "#lib/shipments/commands.ts";
import { cratesOf } from "#lib/shipments/queries.ts";
import { releaseLineBookings, writeMove } from "#lib/whereabouts/commands.ts";
import { homePlacesOf } from "#lib/whereabouts/queries.ts";

/** The checks before it left and after it came home. @throws {Refusal} when one is not there */
function bothChecks(checks: readonly CheckSheet[], accessionNumber: string) {
  const out = checks.findLast((check) => check.occasion === "out");
  const home = checks.findLast((check) => check.occasion === "home");
  if (!home) throw new Refusal("conflict", "check-in.no-check-home", { specimen: accessionNumber });
  if (!out) throw new Refusal("conflict", "check-in.no-check-out", { specimen: accessionNumber });
  return { out, home };
}

/** A crate that nothing is waiting in is empty. */
async function emptyCrates(work: Work, loanId: string, waiting: ReadonlySet<string>): Promise<void> {
  const crates = await cratesOf(work.transaction, loanId);
  const empty = crates.filter(
    (crate) => crate.state === "opened" && !crate.contents.some((one) => waiting.has(one.specimenId)),
  );
  await writeCrateEvents(
    work,
    empty.map(({ id }) => ({ crateId: id, kind: "emptied" as const })),
  );
}

export type CheckedIn = { totals: CheckComparison["totals"]; needsReview: boolean; placed: boolean };

export const checkIn = command("checkIn", CheckInInput, async (work, input): Promise<CheckedIn> => {
  const { loanId, specimenId, verdict, remark } = input;
  const { transaction, today } = work;
  const loan = await takeLoan(work, loanId, "checkIn");
  const line = loan.lines.find((one) => one.specimenId === specimenId);
  if (!line) throw notFound("specimen");
  const specimen = line.accessionNumber;
  if (line.state !== "resting at home")
    throw new Refusal("conflict", "check-in.not-home", { specimen, state: line.state });
  const counted = (await cratesOf(transaction, loan.id)).some(
    (crate) => crate.state === "opened" && crate.contents.some((one) => one.specimenId === specimenId),
  );
  if (!counted) throw new Refusal("conflict", "check-in.not-counted", { specimen });
  const { out, home } = bothChecks(
    (await checksOfLoan(transaction, loan.id)).get(specimenId) ?? [],
    specimen,
  );
  const comparison = compareChecks(out, home);
  if (comparison.needsReview && verdict === "no change")
    throw new Refusal("conflict", "check-in.verdict-differs", {
      specimen,
      new: comparison.totals.new,
      worse: comparison.totals.worse,
    });
  await moveLines(work, [line], "checked in", { verdict, remark });
  await releaseLineBookings(work, [line.id], addDays(today, 1));
  const placeId = (await homePlacesOf(transaction, [specimenId])).get(specimenId);
  if (placeId) await writeMove(work, { specimenId, placeId, reason: `loan ${loan.number}, checked in` });
  const waiting = linesIn(loan, "resting at home").map((one) => one.specimenId);
  await emptyCrates(work, loan.id, new Set(waiting.filter((id) => id !== specimenId)));
  if (liveLines(loan).every(({ id, state }) => id === line.id || state === "checked in"))
    await writeLetters(work, loan.id, "checked-in");
  return {
    totals: comparison.totals,
    needsReview: comparison.needsReview,
    placed: placeId !== undefined,
  };
});

/** Lines in words: each with where it is, so that the one that is still out is named. */
const whereTheyAre = (lines: readonly { accessionNumber: string; state: string }[]) =>
  lines
    .slice(0, 5)
    .map((line) => `${line.accessionNumber} (${line.state})`)
    .join(", ");

export const closeLoan = command("closeLoan", LoanOnly, async (work, { loanId }) => {
  const loan = await takeLoan(work, loanId, "closeLoan");
  const open = liveLines(loan).filter((line) => line.state !== "checked in");
  if (open.length > 0)
    throw new Refusal("conflict", "loan.still-open", { specimens: whereTheyAre(open), count: open.length });
  const lines = linesIn(loan, "checked in");
  if (lines.length === 0)
    throw new Refusal("conflict", "loan.not-now", { state: loan.state, loan: loan.number });
  const held = (await missingToClose(work.transaction, loan.id)).find(
    ({ code }) => code === "close.not-discharged",
  );
  if (held) throw new Refusal("conflict", "loan.not-discharged", { ...held.parameters, loan: loan.number });
  await moveLines(work, lines, "closed");
  await work.transaction.loan.update({ where: { id: loan.id }, data: { closedAt: work.now } });
  await writeLetters(work, loan.id, "closed");
});
