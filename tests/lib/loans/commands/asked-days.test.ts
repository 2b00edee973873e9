/** The days of a request: carried from what was looked for, possible for what is noted, and refused where nobody can promise them. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { sentence } from "#app/_words/sentences.ts";
import { noteSpecimen, removeSpecimen } from "#lib/loans/commands/note-specimen.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { stateRequest } from "#lib/loans/commands/state-request.ts";
import { submitRequest } from "#lib/loans/commands/submit-request.ts";
import type { RequestDraft } from "#lib/loans/inputs.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import { bookSpecimen } from "#lib/whereabouts/commands.ts";
import type { Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, aRequestDraft, type Lending } from "#tests/support/lending.ts";
import { passHours, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const asks = (said: Partial<RequestDraft>, specimens: readonly Made[], viewer = lending.lecturer) =>
  openLoan(viewer, {
    borrowerId: lending.borrowerId,
    request: aRequestDraft(lending, said),
    specimenIds: specimens.map(({ id }) => id),
  });
const slip = (specimens: readonly Made[], days: { startsOn: string; endsOn: string } | null = null) =>
  openLoan(lending.lecturer, {
    borrowerId: null,
    request: null,
    specimenIds: specimens.map(({ id }) => id),
    days,
  });
const note = (loanId: string, specimen: Made, days: { startsOn: string; endsOn: string } | null = null) =>
  noteSpecimen(lending.lecturer, { loanId, specimenIds: [specimen.id], seriesId: null, days });
const daysOf = async (loanId: string) => {
  const { startsOn, endsOn } = (await getLoan(lending.lecturer, loanId)).request;
  return { startsOn, endsOn };
};
const aBody = () =>
  aLendableSpecimen(lending, {
    kind: "whole body",
    massKg: 70,
    lengthMm: 1_800,
    widthMm: 600,
    heightMm: 500,
  });

describe("a request", () => {
  test("that starts before there is time to pack is refused, and the earliest possible day named", async () => {
    const { id: loanId } = await asks({ startsOn: addDays(today(), 13) }, [await aLendableSpecimen(lending)]);
    const earliest = addDays(today(), 14);
    await expect(submitRequest(lending.lecturer, { loanId })).rejects.toMatchObject({
      kind: "invalid",
      reason: "loan.starts-too-soon",
      parameters: { earliest },
      issues: [{ path: "startsOn", message: "loan.another-start" }],
    });
    expect(sentence("loan.starts-too-soon", { earliest })).toContain("9 December 2026");
    const loan = await getLoan(lending.lecturer, loanId);
    expect(loan).toMatchObject({ state: "enquiry", earliestStart: earliest });
    expect(loan.nextSteps).toMatchObject([
      { outcome: "bar", code: "next.other-start", parameters: { fact: "loan.starts-too-soon", earliest } },
    ]);
    await stateRequest(lending.lecturer, {
      loanId,
      request: aRequestDraft(lending, { startsOn: earliest }),
    });
    await submitRequest(lending.lecturer, { loanId });
  });

  test("for a larger specimen needs more days before it", async () => {
    const { id: loanId } = await asks({ startsOn: addDays(today(), 59) }, [await aBody()]);
    await expect(submitRequest(lending.lecturer, { loanId })).rejects.toMatchObject({
      parameters: { earliest: addDays(today(), 60) },
    });
  });

  test("may be hurried by the house, which then has a point to attend to", async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id: loanId } = await asks({ startsOn: addDays(today(), 5) }, [specimen], lending.registrar);
    await submitRequest(lending.registrar, { loanId });
    const { findings } = await getLoan(lending.registrar, loanId);
    expect(findings.find(({ rule }) => rule === "B2")).toMatchObject({
      outcome: "attend",
      fact: "free.lead-time-short",
    });
  });

  test("that was in time may be put in other words when the day has come near, and not asked for earlier", async () => {
    const startsOn = addDays(today(), 20);
    const { id: loanId } = await asks({ startsOn }, [await aLendableSpecimen(lending)]);
    await submitRequest(lending.lecturer, { loanId });
    passHours(24 * 10);
    const state = (said: Partial<RequestDraft>) =>
      stateRequest(lending.lecturer, { loanId, request: aRequestDraft(lending, { startsOn, ...said }) });
    await state({ note: "Second floor." });
    await expect(state({ startsOn: addDays(startsOn, -1) })).rejects.toMatchObject({
      reason: "loan.starts-too-soon",
    });
    await note(loanId, await aLendableSpecimen(lending));
    await expect(submitRequest(lending.lecturer, { loanId })).rejects.toMatchObject({
      reason: "loan.starts-too-soon",
    });
  });

  test("runs for three years at most, and begins within five, at its fields", async () => {
    const { id: loanId } = await asks({}, [await aLendableSpecimen(lending)]);
    const state = (startsOn: string, endsOn: string) =>
      stateRequest(lending.lecturer, { loanId, request: aRequestDraft(lending, { startsOn, endsOn }) });
    await expect(state("2028-10-01", "2499-12-30")).rejects.toMatchObject({
      kind: "invalid",
      issues: [{ path: "request.endsOn", message: "loan.too-long" }],
    });
    await expect(state("2032-10-01", "2032-12-30")).rejects.toMatchObject({
      kind: "invalid",
      issues: [{ path: "request.startsOn", message: "loan.starts-too-late" }],
    });
    await expect(asks({ startsOn: "2032-10-01", endsOn: "2032-12-30" }, [])).rejects.toMatchObject({
      issues: [{ message: "loan.starts-too-late" }],
    });
    await state("2028-10-01", "2031-10-02");
  });
});

describe("a slip", () => {
  const wish = { startsOn: "2027-03-01", endsOn: "2027-06-01" };

  test("begins with the days that were looked for in the catalogue", async () => {
    const { id, days } = await slip([await aLendableSpecimen(lending)], wish);
    expect(days).toEqual(wish);
    expect(await daysOf(id)).toEqual(wish);
  });

  test("keeps its days when somebody looks for others later, and says which they are", async () => {
    const { id } = await slip([await aLendableSpecimen(lending)], wish);
    const others = { startsOn: "2027-09-01", endsOn: "2027-10-01" };
    expect(await note(id, await aLendableSpecimen(lending), others)).toEqual({
      added: 1,
      waits: false,
      days: wish,
    });
  });

  test("on which nothing stands any more takes up the days that are looked for anew", async () => {
    const first = await aLendableSpecimen(lending);
    const { id } = await slip([first], wish);
    await removeSpecimen(lending.lecturer, { loanId: id, specimenId: first.id });
    const others = { startsOn: "2027-09-01", endsOn: "2027-10-01" };
    expect((await note(id, first, others)).days).toEqual(others);
  });

  test("of which nothing was looked for begins on a day that nobody else has", async () => {
    const specimen = await aLendableSpecimen(lending);
    await bookSpecimen(lending.registrar, {
      specimenId: specimen.id,
      purpose: "examination",
      startsOn: addDays(today(), 20),
      endsOn: addDays(today(), 200),
    });
    const { days } = await slip([specimen]);
    expect(days.startsOn).toBe(addDays(today(), 214));
  });

  test("moves days that have become impossible while nothing is stated, and never days that were stated", async () => {
    const { id } = await slip([await aLendableSpecimen(lending)]);
    expect((await daysOf(id)).startsOn).toBe(addDays(today(), 42));
    const { days } = await note(id, await aBody());
    expect(days.startsOn).toBe(addDays(today(), 60));
    const stated = await slip([await aLendableSpecimen(lending)]);
    const startsOn = addDays(today(), 30);
    await stateRequest(lending.lecturer, {
      loanId: stated.id,
      request: aRequestDraft(lending, { startsOn }),
    });
    expect((await note(stated.id, await aBody())).days.startsOn).toBe(startsOn);
  });

  test("says nothing of its purpose until somebody has chosen it", async () => {
    const { id: loanId } = await slip([await aLendableSpecimen(lending)]);
    const { request, missingFields } = await getLoan(lending.lecturer, loanId);
    expect(request.purpose).toBe("");
    expect(missingFields).toContain("purpose");
    const whole = aRequestDraft(lending, { purpose: "" });
    await stateRequest(lending.lecturer, { loanId, request: whole });
    await expect(submitRequest(lending.lecturer, { loanId })).rejects.toMatchObject({
      kind: "invalid",
      issues: [{ path: "purpose" }],
    });
    await stateRequest(lending.lecturer, { loanId, request: { ...whole, purpose: "research" } });
    await submitRequest(lending.lecturer, { loanId });
  });
});

test("what is noted on a request that was submitted waits until it is submitted again, and nothing is held for it", async () => {
  const { id: loanId } = await walk(lending, [await aLendableSpecimen(lending)], "requested");
  const late = await aLendableSpecimen(lending);
  expect(await note(loanId, late)).toMatchObject({ added: 1, waits: true });
  const loan = await getLoan(lending.lecturer, loanId);
  expect(loan.lines.find((line) => line.specimenId === late.id)?.state).toBe("noted");
  const run = loan.latestRun?.findings.map((finding) => finding.specimenId);
  expect(run).not.toContain(late.id);
  expect(loan.matrix[late.id]).toBeDefined();
});
