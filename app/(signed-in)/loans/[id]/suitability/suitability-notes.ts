/**
 * Findings gathered for reading: specimens that answer alike share a row of the
 * matrix, and what a rule says of several specimens in the same words is one note.
 */
import { findingSentence, wayOutSentence } from "#app/_words/finding-sentence.ts";
import type { PaperLanguage } from "#lib/papers/languages.ts";
import { type Finding, type RuleGroup, ruleGroups } from "#lib/suitability/schema.ts";
import { type Outcome, outcomes } from "#lib/workings/outcome.ts";

export type NamedLine = { specimenId: string; accessionNumber: string };
export type Matrix = Readonly<Record<string, Record<RuleGroup, Outcome>>>;

export type MatrixRow = {
  key: string;
  numbers: string[];
  specimenIds: string[];
  outcomes: Record<RuleGroup, Outcome>;
};

/** What stands before the last figures of a number: sheets of one series share it. */
const seriesOf = (number: string) => number.replace(/\d+$/, "");

/** @param isSheet of a series: sheets with the same outcomes are one row; every other specimen has its own */
export function matrixRows(
  lines: readonly NamedLine[],
  matrix: Matrix,
  isSheet: (specimenId: string) => boolean,
): MatrixRow[] {
  const rows = new Map<string, MatrixRow>();
  for (const { specimenId, accessionNumber } of lines) {
    const own = matrix[specimenId];
    if (!own) continue;
    const key = isSheet(specimenId)
      ? `${seriesOf(accessionNumber)} ${ruleGroups.map((group) => own[group]).join(" ")}`
      : specimenId;
    const row = rows.get(key) ?? { key, numbers: [], specimenIds: [], outcomes: own };
    row.numbers.push(accessionNumber);
    row.specimenIds.push(specimenId);
    rows.set(key, row);
  }
  return [...rows.values()];
}

export const withheld = "reason.withheld";

export type Note = {
  key: string;
  outcome: Outcome;
  group: RuleGroup;
  rule: string;
  /** the fact's code, and its sentence */
  code: string;
  fact: string;
  setAside: Finding["setAside"];
  wayOut: string;
  source: string;
  specimenIds: string[];
  numbers: string[];
};

/** The notes of what is not clear: bars first, then in the order of the groups. */
export function notesOf(
  findings: readonly Finding[],
  lines: readonly NamedLine[],
  language: PaperLanguage = "en",
): Note[] {
  const numbers = new Map(lines.map((line) => [line.specimenId, line.accessionNumber]));
  const notes = new Map<string, Note>();
  for (const finding of findings) {
    const number = numbers.get(finding.specimenId);
    if (finding.outcome === "clear" || number === undefined) continue;
    const { outcome, group, rule, source } = finding;
    // What is withheld from all of them is said once, beside the matrix.
    const fact = finding.fact === withheld ? "" : findingSentence(finding, language);
    const wayOut = wayOutSentence(finding, language);
    const word = finding.setAside;
    // Rules that say the same to who reads no reasons are one note.
    const told = finding.fact === withheld ? "" : rule;
    const key = [outcome, group, told, fact, wayOut, word?.office, word?.evidence, word?.on].join("\n");
    const note = notes.get(key) ?? {
      key,
      outcome,
      group,
      rule,
      code: finding.fact,
      fact,
      setAside: word,
      wayOut,
      source,
      specimenIds: [],
      numbers: [],
    };
    if (!note.specimenIds.includes(finding.specimenId)) {
      note.specimenIds.push(finding.specimenId);
      note.numbers.push(number);
    }
    notes.set(key, note);
  }
  const rank = ({ outcome, group }: Note) =>
    (outcomes.length - outcomes.indexOf(outcome)) * ruleGroups.length + ruleGroups.indexOf(group);
  return [...notes.values()].sort((a, b) => rank(a) - rank(b));
}

/** One answer of one rule, to the specimens that it was the same for. */
export type Answered = {
  key: string;
  rule: string;
  outcome: Outcome;
  fact: string;
  numbers: string[];
  /** It was the same for every specimen. */
  all: boolean;
};

/** Every answer, the clear ones too, in the order of the rules; nothing of what the viewer may not read. */
export function answersOf(
  findings: readonly Finding[],
  lines: readonly NamedLine[],
  language: PaperLanguage = "en",
): Answered[] {
  const numbers = new Map(lines.map((line) => [line.specimenId, line.accessionNumber]));
  const answers = new Map<string, Answered>();
  for (const finding of findings) {
    const number = numbers.get(finding.specimenId);
    if (finding.fact === withheld || number === undefined) continue;
    const { rule, outcome } = finding;
    const fact = findingSentence(finding, language);
    const key = [rule, outcome, fact].join("\n");
    const answer = answers.get(key) ?? { key, rule, outcome, fact, numbers: [], all: false };
    if (!answer.numbers.includes(number)) answer.numbers.push(number);
    answers.set(key, answer);
  }
  return [...answers.values()].map((answer) => ({ ...answer, all: answer.numbers.length === numbers.size }));
}
