/** What changed between two evaluations: outcomes, facts, rules that fell silent; and nothing of what was added. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { runDifference } from "#lib/suitability/run-difference.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import { outcomes } from "#lib/workings/outcome.ts";

const finding = (said: Partial<Finding> = {}): Finding => ({
  specimenId: "one",
  rule: "G4",
  group: "consent",
  outcome: "clear",
  fact: "consent.lasts",
  parameters: {},
  source: "s",
  wayOut: "",
  ...said,
});
const bar = finding({ outcome: "bar", fact: "consent.ends", wayOut: "way.earlier" });

test("an outcome that is another one is a change, with both answers", () => {
  expect(runDifference([finding()], [bar])).toEqual([
    { specimenId: "one", rule: "G4", before: finding(), after: bar },
  ]);
});

test("the same outcome on another fact is a change", () => {
  const other = finding({ outcome: "bar", fact: "consent.withdrawn" });
  expect(runDifference([bar], [other])).toHaveLength(1);
});

test("of several answers of one rule the strictest is compared", () => {
  expect(runDifference([finding(), bar], [bar])).toEqual([]);
  expect(runDifference([bar, finding()], [finding()])).toMatchObject([{ before: bar, after: finding() }]);
});

test("a rule that speaks only before, or only after, is a change; a specimen that does so is none", () => {
  const climate = finding({ rule: "E1" });
  expect(runDifference([finding(), climate], [finding()])).toMatchObject([{ rule: "E1", after: null }]);
  expect(runDifference([finding()], [finding(), climate])).toMatchObject([{ rule: "E1", before: null }]);
  expect(runDifference([finding()], [finding(), finding({ specimenId: "two" })])).toEqual([]);
  expect(runDifference([finding(), finding({ specimenId: "two" })], [finding()])).toEqual([]);
});

const findings = fc.array(
  fc
    .record({
      specimenId: fc.constantFrom("one", "two"),
      rule: fc.constantFrom("G1", "G4", "E1"),
      outcome: fc.constantFrom(...outcomes),
      fact: fc.constantFrom("a", "b"),
    })
    .map(finding),
  { maxLength: 12 },
);

test("nothing changes against itself, and the same answers change both ways", () => {
  fc.assert(
    fc.property(findings, findings, (before, after) => {
      expect(runDifference(before, before)).toEqual([]);
      const keys = (changes: ReturnType<typeof runDifference>) =>
        changes.map(({ specimenId, rule }) => `${specimenId} ${rule}`).sort();
      expect(keys(runDifference(before, after))).toEqual(keys(runDifference(after, before)));
    }),
  );
});
