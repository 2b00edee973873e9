/** The demo scenario as it lies in a database after loading: what somebody who looks around finds. */
import { beforeAll, describe, expect, test } from "vitest";
import { compareChecks } from "#lib/condition/comparison.ts";
import { checksOfLoan } from "#lib/condition/queries.ts";
import { type LoanListRow, listLoans } from "#lib/loans/queries/list-loans.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { loanStates } from "#lib/loans/schema.ts";
import { findViewer } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { loadDemo } from "#seed/demo.ts";
import { accounts } from "#seed/scenario/accounts.ts";
import { centre } from "#seed/scenario/centre.ts";
import { testDatabase } from "#tests/support/database.ts";

let inspector: Viewer;
let loans: LoanListRow[];

beforeAll(async () => {
  await testDatabase("demo");
  const { id } = await database().account.findUniqueOrThrow({ where: { email: accounts.inspector.email } });
  const viewer = await findViewer(id);
  if (!viewer) throw new Error("The inspector cannot sign in.");
  inspector = viewer;
  loans = (await listLoans(inspector, {}, { limit: 200 })).rows;
}, 300_000);

describe("what an inspector finds", () => {
  test("a loan in every state", () => {
    expect([...new Set(loans.map(({ state }) => state))].sort()).toEqual([...loanStates].sort());
  });

  test("one loan that is overdue, and one with a sheet missing", () => {
    expect(loans.filter(({ isOverdue, missing }) => isOverdue && missing === 0)).toHaveLength(1);
    expect(loans.filter(({ missing }) => missing > 0)).toHaveLength(1);
  });

  test("one specimen that came home damaged, with new and worse marks beside the check before", async () => {
    const checkedIn = loans.find(({ state }) => state === "checked in");
    const checks = await checksOfLoan(database(), checkedIn?.id ?? "");
    const worst = [...checks.values()].map((all) => {
      const out = all.find(({ occasion }) => occasion === "out");
      const home = all.find(({ occasion }) => occasion === "home");
      return out && home ? compareChecks(out, home).totals : null;
    });
    expect(worst.some((totals) => totals !== null && totals.new >= 2 && totals.worse >= 1)).toBe(true);
  });

  test("requests with bars and one without", async () => {
    const requested = loans.filter(({ state }) => state === "requested");
    const bars = await Promise.all(
      requested.map(async ({ id }) => {
        const { findings } = await getLoan(inspector, id);
        return findings.filter(({ outcome }) => outcome === "bar").length;
      }),
    );
    expect(bars.some((count) => count > 0)).toBe(true);
    expect(bars.some((count) => count === 0)).toBe(true);
  });

  test("audit entries by people of the scenario", async () => {
    const people = new Set((await database().account.findMany()).map(({ id }) => id));
    const actors = await database().auditEntry.groupBy({ by: ["actor"], _count: true });
    const ofPeople = actors.filter(({ actor }) => people.has(actor));
    expect(ofPeople.length).toBeGreaterThanOrEqual(10);
    const all = actors.reduce((sum, { _count }) => sum + _count, 0);
    const theirs = ofPeople.reduce((sum, { _count }) => sum + _count, 0);
    expect(theirs / all).toBeGreaterThan(0.95);
  });

  test("that every specimen came to the centre on the day of its acquisition, what is only a deposit as well", async () => {
    const specimens = await database().specimen.findMany({
      select: {
        accessionNumber: true,
        acquiredOn: true,
        custody: { where: { sequence: 1 }, select: { fromParty: true, toParty: true, handedOverAt: true } },
        titleOf: { select: { status: true } },
      },
    });
    expect(specimens.some(({ titleOf }) => titleOf?.status === "deposit")).toBe(true);
    for (const { accessionNumber, acquiredOn, custody } of specimens)
      expect([accessionNumber, custody]).toEqual([
        accessionNumber,
        [{ fromParty: null, toParty: centre.name, handedOverAt: acquiredOn }],
      ]);
  });

  test("more than 60 specimens besides the sheets, each with three and more checks and a place", async () => {
    const specimens = await database().specimen.findMany({
      where: { seriesId: null },
      select: { _count: { select: { checks: true, moves: true, shows: true } }, titleOf: true },
    });
    expect(specimens.length).toBeGreaterThan(60);
    expect(specimens.every(({ _count }) => _count.checks >= 3)).toBe(true);
    expect(specimens.every(({ _count }) => _count.moves >= 1 && _count.shows >= 5)).toBe(true);
    expect(specimens.every(({ titleOf }) => titleOf !== null)).toBe(true);
  });
});

describe("loading again", () => {
  test("leaves a database that holds specimens as it is", async () => {
    const before = await database().auditEntry.count();
    const { loaded } = await loadDemo();
    expect(loaded).toBe(false);
    expect(await database().auditEntry.count()).toBe(before);
  });
});
