import { expect, test } from "vitest";
import { lineStates } from "#lib/loans/schema.ts";
import {
  awayStates,
  endedStates,
  homeStates,
  lineMoveRows,
  lineMoves,
  mayMove,
  outStates,
} from "#lib/loans/transitions.ts";

test("every state is reached from the first one", () => {
  const reached = new Set(["noted"]);
  for (let before = 0; before < reached.size; ) {
    before = reached.size;
    for (const { fromState, toState } of lineMoveRows) if (reached.has(fromState)) reached.add(toState);
  }
  expect([...reached].sort()).toEqual([...lineStates].sort());
});

test("from every state away from home there is a way home", () => {
  for (const away of awayStates) {
    const reached = new Set<string>([away]);
    for (let before = 0; before < reached.size; ) {
      before = reached.size;
      for (const { fromState, toState } of lineMoveRows) if (reached.has(fromState)) reached.add(toState);
    }
    expect(reached, away).toContain("resting at home");
  }
});

test("what is out may be sent home at once, and nothing that is home again may", () => {
  for (const out of outStates) expect(mayMove(out, "travelling home"), out).toBe(true);
  for (const home of homeStates) expect(lineMoves[home], home).not.toContain("travelling home");
});

test("no specimen is away and home at once", () => {
  expect(homeStates.filter((state) => awayStates.includes(state))).toEqual([]);
  expect(awayStates).toEqual(expect.arrayContaining([...outStates]));
});

test("ended states lead nowhere", () => {
  for (const ended of endedStates) expect(lineMoves[ended]).toEqual([]);
});

test("nothing goes out without having been accepted, and nothing closes without having been checked in", () => {
  expect(mayMove("requested", "packed")).toBe(false);
  expect(mayMove("accepted", "travelling out")).toBe(false);
  expect(mayMove("resting at home", "closed")).toBe(false);
  expect(mayMove("missing", "closed")).toBe(false);
});
