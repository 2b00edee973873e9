/** A customs border that was crossed is discharged before the file is closed; the way home never waits for it. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { listDue } from "#lib/desk/queries/due.ts";
import { customsCountries } from "#lib/loans/closing.ts";
import { checkIn, closeLoan } from "#lib/loans/commands/check-in.ts";
import { openClaim } from "#lib/loans/commands/claims.ts";
import { recordCustomsDischarge } from "#lib/loans/commands/discharge.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import { findClosing, listDischargeKeys } from "#lib/loans/queries/closing.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aCheckOf, aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { type Step, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

async function walked(step: Step) {
  const specimen = await aLendableSpecimen(lending);
  const { id: loanId } = await walk(lending, [specimen], step);
  return { loanId, specimenId: specimen.id };
}
/** As if its way had led through another customs territory. */
const crossABorder = (loanId: string) =>
  inTransaction(programViewer, "test", (transaction) =>
    transaction.stage.updateMany({ where: { loanId }, data: { through: ["DE"] } }),
  );
async function home() {
  const { loanId, specimenId } = await walked("counted");
  await recordCheck(lending.conservator, aCheckOf(specimenId, { loanId, occasion: "home" }));
  await checkIn(lending.curator, { loanId, specimenId, verdict: "no change", remark: "" });
  return { loanId, specimenId };
}
const record = (loanId: string, dischargedOn = today()) =>
  recordCustomsDischarge(lending.registrar, {
    loanId,
    dischargedOn,
    office: "Customs, harbour",
    reference: "T 1 204",
    note: "",
  });
const dueFor = async (loanId: string) =>
  (await listDue(lending.registrar)).filter(
    ({ code, about }) => code === "due.customs-discharge" && about.id === loanId,
  );

test.each([
  ["within one country", { lenderCountry: "FI", venueCountry: "FI", through: [] }, []],
  ["between members of the Union", { lenderCountry: "FI", venueCountry: "SE", through: ["DK"] }, []],
  ["out of the Union", { lenderCountry: "FI", venueCountry: "NO", through: ["SE"] }, ["NO", "SE"]],
  [
    "through a country outside it",
    { lenderCountry: "DE", venueCountry: "IT", through: ["CH"] },
    ["IT", "CH"],
  ],
])("%s the borders are found", (_what, way, countries) => {
  expect(customsCountries(way)).toEqual(countries);
});

test("without its discharge the file stays open, with it the loan closes, also with an open claim", async () => {
  const { loanId, specimenId } = await home();
  await crossABorder(loanId);
  await openClaim(lending.registrar, { loanId, specimenId, note: "A scratch on the base plate." });
  expect(await dueFor(loanId)).toHaveLength(1);
  await expect(closeLoan(lending.registrar, { loanId })).rejects.toMatchObject({
    reason: "loan.not-discharged",
  });
  const steps = (await getLoan(lending.registrar, loanId)).nextSteps;
  expect(steps[0]).toMatchObject({ code: "next.discharge", action: "recordCustomsDischarge" });
  const before = await findClosing(lending.registrar, loanId);
  expect(before).toMatchObject({ countries: ["DE"], discharges: [] });
  expect(before?.missing?.map(({ code }) => code)).toEqual(
    expect.arrayContaining(["close.not-discharged", "close.claim-open", "close.no-check-arrival"]),
  );
  await record(loanId);
  expect(await dueFor(loanId)).toEqual([]);
  const after = await findClosing(lending.registrar, loanId);
  expect(after?.discharges).toMatchObject([{ office: "Customs, harbour", reference: "T 1 204" }]);
  expect(after?.missing?.some(({ outcome }) => outcome === "bar")).toBe(false);
  await closeLoan(lending.registrar, { loanId });
  expect((await getLoan(lending.registrar, loanId)).state).toBe("closed");
  // a further paper may come after the close
  await record(loanId);
  expect(await listDischargeKeys(lending.registrar, loanId)).toHaveLength(2);
  expect((await findClosing(lending.curator, loanId))?.missing).toBeNull();
});

test("where no border lies on the way none is recorded, and the loan closes", async () => {
  const { loanId } = await home();
  await expect(record(loanId)).rejects.toMatchObject({ reason: "discharge.no-border" });
  expect((await findClosing(lending.registrar, loanId))?.countries).toEqual([]);
  await closeLoan(lending.registrar, { loanId });
});

test("a discharge lies between the day it left and today, and is never changed", async () => {
  const { loanId: packed } = await walked("packed");
  await expect(record(packed)).rejects.toMatchObject({ reason: "loan.not-now" });
  expect(await findClosing(lending.registrar, packed)).toBeNull();
  const { loanId } = await walked("out");
  await crossABorder(loanId);
  await expect(record(loanId, addDays(today(), 3))).rejects.toMatchObject({
    issues: [{ path: "dischargedOn", message: "date.to-come" }],
  });
  await expect(record(loanId, addDays(today(), -1))).rejects.toMatchObject({
    issues: [{ path: "dischargedOn", message: "discharge.before-it-left" }],
  });
  await record(loanId);
  await expect(database().customsDischarge.updateMany({ data: { office: "x" } })).rejects.toThrow();
  const entries = await database().auditEntry.findMany({ where: { tableName: "customs_discharge" } });
  expect(entries.at(-1)).toMatchObject({ act: "recordCustomsDischarge", operation: "insert" });
});
