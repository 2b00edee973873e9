/** What is due by the plans of loans. */
import { expect, test } from "vitest";
import { dueFromPlans, hasToBeJudged, type LateLoan, passedSteps } from "#lib/desk/due-plan.ts";
import type { PlanRow } from "#lib/loans/backward-plan.ts";

const row = (step: PlanRow["step"], lastDay: string, facts: Partial<PlanRow> = {}): PlanRow => ({
  step,
  lastDay,
  daysLeft: -1,
  outcome: "bar",
  done: null,
  stated: false,
  moved: false,
  countedFrom: null,
  days: null,
  ...facts,
});
const rows = [
  row("request", "2027-01-01", { done: { on: "2027-01-01", byHand: false }, outcome: "clear" }),
  row("decision", "2027-01-20"),
  row("agreement", "2027-01-10"),
  row("certificate", "2027-02-10", { outcome: "attend" }),
];

test("steps that have passed and are not done are told, the first one first", () => {
  expect(passedSteps(rows, true).map(({ step }) => step)).toEqual(["agreement", "decision"]);
});

test("before the decision nothing but the decision is asked for", () => {
  expect(passedSteps(rows, false).map(({ step }) => step)).toEqual(["decision"]);
});

test("what a gate or a rule decides is judged, what stands in plain records is not", () => {
  const step = (name: PlanRow["step"]) => [{ step: name, lastDay: "2027-01-01" }];
  expect(hasToBeJudged(step("certificate"))).toBe(true);
  expect(hasToBeJudged(step("pack"))).toBe(true);
  expect(hasToBeJudged(step("decision"))).toBe(false);
  expect(hasToBeJudged([])).toBe(false);
});

const late = (steps: LateLoan["steps"]): LateLoan => ({ loanId: "l", loan: "L 1", borrower: "B", steps });

test("a loan is one item, with its first step and how many further ones", () => {
  const steps = passedSteps(rows, true);
  expect(dueFromPlans([late(steps), late([])], false)).toMatchObject([
    {
      key: "l plan",
      code: "due.plan-steps",
      outcome: "bar",
      dueOn: "2027-01-10",
      parameters: { step: "agreement", date: "2027-01-10", more: 1 },
      about: { kind: "loan", id: "l" },
    },
  ]);
});

test("a borrower is told of the borrower's own steps alone", () => {
  const steps = passedSteps(rows, true);
  expect(dueFromPlans([late(steps)], true)).toMatchObject([
    { code: "due.plan-step", parameters: { step: "agreement", more: 0 } },
  ]);
  expect(dueFromPlans([late(passedSteps(rows, false))], true)).toEqual([]);
});
