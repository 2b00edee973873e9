/** What is kept of a loan that is judged again, and when it counts as judged worse. */
import { expect, test } from "vitest";
import { keptRunWords } from "#app/_words/en/kept-runs.ts";
import {
  changeOccasions,
  findingsSinceRelease,
  judgedWorse,
  type KeptFindings,
  runOccasions,
} from "#lib/loans/judged-again.ts";
import type { Finding } from "#lib/suitability/schema.ts";

const finding = (said: Partial<Finding> = {}): Finding => ({
  specimenId: "one",
  rule: "G1",
  group: "consent",
  outcome: "clear",
  fact: "consent.allows",
  parameters: {},
  source: "",
  wayOut: "",
  ...said,
});
const bar = finding({ outcome: "bar", fact: "consent.withdrawn" });
const run = (occasion: string, day: number, ...findings: Finding[]): KeptFindings => ({
  occasion,
  runAt: new Date(Date.UTC(2026, 0, day)),
  findings,
});
const on = (day: number) => new Date(Date.UTC(2026, 0, day));

test("since release only what speaks of the change is found anew", () => {
  const late = finding({ rule: "B1", group: "free", fact: "period.in-time" });
  const tooLate = { ...late, outcome: "bar" as const, fact: "period.too-late" };
  const found = findingsSinceRelease([finding(), late], [bar, tooLate], ["consent changed"]);
  expect(found).toEqual([late, bar]);
  expect(findingsSinceRelease([finding(), late], [bar, tooLate], ["venue changed"])).toEqual([
    finding(),
    late,
  ]);
});

test("a specimen that is no longer on the loan is not carried on", () => {
  const gone = finding({ specimenId: "two", rule: "B1", group: "free" });
  expect(findingsSinceRelease([finding(), gone], [bar], ["consent changed"])).toEqual([bar]);
});

test("it stays worse, since the first run that found it, whatever else is judged after", () => {
  const runs = [
    run("dispatch", 1, finding()),
    run("consent changed", 2, bar),
    run("venue changed", 3, bar, finding({ rule: "C1", group: "climate" })),
  ];
  expect(judgedWorse(runs, [])).toEqual({ since: on(2), count: 1 });
});

test("an act, or a word of a person, settles it; a refusal and an earlier word do not", () => {
  const worse = [run("decision", 1, finding()), run("consent changed", 3, bar)];
  expect(judgedWorse(worse, [on(2)])).toMatchObject({ count: 1 });
  expect(judgedWorse(worse, [on(4)])).toBeNull();
  expect(judgedWorse([...worse, run("signature refused", 4, bar)], [])).toMatchObject({ since: on(3) });
  expect(judgedWorse([...worse, run("extension", 4, bar)], [])).toBeNull();
});

test("what became clear again, and what only got better, is nothing", () => {
  const cleared = [
    run("decision", 1, finding()),
    run("consent changed", 2, bar),
    run("consent changed", 3, finding()),
  ];
  expect(judgedWorse(cleared, [])).toBeNull();
  expect(judgedWorse([run("request", 1, bar), run("consent changed", 2, finding())], [])).toBeNull();
  expect(judgedWorse([], [])).toBeNull();
});

test("every occasion has its words, and no other has", () => {
  expect(runOccasions).toEqual(expect.arrayContaining([...changeOccasions, "extension", "dispatch refused"]));
  expect(Object.keys(keptRunWords.occasions).sort()).toEqual([...runOccasions].sort());
});
