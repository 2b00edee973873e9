/** Packing and release: what is complete, and what holds a specimen back. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { planCrates, sealCrate } from "#lib/loans/commands/crates.ts";
import { dispatchLoan } from "#lib/loans/commands/dispatch-loan.ts";
import { removeSpecimen } from "#lib/loans/commands/note-specimen.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import { planStage } from "#lib/loans/commands/stages.ts";
import { submitRequest, withdrawRequest } from "#lib/loans/commands/submit-request.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { withdrawConsent } from "#lib/provenance/commands.ts";
import { custodyOf } from "#lib/whereabouts/queries.ts";
import { testDatabase } from "#tests/support/database.ts";
import {
  aCheckOf,
  aLendableSpecimen,
  aLending,
  aRequestDraft,
  type Lending,
} from "#tests/support/lending.ts";
import { accept, agree, cover, passHours, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

const _unknownAir = { outsideC: null, roomC: null, roomHumidity: null };
const cratesOfLoan = async (loanId: string) => (await getLoan(lending.registrar, loanId)).crates;
const firstCrate = async (loanId: string) => {
  const [crate] = await cratesOfLoan(loanId);
  if (!crate) throw new Error("the loan has no crate");
  return crate;
};
const allOf = (crate: Awaited<ReturnType<typeof firstCrate>>) =>
  crate.contents.map(({ specimenId }) => ({ specimenId, componentsComplete: true }));
const _look = (crateId: string, said = {}) => ({
  crateId,
  arrived: true,
  sealIntact: true,
  outsideDamage: "",
  ...said,
});

describe("packing", () => {
  test("plans a crate for each specimen from its size, and keeps the plan", async () => {
    const { id: loanId, number } = await walk(lending, [await aLendableSpecimen(lending)], "agreed");
    const planned = await planCrates(lending.registrar, {
      loanId,
      carrierClass: "specialist-door-to-door",
      own: [],
    });
    expect(planned).toMatchObject([{ code: `${number}/1`, specimens: 1 }]);
    const crate = await firstCrate(loanId);
    expect(crate.state).toBe("planned");
    expect(crate.grossMassKg).toBeGreaterThan(1.2);
    expect(crate.plan).toMatchObject({ question: { massKg: 1.2 }, plan: { kind: crate.kind } });
    const anew = await planCrates(lending.registrar, {
      loanId,
      carrierClass: "commercial-freight",
      own: [{ specimenId: crate.contents[0]?.specimenId ?? "", fragilityClass: null, peakG: 25 }],
    });
    expect(anew).toHaveLength(1);
    expect((await firstCrate(loanId)).plan).toMatchObject({ plan: { peakG: 25 } });
  });

  test("is refused for what nobody has measured", async () => {
    const specimen = await aLendableSpecimen(lending, { massKg: null });
    const { id: loanId } = await walk(lending, [specimen], "agreed");
    await expect(
      planCrates(lending.registrar, { loanId, carrierClass: "specialist-door-to-door", own: [] }),
    ).rejects.toMatchObject({
      reason: "crate.size-not-known",
      parameters: { specimens: specimen.accessionNumber },
    });
  });

  test("seals a crate only when it is complete, each specimen with its components", async () => {
    const { id: loanId } = await walk(lending, [await aLendableSpecimen(lending)], "agreed");
    await planCrates(lending.registrar, { loanId, carrierClass: "specialist-door-to-door", own: [] });
    const crate = await firstCrate(loanId);
    const seal = (packed: { specimenId: string; componentsComplete: boolean }[]) =>
      sealCrate(lending.conservator, { crateId: crate.id, sealNumber: "S 1", packed });
    await expect(seal([])).rejects.toMatchObject({ reason: "crate.incomplete" });
    await expect(
      seal(allOf(crate).map((one) => ({ ...one, componentsComplete: false }))),
    ).rejects.toMatchObject({ reason: "crate.component-missing" });
    await expect(
      seal([...allOf(crate), { specimenId: loanId, componentsComplete: true }]),
    ).rejects.toMatchObject({ reason: "crate.holds-others" });
    await seal(allOf(crate));
    expect(await firstCrate(loanId)).toMatchObject({ state: "sealed", sealNumber: "S 1" });
    expect((await getLoan(lending.registrar, loanId)).lines).toMatchObject([{ state: "packed" }]);
    await expect(
      planCrates(lending.registrar, { loanId, carrierClass: "specialist-door-to-door", own: [] }),
    ).rejects.toMatchObject({ reason: "crate.nothing-to-pack" });
  });

  test("is undone when a specimen is taken off: its crate is open again", async () => {
    const specimens = [await aLendableSpecimen(lending), await aLendableSpecimen(lending)];
    const { id: loanId } = await walk(lending, specimens, "packed");
    await removeSpecimen(lending.registrar, { loanId, specimenId: specimens[0]?.id ?? "" });
    const loan = await getLoan(lending.registrar, loanId);
    expect(loan.lines.map(({ state }) => state).sort()).toEqual(["packed", "withdrawn"]);
    expect(loan.crates.map(({ state, contents }) => [state, contents.length])).toEqual([
      ["packed", 0],
      ["sealed", 1],
    ]);
    await withdrawRequest(lending.registrar, { loanId });
    expect(await getLoan(lending.registrar, loanId)).toMatchObject({ state: "withdrawn" });
  });
});

describe("release", () => {
  const ready = async (
    said: { cover?: { startsAt?: string; endsAt?: string } | null; check?: boolean } = {},
  ) => {
    const specimen = await aLendableSpecimen(lending);
    const { id: loanId } = await openLoan(lending.lecturer, {
      borrowerId: null,
      request: aRequestDraft(lending, { startsOn: addDays(today(), 20), endsOn: addDays(today(), 60) }),
      specimenIds: [specimen.id],
    });
    await submitRequest(lending.lecturer, { loanId });
    await accept(lending, loanId);
    if (said.cover !== null) await cover(lending, loanId, said.cover ?? {});
    if (said.check !== false)
      await recordCheck(lending.conservator, aCheckOf(specimen.id, { loanId, occasion: "out" }));
    await planCrates(lending.registrar, { loanId, carrierClass: "specialist-door-to-door", own: [] });
    await planStage(lending.registrar, {
      loanId,
      direction: "out",
      carrier: "Gentle Freight",
      carrierEmail: "",
      through: [],
      vehicle: "",
      departsOn: today(),
      arrivesOn: addDays(today(), 1),
    });
    return { specimen, loanId };
  };
  const seal = async (loanId: string) => {
    const crate = await firstCrate(loanId);
    await sealCrate(lending.conservator, { crateId: crate.id, sealNumber: "S 1", packed: allOf(crate) });
  };
  const dispatch = (loanId: string) => dispatchLoan(lending.registrar, { loanId });

  test("waits for signatures, cover, check and seal, one after the other", async () => {
    const { loanId, specimen } = await ready({ cover: null, check: false });
    await expect(dispatch(loanId)).rejects.toMatchObject({
      reason: "loan.gate-fails",
      parameters: { gate: "signed", fact: "gate.no-agreement" },
    });
    await agree(lending, loanId);
    await expect(dispatch(loanId)).rejects.toMatchObject({
      parameters: { gate: "cover", fact: "gate.cover-no-cover" },
    });
    await cover(lending, loanId);
    await expect(dispatch(loanId)).rejects.toMatchObject({
      parameters: { gate: "condition", fact: "gate.no-check-out" },
    });
    await recordCheck(lending.conservator, aCheckOf(specimen.id, { loanId, occasion: "out" }));
    await expect(dispatch(loanId)).rejects.toMatchObject({
      parameters: { gate: "crates", fact: "gate.not-packed" },
    });
    await seal(loanId);
    await dispatch(loanId);
    expect(await getLoan(lending.registrar, loanId)).toMatchObject({
      state: "travelling out",
      latestRun: { occasion: "dispatch" },
    });
    expect(await custodyOf(lending.registrar, specimen.id)).toMatchObject({ holder: "Gentle Freight" });
  });

  test("waits for cover of the last hour, and says from when it is missing", async () => {
    const until = addDays(today(), 73);
    const { loanId } = await ready({ cover: { endsAt: `${until}T23:00:00Z` } });
    await agree(lending, loanId);
    await seal(loanId);
    await expect(dispatch(loanId)).rejects.toMatchObject({
      parameters: { gate: "cover", from: `${until}T23:00:00.000Z`, to: `${addDays(until, 1)}T00:00:00.000Z` },
    });
    await cover(lending, loanId, {
      startsAt: `${until}T23:00:00Z`,
      endsAt: `${addDays(until, 9)}T00:00:00Z`,
    });
    await dispatch(loanId);
  });

  test("is held back by a consent that was withdrawn meanwhile", async () => {
    const { loanId, specimen } = await ready();
    await agree(lending, loanId);
    await seal(loanId);
    const { donorCode } = await database().specimenDonor.findFirstOrThrow({
      where: { specimenId: specimen.id },
    });
    await withdrawConsent(lending.donorOfficer, { donorCode, receivedOn: today(), effectiveOn: today() });
    await expect(dispatch(loanId)).rejects.toMatchObject({
      parameters: { gate: "nothing barred", fact: "gate.finding", specimen: specimen.accessionNumber },
    });
  });

  test("is held back by a check that has grown old", async () => {
    const { loanId, specimen } = await ready();
    await agree(lending, loanId);
    await seal(loanId);
    passHours(24 * 31);
    await expect(dispatch(loanId)).rejects.toMatchObject({
      parameters: { gate: "condition", fact: "gate.check-too-old", specimen: specimen.accessionNumber },
    });
  });

  test("is the registrar's alone", async () => {
    const { loanId } = await ready();
    for (const viewer of [lending.curator, lending.conservator, lending.lecturer, lending.borrowerRegistrar])
      await expect(dispatchLoan(viewer, { loanId })).rejects.toMatchObject({ kind: "forbidden" });
  });
});
