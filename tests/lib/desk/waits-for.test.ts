/** Whose turn it is on a loan. */
import { expect, test } from "vitest";
import { hasSentence } from "#app/_words/sentences.ts";
import type { DueItem } from "#lib/desk/due.ts";
import { turnOn, waitsForBorrower } from "#lib/desk/waits-for.ts";

const item = (code: string, id = "a"): DueItem => ({
  key: `${id} ${code}`,
  outcome: "attend",
  dueOn: null,
  code,
  parameters: {},
  about: { kind: "loan", id },
});

test.each([
  "due.decide",
  "due.draw-up",
  "due.lender-signs",
  "due.release",
  "due.check-in",
  "due.close",
  "due.return-not-booked",
])("%s is the centre's", (code) => {
  expect(hasSentence(code)).toBe(true);
  expect(waitsForBorrower({ code })).toBe(false);
  expect(turnOn("a", [item(code)])).toBe("centre");
});

test.each([
  "due.borrower-signs",
  "due.arrives",
  "due.open",
  "due.overdue",
  "due.cover-ends",
  "due.consent-withdrawn",
  "due.missing",
])("%s is the borrower's, whatever else waits", (code) => {
  expect(hasSentence(code)).toBe(true);
  expect(turnOn("a", [item("due.decide"), item(code)])).toBe("borrower");
});

test("what is due on another loan is nobody's turn here", () => {
  expect(turnOn("b", [item("due.borrower-signs")])).toBe("nobody");
});
