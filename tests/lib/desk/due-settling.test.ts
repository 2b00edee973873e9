/** What is due to settle a loan: money before dispatch, cost statements, customs. */
import { expect, test } from "vitest";
import { hasSentence } from "#app/_words/sentences.ts";
import { clauseParameters } from "#lib/agreements/clauses/parameters.ts";
import {
  dueBeforeDispatch,
  dueFromCustoms,
  dueFromStatements,
  standardDays,
} from "#lib/desk/due-settling.ts";

const about = { loanId: "l", loan: "L 1", borrower: "B" };

test("without an agreement the standards of the clauses count", () => {
  for (const [name, days] of Object.entries(standardDays))
    expect(clauseParameters[name as keyof typeof standardDays].standard).toBe(days);
});

const open = { ...about, version: 2, leavesOn: "2027-03-31", feeDays: 30, putOffUntil: null };
test.each([
  ["2027-03-01", null, "2027-03-01", "attend"],
  ["2027-03-02", null, "2027-03-01", "bar"],
  ["2027-03-02", "2027-04-10", "2027-04-10", "attend"],
])("on %s, put off until %s, money before dispatch is due on %s", (today, putOffUntil, dueOn, outcome) => {
  expect(dueBeforeDispatch([{ ...open, putOffUntil }], today)).toMatchObject([
    { code: "due.payment-before-dispatch", dueOn, outcome, parameters: { version: 2 } },
  ]);
});

test("a cost statement is due in the days of the agreement and never bars", () => {
  expect(
    dueFromStatements([{ ...about, version: 1, statedOn: "2020-01-01", paymentDays: 14 }]),
  ).toMatchObject([{ code: "due.statement-unpaid", dueOn: "2020-01-15", outcome: "attend" }]);
});

test.each([
  ["2027-07-31", "attend"],
  ["2027-08-01", "bar"],
])("on %s a border that is not discharged is %s", (today, outcome) => {
  expect(dueFromCustoms([{ ...about, homeOn: "2027-07-01", dischargeDays: 30 }], today)).toMatchObject([
    { code: "due.customs-discharge", dueOn: "2027-07-31", outcome, about: { kind: "loan", id: "l" } },
  ]);
});

test("each has its sentence", () => {
  for (const code of ["payment-before-dispatch", "statement-unpaid", "customs-discharge"])
    expect(hasSentence(`due.${code}`)).toBe(true);
});
