/** Hours of treatment go from the conservator's estimate into the quotation. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { setFeeScale } from "#lib/costing/commands.ts";
import { estimateTreatment } from "#lib/loans/commands/treatment.ts";
import { findQuotationDraft } from "#lib/loans/queries/costings.ts";
import { treatmentOf } from "#lib/loans/queries/treatment.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { startClock, type Walked, walk } from "#tests/support/loan-walk.ts";
import { aFeeScale } from "#tests/support/money.ts";

let lending: Lending;
let loan: Walked;
let ids: string[];

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  await setFeeScale(lending.manager, { scale: aFeeScale(), validFrom: today() });
  const specimens = [await aLendableSpecimen(lending), await aLendableSpecimen(lending)];
  ids = specimens.map(({ id }) => id);
  loan = await walk(lending, specimens, "accepted");
});
afterAll(() => setClock());

const estimate = (at: number, hours: string | null, work = "Take dust off.", viewer = lending.conservator) =>
  estimateTreatment(viewer, { loanId: loan.id, specimenId: ids[at] ?? "", hours, work });
const quantity = async () => {
  const draft = await findQuotationDraft(lending.registrar, loan.id);
  const line = draft?.byScale.find(({ code }) => code === "preparation");
  return line?.price.kind === "counted" ? line.price.quantity : null;
};

test("what is estimated is counted in the next quotation, and what is taken back is not", async () => {
  expect(await quantity()).toBe("0");
  await estimate(0, "1.25");
  await estimate(1, "0.5");
  expect(await quantity()).toBe("1.75");
  await estimate(1, "2");
  expect(await quantity()).toBe("3.25");
  await estimate(0, null, "");
  expect(await quantity()).toBe("2");
});

test("who estimated it, and when, is read by the house and not by the borrower", async () => {
  const sheet = await treatmentOf(lending.registrar, loan.id);
  expect(sheet?.together).toBe("2");
  expect(sheet?.rows.find(({ specimenId }) => specimenId === ids[1])?.estimate).toEqual({
    hours: "2",
    work: "Take dust off.",
    by: lending.conservator.name,
    on: today(),
  });
  expect(await treatmentOf(lending.borrowerRegistrar, loan.id)).toBeNull();
});

test("it is refused to the registrar, and for a specimen that is not on the loan", async () => {
  await expect(estimate(0, "1", "Dust", lending.registrar)).rejects.toMatchObject({ kind: "forbidden" });
  await expect(
    estimateTreatment(lending.conservator, {
      loanId: loan.id,
      specimenId: newId(),
      hours: "1",
      work: "Dust",
    }),
  ).rejects.toMatchObject({ kind: "not-found" });
});

test("the database keeps hours only with who said so", async () => {
  const rows = await database().$queryRaw<{ treatment_by: string }[]>`
    SELECT treatment_by FROM loan_line WHERE loan_id = ${loan.id}::uuid AND treatment_hours IS NULL`;
  expect(rows.every((row) => row.treatment_by === "")).toBe(true);
});
