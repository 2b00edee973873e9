/** Countries on the way: judged before and at the release, never against the way home. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { drawUpAgreement } from "#lib/loans/commands/agreement.ts";
import { dispatchLoan } from "#lib/loans/commands/dispatch-loan.ts";
import { sendHome } from "#lib/loans/commands/send-home.ts";
import { planStage } from "#lib/loans/commands/stages.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import type { ConsentInput } from "#lib/provenance/schema.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { newSeals, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const plan = (loanId: string, direction: "out" | "home", through: string[]) =>
  planStage(lending.registrar, {
    loanId,
    direction,
    carrier: "Gentle Freight",
    carrierEmail: "",
    vehicle: "",
    through,
    departsOn: today(),
    arrivesOn: addDays(today(), 2),
  });
const packed = async (consent: Partial<ConsentInput>) => {
  const specimen = await aLendableSpecimen(lending, {}, consent);
  return { specimen, loanId: (await walk(lending, [specimen], "packed")).id };
};
const dispatch = (loanId: string) => dispatchLoan(lending.registrar, { loanId });
const transitOf = async (loanId: string) =>
  (await getLoan(lending.registrar, loanId)).findings
    .filter(({ fact }) => fact.startsWith("consent.transit-"))
    .map(({ outcome, parameters }) => [parameters.country, outcome]);

test("a stage keeps the countries between its ends, as they were last planned", async () => {
  const { loanId } = await packed({});
  await plan(loanId, "out", ["DK", "SE"]);
  expect((await getLoan(lending.registrar, loanId)).stages).toMatchObject([{ through: ["DK", "SE"] }]);
  await plan(loanId, "out", []);
  expect((await getLoan(lending.registrar, loanId)).stages).toMatchObject([{ through: [] }]);
  await expect(plan(loanId, "out", ["Sweden"])).rejects.toMatchObject({
    kind: "invalid",
    issues: [{ path: "through.0", message: "country.two-letters" }],
  });
});

test("a country that a donor refused holds the specimen back at the release, until another way is planned", async () => {
  const { specimen, loanId } = await packed({ territoriesRefused: ["SE"] });
  expect(await transitOf(loanId)).toEqual([]);
  await plan(loanId, "out", ["DK", "SE"]);
  expect(await transitOf(loanId)).toEqual([
    ["DK", "clear"],
    ["SE", "bar"],
  ]);
  await expect(dispatch(loanId)).rejects.toMatchObject({
    reason: "loan.gate-fails",
    parameters: { gate: "nothing barred", specimen: specimen.accessionNumber, country: "SE" },
  });
  expect((await getLoan(lending.registrar, loanId)).nextSteps).toMatchObject([
    { code: "next.gate", action: "planStage", parameters: { gate: "nothing barred", country: "SE" } },
  ]);
  await expect(drawUpAgreement(lending.registrar, { loanId })).rejects.toMatchObject({
    reason: "agreement.barred",
    parameters: { fact: "consent.transit-refused", wayOut: "way.other-route" },
  });
  await plan(loanId, "out", ["DK"]);
  await dispatch(loanId);
});

test("the way home that is planned before the release counts as well", async () => {
  const { loanId } = await packed({ territoriesRefused: ["SE"] });
  await plan(loanId, "home", ["SE"]);
  await expect(dispatch(loanId)).rejects.toMatchObject({ parameters: { gate: "nothing barred" } });
});

test("a country that is not on a donor's list wants attention and holds nothing back", async () => {
  const { loanId } = await packed({ territoriesAllowed: ["NO", "FR"] });
  await plan(loanId, "out", ["DE", "FR"]);
  expect(await transitOf(loanId)).toEqual([
    ["DE", "attend"],
    ["FR", "clear"],
  ]);
  await dispatch(loanId);
});

test("no country stops the way home", async () => {
  const specimen = await aLendableSpecimen(lending, {}, { territoriesRefused: ["SE"] });
  const { id: loanId } = await walk(lending, [specimen], "at venue");
  await plan(loanId, "home", ["SE"]);
  await sendHome(lending.lecturer, {
    loanId,
    specimenIds: null,
    seals: await newSeals(lending, loanId),
    carrier: "",
  });
  expect(await getLoan(lending.registrar, loanId)).toMatchObject({ state: "travelling home" });
});
