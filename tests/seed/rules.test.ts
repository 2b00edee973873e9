/**
 * Every rule of the book is met in the demo scenario, through the query that the
 * screens use: some loan that is still open, as it stands or with the request
 * stated otherwise, has a finding of it.
 */
import { beforeAll, expect, test } from "vitest";
import { hasSentence } from "#app/_words/sentences.ts";
import { listLoans } from "#lib/loans/queries/list-loans.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { findViewer } from "#lib/people/queries.ts";
import { database } from "#lib/platform/database.ts";
import { ruleBook, ruleEntry } from "#lib/suitability/rules/book.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import { accounts } from "#seed/scenario/accounts.ts";
import { testDatabase } from "#tests/support/database.ts";

let findings: Finding[];

beforeAll(async () => {
  await testDatabase("demo");
  const { id } = await database().account.findUniqueOrThrow({ where: { email: accounts.inspector.email } });
  const viewer = await findViewer(id);
  if (!viewer) throw new Error("The inspector cannot sign in.");
  const { rows } = await listLoans(viewer, {}, { limit: 200 });
  findings = [];
  for (const row of rows) findings.push(...(await getLoan(viewer, row.id)).findings);
}, 300_000);

test.each(ruleBook.map(({ id }) => id))("%s is met", (id) => {
  expect(findings.filter(({ rule }) => rule === id).length).toBeGreaterThan(0);
});

test("no rule answers but as the book says, and every answer has its words", () => {
  for (const { rule, outcome, fact, wayOut } of findings) {
    expect(ruleEntry(rule).outcomes, `${rule} ${fact}`).toContain(outcome);
    expect(hasSentence(fact), fact).toBe(true);
    if (wayOut !== "") expect(hasSentence(wayOut), wayOut).toBe(true);
  }
});

test("some places bar what others let pass", () => {
  const barred = new Set(findings.filter(({ outcome }) => outcome === "bar").map(({ rule }) => rule));
  for (const rule of ["SC1", "DE2", "DE3", "US2", "US3", "CI1"]) expect([...barred]).toContain(rule);
});
