import { expect, test } from "vitest";
import { bookCheckedOn, entry } from "#lib/suitability/rules/book-entry.ts";

test("a rule is written in short and reads in full", () => {
  expect(entry("X1", "cb", "kind, mass", "Habit", "read", { place: "NO", validFrom: "2020-01-01" })).toEqual({
    id: "X1",
    group: "consent",
    place: "NO",
    validFrom: "2020-01-01",
    validTo: null,
    inputs: ["kind", "mass"],
    outcomes: ["clear", "bar"],
    citation: "Habit",
    standing: "read",
    checkedOn: bookCheckedOn,
    overriddenBy: ["curator"],
    needsEvidence: false,
    isLegal: false,
  });
});
