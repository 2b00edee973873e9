/** Two papers side by side. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { comparedLines } from "#lib/costing/compared.ts";
import { lineCodes } from "#lib/costing/schema.ts";

const line = (code: (typeof lineCodes)[number], netMinor: number, note = "") => ({ code, note, netMinor });

test("a line that one side lacks has no amount there; lines of one kind are summed", () => {
  expect(
    comparedLines(
      [line("packing", 100), line("mount", 50), line("other", 7, "ferry")],
      [line("packing", 60), line("packing", 70), line("other", 9, "toll")],
    ),
  ).toEqual([
    { code: "packing", note: "", quotedMinor: 100, actualMinor: 130, differenceMinor: 30 },
    { code: "mount", note: "", quotedMinor: 50, actualMinor: null, differenceMinor: -50 },
    { code: "other", note: "ferry", quotedMinor: 7, actualMinor: null, differenceMinor: -7 },
    { code: "other", note: "toll", quotedMinor: null, actualMinor: 9, differenceMinor: 9 },
  ]);
});

test("the differences add up to the difference of the nets", () => {
  const lines = fc.array(
    fc.record({
      code: fc.constantFrom(...lineCodes),
      note: fc.constantFrom("", "a", "b"),
      netMinor: fc.nat(1_000_000),
    }),
  );
  const sum = (amounts: number[]) => amounts.reduce((a, b) => a + b, 0);
  fc.assert(
    fc.property(lines, lines, (before, after) => {
      expect(sum(comparedLines(before, after).map(({ differenceMinor }) => differenceMinor))).toBe(
        sum(after.map(({ netMinor }) => netMinor)) - sum(before.map(({ netMinor }) => netMinor)),
      );
    }),
  );
});
