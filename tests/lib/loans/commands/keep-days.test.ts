/** What is on the road is booked for every day of it: stages before and after the days of the loan, and returns that are late. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { sentence } from "#app/_words/sentences.ts";
import { dispatchLoan } from "#lib/loans/commands/dispatch-loan.ts";
import { receiveHome } from "#lib/loans/commands/receive-home.ts";
import { sendHome } from "#lib/loans/commands/send-home.ts";
import { planStage } from "#lib/loans/commands/stages.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, toDate, toDateText } from "#lib/platform/dates.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { bookSpecimen } from "#lib/whereabouts/commands.ts";
import { inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { newSeals, passHours, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const plan = (loanId: string, direction: "out" | "home", departsOn: string, arrivesOn = departsOn) =>
  planStage(lending.registrar, {
    loanId,
    direction,
    carrier: "Gentle Freight",
    carrierEmail: "",
    vehicle: "",
    through: [],
    departsOn,
    arrivesOn,
  });
const bookedDays = async (loanId: string) => {
  const [row, ...others] = await database().booking.findMany({
    where: { line: { loanId }, releasedAt: null },
  });
  if (!row || others.length > 0) throw new Error("one booking was expected");
  return [toDateText(row.startsOn), toDateText(row.endsOn)];
};
/** The house books days for itself. */
const bookOwn = (specimenId: string, startsOn: string, endsOn: string) =>
  bookSpecimen(lending.registrar, { specimenId, purpose: "examination", startsOn, endsOn });
const refusalOf = async (attempt: Promise<unknown>): Promise<Refusal> => {
  const thrown = await attempt.then(
    () => null,
    (error: unknown) => error,
  );
  if (!(thrown instanceof Refusal)) throw new Error("a refusal was expected");
  return thrown;
};
/** A loan from day 90 to day 180, for which days 76 to 194 are kept. */
const agreed = async () => {
  const specimen = await aLendableSpecimen(lending);
  const { id: loanId } = await walk(lending, [specimen], "agreed");
  return { specimen, loanId, from: today() };
};

describe("a stage", () => {
  test("before the days of the loan widens the booking, and planned later narrows it again", async () => {
    const { loanId, from } = await agreed();
    expect(await bookedDays(loanId)).toEqual([addDays(from, 76), addDays(from, 194)]);
    await plan(loanId, "out", addDays(from, 40), addDays(from, 41));
    expect(await bookedDays(loanId)).toEqual([addDays(from, 40), addDays(from, 194)]);
    expect((await getLoan(lending.registrar, loanId)).busy.startsOn).toBe(addDays(from, 40));
    await plan(loanId, "out", addDays(from, 88), addDays(from, 90));
    expect(await bookedDays(loanId)).toEqual([addDays(from, 76), addDays(from, 194)]);
  });

  test("after the days of the loan widens it too", async () => {
    const { loanId, from } = await agreed();
    await plan(loanId, "home", addDays(from, 195), addDays(from, 200));
    expect(await bookedDays(loanId)).toEqual([addDays(from, 76), addDays(from, 201)]);
  });

  test("on days that somebody else has is refused, with the day from which it is free, and nothing is planned", async () => {
    const { loanId, specimen, from } = await agreed();
    await bookOwn(specimen.id, addDays(from, 30), addDays(from, 50));
    const refusal = await refusalOf(plan(loanId, "out", addDays(from, 40), addDays(from, 41)));
    expect(refusal).toMatchObject({
      kind: "conflict",
      reason: "stage.days-taken",
      parameters: {
        accessionNumber: specimen.accessionNumber,
        takenFrom: addDays(from, 30),
        freeFrom: addDays(from, 50),
      },
    });
    expect(sentence(refusal.reason, refusal.parameters)).toContain(`${specimen.accessionNumber} is promised`);
    expect((await getLoan(lending.registrar, loanId)).stages).toEqual([]);
    expect(await bookedDays(loanId)).toEqual([addDays(from, 76), addDays(from, 194)]);
    await plan(loanId, "out", addDays(from, 50), addDays(from, 52));
    expect(await bookedDays(loanId)).toEqual([addDays(from, 50), addDays(from, 194)]);
  });

  test("keeps its days so that nobody else is promised them", async () => {
    const { loanId, specimen, from } = await agreed();
    await plan(loanId, "out", addDays(from, 40), addDays(from, 41));
    await expect(bookOwn(specimen.id, addDays(from, 38), addDays(from, 41))).rejects.toMatchObject({
      reason: "booking.taken",
    });
    await bookOwn(specimen.id, addDays(from, 38), addDays(from, 40));
  });
});

describe("the release", () => {
  test("waits for a day that is kept, whatever was planned before bookings followed the stages", async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id: loanId } = await walk(lending, [specimen], "packed");
    const later = addDays(today(), 7);
    // As an earlier version left it: the stage lies before the days that are kept.
    await inWork(({ transaction }) =>
      transaction.booking.updateMany({ where: { line: { loanId } }, data: { startsOn: toDate(later) } }),
    );
    const gate = (await getLoan(lending.registrar, loanId)).gates.find((one) => one.gate === "booked");
    expect(gate).toMatchObject({
      holds: false,
      facts: [{ code: "gate.kept-later", parameters: { from: later } }],
    });
    const refusal = await refusalOf(dispatchLoan(lending.registrar, { loanId }));
    expect(refusal).toMatchObject({
      reason: "loan.gate-fails",
      parameters: { gate: "booked", fact: "gate.kept-later", specimen: specimen.accessionNumber },
    });
    expect(sentence(refusal.reason, refusal.parameters)).not.toMatch(/[{}–]/);
    await plan(loanId, "out", today(), addDays(today(), 2));
    await dispatchLoan(lending.registrar, { loanId });
  });
});

describe("a return that is late", () => {
  const overdue = async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id: loanId } = await walk(lending, [specimen], "at venue");
    const { endsOn } = (await getLoan(lending.registrar, loanId)).request;
    return { specimen, loanId, endsOn };
  };
  const passUntil = (day: string) => passHours((Date.parse(day) - Date.parse(today())) / 3_600_000);
  const codesOf = async (loanId: string) =>
    (await getLoan(lending.registrar, loanId)).nextSteps.map(({ code }) => code);

  test("is planned although somebody else has been promised the days, and says what is kept", async () => {
    const { loanId, specimen, endsOn } = await overdue();
    const theirs = addDays(endsOn, 20);
    await bookOwn(specimen.id, theirs, addDays(theirs, 30));
    expect(await codesOf(loanId)).not.toContain("next.days-not-kept");
    await expect(plan(loanId, "home", addDays(endsOn, 18), addDays(endsOn, 22))).rejects.toMatchObject({
      reason: "stage.days-taken",
    });
    passUntil(addDays(endsOn, 16));
    expect(await codesOf(loanId)).toContain("next.days-not-kept");
    await plan(loanId, "home", addDays(endsOn, 18), addDays(endsOn, 22));
    expect((await bookedDays(loanId))[1]).toBe(theirs);
    const step = (await getLoan(lending.registrar, loanId)).nextSteps.find(
      ({ code }) => code === "next.days-not-kept",
    );
    expect(step?.parameters).toEqual({
      specimen: specimen.accessionNumber,
      until: addDays(theirs, -1),
      neededOn: addDays(endsOn, 22),
    });
  });

  test("keeps its days going while it comes home and is checked", async () => {
    const { loanId, endsOn } = await overdue();
    passUntil(addDays(endsOn, 40));
    await sendHome(lending.lecturer, {
      loanId,
      specimenIds: null,
      seals: await newSeals(lending, loanId),
      carrier: "Gentle Freight",
    });
    expect((await bookedDays(loanId))[1]).toBe(addDays(today(), 14));
    passHours(24 * 5);
    const [crate] = (await getLoan(lending.registrar, loanId)).crates;
    await receiveHome(lending.registrar, {
      loanId,
      crates: [{ crateId: crate?.id ?? "", arrived: true, sealIntact: true, outsideDamage: "" }],
      outsideC: null,
      roomC: null,
      roomHumidity: null,
    });
    expect((await bookedDays(loanId))[1]).toBe(addDays(today(), 14));
  });
});
