/** Taking a permit back, on a database: from which day it counts no longer, what stays, and who may. */
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { recordPermit, withdrawPermit } from "#lib/provenance/commands.ts";
import { provenanceFactsOf } from "#lib/provenance/queries.ts";
import { aSpecimen, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const curator = aViewer("curator");
const registrar = aViewer("registrar");
const officer = aViewer("donor officer");

beforeAll(async () => {
  await testDatabase();
});
beforeEach(() => {
  setClock(() => new Date("2027-01-15T09:00:00Z"));
});

describe("a permit that is taken back", () => {
  const because = "Revoked by the office, letter of 3 March.";
  const aPermit = async (validUntil: string | null = "2027-12-31") => {
    const { id: specimenId } = await aSpecimen();
    const stated = {
      specimenId,
      kind: "import",
      number: "77/26",
      authority: "Veterinary office",
      validFrom: null,
      validUntil,
    } as const;
    const record = () => recordPermit(registrar, { ...stated, territories: [] });
    return { specimenId, record, permitId: await record() };
  };
  const counting = async (specimenId: string) =>
    (await provenanceFactsOf(database(), [specimenId])).get(specimenId)?.permits;

  test("counts no longer from that day, and stays on record with the reason", async () => {
    const { specimenId, permitId } = await aPermit();
    await withdrawPermit(registrar, { permitId, withdrawnOn: "2027-01-15", because });
    expect(await counting(specimenId)).toEqual([]);
    const row = await database().permit.findUnique({ where: { id: permitId } });
    expect(row).toMatchObject({ withdrawnBecause: because, number: "77/26" });
    const entry = await database().auditEntry.findFirst({
      where: { rowKey: permitId, act: "withdrawPermit" },
    });
    expect(entry).toMatchObject({
      actor: registrar.accountId,
      after: { withdrawn_on: "2027-01-15", withdrawn_because: because },
    });
  });

  test("on a day to come counts through the day before", async () => {
    const { specimenId, permitId } = await aPermit(null);
    await withdrawPermit(curator, { permitId, withdrawnOn: "2027-03-01", because });
    expect(await counting(specimenId)).toMatchObject([{ validUntil: "2027-02-28" }]);
    setClock(() => new Date("2027-03-01T00:00:00Z"));
    expect(await counting(specimenId)).toEqual([]);
  });

  test("counts again once it is recorded again, and the audit keeps both", async () => {
    const { specimenId, permitId, record } = await aPermit();
    await withdrawPermit(registrar, { permitId, withdrawnOn: "2027-01-15", because });
    expect(await record()).toBe(permitId);
    expect(await counting(specimenId)).toMatchObject([{ validUntil: "2027-12-31" }]);
    const entries = await database().auditEntry.findMany({
      where: { rowKey: permitId },
      orderBy: { id: "asc" },
    });
    const withdrawals = entries.map(({ after }) => (after as Record<string, unknown>).withdrawn_because);
    expect(withdrawals).toEqual(["", because, ""]);
  });

  test("is not taken back twice, nor after it ended by itself, nor without a reason", async () => {
    const { permitId } = await aPermit();
    const takeBack = (input: Partial<Parameters<typeof withdrawPermit>[1]>, viewer = registrar) =>
      expect(withdrawPermit(viewer, { permitId, withdrawnOn: "2027-02-01", because, ...input })).rejects;
    await takeBack({ withdrawnOn: "2028-01-01" }).toMatchObject({
      kind: "conflict",
      reason: "permit.ended-before",
      parameters: { validUntil: "2027-12-31" },
    });
    await takeBack({ because: "  too short " }).toMatchObject({
      kind: "invalid",
      issues: [{ path: "because", message: "permit.reason-missing" }],
    });
    await takeBack({ permitId: "01920000-0000-7000-8000-0000000000ff" }).toMatchObject({
      kind: "not-found",
    });
    await withdrawPermit(registrar, { permitId, withdrawnOn: "2027-12-31", because });
    await takeBack({}).toMatchObject({
      kind: "conflict",
      reason: "permit.withdrawn-already",
      parameters: { withdrawnOn: "2027-12-31" },
    });
    await takeBack({}, officer).toMatchObject({ kind: "forbidden" });
  });

  test("by two at the same moment is taken back once", async () => {
    const { permitId } = await aPermit();
    const attempts = ["2027-02-01", "2027-02-02", "2027-02-03", "2027-02-04"].map((withdrawnOn) =>
      withdrawPermit(registrar, { permitId, withdrawnOn, because }),
    );
    const results = await Promise.allSettled(attempts);
    expect(results.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
    for (const result of results)
      if (result.status === "rejected") expect(result.reason).toMatchObject({ kind: "conflict" });
  });
});
