/** Plans that are behind, on a database: the desk names what the loan's own file shows as passed. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { listDue } from "#lib/desk/queries/due.ts";
import { getLoan } from "#lib/loans/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { passHours, startClock, type Walked, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
let requested: Walked;
let accepted: Walked;

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  requested = await walk(lending, [await aLendableSpecimen(lending)], "requested");
  accepted = await walk(lending, [await aLendableSpecimen(lending)], "accepted");
});
afterAll(() => setClock());

const itemOf = async (loan: Walked, viewer: Viewer = lending.registrar) =>
  (await listDue(viewer)).find(({ key }) => key === `${loan.id} plan`);
const passedInFile = async (loan: Walked) =>
  ((await getLoan(lending.registrar, loan.id)).time.plan?.rows ?? [])
    .filter(({ outcome, done }) => outcome === "bar" && done === null)
    .sort((one, other) => one.lastDay.localeCompare(other.lastDay));

test("a step that has passed is a bar on the desk, with the day on which it passed", async () => {
  for (let days = 0; days < 400 && (await passedInFile(accepted)).length === 0; days += 5) passHours(24 * 5);
  const passed = await passedInFile(accepted);
  expect(passed.length).toBeGreaterThan(0);
  expect(await itemOf(accepted)).toMatchObject({
    outcome: "bar",
    dueOn: passed[0]?.lastDay,
    parameters: { step: passed[0]?.step, more: passed.length - 1 },
  });
});

test("of a loan that nobody has decided only the decision is asked for", async () => {
  const decision = (await passedInFile(requested)).find(({ step }) => step === "decision");
  const item = await itemOf(requested);
  expect(item?.parameters).toMatchObject({ step: "decision", more: 0 });
  expect(item?.dueOn).toBe(decision?.lastDay);
});

test("a stranger is told of nobody's plan", async () => {
  expect(await itemOf(accepted, lending.stranger)).toBeUndefined();
});
