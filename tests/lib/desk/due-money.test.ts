/** What is due about money. */
import { expect, test } from "vitest";
import { dueFromOldCosts, dueFromQuotations } from "#lib/desk/due-money.ts";

const quotation = { loanId: "l", loan: "L 1", borrower: "B", version: 2, validUntil: "2027-01-10" };

test.each([
  ["2027-01-10", "due.quotation-open"],
  ["2027-01-11", "due.quotation-expired"],
])("on %s a quotation without an answer says %s", (today, code) => {
  expect(dueFromQuotations([quotation], today)).toMatchObject([
    { code, dueOn: "2027-01-10", outcome: "attend", about: { kind: "loan", id: "l" } },
  ]);
});

const cost = { specimenId: "s", specimen: "AN 1", statedOn: "2026-01-15", loan: "L 1" };

test.each([
  ["2027-01-15", 0],
  ["2027-01-16", 1],
])("on %s a cost of 15 January 2026 gives %i items", (today, count) => {
  expect(dueFromOldCosts([cost], today)).toHaveLength(count);
});

test("a specimen on two loans is named once", () => {
  expect(dueFromOldCosts([cost, { ...cost, loan: "L 2" }], "2028-01-01")).toMatchObject([
    { code: "due.cost-old", dueOn: "2027-01-15", parameters: { loan: "L 1", date: "2026-01-15" } },
  ]);
});
