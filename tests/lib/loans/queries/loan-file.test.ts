/** What a loan's file shows beside the loan itself: its specimens and its hand-overs. */
import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, expect, test } from "vitest";
import { listLoanHandovers } from "#lib/loans/queries/loan-handovers.ts";
import { listLoanSpecimens } from "#lib/loans/queries/loan-specimens.ts";
import { setClock } from "#lib/platform/clock.ts";
import { aViewer, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
let specimen: Made;
let loanId: string;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  specimen = await aLendableSpecimen(lending);
  loanId = (await walk(lending, [specimen], "resting")).id;
});
afterAll(() => setClock());

test("the specimens of a loan are told without anything of costs or persons", async () => {
  const specimens = await listLoanSpecimens(lending.lecturer, loanId);
  const found = specimens.get(specimen.id);
  expect([...specimens.keys()]).toEqual([specimen.id]);
  expect(found).toMatchObject({ accessionNumber: specimen.accessionNumber, seriesCode: null });
  for (const guarded of ["replacementCost", "sex", "ageBand", "hazards"])
    expect(found).not.toHaveProperty(guarded);
});

test("the hand-overs stand with the latest first, from the house to the borrower", async () => {
  const handovers = await listLoanHandovers(lending.borrowerRegistrar, loanId);
  expect(handovers.every((one) => one.accessionNumber === specimen.accessionNumber)).toBe(true);
  const [latest, before] = handovers;
  expect(before?.toParty).toBe("Gentle Freight");
  expect(latest?.fromParty).toBe("Gentle Freight");
  const moments = handovers.map((one) => one.handedOverAt);
  expect([...moments].sort().reverse()).toEqual(moments);
});

test("a stranger and an unknown loan get the same answer", async () => {
  const stranger = aViewer("borrower registrar", randomUUID());
  const refusal = { kind: "not-found" };
  await expect(listLoanSpecimens(stranger, loanId)).rejects.toMatchObject(refusal);
  await expect(listLoanHandovers(stranger, loanId)).rejects.toMatchObject(refusal);
  await expect(listLoanHandovers(lending.registrar, randomUUID())).rejects.toMatchObject(refusal);
  await expect(listLoanSpecimens(lending.registrar, "nonsense")).rejects.toMatchObject(refusal);
});
