import { expect, test } from "vitest";
import { judgeBooking } from "#lib/loans/rules/booking.ts";
import { aRequestFact, aSpecimenCase } from "#tests/support/loan-cases.ts";

test("free days are named with the days around the loan", () => {
  const [days] = judgeBooking(aSpecimenCase(), aRequestFact());
  expect(days).toMatchObject({
    rule: "B1",
    outcome: "clear",
    parameters: { from: "2027-02-15", to: "2027-07-15" },
  });
});

test("somebody else's booking is a bar that says from when the specimen is free", () => {
  const [days] = judgeBooking(aSpecimenCase({ taken: { freeFrom: "2027-09-01" } }), aRequestFact());
  expect(days).toMatchObject({
    outcome: "bar",
    fact: "free.taken-until",
    parameters: { freeFrom: "2027-09-01" },
  });
});

test("a booking without a known end is a bar with a substitute as the way out", () => {
  const [days] = judgeBooking(aSpecimenCase({ taken: { freeFrom: null } }), aRequestFact());
  expect(days).toMatchObject({ outcome: "bar", fact: "free.taken", wayOut: "way.substitute" });
});

test.each([
  ["2027-02-15", "clear"],
  ["2027-02-16", "attend"],
] as const)("asked on %s, 14 days before the first day count from it: %s", (today, outcome) => {
  expect(judgeBooking(aSpecimenCase(), aRequestFact({ today }))[1]).toMatchObject({ rule: "B2", outcome });
});

test.each([
  [
    "missing on another loan is a bar",
    { loanNumber: "L 2026-002", missing: true, dueOn: "2026-05-01" },
    "bar",
    "free.missing",
  ],
  [
    "overdue on another loan is attend",
    { loanNumber: "L 2026-002", missing: false, dueOn: "2026-11-25" },
    "attend",
    "free.overdue",
  ],
  [
    "away and not yet due is attend",
    { loanNumber: "L 2026-002", missing: false, dueOn: "2026-12-24" },
    "attend",
    "free.away",
  ],
] as const)("%s", (_what, elsewhere, outcome, fact) => {
  expect(judgeBooking(aSpecimenCase({ elsewhere }), aRequestFact())[2]).toMatchObject({
    rule: "B3",
    outcome,
    fact,
  });
});
