/** What is due, from loans as they stand. */
import { expect, test } from "vitest";
import { dueFromLoans, type LoanForDesk, orderItems } from "#lib/desk/due.ts";

const today = "2027-03-10";
const loan = (facts: Partial<LoanForDesk>): LoanForDesk => ({
  id: "a",
  number: "L 2027-001",
  borrower: "Kestrel Bay",
  title: "Winter course",
  state: "at venue",
  lines: ["at venue"],
  startsOn: "2027-01-10",
  endsOn: "2027-06-01",
  daysBefore: 14,
  submittedOn: "2026-11-01",
  signedByLender: true,
  signedByBorrower: true,
  agreementDrawnUp: true,
  homeStagePlanned: false,
  holdsExpireOn: null,
  opensAt: null,
  coverEndsOn: "2027-07-01",
  consentWithdrawn: false,
  homeSince: null,
  ...facts,
});
const codes = (facts: Partial<LoanForDesk>) =>
  dueFromLoans([loan(facts)], today).map((item) => `${item.outcome} ${item.code}`);

test.each<[string, Partial<LoanForDesk>, string[]]>([
  ["nothing while it stands well", {}, []],
  ["an overdue loan is a bar from the return day on", { endsOn: today }, ["bar due.overdue"]],
  ["a return is announced six weeks ahead", { endsOn: "2027-04-20" }, ["attend due.return-not-booked"]],
  ["not when its transport is booked", { endsOn: "2027-04-20", homeStagePlanned: true }, []],
  ["cover that ends before the loan", { coverEndsOn: "2027-05-01" }, ["bar due.cover-ends"]],
  ["a withdrawal while it is away", { consentWithdrawn: true }, ["bar due.consent-withdrawn"]],
  [
    "not when it is in the house",
    { consentWithdrawn: true, state: "requested", lines: ["requested"] },
    ["attend due.decide"],
  ],
  [
    "a hold about to lapse",
    { state: "requested", lines: ["requested"], holdsExpireOn: "2027-03-12" },
    ["attend due.decide", "attend due.hold-expires"],
  ],
  [
    "an agreement to draw up",
    { state: "accepted", lines: ["accepted"], agreementDrawnUp: false },
    ["attend due.draw-up"],
  ],
  [
    "the centre signs first",
    { state: "accepted", lines: ["accepted"], signedByLender: false, signedByBorrower: false },
    ["attend due.lender-signs"],
  ],
  [
    "then the borrower",
    { state: "accepted", lines: ["accepted"], signedByBorrower: false },
    ["attend due.borrower-signs"],
  ],
  [
    "a release that is late is a bar",
    { state: "agreed", lines: ["accepted"], startsOn: "2027-03-09" },
    ["bar due.release"],
  ],
  [
    "crates at rest",
    { lines: ["resting at venue"], opensAt: "2027-03-10T14:20:00.000Z" },
    ["attend due.open"],
  ],
  [
    "specimens home to be checked",
    { state: "home, to be checked", lines: ["resting at home", "checked in"], homeSince: "2027-03-01" },
    ["attend due.check-in"],
  ],
  [
    "a missing one stays at the top",
    { state: "travelling home", lines: ["missing", "travelling home"] },
    ["bar due.missing", "attend due.coming-home"],
  ],
])("%s", (_name, facts, expected) => {
  expect(codes(facts)).toEqual(expected);
});

test("bars come before the rest, earlier days before later ones", () => {
  const order = orderItems([
    ...dueFromLoans(
      [
        loan({ id: "late", endsOn: "2027-04-20" }),
        loan({ id: "over", endsOn: "2027-03-01" }),
        loan({ id: "longer-over", endsOn: "2027-02-01" }),
      ],
      today,
    ),
  ]).map((item) => item.about.id);
  expect(order).toEqual(["longer-over", "over", "late"]);
});

test("the days overdue are counted", () => {
  expect(dueFromLoans([loan({ endsOn: "2027-02-28" })], today)[0]?.parameters.days).toBe(10);
});
