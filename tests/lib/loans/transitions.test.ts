import { expect, test } from "vitest";
import { lineStates } from "#lib/loans/schema.ts";
import { awayStates, endedStates, lineMoveRows, lineMoves, mayMove } from "#lib/loans/transitions.ts";

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

test("ended states lead nowhere", () => {
  for (const ended of endedStates) expect(lineMoves[ended]).toEqual([]);
});

test("nothing goes out without having been accepted, and nothing closes without having been checked in", () => {
  expect(mayMove("requested", "packed")).toBe(false);
  expect(mayMove("accepted", "travelling out")).toBe(false);
  expect(mayMove("resting at home", "closed")).toBe(false);
  expect(mayMove("missing", "closed")).toBe(false);
});
