/** Writing checks: what is kept, of which day, by whom, and that nothing is ever written over. */
import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { checksOf } from "#lib/condition/queries.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, toDate } from "#lib/platform/dates.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { aSpecimen, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aCheckOf, aFinding } from "#tests/support/lending.ts";
import { startClock } from "#tests/support/loan-walk.ts";

beforeAll(async () => {
  await testDatabase();
  startClock();
});
afterAll(() => setClock());

const conservator = aViewer("conservator");
const withFindings = (specimenId: string, ...findings: ReturnType<typeof aFinding>[]) =>
  aCheckOf(specimenId, { check: { ...aCheckOf(specimenId).check, findings } });

describe("a check", () => {
  test("has its grade from its gravest finding, and stands beside the one before", async () => {
    const { id } = await aSpecimen();
    const first = aFinding({ severity: "trace" });
    expect(await recordCheck(conservator, withFindings(id, first))).toMatchObject({
      grade: "A",
      totals: null,
    });
    const worse = { ...first, severity: "moderate" as const, answer: "worse" as const };
    expect(await recordCheck(conservator, withFindings(id, worse, aFinding()))).toMatchObject({
      grade: "C",
      totals: { worse: 1, new: 1, same: 0 },
      needsReview: true,
    });
    expect(await checksOf(conservator, id)).toMatchObject([
      { findings: [{}, {}] },
      { findings: [{ severity: "trace" }] },
    ]);
  });

  test("keeps what was said as it was said", async () => {
    const { id } = await aSpecimen();
    const finding = aFinding({
      picturePoint: { x: 0.25, y: 0.5 },
      extentMm: 12.5,
      extentPercent: 3,
      activity: "active",
      note: "seen in raking light",
    });
    await recordCheck(conservator, {
      ...withFindings(id, finding),
      check: { ...withFindings(id, finding).check, witness: "A. Witness" },
    });
    const [check] = await checksOf(conservator, id);
    expect(check).toMatchObject({ witness: "A. Witness", checkedBy: "K. N.", grounds: "Nothing to see." });
    expect(check?.findings).toEqual([finding]);
  });

  test("is of a specimen that is there", async () =>
    await expect(recordCheck(conservator, aCheckOf(randomUUID()))).rejects.toMatchObject({
      kind: "not-found",
    }));

  test("of the examiner's word alone is counted, and asks for a second look", async () => {
    const { id } = await aSpecimen();
    const mark = aFinding();
    await recordCheck(conservator, withFindings(id, mark));
    const said = { ...mark, answer: "worse" as const, note: "The edge is sharper." };
    expect(await recordCheck(conservator, withFindings(id, said))).toMatchObject({
      totals: { worse: 1, same: 0 },
      needsReview: true,
    });
  });

  test.each([
    ["without grounds", { grounds: " " }, "check.grounds"],
    ["without a name", { checkedBy: "" }, "check.checkedBy"],
    [
      "of a severity that is none",
      { findings: [{ ...aFinding(), severity: "awful" }] },
      "check.findings.0.severity",
    ],
    [
      "off the picture",
      { findings: [{ ...aFinding(), picturePoint: { x: 2, y: 0 } }] },
      "check.findings.0.picturePoint.x",
    ],
  ])("%s is refused at its field, and nothing is written", async (_what, said, path) => {
    const { id } = await aSpecimen();
    const record = { ...aCheckOf(id), check: { ...aCheckOf(id).check, ...said } };
    await expect(recordCheck(conservator, record as never)).rejects.toMatchObject({
      kind: "invalid",
      issues: [{ path }],
    });
    expect(await database().conditionCheck.count({ where: { specimenId: id } })).toBe(0);
  });
});

describe("the day of a check", () => {
  const made = { preparedOn: toDate("2015-06-01"), acquiredOn: toDate("2014-02-01") };
  const on = (id: string, checkedOn: string) => recordCheck(conservator, aCheckOf(id, { checkedOn }));
  const refusedFor = (reason: string, from: string) => ({
    kind: "conflict",
    reason,
    parameters: { from },
    issues: [{ path: "checkedOn" }],
  });

  test("is not to come", async () => {
    const { id } = await aSpecimen();
    await expect(on(id, addDays(today(), 1))).rejects.toMatchObject({
      reason: "check.in-future",
      issues: [{ path: "checkedOn" }],
    });
    await on(id, today());
  });

  test("is not before the specimen was prepared, nor before it was acquired", async () => {
    const { id: prepared } = await aSpecimen(made);
    await expect(on(prepared, "1990-01-01")).rejects.toMatchObject(
      refusedFor("check.before-prepared", "2015-06-01"),
    );
    await expect(on(prepared, "2015-05-31")).rejects.toMatchObject({ reason: "check.before-prepared" });
    await on(prepared, "2015-06-01");
    const { id: acquired } = await aSpecimen({ ...made, acquiredOn: toDate("2016-03-01") });
    await expect(on(acquired, "2016-02-29")).rejects.toMatchObject(
      refusedFor("check.before-acquired", "2016-03-01"),
    );
  });

  test("is that of the check before or a later one", async () => {
    const { id } = await aSpecimen(made);
    await on(id, addDays(today(), -10));
    await expect(on(id, addDays(today(), -11))).rejects.toMatchObject(
      refusedFor("check.before-latest", addDays(today(), -10)),
    );
    await on(id, addDays(today(), -10));
    await on(id, addDays(today(), -3));
    expect((await checksOf(conservator, id)).map(({ checkedOn }) => checkedOn)).toEqual(
      [-3, -10, -10].map((days) => addDays(today(), days)),
    );
  });

  test("holds when two record at the same time", async () => {
    const { id } = await aSpecimen(made);
    await Promise.allSettled([on(id, addDays(today(), -5)), on(id, addDays(today(), -8))]);
    const rows = await database().conditionCheck.findMany({
      where: { specimenId: id },
      orderBy: { sequence: "asc" },
      select: { checkedOn: true },
    });
    expect(rows.map(({ checkedOn }) => checkedOn.getTime())).toEqual(
      rows.map(({ checkedOn }) => checkedOn.getTime()).sort((a, b) => a - b),
    );
  });
});

test("the house records, and no registrar, donor officer, inspector or administrator", async () => {
  const { id } = await aSpecimen();
  for (const role of ["registrar", "donor officer", "inspector", "administrator"] as const)
    await expect(recordCheck(aViewer(role), aCheckOf(id))).rejects.toMatchObject({ kind: "forbidden" });
  for (const role of ["curator", "conservator", "collection manager"] as const)
    await recordCheck(aViewer(role), aCheckOf(id));
});

test("the database never changes a check or a finding", async () => {
  const { id } = await aSpecimen();
  await recordCheck(conservator, withFindings(id, aFinding()));
  const change = (work: Parameters<typeof inTransaction<unknown>>[2]) =>
    inTransaction(programViewer, "test", work);
  await expect(
    change((transaction) =>
      transaction.conditionCheck.updateMany({ where: { specimenId: id }, data: { grade: "A" } }),
    ),
  ).rejects.toThrow();
  await expect(
    change((transaction) => transaction.finding.deleteMany({ where: { check: { specimenId: id } } })),
  ).rejects.toThrow();
});
