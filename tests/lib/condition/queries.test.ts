/** Reads of checks: which is the latest, what stands side by side, and who sees what. */
import { randomUUID } from "node:crypto";
import { afterAll, beforeAll, expect, test } from "vitest";
import { recordCheck } from "#lib/condition/commands.ts";
import { checksOf, checksOfLoan, getCheck, getComparison, latestChecksOf } from "#lib/condition/queries.ts";
import { setClock, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { aLoanOf, aSpecimen, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aCheckOf, aFinding } from "#tests/support/lending.ts";
import { startClock } from "#tests/support/loan-walk.ts";

beforeAll(async () => {
  await testDatabase();
  startClock();
});
afterAll(() => setClock());

const curator = aViewer("curator");
const record = (specimenId: string, said = {}) => recordCheck(curator, aCheckOf(specimenId, said));

test("the latest check is the one with the latest day, and of one day the one recorded last", async () => {
  const { id } = await aSpecimen();
  const { id: other } = await aSpecimen();
  await record(id, { checkedOn: addDays(today(), -5) });
  const newest = await record(id, { checkedOn: addDays(today(), -1) });
  await record(id, { checkedOn: addDays(today(), -9) });
  const sameDay = await record(other);
  const later = await record(other);
  const latest = await latestChecksOf(database(), [id, other, randomUUID()]);
  expect(latest.get(id)?.id).toBe(newest.id);
  expect(latest.get(other)?.id).toBe(later.id);
  expect(latest.get(other)?.id).not.toBe(sameDay.id);
  expect(latest.size).toBe(2);
  expect(await latestChecksOf(database(), [])).toEqual(new Map());
});

test("two checks of one specimen stand side by side, of two specimens they do not", async () => {
  const { id } = await aSpecimen();
  const mark = aFinding({ severity: "minor" });
  const check = aCheckOf(id).check;
  const before = await record(id, { checkedOn: addDays(today(), -5), check: { ...check, findings: [mark] } });
  const after = await record(id, { check: { ...check, findings: [{ ...mark, severity: "severe" }] } });
  const compared = await getComparison(curator, before.id, after.id);
  expect(compared.comparison).toMatchObject({ totals: { worse: 1 }, needsReview: true, complete: true });
  const stranger = await record((await aSpecimen()).id);
  await expect(getComparison(curator, before.id, stranger.id)).rejects.toMatchObject({ kind: "not-found" });
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
