/** Loans of one institution: for the house those of the one that is named, for a borrower the own and no others. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { listLoans } from "#lib/loans/queries/list-loans.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import { aBorrower, aVenue, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const registrar = aViewer("registrar");
let ours: string;
let theirs: string;

beforeAll(async () => {
  await testDatabase("vocabularies");
  setClock(() => new Date("2027-01-15T09:00:00Z"));
  ours = await aBorrower({ name: "School by the Ferry" });
  theirs = await aBorrower({ name: "School on the Hill" });
  for (const institutionId of [ours, theirs]) await aVenue({ institutionId });
  for (const borrowerId of [ours, theirs, ours, theirs, ours])
    await openLoan(registrar, { borrowerId, request: null, specimenIds: [] });
});
afterAll(() => setClock());

const borrowersOf = async (viewer: Viewer, borrowerId: string | null) =>
  (await listLoans(viewer, { borrowerId })).rows.map(({ borrower }) => borrower);

test("the house reads the loans of the institution that is named, the newest first, by pages", async () => {
  expect(await borrowersOf(registrar, ours)).toEqual(Array(3).fill("School by the Ferry"));
  expect(await borrowersOf(registrar, theirs)).toEqual(Array(2).fill("School on the Hill"));
  const first = await listLoans(registrar, { borrowerId: ours }, { limit: 2 });
  const last = await listLoans(registrar, { borrowerId: ours }, { limit: 2, after: first.next });
  const numbers = [...first.rows, ...last.rows].map(({ number }) => number);
  expect(numbers).toEqual([...new Set(numbers)].sort().reverse());
  expect([first.rows.length, last.rows.length, last.next]).toEqual([2, 1, null]);
});

test("a borrower reads the own loans, and none under another institution's name", async () => {
  for (const role of ["lecturer", "borrower registrar"] as const) {
    const borrower = aViewer(role, ours);
    expect(await borrowersOf(borrower, null)).toEqual(Array(3).fill("School by the Ferry"));
    expect(await borrowersOf(borrower, ours)).toHaveLength(3);
    expect(await borrowersOf(borrower, theirs)).toEqual([]);
  }
});

test("what is no id is refused", async () => {
  await expect(listLoans(registrar, { borrowerId: "' OR 1=1 --" })).rejects.toMatchObject({
    kind: "invalid",
    issues: [{ path: "borrowerId" }],
  });
});
