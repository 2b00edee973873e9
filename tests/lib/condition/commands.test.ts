/** Recording checks: who may, on what occasion, and that nothing is ever written over. */
import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { recordCheck } from "#lib/condition/commands.ts";
import { checksOf } from "#lib/condition/queries.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { aLoanOf, aSpecimen, aViewer } from "#tests/support/builders.ts";
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

  test("names the loan it belongs to, and the specimen is on it", async () => {
    const specimen = await aSpecimen();
    const stranger = await aSpecimen();
    const loan = await aLoanOf([specimen]);
    await expect(recordCheck(conservator, aCheckOf(specimen.id, { occasion: "out" }))).rejects.toMatchObject({
      issues: [{ path: "loanId", message: "check.needs-loan" }],
    });
    await expect(
      recordCheck(conservator, aCheckOf(stranger.id, { occasion: "out", loanId: loan.id })),
    ).rejects.toMatchObject({ reason: "check.not-on-loan" });
    await recordCheck(conservator, aCheckOf(specimen.id, { occasion: "out", loanId: loan.id }));
  });

  test("is not of a day to come, nor of a specimen that is not there", async () => {
    const { id } = await aSpecimen();
    await expect(
      recordCheck(conservator, aCheckOf(id, { checkedOn: addDays(today(), 1) })),
    ).rejects.toMatchObject({ reason: "check.in-future" });
    await expect(recordCheck(conservator, aCheckOf(randomUUID()))).rejects.toMatchObject({
      kind: "not-found",
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

describe("who records", () => {
  test("the house, and no registrar, lecturer or inspector", async () => {
    const { id } = await aSpecimen();
    for (const role of ["registrar", "donor officer", "inspector", "administrator"] as const)
      await expect(recordCheck(aViewer(role), aCheckOf(id))).rejects.toMatchObject({ kind: "forbidden" });
    for (const role of ["curator", "conservator", "collection manager"] as const)
      await recordCheck(aViewer(role), aCheckOf(id));
  });

  test("the borrower's registrar, of its own loan, at the venue", async () => {
    const specimen = await aSpecimen();
    const loan = await aLoanOf([specimen]);
    const own = aViewer("borrower registrar", loan.borrowerId);
    const at = (occasion: "arrival" | "incident" | "out" | "periodic", loanId: string | null = loan.id) =>
      aCheckOf(specimen.id, { occasion, loanId });
    await recordCheck(own, at("arrival"));
    await recordCheck(own, at("incident"));
    await expect(recordCheck(own, at("out"))).rejects.toMatchObject({ reason: "check.not-on-this-occasion" });
    await expect(recordCheck(own, at("periodic", null))).rejects.toMatchObject({
      reason: "check.not-on-this-occasion",
    });
    const other = aViewer("borrower registrar", (await aLoanOf([await aSpecimen()])).borrowerId);
    await expect(recordCheck(other, at("arrival"))).rejects.toMatchObject({ kind: "not-found" });
  });
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
