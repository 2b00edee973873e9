/**
 * Letting a loan go out. Every gate is judged anew at this moment and each must
 * hold; then the specimens pass to the carrier, on the way, in one act.
 */

import { linesIn, requireState } from "#lib/loans/at-hand.ts";
import { keepRun, moveLines, refuseAndKeep, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { type Gate, releaseGates } from "#lib/loans/gates.ts";
import { LoanOnly } from "#lib/loans/inputs.ts";
import { statesInPreparation } from "#lib/loans/loan-state.ts";
import { loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { releaseFactsOf } from "#lib/loans/queries/release-facts.ts";
import { command } from "#lib/people/command.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { writeCrateEvents } from "#lib/shipments/commands.ts";
import { cratesOf, stagesOf } from "#lib/shipments/queries.ts";
import { judgeSuitability } from "#lib/suitability/suitability.ts";
import { placeOnTheWay, writeHandovers, writeMoves } from "#lib/whereabouts/commands.ts";

/** @throws {Refusal} with the first gate that does not hold, and how many there are */
function refuseFailing(gates: readonly Gate[]): void {
  const failing = gates.filter((gate) => !gate.holds);
  const [first] = failing;
  if (!first) return;
  const [fact] = first.facts;
  throw new Refusal("conflict", "loan.gate-fails", {
    ...fact?.parameters,
    gate: first.gate,
    fact: fact?.code ?? "",
    gates: failing.length,
  });
}

export const dispatchLoan = command("dispatchLoan", LoanOnly, async (work, { loanId }) => {
  const { transaction, today, viewer } = work;
  const loan = await takeLoan(work, loanId, "dispatchLoan");
  requireState(loan, statesInPreparation);
  const loanCase = await loanCaseOf(transaction, loan.id, today);
  const findings = judgeSuitability(loanCase.request, loanCase.subjects);
  const gates = releaseGates(await releaseFactsOf(transaction, loanCase, findings, today));
  const judged = { stopped: "dispatch", findings, inputs: loanCase } as const;
  await refuseAndKeep(work, "dispatchLoan", loan.id, judged, () => refuseFailing(gates));
  const stage = (await stagesOf(transaction, loan.id)).find(({ direction }) => direction === "out");
  if (!stage) throw new Refusal("conflict", "stage.not-planned", { direction: "out" });
  const lines = linesIn(loan, "packed");
  const specimenIds = lines.map((line) => line.specimenId);
  const crates = (await cratesOf(transaction, loan.id)).filter((crate) => crate.contents.length > 0);
  await keepRun(work, loan.id, "dispatch", findings, loanCase);
  await writeCrateEvents(
    work,
    crates.map(({ id }) => ({ crateId: id, kind: "handed over" as const, stageId: stage.id })),
  );
  await writeHandovers(work, {
    specimenIds,
    toParty: stage.carrier,
    releasedBy: viewer.name,
    receivedBy: stage.carrier,
    reason: `loan ${loan.number}, going out`,
    loanId: loan.id,
  });
  await writeMoves(work, {
    specimenIds,
    placeId: await placeOnTheWay(work),
    reason: `loan ${loan.number}, going out`,
  });
  await moveLines(work, lines, "travelling out");
  await writeLetters(work, loan.id, "dispatched", { count: lines.length });
});
