/** Arrival and return: what rests, what is counted, and that nothing ever bars the way home. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { hasSentence, sentence } from "#app/_words/sentences.ts";
import { checkIn, closeLoan } from "#lib/loans/commands/check-in.ts";
import { countReturn, receiveHome } from "#lib/loans/commands/receive-home.ts";
import { openCrate, receiveLoan } from "#lib/loans/commands/receive-loan.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import { sendHome } from "#lib/loans/commands/send-home.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { withdrawConsent } from "#lib/provenance/commands.ts";
import { keepPlace, moveSpecimen } from "#lib/whereabouts/commands.ts";
import { custodyOf } from "#lib/whereabouts/queries.ts";
import { aSeries, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aCheckOf, aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { newSeals, passHours, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const unknownAir = { outsideC: null, roomC: null, roomHumidity: null };
const cratesOfLoan = async (loanId: string) => (await getLoan(lending.registrar, loanId)).crates;
const firstCrate = async (loanId: string) => {
  const [crate] = await cratesOfLoan(loanId);
  if (!crate) throw new Error("the loan has no crate");
  return crate;
};
const _allOf = (crate: Awaited<ReturnType<typeof firstCrate>>) =>
  crate.contents.map(({ specimenId }) => ({ specimenId, componentsComplete: true }));
const look = (crateId: string, said = {}) => ({
  crateId,
  arrived: true,
  sealIntact: true,
  outsideDamage: "",
  ...said,
});

describe("arrival", () => {
  test("needs a look for every crate, and takes over what came", async () => {
    const specimens = [await aLendableSpecimen(lending), await aLendableSpecimen(lending)];
    const { id: loanId } = await walk(lending, specimens, "out");
    const [first, second] = await cratesOfLoan(loanId);
    const receive = (crates: ReturnType<typeof look>[]) =>
      receiveLoan(lending.lecturer, { loanId, crates, ...unknownAir });
    await expect(receive([look(first?.id ?? "")])).rejects.toMatchObject({ reason: "crate.not-looked-for" });
    await expect(
      receiveLoan(lending.stranger, { loanId, crates: [look(first?.id ?? "")], ...unknownAir }),
    ).rejects.toMatchObject({ kind: "not-found" });
    const received = await receive([
      look(first?.id ?? "", { sealIntact: false, outsideDamage: "corner dented" }),
      look(second?.id ?? "", { arrived: false }),
    ]);
    expect(received).toMatchObject([{ code: first?.code, hours: 48 }]);
    const loan = await getLoan(lending.registrar, loanId);
    expect(loan.state).toBe("travelling out");
    expect(loan.lines.map(({ state }) => state).sort()).toEqual(["resting at venue", "travelling out"]);
    expect(loan.crates[0]).toMatchObject({ sealHolds: false, state: "resting closed" });
    await receive([look(second?.id ?? "")]);
    expect(await getLoan(lending.registrar, loanId)).toMatchObject({ state: "at venue" });
  });

  test("keeps a crate closed until its rest is over, and counts what is in it", async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id: loanId } = await walk(lending, [specimen], "resting");
    const crate = await firstCrate(loanId);
    const count = (present: boolean) =>
      openCrate(lending.lecturer, {
        crateId: crate.id,
        counts: [{ specimenId: specimen.id, present, remark: "" }],
      });
    await expect(count(true)).rejects.toMatchObject({
      reason: "crate.resting",
      parameters: { notBefore: crate.notBefore },
    });
    passHours(49);
    await expect(
      openCrate(lending.lecturer, {
        crateId: crate.id,
        counts: [{ specimenId: loanId, present: true, remark: "" }],
      }),
    ).rejects.toMatchObject({ reason: "crate.count-incomplete" });
    expect(await count(false)).toMatchObject({ missing: [{ accessionNumber: specimen.accessionNumber }] });
    expect(await getLoan(lending.registrar, loanId)).toMatchObject({
      lines: [{ state: "missing" }],
      nextSteps: [{ code: "next.missing", parameters: { specimen: specimen.accessionNumber } }],
    });
    await expect(closeLoan(lending.registrar, { loanId })).rejects.toMatchObject({
      reason: "loan.still-open",
      parameters: { specimens: `${specimen.accessionNumber} (missing)` },
    });
  });
});

describe("the way home", () => {
  test("is never barred: not by a withdrawn consent, not by lapsed cover", async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id: loanId } = await walk(lending, [specimen], "at venue");
    const { donorCode } = await database().specimenDonor.findFirstOrThrow({
      where: { specimenId: specimen.id },
    });
    await withdrawConsent(lending.donorOfficer, { donorCode, receivedOn: today(), effectiveOn: today() });
    passHours(24 * 500);
    expect(await getLoan(lending.registrar, loanId)).toMatchObject({ isOverdue: true, state: "at venue" });
    await sendHome(lending.lecturer, {
      loanId,
      specimenIds: null,
      seals: await newSeals(lending, loanId),
      carrier: "",
    });
    expect(await getLoan(lending.registrar, loanId)).toMatchObject({ state: "travelling home" });
    // Nobody was named as carrier, so the borrower still has it.
    const { borrower } = await getLoan(lending.registrar, loanId);
    expect(await custodyOf(lending.registrar, specimen.id)).toMatchObject({ holder: borrower.name });
  });

  test("may be taken by one specimen while another stays", async () => {
    const specimens = [await aLendableSpecimen(lending), await aLendableSpecimen(lending)];
    const { id: loanId } = await walk(lending, specimens, "at venue");
    await sendHome(lending.borrowerRegistrar, {
      loanId,
      specimenIds: [specimens[0]?.id ?? ""],
      seals: (await newSeals(lending, loanId)).slice(0, 1),
      carrier: "Gentle Freight",
    });
    const loan = await getLoan(lending.registrar, loanId);
    expect(loan.state).toBe("at venue");
    expect(loan.lines.map(({ state }) => state).sort()).toEqual(["at venue", "travelling home"]);
    await expect(
      sendHome(lending.lecturer, { loanId, specimenIds: [specimens[0]?.id ?? ""], seals: [], carrier: "" }),
    ).rejects.toMatchObject({ kind: "not-found" });
  });

  test("needs at least one specimen to be ticked, and says so where it is ticked", async () => {
    const { id: loanId } = await walk(lending, [await aLendableSpecimen(lending)], "at venue");
    await expect(
      sendHome(lending.lecturer, { loanId, specimenIds: [], seals: [], carrier: "" }),
    ).rejects.toMatchObject({
      kind: "invalid",
      issues: [{ path: "specimenIds", message: "loan.tick-what-goes" }],
    });
    expect(sentence("loan.tick-what-goes")).toBe("Tick what goes home.");
  });

  test("wants a new seal for each crate that was opened and goes, and none for one that stayed closed", async () => {
    const specimens = [await aLendableSpecimen(lending), await aLendableSpecimen(lending)];
    const { id: loanId } = await walk(lending, specimens, "resting");
    const [first, second] = await cratesOfLoan(loanId);
    passHours(49);
    await openCrate(lending.lecturer, {
      crateId: first?.id ?? "",
      counts: (first?.contents ?? []).map(({ specimenId }) => ({ specimenId, present: true, remark: "" })),
    });
    const send = (...seals: { crateId: string; sealNumber: string }[]) =>
      sendHome(lending.lecturer, { loanId, specimenIds: null, seals, carrier: "" });
    const opened = { crateId: first?.id ?? "", sealNumber: "" };
    await expect(send()).rejects.toMatchObject({
      kind: "invalid",
      reason: "crate.seal-missing",
      parameters: { crate: first?.code },
      issues: [{ path: "seals" }],
    });
    await expect(send(opened)).rejects.toMatchObject({
      issues: [{ path: "seals.0.sealNumber", message: "crate.seal-of-opened" }],
    });
    await send({ ...opened, sealNumber: "H 1" });
    expect(
      (await cratesOfLoan(loanId)).map(({ code, state, sealNumber }) => [code, state, sealNumber]),
    ).toEqual([
      [first?.code, "with the carrier", "H 1"],
      [second?.code, "with the carrier", `S ${second?.code}`],
    ]);
  });

  test("ends with a check beside the one before it left", async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id: loanId } = await walk(lending, [specimen], "home");
    const checkInOf = () =>
      checkIn(lending.curator, { loanId, specimenId: specimen.id, verdict: "no change", remark: "" });
    expect((await getLoan(lending.registrar, loanId)).lines).toMatchObject([{ checkIn: null }]);
    await expect(checkInOf()).rejects.toMatchObject({ reason: "check-in.not-counted" });
    const count = () =>
      countReturn(lending.curator, {
        loanId,
        counts: [
          {
            specimenId: specimen.id,
            present: true,
            remark: "",
            missingComponents: [{ name: "screw", missing: 1 }],
          },
        ],
      });
    await expect(count()).rejects.toMatchObject({ reason: "crate.resting" });
    passHours(49);
    expect(await count()).toEqual({
      missing: [],
      incomplete: [{ accessionNumber: specimen.accessionNumber, components: "1 × screw" }],
    });
    await expect(checkInOf()).rejects.toMatchObject({ reason: "check-in.no-check-home" });
    await recordCheck(lending.conservator, aCheckOf(specimen.id, { loanId, occasion: "home" }));
    await checkIn(lending.curator, {
      loanId,
      specimenId: specimen.id,
      verdict: "needs treatment",
      remark: "a screw to find",
    });
    const [line] = (await getLoan(lending.registrar, loanId)).lines;
    expect(line?.checkIn).toEqual({ verdict: "needs treatment", remark: "a screw to find" });
    await expect(checkInOf()).rejects.toMatchObject({ reason: "check-in.not-home" });
    await closeLoan(lending.registrar, { loanId });
    await expect(closeLoan(lending.registrar, { loanId })).rejects.toMatchObject({ reason: "loan.not-now" });
    await expect(
      receiveHome(lending.registrar, {
        loanId,
        crates: [look((await firstCrate(loanId)).id)],
        ...unknownAir,
      }),
    ).rejects.toMatchObject({ reason: "loan.not-now" });
  });
});

describe("a verdict at home", () => {
  const checkedIn = async () => {
    const specimen = await aLendableSpecimen(lending);
    const { id: loanId } = await walk(lending, [specimen], "counted");
    await recordCheck(lending.conservator, aCheckOf(specimen.id, { loanId, occasion: "home" }));
    const line = { where: { loanId_specimenId: { loanId, specimenId: specimen.id } } };
    return { specimen, loanId, line };
  };

  test("is not for who may not read checks", async () => {
    const { specimen, loanId } = await checkedIn();
    await checkIn(lending.curator, { loanId, specimenId: specimen.id, verdict: "damage", remark: "" });
    expect((await getLoan(lending.borrowerRegistrar, loanId)).lines).toMatchObject([
      { checkIn: { verdict: "damage" } },
    ]);
    expect((await getLoan(lending.lecturer, loanId)).lines).toMatchObject([{ checkIn: null }]);
  });

  test("is what puts it back: until then it is carried only to where somebody looks at it", async () => {
    const { specimen, loanId } = await checkedIn();
    const placeOf = (kind: "shelf" | "workshop") =>
      keepPlace(lending.registrar, {
        id: null,
        code: `AR ${kind}`,
        name: kind,
        kind,
        parentId: null,
        venueId: null,
      });
    const [shelf, workshop] = [await placeOf("shelf"), await placeOf("workshop")];
    const carry = (placeId: string) =>
      moveSpecimen(lending.registrar, { specimenId: specimen.id, placeId, reason: "to be looked at" });
    await expect(carry(shelf)).rejects.toMatchObject({ reason: "move.not-checked-in" });
    await expect(carry(workshop)).resolves.toEqual({ place: "workshop" });
    await checkIn(lending.curator, { loanId, specimenId: specimen.id, verdict: "no change", remark: "" });
    await expect(carry(shelf)).resolves.toEqual({ place: "shelf" });
    expect(hasSentence("move.not-checked-in")).toBe(true);
  });

  test("is asked for and kept by the database itself", async () => {
    const { specimen, loanId, line } = await checkedIn();
    const write = (data: { state?: string; verdict?: string; remark?: string }) =>
      inTransaction(programViewer, "test", (transaction) => transaction.loanLine.update({ ...line, data }));
    await expect(write({ state: "checked in" })).rejects.toMatchObject({ reason: "loan.verdict-missing" });
    await checkIn(lending.curator, { loanId, specimenId: specimen.id, verdict: "no change", remark: "" });
    await expect(write({ verdict: "damage" })).rejects.toMatchObject({ reason: "loan.verdict-fixed" });
    await expect(write({ remark: "later" })).rejects.toMatchObject({ reason: "loan.verdict-fixed" });
    for (const code of ["loan.verdict-missing", "loan.verdict-fixed"]) expect(hasSentence(code)).toBe(true);
  });
});

describe("a series of 48 sheets", () => {
  let sheets: Made[];
  let loanId: string;

  beforeAll(async () => {
    const series = await aSeries(48);
    sheets = series.sheets;
    const { inWork } = await import("#tests/support/builders.ts");
    await inWork(({ transaction }) =>
      transaction.specimen.updateMany({
        where: { seriesId: series.id },
        data: {
          lengthMm: 420,
          widthMm: 320,
          heightMm: 6,
          massKg: 0.9,
          human: false,
          scientificName: "Equus caballus",
          replacementCostMinor: 10_000n,
          replacementCostCurrency: "EUR",
          replacementCostBasis: "cost to replace",
          replacementCostOn: new Date("2026-10-01"),
          replacementCostBy: "Collection manager",
        },
      }),
    );
    await inWork(({ transaction }) =>
      transaction.title.createMany({
        data: sheets.map(({ id }) => ({
          specimenId: id,
          status: "owned",
          recordedOn: new Date("2020-01-01"),
        })),
      }),
    );
    loanId = (await walk(lending, sheets, "home")).id;
    passHours(49);
  });

  test("travels in crates of ten, in the order of its numbers", async () => {
    const crates = await cratesOfLoan(loanId);
    expect(crates.map(({ contents }) => contents.length)).toEqual([10, 10, 10, 10, 8]);
    expect(crates[2]?.contents[2]?.accessionNumber).toBe(sheets[22]?.accessionNumber);
  });

  test("comes home with 47: the missing number is named, and the loan does not close", async () => {
    const counted = await countReturn(lending.curator, {
      loanId,
      counts: sheets.map(({ id }, index) => ({
        specimenId: id,
        present: index + 1 !== 23,
        remark: "",
        missingComponents: [],
      })),
    });
    expect(counted.missing).toMatchObject([
      { accessionNumber: sheets[22]?.accessionNumber, series: { number: 23 } },
    ]);
    await expect(closeLoan(lending.registrar, { loanId })).rejects.toMatchObject({
      reason: "loan.still-open",
      parameters: { count: 48 },
    });
    expect((await getLoan(lending.registrar, loanId)).lines[22]).toMatchObject({
      state: "missing",
      series: { number: 23 },
    });
  });

  test("finds it again, and counts it in", async () => {
    const sheet = sheets[22] as Made;
    const found = await countReturn(lending.curator, {
      loanId,
      counts: [{ specimenId: sheet.id, present: true, remark: "behind the foam", missingComponents: [] }],
    });
    expect(found).toEqual({ missing: [], incomplete: [] });
    expect((await getLoan(lending.registrar, loanId)).lines[22]).toMatchObject({ state: "resting at home" });
    await recordCheck(lending.conservator, aCheckOf(sheet.id, { loanId, occasion: "home" }));
    await checkIn(lending.curator, {
      loanId,
      specimenId: sheet.id,
      verdict: "no change",
      remark: "found behind the foam",
    });
  });
});
