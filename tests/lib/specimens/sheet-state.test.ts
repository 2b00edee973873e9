import { expect, test } from "vitest";
import { awayStates } from "#lib/loans/transitions.ts";
import { sheetStateOf, statesAway } from "#lib/specimens/sheet-state.ts";

test("the states away from home are those of the room of loans", () =>
  expect([...statesAway].sort()).toEqual([...awayStates].sort()));

test.each([
  ["a number without a specimen", null, "missing"],
  ["never lent", [], "here"],
  ["asked for only", ["requested", "accepted", "packed"], "here"],
  ["on its way", ["closed", "travelling out"], "lent"],
  ["at a venue", ["at venue"], "lent"],
  ["home again", ["resting at home", "checked in", "closed"], "here"],
  ["did not come home", ["closed", "missing"], "missing"],
] as const)("%s: %s", (_what, lines, state) => expect(sheetStateOf(lines)).toBe(state));
