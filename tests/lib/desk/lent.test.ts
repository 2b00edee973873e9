/** Where a specimen stands among its loans, and what a withdrawal asks of each. */
import { describe, expect, test } from "vitest";
import {
  effectOfWithdrawal,
  isAway,
  type LentLine,
  orderLent,
  standingOfLent,
  withdrawalEffects,
} from "#lib/desk/lent.ts";
import { type LineState, lineStates } from "#lib/loans/schema.ts";
import { awayStates, lineMoves } from "#lib/loans/transitions.ts";

const today = "2027-03-10";
const line = (facts: Partial<LentLine>): LentLine => ({
  specimenId: "a",
  accessionNumber: "AN 1",
  title: "Hand",
  loanId: "l",
  loanNumber: "L 2027-001",
  borrower: "Kestrel Bay",
  venue: "Room 2",
  state: "at venue",
  startsOn: "2027-01-10",
  endsOn: "2027-06-01",
  homeStagePlanned: false,
  ...facts,
});

test.each<[string, Partial<LentLine>, string, string, number]>([
  ["far from its end it is only told who has it", {}, "way home not planned", "clear", 0],
  [
    "six weeks before its end the way home is missed",
    { endsOn: "2027-04-21" },
    "way home not planned",
    "attend",
    0,
  ],
  ["a day more is not near yet", { endsOn: "2027-04-22" }, "way home not planned", "clear", 0],
  [
    "a planned way home is said",
    { endsOn: "2027-03-20", homeStagePlanned: true },
    "way home planned",
    "clear",
    0,
  ],
  ["due today is overdue", { endsOn: today, homeStagePlanned: true }, "overdue", "bar", 0],
  ["ten days late", { endsOn: "2027-02-28" }, "overdue", "bar", 10],
  [
    "on the way home nobody is late any more",
    { state: "travelling home", endsOn: "2027-03-01" },
    "on the way home",
    "clear",
    9,
  ],
  ["on the way out", { state: "travelling out" }, "on the way out", "clear", 0],
  ["missing", { state: "missing" }, "missing", "bar", 0],
  ["packed is promised", { state: "packed" }, "promised", "clear", 0],
  ["requested is asked for", { state: "requested" }, "asked for", "clear", 0],
])("%s", (_about, facts, standing, outcome, daysLate) => {
  expect(standingOfLent(line(facts), today)).toEqual({ standing, outcome, daysLate });
});

test.each<LineState>(["noted", "checked in", "closed", "declined", "withdrawn"])(
  "%s claims nothing",
  (state) => {
    expect(standingOfLent(line({ state }), today)).toBeNull();
    expect(effectOfWithdrawal(state)).toBeNull();
  },
);

describe("a withdrawal", () => {
  test("stops what is shown, and nothing that is away is left without a word", () => {
    expect(effectOfWithdrawal("at venue")).toBe("stops being shown");
    for (const state of awayStates) expect(effectOfWithdrawal(state), state).not.toBeNull();
  });

  test("keeps in the house what can still be kept there", () => {
    const kept = lineStates.filter((state) => lineMoves[state].includes("travelling out"));
    expect(kept).toEqual(["packed"]);
    for (const state of kept) expect(effectOfWithdrawal(state)).toBe("does not leave");
  });

  test("has every effect in some state", () => {
    expect(new Set(lineStates.map(effectOfWithdrawal).filter(Boolean))).toEqual(new Set(withdrawalEffects));
  });
});

test("what is shown comes first, then by the day it is due home", () => {
  const lines = [
    line({ loanId: "asked", state: "requested", endsOn: "2027-01-01" }),
    line({ loanId: "later", state: "at venue", endsOn: "2027-09-01" }),
    line({ loanId: "packed", state: "packed", endsOn: "2027-02-01" }),
    line({ loanId: "sooner", state: "at venue", endsOn: "2027-05-01" }),
  ];
  expect(orderLent(lines).map(({ loanId }) => loanId)).toEqual(["sooner", "later", "packed", "asked"]);
  expect(lines.filter(isAway).map(({ loanId }) => loanId)).toEqual(["later", "sooner"]);
});
