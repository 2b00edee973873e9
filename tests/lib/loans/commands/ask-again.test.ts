/** A slip like an earlier loan: the same purpose, contacts and venue, and of its specimens what is free. */
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { askAgain } from "#lib/loans/commands/ask-again.ts";
import { noteSpecimen, removeSpecimen } from "#lib/loans/commands/note-specimen.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { stateRequest } from "#lib/loans/commands/state-request.ts";
import { submitRequest, withdrawRequest } from "#lib/loans/commands/submit-request.ts";
import { findSlip } from "#lib/loans/queries/list-loans.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import { bookSpecimen } from "#lib/whereabouts/commands.ts";
import type { Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, aRequestDraft, type Lending } from "#tests/support/lending.ts";
import { passHours, startClock } from "#tests/support/loan-walk.ts";

let lending: Lending;
let first: Made;
let second: Made;
let earlierId: string;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const yearHours = 365 * 24;
const inThisYear = { startsOn: "", endsOn: "", opensOn: "" };

/** Every test begins with a loan that was asked for, and no slip in hand. */
beforeEach(async () => {
  first = await aLendableSpecimen(lending);
  second = await aLendableSpecimen(lending);
  Object.assign(inThisYear, {
    startsOn: addDays(today(), 60),
    endsOn: addDays(today(), 120),
    opensOn: addDays(today(), 63),
  });
  const { id } = await openLoan(lending.lecturer, {
    borrowerId: null,
    request: aRequestDraft(lending, { ...inThisYear, title: "Spring course", note: "Ring the bell." }),
    specimenIds: [first.id, second.id],
  });
  await submitRequest(lending.lecturer, { loanId: id });
  earlierId = id;
  const slip = await findSlip(lending.lecturer);
  if (slip) await withdrawRequest(lending.lecturer, { loanId: slip.id });
});

describe("a slip like last time", () => {
  test("has the same purpose, venue, contacts and specimens, in the coming year", async () => {
    passHours(yearHours);
    const asked = await askAgain(lending.lecturer, { loanId: earlierId });
    expect(asked.leftOut).toEqual([]);
    const [again, earlier] = [
      await getLoan(lending.lecturer, asked.id),
      await getLoan(lending.lecturer, earlierId),
    ];
    expect(again.state).toBe("enquiry");
    const { note, startsOn, endsOn, opensOn, factsConfirmed, ...same } = again.request;
    expect(earlier.request).toMatchObject(same);
    expect({ note, factsConfirmed }).toEqual({ note: "", factsConfirmed: false });
    expect(again.lines.map(({ accessionNumber }) => accessionNumber).sort()).toEqual(
      [first.accessionNumber, second.accessionNumber].sort(),
    );
    expect(startsOn.slice(5)).toBe(inThisYear.startsOn.slice(5));
    expect([endsOn, opensOn]).toEqual([addDays(startsOn, 60), addDays(startsOn, 3)]);
    expect(startsOn > inThisYear.startsOn).toBe(true);
  });

  test("leaves out what is promised on the days, and names it", async () => {
    const startsOn = addDays(today(), 200);
    await bookSpecimen(lending.curator, {
      specimenId: second.id,
      purpose: "examination",
      startsOn: addDays(startsOn, -10),
      endsOn: startsOn,
    });
    const asked = await askAgain(lending.lecturer, { loanId: earlierId, startsOn });
    expect(asked.leftOut).toEqual([second.accessionNumber]);
    expect((await getLoan(lending.lecturer, asked.id)).lines.map(({ specimenId }) => specimenId)).toEqual([
      first.id,
    ]);
  });

  test("is refused where nothing of it is free, and opens nothing", async () => {
    const asked = askAgain(lending.lecturer, { loanId: earlierId, startsOn: inThisYear.startsOn });
    await expect(asked).rejects.toMatchObject({ reason: "loan.nothing-free" });
    expect(await findSlip(lending.lecturer)).toBeNull();
  });

  test("takes up an empty slip, and leaves one with specimens alone", async () => {
    const startsOn = addDays(today(), 300);
    const other = await aLendableSpecimen(lending);
    const slip = await openLoan(lending.lecturer, {
      borrowerId: null,
      request: null,
      specimenIds: [other.id],
    });
    const asked = askAgain(lending.lecturer, { loanId: earlierId, startsOn });
    await expect(asked).rejects.toMatchObject({
      reason: "loan.slip-in-hand",
      parameters: { number: slip.number },
    });
    await removeSpecimen(lending.lecturer, { loanId: slip.id, specimenId: other.id });
    const taken = await askAgain(lending.lecturer, { loanId: earlierId, startsOn });
    expect(taken.id).toBe(slip.id);
    expect((await findSlip(lending.lecturer))?.specimens).toHaveLength(2);
    await noteSpecimen(lending.lecturer, { loanId: slip.id, specimenIds: [other.id], seriesId: null });
    expect((await findSlip(lending.lecturer))?.specimens).toHaveLength(3);
  });

  test("is opened by the registrar for the borrower too, and not by a stranger", async () => {
    const startsOn = addDays(today(), 300);
    const { id } = await askAgain(lending.registrar, { loanId: earlierId, startsOn });
    expect((await getLoan(lending.registrar, id)).borrower.id).toBe(lending.borrowerId);
    const strange = askAgain(lending.stranger, { loanId: earlierId, startsOn });
    await expect(strange).rejects.toMatchObject({ kind: "not-found" });
  });
});

describe("what is kept of the borrower", () => {
  const statedOn = async (loanId: string, said: { factsConfirmed: boolean }) => {
    await stateRequest(lending.lecturer, {
      loanId,
      request: aRequestDraft(lending, { ...inThisYear, ...said }),
    });
    return (await getLoan(lending.lecturer, loanId)).factsConfirmedAt;
  };

  test("is confirmed with one tick, at the moment of the tick, and taken back with it", async () => {
    const { id } = await openLoan(lending.lecturer, { borrowerId: null, request: null, specimenIds: [] });
    const stated = (said: { factsConfirmed: boolean }) => statedOn(id, said);
    const confirmedAt = await stated({ factsConfirmed: true });
    expect(confirmedAt).not.toBeNull();
    passHours(24);
    expect(await stated({ factsConfirmed: true })).toBe(confirmedAt);
    expect(await stated({ factsConfirmed: false })).toBeNull();
    expect(await stated({ factsConfirmed: true })).not.toBe(confirmedAt);
  });

  test("stays confirmed on what is submitted", async () => {
    await expect(statedOn(earlierId, { factsConfirmed: false })).rejects.toMatchObject({
      issues: [{ path: "factsConfirmed", message: "loan.facts-not-confirmed" }],
    });
    expect((await getLoan(lending.lecturer, earlierId)).factsConfirmedAt).not.toBeNull();
  });
});

test("the days of a request are held until a stated moment, and no longer", async () => {
  const held = async () => (await getLoan(lending.lecturer, earlierId)).heldUntil;
  expect((await held())?.slice(0, 10)).toBe(addDays(today(), 14));
  passHours(15 * 24);
  expect(await held()).toBeNull();
});
