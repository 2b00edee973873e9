/**
 * One voice on a request. The curator decides last: where consent is not clear,
 * the donor officer has spoken before, where what a donor wished is not known, the
 * oversight body's word is on record with its paper, and where a condition is poor
 * the conservator has signed it off. Who spoke as donor officer or conservator does
 * not decide as curator. Bars refuse an acceptance; any office's no ends the
 * request. The registrar never decides. A condition that turns out poor after the
 * decision may still be signed off before it leaves.
 */
import { type LoanAtHand, linesIn, numbersInWords, refuseBars, requireState } from "#lib/loans/at-hand.ts";
import { keepRun, moveLines, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { holdDays } from "#lib/loans/commands/submit-request.ts";
import { officesOf } from "#lib/loans/offices.ts";
import { loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { DecisionInput } from "#lib/loans/schema.ts";
import { currentDecisions } from "#lib/loans/stored-request.ts";
import { judgeSuitability, type Office, officesNeeded } from "#lib/loans/suitability.ts";
import { command, type Work } from "#lib/people/command.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";
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

/** Offices whose account does not decide as curator as well. */
const twoPersons: readonly Office[] = ["donor officer", "conservator"];

/** The last word of each office; a second word replaces the first. */
function lastWords(decisions: readonly Spoken[]): Map<string, Spoken> {
  return new Map(decisions.map((decision) => [decision.office, decision]));
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
  requireState(loan, ["accepted", "agreed", "preparing"]);
  const { row, request, subjects } = await loanCaseOf(work.transaction, loan.id, work.today);
  const findings = judgeSuitability(request, subjects);
  if (!findings.some(({ fact }) => fact === "condition.grade-poor"))
    throw new Refusal("conflict", "decision.nothing-to-sign-off");
  const decided = lastWords(currentDecisions(row.decisions, row.submittedAt)).get("curator");
  if (decided?.accountId === work.viewer.accountId)
    throw new Refusal("conflict", "decision.same-person", { office: "conservator" });
  await keepDecision(work, input);
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
  if (input.office === "conservator" && input.outcome === "accept" && loan.state !== "requested")
    return await signOffLater(work, loan, input);
  requireState(loan, ["requested"]);
  const lines = linesIn(loan, "requested");

  if (input.outcome === "decline") {
    await keepDecision(work, input);
    await releaseLineBookings(
      work,
      lines.map((line) => line.id),
    );
    await moveLines(work, lines, "declined");
    await moveLines(work, linesIn(loan, "noted"), "withdrawn");
    await transaction.loan.update({ where: { id: loan.id }, data: { closedAt: now } });
    return;
  }
  if (input.office !== "curator") {
    await keepDecision(work, input);
    return;
  }
  const noted = linesIn(loan, "noted");
  if (noted.length > 0)
    throw new Refusal("conflict", "decision.not-submitted", { specimens: numbersInWords(noted) });
  const { row, request, subjects } = await loanCaseOf(transaction, loan.id, today);
  const findings = judgeSuitability(request, subjects);
  requireOffices(
    officesNeeded(findings),
    lastWords(currentDecisions(row.decisions, row.submittedAt)),
    viewer,
  );
  refuseBars(lines, findings, "decision.barred");
  await keepDecision(work, input);
  await keepRun(work, loan.id, "decision", findings);
  await holdDays(work, loan);
  await firmBookings(
    work,
    lines.map((line) => line.id),
  );
  await moveLines(work, lines, "accepted");
});
