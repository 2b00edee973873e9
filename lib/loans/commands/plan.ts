/**
 * Moving a step of the plan, marking one that no record shows as done, and the
 * days that the centre counts with. A move that something cannot follow is
 * refused and names it; the opening is a day of the loan itself.
 */
import { requireState } from "#lib/loans/at-hand.ts";
import { movePlan } from "#lib/loans/backward-plan.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { releaseGates } from "#lib/loans/gates.ts";
import { statesBeforeRelease } from "#lib/loans/loan-state.ts";
import { markedByHand } from "#lib/loans/plan-facts.ts";
import { loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import { planFactsOfLoan } from "#lib/loans/queries/loan-plan.ts";
import { planDaysKey } from "#lib/loans/queries/plan-days.ts";
import { releaseFactsOf } from "#lib/loans/queries/release-facts.ts";
import { type LoanState, loanStates } from "#lib/loans/schema.ts";
import { MarkStepInput, MoveStepInput, PlanDaysInput } from "#lib/loans/time-inputs.ts";
import { command, refuseDaysToCome } from "#lib/people/command.ts";
import { toDate, toDateOrNull } from "#lib/platform/dates.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { judgeSuitability } from "#lib/suitability/suitability.ts";

const withPlan: readonly LoanState[] = loanStates.filter(
  (state) => !["closed", "declined", "withdrawn", "checked in", "home, to be checked"].includes(state),
);

/** What a step moved with it. */
export type MovedStep = { step: string; from: string; to: string };

/** @returns every step whose day is another one now */
export const movePlanStep = command(
  "movePlanStep",
  MoveStepInput,
  async (work, { loanId, step, to }): Promise<MovedStep[]> => {
    const { transaction, today } = work;
    const loan = await takeLoan(work, loanId, "movePlanStep");
    requireState(loan, withPlan);
    if (to === null) {
      await transaction.planStep.updateMany({ where: { loanId, step }, data: { plannedOn: null } });
      return [];
    }
    const loanCase = await loanCaseOf(transaction, loanId, today);
    const findings = judgeSuitability(loanCase.request, loanCase.subjects);
    const gates = statesBeforeRelease.includes(loan.state)
      ? releaseGates(await releaseFactsOf(transaction, loanCase, findings))
      : [];
    const facts = await planFactsOfLoan(transaction, loanCase, findings, gates);
    const { changed, conflicts } = movePlan(facts, step, to);
    const [first] = conflicts;
    if (first)
      throw new Refusal("conflict", first.code, {
        ...first.parameters,
        step: first.step,
        conflicts: conflicts.length,
      });
    if (step === "opening")
      await transaction.loan.update({ where: { id: loanId }, data: { opensOn: toDate(to) } });
    else
      await transaction.planStep.upsert({
        where: { loanId_step: { loanId, step } },
        create: { loanId, step, plannedOn: toDate(to) },
        update: { plannedOn: toDate(to) },
      });
    return changed;
  },
);

/** Marks a step that no record shows as done on a day, or takes the mark back. */
export const markPlanStep = command("markPlanStep", MarkStepInput, async (work, { loanId, step, doneOn }) => {
  const loan = await takeLoan(work, loanId, "markPlanStep");
  requireState(loan, withPlan);
  if (!markedByHand.includes(step)) throw new Refusal("conflict", "plan.shown-by-record", { step });
  refuseDaysToCome(work, { doneOn });
  await work.transaction.planStep.upsert({
    where: { loanId_step: { loanId, step } },
    create: { loanId, step, doneOn: toDateOrNull(doneOn) },
    update: { doneOn: toDateOrNull(doneOn) },
  });
});

/** The days that the centre counts with, for every loan from now on. */
export const configurePlan = command("configurePlan", PlanDaysInput, async ({ transaction }, { days }) => {
  await transaction.setting.upsert({
    where: { key: planDaysKey },
    create: { key: planDaysKey, value: days },
    update: { value: days },
  });
});
