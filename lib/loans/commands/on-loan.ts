/**
 * What every command on a loan begins with: the loan locked, the person
 * authorised for it, its state computed. Commands on one loan happen one after
 * the other; lines move only by the table of moves.
 */
import { type LineOnLoan, type LoanAtHand, requireMoves } from "#lib/loans/at-hand.ts";
import { refusedOccasion, type StoppedAct } from "#lib/loans/judged-again.ts";
import { loanState } from "#lib/loans/loan-state.ts";
import type { LineState } from "#lib/loans/schema.ts";
import type { Work } from "#lib/people/command.ts";
import { type Act, authorise } from "#lib/people/permission.ts";
import { toDateText } from "#lib/platform/dates.ts";
import { canonicalText } from "#lib/platform/hash.ts";
import { newId } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { rulebookVersion } from "#lib/suitability/rules/book.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { runDifference } from "#lib/suitability/run-difference.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import { barsOf } from "#lib/suitability/suitability.ts";

/** Locks a loan and loads what decides. @throws {Refusal} "not-found" for what is not there and for what is not theirs */
export async function takeLoan(work: Work, loanId: string, act: Act): Promise<LoanAtHand> {
  await work.transaction.$queryRaw`SELECT 1 FROM loan WHERE id = ${loanId}::uuid FOR NO KEY UPDATE`;
  const row = await work.transaction.loan.findUnique({
    where: { id: loanId },
    include: {
      lines: {
        include: { specimen: { select: { accessionNumber: true } } },
        orderBy: { specimen: { accessionNumber: "asc" } },
      },
      agreements: {
        orderBy: { version: "desc" },
        take: 1,
        include: { signatures: { select: { party: true } } },
      },
      _count: { select: { crates: true } },
    },
  });
  if (!row) throw notFound("loan");
  authorise(work.viewer, act, { institutionId: row.borrowerId });
  const lines = row.lines.map(({ id, specimenId, state, specimen }) => ({
    id,
    specimenId,
    accessionNumber: specimen.accessionNumber,
    state: state as LineState,
  }));
  const state = loanState({
    lines: lines.map((line) => line.state),
    signedByBoth: row.agreements[0]?.signatures.length === 2,
    hasCrates: row._count.crates > 0,
    isEnded: row.closedAt !== null,
  });
  const { id, number, borrowerId, venueId, submittedAt } = row;
  const days = { startsOn: toDateText(row.startsOn), endsOn: toDateText(row.endsOn) };
  return { id, number, borrowerId, venueId, submittedAt, ...days, state, lines };
}

/**
 * Moves lines to a state.
 * @param facts what the move states of each line, such as the verdict at home
 * @throws {Refusal} "loan.move-not-allowed" outside the table of moves
 */
export async function moveLines(
  work: Work,
  lines: readonly LineOnLoan[],
  to: LineState,
  facts: { verdict?: string; remark?: string } = {},
): Promise<void> {
  requireMoves(lines, to);
  await work.transaction.loanLine.updateMany({
    where: { id: { in: lines.map((line) => line.id) } },
    data: { ...facts, state: to, stateSince: work.now },
  });
}

/** What an evaluation looked at. */
export type RunInputs = { request: RequestFacts; subjects: readonly SpecimenCase[] };

/** Keeps one evaluation as it was: what it found, what it looked at, and by which edition of the rule book. */
export async function keepRun(
  work: Work,
  loanId: string,
  occasion: string,
  findings: readonly Finding[],
  { request, subjects }: RunInputs,
): Promise<void> {
  await work.transaction.suitabilityRun.create({
    data: {
      id: newId(),
      loanId,
      occasion,
      runAt: work.now,
      accountId: work.viewer.accountId,
      findings: [...findings],
      inputs: JSON.parse(canonicalText({ request, subjects })),
      rulebook: rulebookVersion,
    },
  });
}

/**
 * Refuses, and keeps the evaluation that refused: in a transaction of its own,
 * because the one of the act is undone. The same refusal again is kept once.
 * @param refuse throws where the act may not be
 */
export async function refuseAndKeep(
  work: Work,
  act: Act,
  loanId: string,
  { stopped, findings, inputs }: { stopped: StoppedAct; findings: readonly Finding[]; inputs: RunInputs },
  refuse: () => void,
): Promise<void> {
  try {
    refuse();
  } catch (refusal) {
    if (barsOf(findings).length > 0)
      await inTransaction(work.viewer, act, async (transaction) => {
        const occasion = refusedOccasion(stopped);
        const last = await transaction.suitabilityRun.findFirst({
          where: { loanId },
          orderBy: [{ runAt: "desc" }, { id: "desc" }],
        });
        const before = last?.findings as unknown as Finding[] | undefined;
        if (last?.occasion === occasion && before && runDifference(before, findings).length === 0) return;
        await keepRun({ ...work, transaction }, loanId, occasion, findings, inputs);
      });
    throw refusal;
  }
}
