import { expect, test } from "vitest";
import { hasSentence } from "#app/_words/sentences.ts";
import { eventsOfLoan, type LoanInFeed } from "#lib/desk/calendar-events.ts";

const loan = (said: Partial<LoanInFeed> = {}): LoanInFeed => ({
  id: "one",
  number: "L 2027-001",
  borrower: "Kestrel Bay",
  title: "Winter course",
  opensOn: null,
  endsOn: "2027-06-01",
  isHome: false,
  homeSince: null,
  stages: [],
  covers: [],
  resting: [],
  recalls: [],
  steps: [],
  ...said,
});
const told = (said: Partial<LoanInFeed>) =>
  eventsOfLoan(loan(said)).map(({ code, when }) => `${"day" in when ? when.day : when.at} ${code}`);
const full: Partial<LoanInFeed> = {
  opensOn: "2027-01-20",
  homeSince: "2027-06-03",
  stages: [
    { id: "out", direction: "out", departsOn: "2027-01-10", arrivesOn: "2027-01-12", carrier: "Van" },
    { id: "home", direction: "home", departsOn: "2027-06-01", arrivesOn: "2027-06-03", carrier: "Van" },
  ],
  covers: [{ id: "c", insurer: "Mutual cover", endsAt: "2027-06-10T00:00:00.000Z" }],
  resting: [{ id: "k", code: "C1", notBefore: "2027-01-13T09:00:00.000Z" }],
  recalls: [{ id: "r", returnBy: "2027-05-01" }],
  steps: [{ step: "agreement", lastDay: "2026-12-11" }],
};

test("each day of a loan is an event of its own", () => {
  expect(told(full)).toEqual([
    "2027-01-10 calendar.departs-out",
    "2027-01-12 calendar.arrives-out",
    "2027-06-01 calendar.departs-home",
    "2027-06-03 calendar.arrives-home",
    "2027-01-20 calendar.opening",
    "2027-06-01 calendar.return-by",
    "2027-06-10T00:00:00.000Z calendar.cover-ends",
    "2027-01-13T09:00:00.000Z calendar.may-open",
    "2027-05-01 calendar.recalled",
    "2027-06-17 calendar.check-in",
    "2026-12-11 calendar.plan-step",
  ]);
});

test("what is home is not expected home", () => {
  expect(told({ isHome: true })).toEqual([]);
});

test("a key stays when the day moves, and no two events share one", () => {
  const keys = (said: Partial<LoanInFeed>) => eventsOfLoan(loan({ ...full, ...said })).map(({ key }) => key);
  expect(keys({ opensOn: "2027-01-25" })).toEqual(keys({}));
  expect(new Set(keys({})).size).toBe(keys({}).length);
});

test("each event has a sentence", () => {
  for (const { code } of eventsOfLoan(loan(full))) expect(hasSentence(code), code).toBe(true);
});
