/** Moving and marking steps of a plan, and the centre's own days. */
import { beforeAll, beforeEach, expect, test } from "vitest";
import { configurePlan, markPlanStep, movePlanStep } from "#lib/loans/commands/plan.ts";
import { planDefaults } from "#lib/loans/plan-defaults.ts";
import { getPlanDays } from "#lib/loans/queries/plan-days.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
beforeEach(startClock);

async function aLoan(step: "requested" | "agreed" | "at venue" = "agreed") {
  return (await walk(lending, [await aLendableSpecimen(lending)], step)).id;
}
const row = async (loanId: string, step: string) =>
  (await getLoan(lending.registrar, loanId)).time.plan?.rows.find((one) => one.step === step);

test("the plan stands in the file, with what is done already", async () => {
  const loanId = await aLoan();
  expect(await row(loanId, "request")).toMatchObject({ done: { byHand: false }, outcome: "clear" });
  expect(await row(loanId, "agreement")).toMatchObject({ done: { on: today(), byHand: false } });
  expect((await row(loanId, "pack"))?.done).toBeNull();
});

test("a moved step keeps its day, and is given back to the plan", async () => {
  const loanId = await aLoan();
  const before = (await row(loanId, "pack"))?.lastDay ?? "";
  const changed = await movePlanStep(lending.registrar, { loanId, step: "pack", to: addDays(before, -2) });
  expect(changed).toContainEqual({ step: "pack", from: before, to: addDays(before, -2) });
  expect(await row(loanId, "pack")).toMatchObject({ lastDay: addDays(before, -2), moved: true });
  await movePlanStep(lending.registrar, { loanId, step: "pack", to: null });
  expect(await row(loanId, "pack")).toMatchObject({ lastDay: before, moved: false });
});

test("an opening is stated, moves the plan, and stays within the loan", async () => {
  const loanId = await aLoan();
  const { startsOn, endsOn } = (await getLoan(lending.registrar, loanId)).request;
  await movePlanStep(lending.registrar, { loanId, step: "opening", to: addDays(startsOn, 14) });
  expect(await row(loanId, "opening")).toMatchObject({ lastDay: addDays(startsOn, 14), stated: true });
  await expect(
    movePlanStep(lending.registrar, { loanId, step: "opening", to: endsOn }),
  ).rejects.toMatchObject({ reason: "plan.opening-outside-loan" });
});

test("a move that cannot be followed changes nothing and says why", async () => {
  const loanId = await aLoan();
  const before = (await row(loanId, "pack"))?.lastDay;
  for (const [to, reason] of [
    [addDays(today(), -1), "plan.day-past"],
    [addDays(today(), 500), "plan.after-delivery"],
  ] as const)
    await expect(movePlanStep(lending.registrar, { loanId, step: "pack", to })).rejects.toMatchObject({
      reason,
    });
  expect((await row(loanId, "pack"))?.lastDay).toBe(before);
});

test("what no record shows is marked by hand, on a day that has come", async () => {
  const loanId = await aLoan("requested");
  await markPlanStep(lending.conservator, { loanId, step: "certificate", doneOn: today() });
  expect((await row(loanId, "certificate"))?.done).toEqual({ on: today(), byHand: true });
  await markPlanStep(lending.conservator, { loanId, step: "certificate", doneOn: null });
  expect((await row(loanId, "certificate"))?.done).toBeNull();
  await expect(
    markPlanStep(lending.curator, { loanId, step: "pack", doneOn: today() }),
  ).rejects.toMatchObject({
    reason: "plan.shown-by-record",
  });
  await expect(
    markPlanStep(lending.curator, { loanId, step: "permits", doneOn: addDays(today(), 9) }),
  ).rejects.toMatchObject({ kind: "invalid" });
});

test("what stands at the venue has its journey behind it", async () => {
  const loanId = await aLoan("at venue");
  for (const step of ["depart", "arrive"])
    expect((await row(loanId, step))?.done?.on, step).not.toBeUndefined();
});

test("the centre counts with days of its own", async () => {
  expect(await getPlanDays(lending.curator)).toEqual(planDefaults);
  const loanId = await aLoan();
  const { lastDay } = (await row(loanId, "permits")) ?? (await row(loanId, "pack")) ?? { lastDay: "" };
  const step = (await row(loanId, "permits")) ? "permits" : "pack";
  const days = structuredClone(planDefaults);
  for (const scope of ["international", "national", "teaching nearby"] as const) days[step][scope] += 3;
  await configurePlan(lending.manager, { days });
  expect((await row(loanId, step))?.lastDay).toBe(addDays(lastDay, -3));
});
