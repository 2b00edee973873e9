import { expect, test } from "vitest";
import { isLive, loanState, mayChangeSpecimens } from "#lib/loans/loan-state.ts";
import { type LineState, lineStates, loanStates } from "#lib/loans/schema.ts";

const state = (
  lines: LineState[],
  said: { signedByBoth?: boolean; hasCrates?: boolean; isEnded?: boolean } = {},
) => loanState({ lines, signedByBoth: false, hasCrates: false, isEnded: false, ...said });

test.each([
  ["no line yet is an enquiry", [], "enquiry"],
  ["noted lines are an enquiry", ["noted", "noted"], "enquiry"],
  ["a noted line beside requested ones does not take the loan back", ["noted", "requested"], "requested"],
  ["accepted lines are accepted", ["accepted", "accepted"], "accepted"],
  ["a withdrawn line beside an accepted one counts no more", ["withdrawn", "accepted"], "accepted"],
  ["one line at the venue keeps the loan there", ["at venue", "travelling home", "checked in"], "at venue"],
  ["a line that is still on its way out decides", ["travelling out", "at venue"], "travelling out"],
  ["a missing line keeps the loan on its way home", ["missing", "checked in"], "travelling home"],
  ["all home and one to be checked", ["resting at home", "checked in"], "home, to be checked"],
  ["all checked in", ["checked in", "checked in"], "checked in"],
  ["all closed", ["closed", "closed", "withdrawn"], "closed"],
  ["all declined", ["declined", "withdrawn"], "declined"],
  ["all withdrawn", ["withdrawn"], "withdrawn"],
] as const)("%s", (_what, lines, expected) => {
  expect(state([...lines])).toBe(expected);
});

test("signatures make an accepted loan agreed, crates make it preparing", () => {
  expect(state(["accepted"], { hasCrates: true })).toBe("accepted");
  expect(state(["accepted"], { signedByBoth: true })).toBe("agreed");
  expect(state(["accepted", "packed"], { signedByBoth: true, hasCrates: true })).toBe("preparing");
});

test("a slip without lines that was put away is withdrawn", () => {
  expect(state([], { isEnded: true })).toBe("withdrawn");
});

test("every state of a line gives the loan a state", () => {
  for (const line of lineStates) expect(loanStates).toContain(state([line]));
});

test("every state of a loan can be reached", () => {
  const reached = new Set(lineStates.map((line) => state([line])));
  reached.add(state(["accepted"], { signedByBoth: true }));
  reached.add(state(["accepted"], { signedByBoth: true, hasCrates: true }));
  expect([...reached].sort()).toEqual([...loanStates].sort());
});

test("ended lines are not live, and specimens change only before the decision", () => {
  expect(lineStates.filter((line) => !isLive(line))).toEqual(["closed", "declined", "withdrawn"]);
  expect(loanStates.filter(mayChangeSpecimens)).toEqual(["enquiry", "requested"]);
});
