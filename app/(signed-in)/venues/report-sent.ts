/**
 * A facility report between its answers and the plain fields of its form: each
 * answer under its section and question, lists by number. What is written to the
 * fields is read from them as the same again. A line of a list that was left empty,
 * or ticked to be left out, is none.
 */
import { answerIn, isTicked, numberIn, shareIn, textIn } from "#app/_parts/sent-fields.ts";
import { fractionToPercent, kindOfField, writeNumber } from "#app/_parts/typed-number.ts";
import { facilityQuestions, facilitySections, type Question } from "#lib/people/facility-questions.ts";
import type { FacilityAnswers } from "#lib/people/facility-report.ts";

export type Typed = Readonly<Record<string, string>>;
export const reportLists = ["passages", "licences"] as const;
export type ReportList = (typeof reportLists)[number];

const sizes = ["widthMm", "heightMm", "depthMm", "secondWidthMm", "loadKg", "slopePercent"] as const;
const licenceTexts = ["authority", "number", "responsiblePerson", "validFrom", "validUntil"] as const;
/** What a line holds beside its kind; where all of it is empty there is no line. */
export const listFields = { passages: ["name", ...sizes], licences: licenceTexts } as const;

const questions = facilitySections.flatMap((section) =>
  (Object.entries(facilityQuestions[section]) as [string, Question][]).map(([name, question]) => ({
    section,
    name,
    question,
    field: `${section}.${name}`,
  })),
);

function writeAnswer(field: string, question: Question, value: unknown): string {
  if (value === null || value === undefined) return "";
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value !== "number") return String(value);
  return writeNumber(question.kind === "share" ? fractionToPercent(value) : value, kindOfField(field));
}

/** Every answer as it stands in its field. */
export function writeReport(answers: FacilityAnswers): Record<string, string> {
  const typed: Record<string, string> = {};
  for (const { section, name, question, field } of questions)
    typed[field] = writeAnswer(field, question, (answers[section] as Record<string, unknown>)[name]);
  answers.passages.forEach((passage, at) => {
    typed[`passages.${at}.kind`] = passage.kind;
    typed[`passages.${at}.name`] = passage.name;
    for (const size of sizes) {
      const field = `passages.${at}.${size}`;
      typed[field] = writeNumber(passage[size], kindOfField(field));
    }
  });
  answers.licences.forEach((licence, at) => {
    typed[`licences.${at}.kind`] = licence.kind;
    for (const name of licenceTexts) typed[`licences.${at}.${name}`] = licence[name] ?? "";
  });
  return typed;
}

function answerSent(fields: FormData, field: string, question: Question): unknown {
  switch (question.kind) {
    case "yes or no":
      return answerIn(fields, field);
    case "number":
      return numberIn(fields, field);
    case "share":
      return shareIn(fields, field);
    default:
      return textIn(fields, field) || null;
  }
}

/** The numbers of a list's lines that stay. */
function keptLines(fields: FormData, list: ReportList): number[] {
  const lines = new Set(
    [...fields.keys()].flatMap((name) => {
      const [of, at] = name.split(".");
      return of === list && /^\d{1,3}$/.test(at ?? "") ? [Number(at)] : [];
    }),
  );
  return [...lines]
    .sort((one, other) => one - other)
    .filter(
      (at) =>
        !isTicked(fields, `${list}.${at}.leaveOut`) &&
        listFields[list].some((name) => textIn(fields, `${list}.${at}.${name}`) !== ""),
    );
}

export type SentReport = {
  /** As sent, to be read by the schema. */
  answers: unknown;
  /** Which line of the form each line of the answers stood in. */
  lines: Record<ReportList, number[]>;
};

/** @throws {Refusal} "input.invalid" at the field, for what is no number */
export function readReport(fields: FormData): SentReport {
  const answers: Record<string, Record<string, unknown>> = {};
  for (const { section, name, question, field } of questions)
    answers[section] = { ...answers[section], [name]: answerSent(fields, field, question) };
  const lines = { passages: keptLines(fields, "passages"), licences: keptLines(fields, "licences") };
  const passages = lines.passages.map((at) => ({
    kind: textIn(fields, `passages.${at}.kind`),
    name: textIn(fields, `passages.${at}.name`),
    ...Object.fromEntries(sizes.map((size) => [size, numberIn(fields, `passages.${at}.${size}`)])),
  }));
  const licences = lines.licences.map((at) => {
    const text = (name: string) => textIn(fields, `licences.${at}.${name}`);
    return {
      kind: text("kind"),
      authority: text("authority"),
      number: text("number"),
      responsiblePerson: text("responsiblePerson"),
      validFrom: text("validFrom") || null,
      validUntil: text("validUntil") || null,
    };
  });
  return { answers: { ...answers, passages, licences }, lines };
}

/** The field of an issue: the schema names a line of the answers, the form has it where it was typed. */
export function fieldOfIssue(path: string, lines: SentReport["lines"]): string {
  const [first, ...rest] = path.split(".");
  const parts = first === "answers" ? rest : [first ?? "", ...rest];
  const [list, at, ...name] = parts;
  if (list !== "passages" && list !== "licences") return parts.join(".");
  return [list, String(lines[list][Number(at)] ?? at), ...name].join(".");
}

/** Everything that was typed, so that it stands there again. */
export function typedIn(fields: FormData): Record<string, string> {
  return Object.fromEntries(
    [...fields].flatMap(([name, value]) =>
      typeof value === "string" && !name.startsWith("$") ? [[name, value] as const] : [],
    ),
  );
}
