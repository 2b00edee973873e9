/** What differs between two versions of a facility report, answer by answer and row by row. */
import { type FacilitySection, facilityQuestions, facilitySections } from "#lib/people/facility-questions.ts";
import type { FacilityAnswers, ReportedLicence } from "#lib/people/facility-report.ts";
import type { Passage } from "#lib/people/schema.ts";

export type Answer = string | number | boolean | null;

export type FacilityChange =
  | { of: "answer"; section: FacilitySection; question: string; before: Answer; after: Answer }
  | { of: "passage" | "licence"; name: string; became: "new" | "gone" | "other" };

/** An answer by its names. */
export function answerOf(answers: FacilityAnswers, section: FacilitySection, question: string): Answer {
  return (answers[section] as Record<string, Answer>)[question] ?? null;
}

const nameOfPassage = ({ name, kind }: Passage) => `${name} ${kind}`;
const nameOfLicence = ({ number, kind }: ReportedLicence) => `${number} ${kind}`;

/** Rows by their names; two that are named alike are told apart by their place. */
function byName<Row>(rows: readonly Row[], nameOf: (row: Row) => string): Map<string, Row> {
  const named = new Map<string, Row>();
  for (const row of rows) {
    let key = nameOf(row);
    while (named.has(key)) key += " ";
    named.set(key, row);
  }
  return named;
}

function changedRows<Row>(
  of: "passage" | "licence",
  before: readonly Row[],
  after: readonly Row[],
  nameOf: (row: Row) => string,
  shownName: (row: Row) => string,
): FacilityChange[] {
  const [was, is] = [byName(before, nameOf), byName(after, nameOf)];
  const changes: FacilityChange[] = [];
  for (const [key, row] of is) {
    const earlier = was.get(key);
    if (earlier === undefined) changes.push({ of, name: shownName(row), became: "new" });
    else if (JSON.stringify(earlier) !== JSON.stringify(row))
      changes.push({ of, name: shownName(row), became: "other" });
  }
  for (const [key, row] of was) if (!is.has(key)) changes.push({ of, name: shownName(row), became: "gone" });
  return changes;
}

/** In the order of the report. Another order of the narrow points is a change of none of them. */
export function facilityChanges(before: FacilityAnswers, after: FacilityAnswers): FacilityChange[] {
  const answers = facilitySections.flatMap((section) =>
    Object.keys(facilityQuestions[section]).flatMap((question): FacilityChange[] => {
      const [was, is] = [answerOf(before, section, question), answerOf(after, section, question)];
      return was === is ? [] : [{ of: "answer", section, question, before: was, after: is }];
    }),
  );
  return [
    ...answers,
    ...changedRows("passage", before.passages, after.passages, nameOfPassage, ({ name }) => name),
    ...changedRows("licence", before.licences, after.licences, nameOfLicence, ({ number }) => number),
  ];
}
