import { expect, test } from "vitest";
import {
  linesIn,
  liveLines,
  numbersInWords,
  refuseBars,
  requireMoves,
  requireState,
} from "#lib/loans/at-hand.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { finding } from "#lib/suitability/rules/case.ts";

const line = (accessionNumber: string, state: LineState) => ({
  id: accessionNumber,
  specimenId: `s${accessionNumber}`,
  accessionNumber,
  state,
});
const lines = [line("1", "accepted"), line("2", "packed"), line("3", "withdrawn")];

test("lines are picked by their state", () => {
  expect(linesIn({ lines }, "packed", "withdrawn").map(({ id }) => id)).toEqual(["2", "3"]);
  expect(liveLines({ lines }).map(({ id }) => id)).toEqual(["1", "2"]);
});

test("an act in the wrong state is refused with the state", () => {
  expect(() => requireState({ state: "accepted", number: "L 1" }, ["accepted"])).not.toThrow();
  expect(() => requireState({ state: "at venue", number: "L 1" }, ["accepted"])).toThrow(
    expect.objectContaining({
      kind: "conflict",
      reason: "loan.not-now",
      parameters: { state: "at venue", loan: "L 1" },
    }),
  );
});

test("a move outside the table is refused with the specimen", () => {
  expect(() => requireMoves([line("1", "accepted")], "packed")).not.toThrow();
  expect(() => requireMoves(lines, "travelling out")).toThrow(
    expect.objectContaining({
      reason: "loan.move-not-allowed",
      parameters: { specimen: "1", from: "accepted", to: "travelling out" },
    }),
  );
});

test("the first bar is named, with the specimen and how many there are", () => {
  const bar = finding("s2", "U1", "use", {
    outcome: "bar",
    fact: "use.viewing-only",
    wayOut: "way.viewing-only",
  });
  expect(() =>
    refuseBars(
      lines,
      [finding("s1", "U1", "use", { outcome: "clear", fact: "use.viewing" })],
      "decision.barred",
    ),
  ).not.toThrow();
  expect(() => refuseBars(lines, [bar, bar], "decision.barred")).toThrow(
    expect.objectContaining({
      reason: "decision.barred",
      parameters: expect.objectContaining({ specimen: "2", fact: "use.viewing-only", bars: 2 }),
    }),
  );
});

test("many numbers are told by the first and how many more", () => {
  const numbers = ["A", "B", "C", "D", "E", "F", "G"].map((accessionNumber) => ({ accessionNumber }));
  expect(numbersInWords(numbers)).toBe("A, B, C, D, E and 2 more");
  expect(numbersInWords(numbers.slice(0, 2))).toBe("A, B");
});
