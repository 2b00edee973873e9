/** What earlier loans of a borrower came to, as suitability reads it of a new one. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { borrowerRecordOf } from "#lib/loans/queries/borrower-record.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, toDate } from "#lib/platform/dates.ts";
import { inWork, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, aRequestDraft, type Lending } from "#tests/support/lending.ts";
import { startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
let specimen: Made;
let earlier: string;

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  specimen = await aLendableSpecimen(lending);
  earlier = (await walk(lending, [specimen], "counted")).id;
});
afterAll(() => setClock());

const recordOf = async (loanId = "01920000-0000-7000-8000-0000000000ff") =>
  await borrowerRecordOf(database(), { borrowerId: lending.borrowerId, loanId }, today());
const dueOn = async (endsOn: string) =>
  await inWork(({ transaction }) =>
    transaction.loan.update({
      where: { id: earlier },
      data: { startsOn: toDate(addDays(endsOn, -60)), endsOn: toDate(endsOn) },
    }),
  );

test("a loan that came home in time is one without marks", async () => {
  await dueOn(addDays(today(), 30));
  expect(await recordOf()).toEqual({ loans: 1, late: 0, damaged: 0 });
});

test("one that came home after its return-by is late, and its own record does not count for itself", async () => {
  await dueOn(addDays(today(), -200));
  expect(await recordOf()).toMatchObject({ loans: 1, late: 1 });
  expect(await recordOf(earlier)).toEqual({ loans: 0, late: 0, damaged: 0 });
});

test("what lies more than three years back is forgotten", async () => {
  await dueOn(addDays(today(), -1_097));
  expect(await recordOf()).toEqual({ loans: 0, late: 0, damaged: 0 });
});

test("a new loan of the borrower is told of it, by the query of the screens", async () => {
  await dueOn(addDays(today(), -200));
  const { id } = await openLoan(lending.lecturer, {
    borrowerId: null,
    request: aRequestDraft(lending),
    specimenIds: [specimen.id],
  });
  const { findings } = await getLoan(lending.registrar, id);
  expect(findings.find(({ rule }) => rule === "U5")).toMatchObject({
    outcome: "attend",
    fact: "use.record-with-marks",
    parameters: { loans: 1, late: 1 },
  });
  expect(findings.find(({ rule }) => rule === "B6")?.fact).toMatch(/^free\.(not-)?rested$/);
});
