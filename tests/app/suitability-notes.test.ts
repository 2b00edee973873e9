/** Findings gathered for reading: rows of the matrix, notes of what is not clear. */
import { expect, test } from "vitest";
import {
  answersOf,
  matrixRows,
  notesOf,
  withheld,
} from "#app/(signed-in)/loans/[id]/suitability/suitability-notes.ts";
import { type Finding, type RuleGroup, ruleGroups } from "#lib/suitability/schema.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

const lines = [
  { specimenId: "a", accessionNumber: "SR 03.041" },
  { specimenId: "b", accessionNumber: "SR 03.042" },
  { specimenId: "c", accessionNumber: "AN 2019.0142" },
];
const clear = Object.fromEntries(ruleGroups.map((group) => [group, "clear"])) as Record<RuleGroup, Outcome>;

const finding = (specimenId: string, said: Partial<Finding>): Finding => ({
  specimenId,
  rule: "U1",
  group: "use",
  outcome: "bar",
  fact: "use.viewing-only",
  parameters: {},
  source: "The curator's word",
  wayOut: "way.viewing-only",
  ...said,
});

test("sheets that answer alike share a row, a specimen of its own does not", () => {
  const matrix = { a: clear, b: clear, c: clear };
  const rows = matrixRows(lines, matrix, (id) => id !== "c");
  expect(rows.map((row) => row.numbers)).toEqual([["SR 03.041", "SR 03.042"], ["AN 2019.0142"]]);
});

test("sheets that answer differently have rows of their own, and what was not judged has none", () => {
  const matrix = { a: clear, b: { ...clear, light: "bar" as const } };
  expect(matrixRows(lines, matrix, () => true).map((row) => row.numbers)).toEqual([
    ["SR 03.041"],
    ["SR 03.042"],
  ]);
});

test("the same words about several specimens are one note; bars stand first", () => {
  const notes = notesOf(
    [
      finding("c", {
        outcome: "attend",
        group: "consent",
        fact: "consent.not-asked",
        wayOut: "way.ask-oversight",
      }),
      finding("a", {}),
      finding("b", {}),
      finding("b", { outcome: "clear", wayOut: "", group: "light" }),
    ],
    lines,
  );
  expect(notes.map(({ outcome, numbers }) => [outcome, numbers])).toEqual([
    ["bar", ["SR 03.041", "SR 03.042"]],
    ["attend", ["AN 2019.0142"]],
  ]);
  expect(notes[0]?.wayOut).toBe("Teach by viewing only, or choose another specimen.");
});

test("what is withheld leaves the way out", () => {
  const [note] = notesOf([finding("a", { fact: "reason.withheld", source: "" })], lines);
  expect(note).toMatchObject({ fact: "", wayOut: "Teach by viewing only, or choose another specimen." });
});

test("what two rules say alike to who reads no reasons is one note", () => {
  const kept = { fact: "reason.withheld", source: "" };
  expect(
    notesOf([finding("a", { ...kept, rule: "B1" }), finding("a", { ...kept, rule: "B2" })], lines),
  ).toHaveLength(1);
  expect(notesOf([finding("a", { rule: "B1" }), finding("a", { rule: "B2" })], lines)).toHaveLength(2);
});

test("every answer is listed once with its specimens, the clear ones as well, and nothing withheld", () => {
  const clearOne = { outcome: "clear", fact: "use.own-venue", wayOut: "" } as const;
  const answers = answersOf(
    [
      finding("a", clearOne),
      finding("b", clearOne),
      finding("c", clearOne),
      finding("a", {}),
      finding("b", { fact: withheld }),
    ],
    lines,
  );
  expect(answers.map(({ rule, outcome, numbers, all }) => [rule, outcome, numbers.length, all])).toEqual([
    ["U1", "clear", 3, true],
    ["U1", "bar", 1, false],
  ]);
});
