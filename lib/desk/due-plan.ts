/**
 * What is due by the plans of loans: a step whose last day has passed and that is not
 * done. Of each loan one item, with the step that passed first and how many further
 * ones wait. A borrower is told of the steps that are the borrower's. Nothing else is
 * asked of a loan that nobody has decided yet: what follows the decision waits for it.
 */
import type { DueItem } from "#lib/desk/due.ts";
import type { PlanRow } from "#lib/loans/backward-plan.ts";
import type { PlanStepName } from "#lib/loans/plan-defaults.ts";
import type { DateText } from "#lib/platform/dates.ts";

/** What a borrower does of a plan; the rest is the centre's. */
export const borrowersSteps: readonly PlanStepName[] = [
  "agreement",
  "certificate",
  "indemnity form",
  "open crates",
  "install",
];

/** Steps of which a gate of release or a rule says whether they are done; the others stand in plain records. */
const judgedSteps: readonly PlanStepName[] = [
  "indemnity form",
  "permits",
  "certificate",
  "condition out",
  "pack",
];

export type PassedStep = { step: PlanStepName; lastDay: DateText };

/** Steps that are not done and whose last day has passed, the first one first. */
export function passedSteps(rows: readonly PlanRow[], isDecided: boolean): PassedStep[] {
  return rows
    .filter(({ outcome, done }) => outcome === "bar" && done === null)
    .filter(({ step }) => isDecided || step === "request" || step === "decision")
    .map(({ step, lastDay }) => ({ step, lastDay }))
    .sort((one, other) => one.lastDay.localeCompare(other.lastDay));
}

/** Whether plain records leave open which of these are done. */
export const hasToBeJudged = (steps: readonly PassedStep[]): boolean =>
  steps.some(({ step }) => judgedSteps.includes(step));

export type LateLoan = { loanId: string; loan: string; borrower: string; steps: readonly PassedStep[] };

export function dueFromPlans(loans: readonly LateLoan[], isForBorrower: boolean): DueItem[] {
  return loans.flatMap(({ loanId, loan, borrower, steps }): DueItem[] => {
    const [first, ...more] = steps.filter(({ step }) => !isForBorrower || borrowersSteps.includes(step));
    if (first === undefined) return [];
    const { step, lastDay } = first;
    return [
      {
        key: `${loanId} plan`,
        outcome: "bar",
        dueOn: lastDay,
        code: more.length === 0 ? "due.plan-step" : "due.plan-steps",
        parameters: { loan, borrower, step, date: lastDay, more: more.length },
        about: { kind: "loan", id: loanId },
      },
    ];
  });
}
