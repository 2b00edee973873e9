/** From the slip to the request: who may, what is refused, and what is held. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { noteSpecimen, removeSpecimen } from "#lib/loans/commands/note-specimen.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { stateRequest } from "#lib/loans/commands/state-request.ts";
import { submitRequest, withdrawRequest } from "#lib/loans/commands/submit-request.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { recordPermit } from "#lib/provenance/commands.ts";
import { freePeriodsOf } from "#lib/whereabouts/queries.ts";
import { aSeries, aVenue, type Made } from "#tests/support/builders.ts";
import { allScopes } from "#tests/support/consents.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, aRequestDraft, type Lending } from "#tests/support/lending.ts";
import { startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const open = (specimens: readonly Made[], said = {}) =>
  openLoan(lending.lecturer, {
    borrowerId: null,
    request: aRequestDraft(lending, said),
    specimenIds: specimens.map(({ id }) => id),
  });
const bookingsOf = (specimenId: string) =>
  database().booking.findMany({ where: { specimenId, releasedAt: null }, orderBy: { startsOn: "asc" } });

describe("a slip", () => {
  test("keeps what is planned with the specimens, and judges it", async () => {
    const specimen = await aLendableSpecimen(
      lending,
      {},
      { answers: allScopes("granted", { "casting and scanning": "refused" }) },
    );
    const { id } = await open([specimen], { activities: ["sampling", "casting and scanning"] });
    const loan = await getLoan(lending.curator, id);
    expect(loan.request.activities).toEqual(["sampling", "casting and scanning"]);
    const judged = loan.findings.filter(({ rule }) => rule === "G14");
    expect(judged.map(({ outcome, fact }) => [outcome, fact])).toEqual([
      ["attend", "consent.activity-refused"],
      ["attend", "permits.activity-not-permitted"],
    ]);
    await recordPermit(lending.registrar, {
      specimenId: specimen.id,
      kind: "sampling",
      number: "W 4/27",
      authority: "The centre",
      territories: [],
      validFrom: null,
      validUntil: addDays(today(), 200),
    });
    const permitted = await getLoan(lending.curator, id);
    expect(permitted.findings.filter(({ rule }) => rule === "G14").at(-1)).toMatchObject({
      outcome: "clear",
      parameters: { number: "W 4/27" },
    });
  });

  test("is numbered, and holds a specimen once", async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id, number } = await open([specimen]);
    const other = await open([]);
    expect(Number(other.number.slice(-3))).toBe(Number(number.slice(-3)) + 1);
    expect(
      await noteSpecimen(lending.lecturer, { loanId: id, specimenIds: [specimen.id], seriesId: null }),
    ).toMatchObject({ added: 0 });
    await removeSpecimen(lending.lecturer, { loanId: id, specimenId: specimen.id });
    expect((await getLoan(lending.lecturer, id)).lines).toEqual([]);
  });

  test("takes a series as each of its sheets", async () => {
    const series = await aSeries(7);
    const { id } = await open([]);
    expect(
      await noteSpecimen(lending.lecturer, { loanId: id, specimenIds: [], seriesId: series.id }),
    ).toMatchObject({ added: 7 });
  });

  test("keeps more days around a larger specimen", async () => {
    const { id } = await open([]);
    expect(await getLoan(lending.lecturer, id)).toMatchObject({ daysBefore: 14, daysAfter: 14 });
    const body = await aLendableSpecimen(lending, {
      kind: "whole body",
      massKg: 70,
      lengthMm: 1_800,
      widthMm: 600,
      heightMm: 500,
    });
    await noteSpecimen(lending.lecturer, { loanId: id, specimenIds: [body.id], seriesId: null });
    expect(await getLoan(lending.lecturer, id)).toMatchObject({ daysBefore: 60, daysAfter: 60 });
  });

  test("is opened by the registrar for any institution, and needs to say which", async () => {
    await expect(
      openLoan(lending.registrar, { borrowerId: null, request: null, specimenIds: [] }),
    ).rejects.toMatchObject({
      kind: "invalid",
      issues: [{ path: "borrowerId", message: "loan.borrower-missing" }],
    });
    const { id } = await openLoan(lending.registrar, {
      borrowerId: lending.borrowerId,
      request: null,
      specimenIds: [],
    });
    expect(await getLoan(lending.lecturer, id)).toMatchObject({ state: "enquiry" });
  });

  test("of a stranger does not exist", async () => {
    const { id } = await open([]);
    const specimen = await aLendableSpecimen(lending);
    const as = lending.stranger;
    for (const asked of [
      () => getLoan(as, id),
      () => noteSpecimen(as, { loanId: id, specimenIds: [specimen.id], seriesId: null }),
      () => stateRequest(as, { loanId: id, request: aRequestDraft(lending) }),
      () => submitRequest(as, { loanId: id }),
      () => withdrawRequest(as, { loanId: id }),
    ])
      await expect(asked()).rejects.toMatchObject({ kind: "not-found" });
  });

  test("names only venues of the borrower's own", async () => {
    const elsewhere = await aVenue();
    await expect(open([], { venueId: elsewhere })).rejects.toMatchObject({ kind: "not-found" });
  });

  test("refuses a specimen that does not exist", async () => {
    await expect(
      open([{ id: "01920000-0000-7000-8000-00000000dead", accessionNumber: "" }]),
    ).rejects.toMatchObject({ kind: "not-found" });
  });
});

describe("a request", () => {
  test("is not taken in before what is kept of the borrower is confirmed, and says so at the field", async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id } = await open([specimen], { factsConfirmed: false });
    expect((await getLoan(lending.lecturer, id)).missingFields).toEqual(["factsConfirmed"]);
    await expect(submitRequest(lending.lecturer, { loanId: id })).rejects.toMatchObject({
      kind: "invalid",
      issues: [{ path: "factsConfirmed", message: "loan.facts-not-confirmed" }],
    });
    expect(await bookingsOf(specimen.id)).toEqual([]);
    await stateRequest(lending.lecturer, { loanId: id, request: aRequestDraft(lending) });
    await submitRequest(lending.lecturer, { loanId: id });
    expect((await getLoan(lending.lecturer, id)).state).toBe("requested");
  });

  test("holds its days for 14 days, with the days around them", async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id } = await open([specimen], { startsOn: "2027-03-01", endsOn: "2027-07-01" });
    await submitRequest(lending.lecturer, { loanId: id });
    const [booking] = await bookingsOf(specimen.id);
    expect(booking).toMatchObject({ strength: "hold", purpose: "loan" });
    expect([booking?.startsOn, booking?.endsOn].map((day) => day?.toISOString().slice(0, 10))).toEqual([
      "2027-02-15",
      "2027-07-15",
    ]);
    expect(booking?.expiresAt?.toISOString().slice(0, 10)).toBe(addDays(today(), 14));
    const run = await database().suitabilityRun.findFirst({ where: { loanId: id } });
    expect(run?.findings).toEqual(
      expect.arrayContaining([expect.objectContaining({ rule: "G10", outcome: "clear" })]),
    );
  });

  test("for days that somebody else has is refused with the day from which it is free", async () => {
    const specimen = await aLendableSpecimen(lending);
    const first = await open([specimen], { startsOn: "2027-03-01", endsOn: "2027-07-01" });
    await submitRequest(lending.lecturer, { loanId: first.id });
    const second = await open([specimen], { startsOn: "2027-07-20", endsOn: "2027-09-01" });
    await expect(submitRequest(lending.lecturer, { loanId: second.id })).rejects.toMatchObject({
      kind: "conflict",
      reason: "booking.taken",
      parameters: { accessionNumber: specimen.accessionNumber, freeFrom: "2027-07-15" },
    });
    expect(await getLoan(lending.lecturer, second.id)).toMatchObject({
      state: "enquiry",
      matrix: { [specimen.id]: { free: "bar" } },
    });
    await stateRequest(lending.lecturer, {
      loanId: second.id,
      request: aRequestDraft(lending, { startsOn: "2027-07-29", endsOn: "2027-09-01" }),
    });
    await submitRequest(lending.lecturer, { loanId: second.id });
  });

  test("of two people at one moment for one specimen is taken in once", async () => {
    const specimen = await aLendableSpecimen(lending);
    const loans = await Promise.all([open([specimen]), open([specimen])]);
    const answers = await Promise.allSettled(
      loans.map(({ id }) => submitRequest(lending.lecturer, { loanId: id })),
    );
    expect(answers.map(({ status }) => status).sort()).toEqual(["fulfilled", "rejected"]);
    const refused = answers.find((answer) => answer.status === "rejected");
    expect(refused?.reason).toMatchObject({ reason: "booking.taken" });
    expect(await bookingsOf(specimen.id)).toHaveLength(1);
  });

  test.each([
    ["without a specimen", [], {}, { reason: "loan.no-specimens" }],
    [
      "that starts in the past",
      null,
      { startsOn: "2026-11-25", endsOn: "2027-01-01" },
      { kind: "invalid", issues: [{ path: "startsOn" }] },
    ],
    [
      "without a contact",
      null,
      { contactPhone: "" },
      { kind: "invalid", issues: [{ path: "contactPhone" }] },
    ],
  ] as const)("%s is refused", async (_what, none, said, refusal) => {
    const specimens = none ?? [await aLendableSpecimen(lending)];
    const { id } = await open(specimens, said);
    await expect(submitRequest(lending.lecturer, { loanId: id })).rejects.toMatchObject(refusal);
  });

  test("that is withdrawn gives its days back and ends", async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id } = await walk(lending, [specimen], "requested");
    await withdrawRequest(lending.lecturer, { loanId: id });
    expect(await getLoan(lending.lecturer, id)).toMatchObject({ state: "withdrawn" });
    expect(await bookingsOf(specimen.id)).toEqual([]);
    await expect(submitRequest(lending.lecturer, { loanId: id })).rejects.toMatchObject({
      reason: "loan.not-now",
    });
  });

  test("stated anew is held and judged anew", async () => {
    const specimen = await aLendableSpecimen(lending, { use: "viewing only" });
    const { id } = await walk(lending, [specimen], "requested");
    await stateRequest(lending.lecturer, {
      loanId: id,
      request: aRequestDraft(lending, { teachingUse: "handling", endsOn: addDays(today(), 120) }),
    });
    expect(await getLoan(lending.curator, id)).toMatchObject({ matrix: { [specimen.id]: { use: "bar" } } });
    const free = await freePeriodsOf(
      lending.lecturer,
      [specimen.id],
      addDays(today(), 130),
      addDays(today(), 200),
    );
    expect(free.get(specimen.id)).toEqual([
      { startsOn: addDays(today(), 134), endsOn: addDays(today(), 200) },
    ]);
  });
});
