/**
 * One voice on a request. The curator decides last: where consent is not clear,
 * the donor officer has spoken before, where what a donor wished is not known, the
 * oversight body's word is on record with its paper, and where a condition is poor
 * the conservator has signed it off. Who spoke as donor officer or conservator does
 * not decide as curator, and the curator's mandate reaches what is asked for. Bars
 * refuse an acceptance of what they stand on; the curator may accept some of the
 * specimens, and the others are declined. Any office's no ends the request. Who
 * recuses themselves speaks no more in that office. The registrar never decides. A condition that turns out poor after the
 * decision may still be signed off before it leaves.
 */

import {
  type LineOnLoan,
  type LoanAtHand,
  linesIn,
  numbersInWords,
  refuseBars,
  requireState,
} from "#lib/loans/at-hand.ts";
import { keepRun, moveLines, refuseAndKeep, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { holdDays } from "#lib/loans/commands/submit-request.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { statesInPreparation } from "#lib/loans/loan-state.ts";
import { officesOf } from "#lib/loans/offices.ts";
import { loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { DecisionInput } from "#lib/loans/schema.ts";
import { currentDecisions } from "#lib/loans/stored-request.ts";
import { command, type Work } from "#lib/people/command.ts";
import { requireMandate } from "#lib/people/commands/mandates.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { atStakeOf } from "#lib/suitability/rules/cover.ts";
import { judgeSuitability, type Office, officesNeeded } from "#lib/suitability/suitability.ts";
import { firmBookings, releaseLineBookings } from "#lib/whereabouts/commands.ts";

function requireOffice(viewer: Viewer, { office, reference }: DecisionInput): void {
  if (!officesOf(viewer).includes(office))
    throw new Refusal("forbidden", "decision.not-your-office", { office });
  if (office === "oversight body" && reference === "")
    throw new Refusal("invalid", "input.invalid", {}, [
      { path: "reference", message: "decision.reference-missing" },
    ]);
}

type Spoken = { office: string; outcome: string; accountId: string };

/** @throws {Refusal} "decision.recused" for who has recused themselves from this office on this loan */
function refuseRecused(decisions: readonly Spoken[], { accountId }: Viewer, office: Office): void {
  const recused = decisions.some(
    (one) => one.outcome === "recuse" && one.office === office && one.accountId === accountId,
  );
  if (recused) throw new Refusal("conflict", "decision.recused", { office });
}

/** Offices whose account does not decide as curator as well. */
const twoPersons: readonly Office[] = ["donor officer", "conservator"];

/** The last word of each office; a second word replaces the first, and a recusal is no word. */
function lastWords(decisions: readonly Spoken[]): Map<string, Spoken> {
  const words = decisions.filter(({ outcome }) => outcome !== "recuse");
  return new Map(words.map((decision) => [decision.office, decision]));
}

function requireOffices(needed: readonly Office[], words: ReadonlyMap<string, Spoken>, viewer: Viewer): void {
  for (const office of needed.filter((one) => one !== "curator"))
    if (words.get(office)?.outcome !== "accept")
      throw new Refusal("conflict", "decision.office-missing", { office });
  for (const office of twoPersons.filter((one) => needed.includes(one)))
    if (words.get(office)?.accountId === viewer.accountId)
      throw new Refusal("conflict", "decision.same-person", { office });
}

/** The conservator's word on a loan that was accepted: a condition has turned out poor since, and another account decided. */
async function signOffLater(work: Work, loan: LoanAtHand, input: DecisionInput): Promise<void> {
  requireState(loan, statesInPreparation);
  const { row, request, subjects } = await loanCaseOf(work.transaction, loan.id, work.today);
  const findings = judgeSuitability(request, subjects);
  if (!findings.some(({ fact }) => fact === "condition.grade-poor"))
    throw new Refusal("conflict", "decision.nothing-to-sign-off");
  const decided = lastWords(currentDecisions(row.decisions, row.submittedAt)).get("curator");
  if (decided?.accountId === work.viewer.accountId)
    throw new Refusal("conflict", "decision.same-person", { office: "conservator" });
  await keepDecision(work, input);
}

/** @throws {Refusal} "decision.no-specimen" for specimens that are not asked for on this loan */
function chosenLines(lines: readonly LineOnLoan[], specimenIds: readonly string[]): LineOnLoan[] {
  if (specimenIds.length === 0) return [...lines];
  const chosen = lines.filter((line) => specimenIds.includes(line.specimenId));
  if (chosen.length !== new Set(specimenIds).size) throw new Refusal("conflict", "decision.no-specimen");
  return chosen;
}

async function declineLines(work: Work, lines: readonly LineOnLoan[]): Promise<void> {
  await releaseLineBookings(
    work,
    lines.map((line) => line.id),
  );
  await moveLines(work, lines, "declined");
}

async function keepDecision({ transaction, viewer, now }: Work, input: DecisionInput): Promise<void> {
  await transaction.decision.create({
    data: { id: newId(), ...input, accountId: viewer.accountId, decidedBy: viewer.name, decidedAt: now },
  });
}

export const decideLoan = command("decideLoan", DecisionInput, async (work, input) => {
  const { transaction, viewer, today, now } = work;
  requireOffice(viewer, input);
  const loan = await takeLoan(work, input.loanId, "decideLoan");
  const spoken = await transaction.decision.findMany({ where: { loanId: loan.id } });
  refuseRecused(spoken, viewer, input.office);
  if (input.outcome === "recuse") {
    await keepDecision(work, input);
    return await writeLetters(work, loan.id, "office-recused");
  }
  if (input.office === "conservator" && input.outcome === "accept" && loan.state !== "requested")
    return await signOffLater(work, loan, input);
  requireState(loan, ["requested"]);
  const lines = linesIn(loan, "requested");

  if (input.outcome === "decline") {
    await keepDecision(work, input);
    await declineLines(work, lines);
    await moveLines(work, linesIn(loan, "noted"), "withdrawn");
    await transaction.loan.update({ where: { id: loan.id }, data: { closedAt: now } });
    await writeLetters(work, loan.id, "declined");
    return;
  }
  if (input.office !== "curator") {
    await keepDecision(work, input);
    return await writeLetters(work, loan.id, "office-spoken");
  }
  const noted = linesIn(loan, "noted");
  if (noted.length > 0)
    throw new Refusal("conflict", "decision.not-submitted", { specimens: numbersInWords(noted) });
  const accepted = chosenLines(lines, input.specimenIds);
  const { row, request, subjects } = await loanCaseOf(transaction, loan.id, today);
  const asked = subjects.filter(({ specimen }) => accepted.some((line) => line.specimenId === specimen.id));
  const findings = judgeSuitability(request, asked);
  const judged = { stopped: "decision", findings, inputs: { request, subjects: asked } } as const;
  await refuseAndKeep(work, "decideLoan", loan.id, judged, () => {
    const words = lastWords(currentDecisions(row.decisions, row.submittedAt));
    requireOffices(officesNeeded(findings), words, viewer);
    refuseBars(accepted, findings, "decision.barred");
  });
  await requireMandate(work, "decide requests", atStakeOf(asked));
  await keepDecision(work, input);
  await keepRun(work, loan.id, "decision", findings, { request, subjects: asked });
  await declineLines(
    work,
    lines.filter((line) => !accepted.includes(line)),
  );
  await holdDays(work, { ...loan, lines: accepted });
  await firmBookings(
    work,
    accepted.map((line) => line.id),
  );
  await moveLines(work, accepted, "accepted");
  await writeLetters(work, loan.id, "decided", { count: accepted.length });
});
