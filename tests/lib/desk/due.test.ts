/** What is due, from loans as they stand. */
import { describe, expect, test } from "vitest";
import { sentence } from "#app/_words/sentences.ts";
import { dueFromClosedLoans, dueFromLoans, type LoanForDesk, orderItems } from "#lib/desk/due.ts";
import { coverWarningOf } from "#lib/loans/cover-warning.ts";

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
  leavesOn: null,
  arrivesOn: null,
  homeOn: null,
  holdsExpireOn: null,
  opensAt: null,
  coverEndsOn: "2027-07-01",
  consentWithdrawn: false,
  homeSince: null,
  harm: [],
  ...facts,
});
const codes = (facts: Partial<LoanForDesk>) =>
  dueFromLoans([loan(facts)], today).map((item) => `${item.outcome} ${item.code}`);

test.each<[string, Partial<LoanForDesk>, string[]]>([
  ["nothing while it stands well", {}, []],
  ["an overdue loan is a bar from the return day on", { endsOn: today }, ["bar due.overdue"]],
  ["a return is announced six weeks ahead", { endsOn: "2027-04-20" }, ["attend due.return-not-booked"]],
  ["not when its transport is booked", { endsOn: "2027-04-20", homeOn: "2027-04-22" }, []],
  ["cover that ends before the loan", { coverEndsOn: "2027-05-01" }, ["bar due.cover-ends"]],
  [
    "cover that ends in 60 days and reaches",
    { coverEndsOn: "2027-05-09", endsOn: "2027-05-01" },
    ["attend due.cover-expires"],
  ],
  [
    "cover that ends in a week and reaches",
    { coverEndsOn: "2027-03-17", endsOn: "2027-03-16", homeOn: "2027-03-16" },
    ["bar due.cover-expires"],
  ],
  [
    "cover that ends today and reaches to today",
    {
      coverEndsOn: today,
      endsOn: "2027-03-09",
      homeOn: "2027-03-09",
      lines: ["travelling home"],
      state: "travelling home",
    },
    ["bar due.cover-expires-today", "attend due.coming-home"],
  ],
  [
    "what is asked back",
    { recalled: { count: 1, returnBy: "2027-03-20", stopUse: false } },
    ["attend due.recalled"],
  ],
  [
    "what is asked back and late",
    { recalled: { count: 1, returnBy: "2027-03-09", stopUse: false } },
    ["bar due.recalled"],
  ],
  [
    "use that has to stop",
    { recalled: { count: 2, returnBy: "2027-03-20", stopUse: true } },
    ["bar due.stop-use"],
  ],
  [
    "a longer loan that waits for its answer",
    { extensionAskedUntil: "2027-09-01" },
    ["attend due.answer-extension"],
  ],
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
    "cover that ends before it is home by the planned way",
    { coverEndsOn: "2027-06-03", homeOn: "2027-06-03" },
    ["bar due.cover-ends"],
  ],
  ["cover of the whole planned way home", { coverEndsOn: "2027-06-04", homeOn: "2027-06-03" }, []],
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

describe("days of the road", () => {
  const dueOn = (facts: Partial<LoanForDesk>) => dueFromLoans([loan(facts)], today)[0]?.dueOn;
  const travelling = { state: "travelling out", lines: ["travelling out"] } as const;
  test("are those of the stage where one is planned", () => {
    expect(dueOn(travelling)).toBe("2027-01-10");
    expect(dueOn({ ...travelling, arrivesOn: "2027-03-12" })).toBe("2027-03-12");
    const home = { state: "travelling home", lines: ["travelling home"] } as const;
    expect(dueOn(home)).toBe("2027-06-01");
    expect(dueOn({ ...home, homeOn: "2027-03-11" })).toBe("2027-03-11");
  });
  test("decide when a release and an agreement are due", () => {
    const agreed = { state: "agreed", lines: ["accepted"], startsOn: "2027-03-20" } as const;
    expect(codes(agreed)).toEqual(["attend due.release"]);
    expect(codes({ ...agreed, leavesOn: "2027-03-09" })).toEqual(["bar due.release"]);
    const accepted = { state: "accepted", lines: ["accepted"], startsOn: "2027-06-20" } as const;
    expect(dueOn(accepted)).toBe("2027-05-07");
    expect(dueOn({ ...accepted, leavesOn: "2027-06-01" })).toBe("2027-05-02");
  });
});

describe("what was seen on the way", () => {
  const crate = {
    kind: "crate",
    crate: "L 1/1",
    sealBroken: true,
    damage: "corner dented",
    at: "2027-03-09T08:00:00.000Z",
    unchecked: 2,
  } as const;
  const changed = { kind: "away", specimen: "AN 1", checkedOn: "2027-03-08", new: 1, worse: 2 } as const;
  test("is an item for each crate and each specimen, due since it was seen", () => {
    const harm = [crate, { ...changed, specimenId: "s1" }, { ...changed, specimenId: "s2" }];
    const items = dueFromLoans([loan({ harm })], today);
    expect(items.map(({ code, dueOn }) => [code, dueOn])).toEqual([
      ["due.changed-away", "2027-03-08"],
      ["due.changed-away", "2027-03-08"],
      ["due.seal-broken-and-damaged", "2027-03-09"],
    ]);
    expect(new Set(items.map(({ key }) => key)).size).toBe(3);
    for (const { code, parameters } of items) expect(sentence(code, parameters)).not.toMatch(/[{}]|–/);
  });
  test("outlasts the close of a loan where the verdict was grave", () => {
    const harm = [
      { kind: "verdict", specimenId: "s1", specimen: "AN 1", verdict: "damage", checkedOn: "2027-02-01" },
    ] as const;
    expect(dueFromClosedLoans([loan({ harm })])).toMatchObject([
      {
        outcome: "attend",
        dueOn: "2027-02-01",
        code: "due.judged-gravely",
        about: { kind: "loan", id: "a" },
      },
    ]);
  });
});

test.each([
  [61, null],
  [60, 60],
  [31, 60],
  [30, 30],
  [8, 30],
  [7, 7],
  [0, 7],
  [-3, 7],
])("cover that ends in %i days has come to warning %s", (days, warning) => {
  expect(coverWarningOf(days)).toBe(warning);
});
