/** A carrier without an account: what its link shows, what it confirms, and when it opens no more. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { issueCarrierLink, planStage } from "#lib/loans/commands/stages.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { confirmByCarrier } from "#lib/shipments/commands.ts";
import { carrierView, cratesOf, stagesOf } from "#lib/shipments/queries.ts";
import type { Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aLendableSpecimen, aLending, type Lending } from "#tests/support/lending.ts";
import { passHours, startClock, walk } from "#tests/support/loan-walk.ts";

let lending: Lending;
beforeAll(async () => {
  await testDatabase("vocabularies");
  startClock();
  lending = await aLending();
});
afterAll(() => setClock());

async function onTheRoad(upTo: "packed" | "out" = "out") {
  const specimen: Made = await aLendableSpecimen(lending);
  const loan = await walk(lending, [specimen], upTo);
  const [stage] = await stagesOf(database(), loan.id);
  const { token } = await issueCarrierLink(lending.registrar, { stageId: stage?.id ?? "" });
  const [crate] = await cratesOf(database(), loan.id);
  return { specimen, loan, token, stageId: stage?.id ?? "", crateId: crate?.id ?? "" };
}
const word = (crateId: string, said = {}) => ({
  word: "arrived" as const,
  driver: "D. River",
  crates: [{ crateId, sealIntact: true, outsideDamage: "" }],
  ...said,
});

describe("a link", () => {
  test("shows crates and addresses, and nothing of titles, donors or costs", async () => {
    const { token, loan, specimen } = await onTheRoad();
    const view = await carrierView(token);
    expect(view).toMatchObject({
      loanNumber: loan.number,
      direction: "out",
      carrier: "Gentle Freight",
      crates: [{ state: "with the carrier" }],
    });
    const text = JSON.stringify(view);
    for (const kept of ["Heart, opened", specimen.id, "replacement", "EUR", "D-"])
      expect(text).not.toContain(kept);
  });

  test("is kept as a hash only, and the audit does not hold it", async () => {
    const { token, stageId } = await onTheRoad("packed");
    const stage = await database().stage.findUniqueOrThrow({ where: { id: stageId } });
    expect(stage.linkHash).toMatch(/^[0-9a-f]{64}$/);
    expect(stage.linkHash).not.toContain(token);
    const entries = await database().auditEntry.findMany({ where: { tableName: "stage" } });
    expect(JSON.stringify(entries.map(({ before, after }) => [before, after]))).not.toContain(stage.linkHash);
  });

  test("opens no more after a new one, nor a week after the planned arrival; an unknown one never did", async () => {
    const { token, stageId } = await onTheRoad("packed");
    const { token: second } = await issueCarrierLink(lending.registrar, { stageId });
    expect(await carrierView(token)).toBeNull();
    expect(await carrierView(second)).not.toBeNull();
    passHours(24 * 10);
    expect(await carrierView(second)).toBeNull();
    expect(await carrierView("0".repeat(43))).toBeNull();
    await expect(issueCarrierLink(lending.registrar, { stageId })).rejects.toMatchObject({
      reason: "stage.past",
    });
  });

  test("is the registrar's to give, and takes no receipt that would keep it", async () => {
    const { stageId } = await onTheRoad("packed");
    for (const viewer of [lending.curator, lending.borrowerRegistrar, lending.lecturer])
      await expect(issueCarrierLink(viewer, { stageId })).rejects.toMatchObject({ kind: "forbidden" });
    await issueCarrierLink(lending.registrar, { stageId }, { idempotencyKey: "again" });
    expect(await database().commandReceipt.count({ where: { act: "issueCarrierLink" } })).toBe(0);
  });
});

describe("a carrier's word", () => {
  test("stands beside the house's, under the name of the link, and moves no specimen", async () => {
    const { token, loan, crateId } = await onTheRoad();
    await confirmByCarrier(token, word(crateId, { word: "handed over" }));
    await confirmByCarrier(token, {
      ...word(crateId),
      crates: [{ crateId, sealIntact: false, outsideDamage: "wet on one side" }],
    });
    const file = await getLoan(lending.registrar, loan.id);
    expect(file).toMatchObject({
      state: "travelling out",
      crates: [{ state: "resting closed", sealHolds: false }],
    });
    expect(file.crates[0]?.events.at(-1)).toMatchObject({
      kind: "arrived",
      by: "D. River, Gentle Freight",
      outsideDamage: "wet on one side",
    });
    const entry = await database().auditEntry.findFirst({
      where: { act: "confirmByCarrier" },
      orderBy: { id: "desc" },
    });
    expect(entry).toMatchObject({ actor: "carrier link", tableName: "crate_event" });
  });

  test("counts only for crates that are with it, and only on a link that opens", async () => {
    const { token, crateId } = await onTheRoad("packed");
    await expect(confirmByCarrier(token, word(crateId))).rejects.toMatchObject({
      reason: "carrier.not-under-way",
    });
    await expect(confirmByCarrier("0".repeat(43), word(crateId))).rejects.toMatchObject({
      kind: "not-found",
    });
    const other = await onTheRoad();
    await expect(confirmByCarrier(other.token, word(crateId))).rejects.toMatchObject({ kind: "not-found" });
    await expect(confirmByCarrier(other.token, { ...word(other.crateId), driver: "" })).rejects.toMatchObject(
      { issues: [{ path: "driver" }] },
    );
  });
});

describe("a stage", () => {
  const plan = (loanId: string, said = {}) =>
    planStage(lending.registrar, {
      loanId,
      direction: "home",
      carrier: "Gentle Freight",
      carrierEmail: "",
      through: [],
      vehicle: "",
      departsOn: addDays(today(), 60),
      arrivesOn: addDays(today(), 62),
      ...said,
    });

  test("is planned anew under the same id, and not for days that are past", async () => {
    const { loan } = await onTheRoad();
    const first = await plan(loan.id);
    expect(await plan(loan.id, { carrier: "Other Freight" })).toBe(first);
    const stages = await stagesOf(database(), loan.id);
    expect(stages.map(({ direction, carrier }) => [direction, carrier])).toEqual([
      ["out", "Gentle Freight"],
      ["home", "Other Freight"],
    ]);
    await expect(plan(loan.id, { departsOn: "2026-01-01", arrivesOn: "2026-01-02" })).rejects.toMatchObject({
      reason: "stage.past",
    });
    await expect(plan(loan.id, { arrivesOn: addDays(today(), 59) })).rejects.toMatchObject({
      issues: [{ path: "arrivesOn", message: "stage.reversed" }],
    });
    await expect(plan(loan.id, { direction: "out" })).rejects.toMatchObject({ reason: "loan.not-now" });
  });
});
