/** Reads of checks: which is the latest, what stands side by side, and who sees what. */
import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, expect, test } from "vitest";
import { writeCheck } from "#lib/condition/commands.ts";
import { checksOf, checksOfLoan, getCheck, latestChecksOf } from "#lib/condition/queries.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, toDate } from "#lib/platform/dates.ts";
import { aLoanOf, aSpecimen, aViewer, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aCheckOf, aFinding } from "#tests/support/lending.ts";
import { startClock } from "#tests/support/loan-walk.ts";

beforeAll(async () => {
  await testDatabase();
  startClock();
});
afterAll(() => setClock());

const curator = aViewer("curator");
const record = (specimenId: string, said = {}) =>
  inWork((work) => writeCheck(work, aCheckOf(specimenId, said), []), curator);

test("the latest check is the one with the latest day, and of one day the one recorded last", async () => {
  const { id } = await aSpecimen();
  const { id: other } = await aSpecimen();
  await record(id, { checkedOn: addDays(today(), -5) });
  const newest = await record(id, { checkedOn: addDays(today(), -1) });
  // As it may stand in a database from before checks had to follow each other.
  await inWork(async ({ transaction }) => {
    const { sequence: _sequence, ...row } = await transaction.conditionCheck.findUniqueOrThrow({
      where: { id: newest.id },
    });
    await transaction.conditionCheck.create({
      data: { ...row, id: randomUUID(), checkedOn: toDate(addDays(today(), -9)) },
    });
  });
  const sameDay = await record(other);
  const later = await record(other);
  const latest = await latestChecksOf(database(), [id, other, randomUUID()]);
  expect(latest.get(id)?.id).toBe(newest.id);
  expect((await checksOf(curator, id)).map(({ checkedOn }) => checkedOn)).toEqual(
    [-1, -5, -9].map((days) => addDays(today(), days)),
  );
  expect(latest.get(other)?.id).toBe(later.id);
  expect(latest.get(other)?.id).not.toBe(sameDay.id);
  expect(latest.size).toBe(2);
  expect(await latestChecksOf(database(), [])).toEqual(new Map());
});

test("a check is read with the one that it was made beside", async () => {
  const specimen = await aSpecimen();
  const loan = await aLoanOf([specimen]);
  const mark = aFinding({ severity: "minor" });
  const { check } = aCheckOf(specimen.id);
  const seen = (severity: "minor" | "moderate" | "severe") => ({
    check: { ...check, findings: [{ ...mark, severity }] },
  });
  const first = await record(specimen.id, seen("minor"));
  const out = await record(specimen.id, { ...seen("minor"), occasion: "out", loanId: loan.id });
  const there = await record(specimen.id, { ...seen("severe"), occasion: "arrival", loanId: loan.id });
  const home = await record(specimen.id, { ...seen("moderate"), occasion: "home", loanId: loan.id });
  expect(home).toMatchObject({ totals: { worse: 1 }, needsReview: true });
  expect(await getCheck(curator, first.id)).toMatchObject({ beside: null, comparison: null });
  expect(await getCheck(curator, there.id)).toMatchObject({
    check: { id: there.id },
    beside: { id: out.id },
    comparison: { totals: { worse: 1 }, complete: true },
  });
  expect(await getCheck(curator, home.id)).toMatchObject({
    beside: { id: out.id },
    comparison: { totals: { worse: 1, better: 0 } },
  });
});

test("a borrower sees the checks of its own loans and no others", async () => {
  const specimen = await aSpecimen();
  const loan = await aLoanOf([specimen]);
  const house = await record(specimen.id);
  const out = await record(specimen.id, { occasion: "out", loanId: loan.id });
  const own = aViewer("borrower registrar", loan.borrowerId);
  expect((await checksOf(own, specimen.id)).map(({ id }) => id)).toEqual([out.id]);
  expect((await checksOf(curator, specimen.id)).map(({ id }) => id)).toEqual([out.id, house.id]);
  await expect(getCheck(own, house.id)).rejects.toMatchObject({ kind: "not-found" });
  const other = aViewer("borrower registrar", (await aLoanOf([await aSpecimen()])).borrowerId);
  expect(await checksOf(other, specimen.id)).toEqual([]);
  await expect(getCheck(other, out.id)).rejects.toMatchObject({ kind: "not-found" });
  expect([...(await checksOfLoan(database(), loan.id)).keys()]).toEqual([specimen.id]);
});

test("a lecturer and an administrator see none", async () => {
  const { id } = await aSpecimen();
  const check = await record(id);
  const lecturer = aViewer("lecturer", (await aLoanOf([await aSpecimen()])).borrowerId);
  for (const viewer of [lecturer, aViewer("administrator")]) {
    await expect(checksOf(viewer, id)).rejects.toMatchObject({ kind: "forbidden" });
    await expect(getCheck(viewer, check.id)).rejects.toMatchObject({ kind: "forbidden" });
  }
});

test("what is no id, or of nothing, is not found", async () => {
  for (const id of [randomUUID(), "1 OR 1=1", ""])
    await expect(getCheck(curator, id)).rejects.toMatchObject({ kind: "not-found" });
  await expect(checksOf(curator, "no id")).rejects.toMatchObject({ kind: "not-found" });
});
