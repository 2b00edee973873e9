import { expect, test } from "vitest";
import { judgeBooking, noticeDays, restDays } from "#lib/suitability/rules/booking.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

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

const abroad = { venue: aVenueFact({ countryCode: "SE" }) };
const ofRule = (rule: string, said: Parameters<typeof aRequestFact>[0], subject = aSpecimenCase()) =>
  judgeBooking(subject, aRequestFact(said)).find((finding) => finding.rule === rule);

test.each([
  ["teaching in the country", {}, 42],
  ["a show in the country", { purpose: "exhibition" }, 182],
  ["teaching abroad", abroad, 274],
] as const)("%s is asked for %s days ahead", (_what, said, days) => {
  expect(noticeDays(aRequestFact(said))).toBe(days);
});

test.each([
  ["on the day itself is clear", "2027-01-18", "clear", "free.notice"],
  ["a day later is attend", "2027-01-19", "attend", "free.notice-short"],
] as const)(
  "six weeks of notice, asked %s, and time that passes afterwards changes nothing",
  (_what, requestedOn, outcome, fact) => {
    expect(ofRule("B4", { requestedOn })).toMatchObject({ outcome, fact });
    expect(ofRule("B4", { requestedOn, today: "2027-02-20" })).toMatchObject({ outcome, fact });
  },
);

test.each([
  ["a year of teaching is clear", { endsOn: "2028-03-01" }, "clear", "free.length"],
  ["a day more is attend", { endsOn: "2028-03-02" }, "attend", "free.long"],
  ["half a year of research is clear", { purpose: "research", endsOn: "2027-09-01" }, "clear", "free.length"],
  ["a day more of research is attend", { purpose: "research", endsOn: "2027-09-02" }, "attend", "free.long"],
  ["more than three years is a bar", { endsOn: "2030-03-02" }, "bar", "free.too-long"],
] as const)("%s", (_what, said, outcome, fact) => {
  expect(ofRule("B5", said)).toMatchObject({ outcome, fact });
});

const lastLoan = { endedOn: "2027-02-15", days: 90 };

test.each([
  ["a small specimen rests 14 days", {}, 14],
  ["one of 20 kg rests 30 days", { massKg: 20 }, 30],
  ["a whole body rests 60 days", { kind: "whole body" }, 60],
  ["what light harms rests as long as it was shown", { light: "sensitive" }, 90],
] as const)("%s", (_what, specimen, days) => {
  expect(restDays(aSpecimenCase({ specimen, lastLoan }))).toBe(days);
});

test.each([
  ["14 days after the last loan is clear", lastLoan, "clear", "free.rested"],
  ["13 days after it is attend", { ...lastLoan, endedOn: "2027-02-16" }, "attend", "free.not-rested"],
  ["without a loan in the year is clear", null, "clear", "free.not-lent-of-late"],
] as const)("a small specimen that is asked for %s", (_what, last, outcome, fact) => {
  expect(ofRule("B6", {}, aSpecimenCase({ lastLoan: last }))).toMatchObject({ outcome, fact });
});
