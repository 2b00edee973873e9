/** The desk on a database: what was seen on the way reaches those who look, and goes when somebody has looked. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { listDue } from "#lib/desk/queries/due.ts";
import { checkIn, closeLoan } from "#lib/loans/commands/check-in.ts";
import { dispatchLoan } from "#lib/loans/commands/dispatch-loan.ts";
import { receiveLoan } from "#lib/loans/commands/receive-loan.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import { planStage } from "#lib/loans/commands/stages.ts";
import { getLoan } from "#lib/loans/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import { anAccountOf, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aCheckOf, aFinding, aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { passHours, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  for (const viewer of [lending.conservator, lending.borrowerRegistrar]) await anAccountOf(viewer);
});
afterAll(() => setClock());

const codesOf = async (loanId: string, viewer: Viewer = lending.registrar) =>
  (await listDue(viewer)).filter(({ about }) => about.id === loanId).map(({ code }) => code);
const stepsOf = async (loanId: string, viewer: Viewer = lending.registrar) =>
  (await getLoan(viewer, loanId)).nextSteps.map(({ code }) => code);
const crack = aFinding({ severity: "moderate" });
const look = (
  viewer: Viewer,
  specimen: Made,
  loanId: string,
  occasion: "arrival" | "departure" | "home" | "incident" | "periodic",
  findings = [crack],
) =>
  recordCheck(
    viewer,
    aCheckOf(specimen.id, {
      loanId: occasion === "periodic" ? null : loanId,
      occasion,
      check: { ...aCheckOf(specimen.id).check, findings },
    }),
  );
const walked = async (upTo: Parameters<typeof walk>[2]) => {
  const specimen = await aLendableSpecimen(lending);
  return { specimen, loanId: (await walk(lending, [specimen], upTo)).id };
};

test("a receipt with a broken seal is told to those who look, until the specimen has been checked", async () => {
  const { specimen, loanId } = await walked("out");
  const [crate] = (await getLoan(lending.registrar, loanId)).crates;
  await receiveLoan(lending.borrowerRegistrar, {
    loanId,
    crates: [{ crateId: crate?.id ?? "", arrived: true, sealIntact: false, outsideDamage: "corner dented" }],
    outsideC: null,
    roomC: null,
    roomHumidity: null,
  });
  for (const viewer of [lending.registrar, lending.curator, lending.conservator]) {
    expect(await codesOf(loanId, viewer)).toContain("due.seal-broken-and-damaged");
    expect(await stepsOf(loanId, viewer)).toContain("next.seal-broken-and-damaged");
  }
  for (const viewer of [lending.borrowerRegistrar, lending.lecturer, lending.manager])
    expect(await codesOf(loanId, viewer)).not.toContain("due.seal-broken-and-damaged");
  const item = (await listDue(lending.curator)).find(({ code }) => code === "due.seal-broken-and-damaged");
  expect(item).toMatchObject({ parameters: { crate: crate?.code, damage: "corner dented", unchecked: 1 } });
  passHours(1);
  await look(lending.borrowerRegistrar, specimen, loanId, "incident", []);
  expect(await codesOf(loanId)).not.toContain("due.seal-broken-and-damaged");
  expect(await stepsOf(loanId)).not.toContain("next.seal-broken-and-damaged");
});

describe("a change that the borrower saw", () => {
  test("is told until somebody of the house has checked the specimen", async () => {
    const { specimen, loanId } = await walked("at venue");
    await look(lending.borrowerRegistrar, specimen, loanId, "arrival");
    expect(await codesOf(loanId)).toContain("due.changed-away");
    expect(await stepsOf(loanId, lending.borrowerRegistrar)).toContain("next.changed-away");
    expect(await stepsOf(loanId, lending.lecturer)).not.toContain("next.changed-away");
    await look(lending.borrowerRegistrar, specimen, loanId, "departure", [{ ...crack, answer: "same" }]);
    expect(await codesOf(loanId)).toContain("due.changed-away");
    await look(lending.conservator, specimen, loanId, "incident", [{ ...crack, answer: "same" }]);
    expect(await codesOf(loanId)).not.toContain("due.changed-away");
    expect(await stepsOf(loanId)).not.toContain("next.changed-away");
  });

  test("is nothing to be told where nothing changed", async () => {
    const { specimen, loanId } = await walked("at venue");
    await look(lending.borrowerRegistrar, specimen, loanId, "arrival", []);
    expect((await codesOf(loanId)).filter((code) => code.startsWith("due.changed"))).toEqual([]);
  });
});

test("a change that was seen at home is told until the check-in, a grave verdict until the next check", async () => {
  const { specimen, loanId } = await walked("counted");
  await look(lending.conservator, specimen, loanId, "home");
  expect(await codesOf(loanId)).toContain("due.changed-home");
  expect(await stepsOf(loanId)).toContain("next.changed-home");
  await checkIn(lending.curator, { loanId, specimenId: specimen.id, verdict: "needs treatment", remark: "" });
  expect(await codesOf(loanId)).toEqual(["due.close", "due.judged-gravely"]);
  expect(await stepsOf(loanId)).toEqual(["next.judged-gravely", "next.close"]);
  await closeLoan(lending.registrar, { loanId });
  expect(await codesOf(loanId, lending.conservator)).toEqual(["due.judged-gravely"]);
  expect(await codesOf(loanId, lending.manager)).toEqual([]);
  await look(lending.conservator, specimen, loanId, "periodic", [{ ...crack, answer: "same" }]);
  expect(await codesOf(loanId)).toEqual([]);
});

test("the receipt is due on the day on which the stage arrives", async () => {
  const { loanId } = await walked("packed");
  await planStage(lending.registrar, {
    loanId,
    direction: "out",
    carrier: "Gentle Freight",
    carrierEmail: "",
    vehicle: "",
    through: [],
    departsOn: today(),
    arrivesOn: addDays(today(), 5),
  });
  await dispatchLoan(lending.registrar, { loanId });
  const items = (await listDue(lending.borrowerRegistrar)).filter(({ about }) => about.id === loanId);
  expect(items).toMatchObject([{ code: "due.arrives", dueOn: addDays(today(), 5) }]);
});

test("every check on the loan stands in its file, with what differs from the one before", async () => {
  const { specimen, loanId } = await walked("at venue");
  await look(lending.borrowerRegistrar, specimen, loanId, "arrival");
  await look(lending.borrowerRegistrar, specimen, loanId, "departure", [{ ...crack, answer: "same" }]);
  const told = async (viewer: Viewer) =>
    (await getLoan(viewer, loanId)).lines[0]?.checks?.all.map(({ check, totals }) => [
      check.occasion,
      check.grade,
      totals && [totals.new, totals.same],
    ]);
  const all = [
    ["out", "A", null],
    ["arrival", "C", [1, 0]],
    ["departure", "C", [0, 1]],
  ];
  expect(await told(lending.registrar)).toEqual(all);
  expect(await told(lending.borrowerRegistrar)).toEqual(all);
  expect(await told(lending.lecturer)).toBeUndefined();
});
