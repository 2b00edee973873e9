/**
 * Findings gathered for reading: specimens that answer alike share a row of the
 * matrix, and what a rule says of several specimens in the same words is one note.
 */
import { readable } from "#app/_words/readable.ts";
import type { SeenFinding } from "#lib/loans/queries/loan-sheet.ts";
import { type RuleGroup, ruleGroups } from "#lib/loans/schema.ts";
import { type Outcome, outcomes } from "#lib/workings/outcome.ts";

export type NamedLine = { specimenId: string; accessionNumber: string };
export type Matrix = ReadonlyMap<string, Record<RuleGroup, Outcome>>;

export type MatrixRow = { key: string; numbers: string[]; specimenIds: string[]; outcomes: Record<RuleGroup, Outcome> };

/** What stands before the last figures of a number: sheets of one series share it. */
const seriesOf = (number: string) => number.replace(/\d+$/, "");

/** Sheets of one series with the same outcomes are one row; every other specimen has its own. */
export function matrixRows(lines: readonly NamedLine[], matrix: Matrix, isSheet: (id: string) => boolean): MatrixRow[] {
  const rows = new Map<string, MatrixRow>();
  for (const { specimenId, accessionNumber } of lines) {
    const own = matrix.get(specimenId);
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

export type Note = { key: string; finding: SeenFinding; specimenIds: string[]; numbers: string[] };

/** The notes of what is not clear: bars first, then in the order of the groups. */
export function notesOf(findings: readonly SeenFinding[], lines: readonly NamedLine[]): Note[] {
  const numbers = new Map(lines.map((line) => [line.specimenId, line.accessionNumber]));
  const notes = new Map<string, Note>();
  for (const finding of findings) {
    if (finding.outcome === "clear") continue;
    const { rule, fact, wayOut, outcome, group } = finding;
    const key = JSON.stringify([outcome, group, rule, fact, wayOut, fact === null ? {} : readable(finding.parameters)]);
    const note = notes.get(key) ?? { key, finding, specimenIds: [], numbers: [] };
    const number = numbers.get(finding.specimenId);
    if (number !== undefined && !note.numbers.includes(number)) {
      note.specimenIds.push(finding.specimenId);
      note.numbers.push(number);
    }
    notes.set(key, note);
  }
  const rank = ({ finding }: Note) =>
    -outcomes.indexOf(finding.outcome) * ruleGroups.length + ruleGroups.indexOf(finding.group);
  return [...notes.values()].sort((a, b) => rank(a) - rank(b));
}
