/** Checks on a loan: on what occasion, by whom, from which day on, and that closed crates stay closed. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { checksOf } from "#lib/condition/queries.ts";
import type { Occasion } from "#lib/condition/schema.ts";
import { countReturn, receiveHome } from "#lib/loans/commands/receive-home.ts";
import { openCrate } from "#lib/loans/commands/receive-loan.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import type { Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aCheckOf, aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { passHours, type Step, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

async function walked(step: Step): Promise<{ specimen: Made; loanId: string }> {
  const specimen = await aLendableSpecimen(lending);
  return { specimen, loanId: (await walk(lending, [specimen], step)).id };
}
const on = (occasion: Occasion, loanId: string | null, specimen: Made, checkedOn = today()) =>
  aCheckOf(specimen.id, { occasion, loanId, checkedOn });
const firstCrate = async (loanId: string) => {
  const [crate] = (await getLoan(lending.registrar, loanId)).crates;
  if (!crate) throw new Error("the loan has no crate");
  return crate;
};

describe("the occasion", () => {
  test("of a loan names the loan, and the specimen is on it", async () => {
    const { specimen, loanId } = await walked("accepted");
    await expect(recordCheck(lending.conservator, on("out", null, specimen))).rejects.toMatchObject({
      issues: [{ path: "loanId", message: "check.needs-loan" }],
    });
    const stranger = await aLendableSpecimen(lending);
    await expect(recordCheck(lending.conservator, on("out", loanId, stranger))).rejects.toMatchObject({
      reason: "check.not-on-loan",
    });
    await recordCheck(lending.conservator, on("out", loanId, specimen));
  });

  test.each<[Step, Occasion]>([
    ["requested", "out"],
    ["accepted", "home"],
    ["accepted", "arrival"],
    ["accepted", "periodic"],
    ["at venue", "out"],
  ])("fits where the specimen is: when %s, not %s", async (step, occasion) => {
    const { specimen, loanId } = await walked(step);
    await expect(recordCheck(lending.conservator, on(occasion, loanId, specimen))).rejects.toMatchObject({
      reason: "check.not-where-it-is",
      parameters: { specimen: specimen.accessionNumber },
    });
  });
});

describe("who borrows", () => {
  test("records what is with it, on its own loan", async () => {
    const { specimen, loanId } = await walked("at venue");
    const record = (occasion: Occasion, loan: string | null = loanId) =>
      recordCheck(lending.borrowerRegistrar, on(occasion, loan, specimen));
    await record("arrival");
    await record("incident");
    await record("departure");
    await expect(record("out")).rejects.toMatchObject({ reason: "check.not-on-this-occasion" });
    await expect(record("incident", null)).rejects.toMatchObject({ reason: "check.not-on-this-occasion" });
    const other = await walked("at venue");
    const borrowers = { ...lending.borrowerRegistrar, institutionId: lending.stranger.institutionId };
    await expect(recordCheck(borrowers, on("arrival", other.loanId, other.specimen))).rejects.toMatchObject({
      kind: "not-found",
    });
    await expect(
      recordCheck(lending.borrowerRegistrar, on("arrival", loanId, other.specimen)),
    ).rejects.toMatchObject({ kind: "not-found" });
  });

  test("records no incident from before the crate came", async () => {
    const { specimen, loanId } = await walked("resting");
    const record = (days: number) =>
      recordCheck(lending.borrowerRegistrar, on("incident", loanId, specimen, addDays(today(), days)));
    await expect(record(-1)).rejects.toMatchObject({
      reason: "check.before-arrived",
      parameters: { from: today() },
    });
    await record(0);
  });
});

describe("a closed crate", () => {
  test("at the venue has nothing that arrived: it is opened first", async () => {
    const { specimen, loanId } = await walked("resting");
    const arrival = (checkedOn = today()) =>
      recordCheck(lending.borrowerRegistrar, on("arrival", loanId, specimen, checkedOn));
    const crate = await firstCrate(loanId);
    const closed = {
      reason: "check.crate-closed",
      parameters: { specimen: specimen.accessionNumber, crate: crate.code },
    };
    await expect(arrival()).rejects.toMatchObject(closed);
    passHours(49);
    await expect(arrival()).rejects.toMatchObject(closed);
    await openCrate(lending.lecturer, {
      crateId: crate.id,
      counts: [{ specimenId: specimen.id, present: true, remark: "" }],
    });
    await expect(arrival(addDays(today(), -1))).rejects.toMatchObject({
      reason: "check.before-opened",
      parameters: { from: today() },
      issues: [{ path: "checkedOn" }],
    });
    await arrival();
  });

  test("at home has nothing that was looked at: it is counted first", async () => {
    const { specimen, loanId } = await walked("sent home");
    const home = (checkedOn = today()) =>
      recordCheck(lending.conservator, on("home", loanId, specimen, checkedOn));
    await expect(home()).rejects.toMatchObject({ reason: "check.not-where-it-is" });
    passHours(48);
    const crate = await firstCrate(loanId);
    await receiveHome(lending.registrar, {
      loanId,
      crates: [{ crateId: crate.id, arrived: true, sealIntact: true, outsideDamage: "" }],
      outsideC: null,
      roomC: null,
      roomHumidity: null,
    });
    await expect(home()).rejects.toMatchObject({ reason: "check.crate-closed" });
    passHours(49);
    await countReturn(lending.curator, {
      loanId,
      counts: [{ specimenId: specimen.id, present: true, remark: "", missingComponents: [] }],
    });
    await expect(home(addDays(today(), -1))).rejects.toMatchObject({ reason: "check.before-counted" });
    await home();
    expect((await checksOf(lending.curator, specimen.id)).map(({ occasion }) => occasion)).toEqual([
      "home",
      "out",
      "periodic",
    ]);
  });
});

describe("the day", () => {
  test("of a check before it leaves is not before the loan was accepted", async () => {
    const { specimen, loanId } = await walked("accepted");
    await expect(
      recordCheck(lending.conservator, on("out", loanId, specimen, addDays(today(), -1))),
    ).rejects.toMatchObject({ reason: "check.before-accepted", parameters: { from: today() } });
  });

  test("of a check before it leaves the venue is never long ago", async () => {
    const { specimen, loanId } = await walked("at venue");
    await expect(
      recordCheck(lending.borrowerRegistrar, on("departure", loanId, specimen, "1990-01-01")),
    ).rejects.toMatchObject({ reason: "check.before-opened" });
  });
});
