/** The loans that claim specimens, and those that one donor's word concerns, on a database. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { listLentOf, listLentOfDonor } from "#lib/desk/queries/lent.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import type { Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, aRequestDraft, type Lending } from "#tests/support/lending.ts";
import { startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
/** A specimen of one donor, its part, and a specimen of somebody else, each on a loan of its own. */
let whole: Made;
let part: Made;
let other: Made;
let code: string;

const standing = (lines: Awaited<ReturnType<typeof listLentOf>>) =>
  lines.map(({ accessionNumber, state }) => `${accessionNumber} ${state}`);

beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
  whole = await aLendableSpecimen(lending);
  part = await aLendableSpecimen(lending, { wholeId: whole.id }, null);
  other = await aLendableSpecimen(lending);
  await walk(lending, [part], "requested", {
    startsOn: addDays(today(), 400),
    endsOn: addDays(today(), 450),
  });
  await walk(lending, [whole], "at venue");
  await walk(lending, [other], "requested");
  const link = await database().specimenDonor.findFirstOrThrow({ where: { specimenId: whole.id } });
  code = link.donorCode;
});
afterAll(() => setClock());

test("a donor's word concerns the specimen and its parts, what is away first, and nobody else's", async () => {
  expect(standing(await listLentOfDonor(lending.donorOfficer, code))).toEqual([
    `${whole.accessionNumber} at venue`,
    `${part.accessionNumber} requested`,
  ]);
});

test("a line says with whom it is, until when, and that no way home is planned", async () => {
  const [line] = await listLentOf(lending.registrar, [whole.id]);
  expect(line).toMatchObject({ state: "at venue", homeStagePlanned: false, specimenId: whole.id });
  const loan = await database().loan.findUniqueOrThrow({
    where: { id: line?.loanId ?? "" },
    include: { borrower: true, venue: true },
  });
  expect(line).toMatchObject({
    loanNumber: loan.number,
    borrower: loan.borrower.name,
    venue: loan.venue.name,
    endsOn: loan.endsOn.toISOString().slice(0, 10),
  });
});

test("a slip that was never sent claims nothing", async () => {
  const free = await aLendableSpecimen(lending);
  await openLoan(lending.lecturer, {
    borrowerId: null,
    request: aRequestDraft(lending),
    specimenIds: [free.id],
  });
  expect(await listLentOf(lending.registrar, [free.id])).toEqual([]);
});

test("who sees no pseudonym gets no loans of a donor, and a borrower none of the house", async () => {
  await expect(listLentOfDonor(lending.registrar, code)).rejects.toMatchObject({ kind: "forbidden" });
  await expect(listLentOf(lending.lecturer, [whole.id])).rejects.toMatchObject({ kind: "forbidden" });
});
