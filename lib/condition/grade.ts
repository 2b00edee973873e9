/**
 * From findings to a score, a grade and what the grade means for a loan. The
 * score is the gravest finding, never the mean, so that one severe mark is not
 * hidden by many slight ones. Grades stop what goes outward; on the way home
 * nothing here is ever a bar: a conservator releases the return with precautions.
 * Today is always given, never read from a clock. All figures: common practice.
 */
import {
  type Activity,
  type Finding,
  isFitTo,
  severityFigure,
  type Verdict,
  type VerdictUse,
} from "#lib/condition/schema.ts";
import { addDays, DateText, toDate, toDateText } from "#lib/platform/dates.ts";
import type { Outcome } from "#lib/workings/outcome.ts";
import { type Citation, cite } from "#lib/workings/sources.ts";

const activityFactor: Readonly<Record<Activity, number>> = { stable: 1, unknown: 1.25, active: 1.5 };

export const grades = ["A", "B", "C", "D"] as const;
export type Grade = (typeof grades)[number];
export const gradeWords: Readonly<Record<Grade, string>> = {
  A: "good",
  B: "fair",
  C: "poor",
  D: "not acceptable",
};

export type Direction = "out" | "home";

type Scored = Pick<Finding, "severity" | "activity">;

/** Severity 0–4 times activity 1, 1.25 or 1.5. @returns 0 to 6 */
export function findingScore({ severity, activity }: Scored): number {
  return severityFigure(severity) * activityFactor[activity];
}

/** The highest finding; 0 where nothing was found. @returns 0 to 6 */
export function itemScore(findings: readonly Scored[]): number {
  return findings.reduce((highest, finding) => Math.max(highest, findingScore(finding)), 0);
}

/** @throws {RangeError} for a score outside 0 to 6 */
export function gradeOfScore(score: number): Grade {
  if (!(score >= 0 && score <= 6)) throw new RangeError("A condition score lies between 0 and 6.");
  if (score <= 1) return "A";
  if (score <= 2) return "B";
  if (score <= 3.5) return "C";
  return "D";
}

export function gradeOf(findings: readonly Scored[]): Grade {
  return gradeOfScore(itemScore(findings));
}

export const conditionWaysOut = [
  "none-needed",
  "treat-or-withdraw",
  "conservator-sign-off",
  "examine",
  "precautions-for-return",
  "check-again",
] as const;
export type ConditionWayOut = (typeof conditionWaysOut)[number];

/** One rule's word on a specimen. Sentences are made at the edge from `rule` and `facts`. */
export type ConditionRuling = {
  rule: "condition.grade" | "condition.activity" | "condition.verdict" | "condition.recency";
  outcome: Outcome;
  facts: Readonly<Record<string, string | number | boolean | null>>;
  source: Citation;
  wayOut: ConditionWayOut;
};

function ruling(
  rule: ConditionRuling["rule"],
  outcome: Outcome,
  facts: ConditionRuling["facts"],
  wayOut: ConditionWayOut,
  where: string,
): ConditionRuling {
  return { rule, outcome, facts, source: cite("practice", where), wayOut };
}

function rulingOnGrade(
  findings: readonly Finding[],
  direction: Direction,
  signedOff: boolean,
): ConditionRuling {
  const score = itemScore(findings);
  const grade = gradeOfScore(score);
  const facts = { grade, score, signedOff };
  const where = "D does not go out, C goes with the conservator's sign-off";
  if (grade === "A" || grade === "B") return ruling("condition.grade", "clear", facts, "none-needed", where);
  if (direction === "home") {
    return signedOff
      ? ruling("condition.grade", "clear", facts, "none-needed", where)
      : ruling("condition.grade", "attend", facts, "precautions-for-return", where);
  }
  if (grade === "D") return ruling("condition.grade", "bar", facts, "treat-or-withdraw", where);
  return signedOff
    ? ruling("condition.grade", "clear", facts, "none-needed", where)
    : ruling("condition.grade", "attend", facts, "conservator-sign-off", where);
}

function rulingOnActivity(findings: readonly Finding[]): ConditionRuling {
  const unknown = findings.filter(
    (finding) => finding.activity === "unknown" && finding.severity !== "none",
  ).length;
  const where = "an unknown activity calls for an examination first";
  return unknown > 0
    ? ruling("condition.activity", "attend", { unknown }, "examine", where)
    : ruling("condition.activity", "clear", { unknown }, "none-needed", where);
}

function rulingOnVerdict(
  verdict: Verdict,
  uses: readonly VerdictUse[],
  direction: Direction,
): ConditionRuling {
  const unfitTo = uses.filter((use) => !isFitTo(use, verdict)).join(", ");
  const where = "the examiner's verdict";
  if (unfitTo === "") return ruling("condition.verdict", "clear", { unfitTo }, "none-needed", where);
  return direction === "home"
    ? ruling("condition.verdict", "attend", { unfitTo }, "precautions-for-return", where)
    : ruling("condition.verdict", "bar", { unfitTo }, "treat-or-withdraw", where);
}

export type ConditionCase = {
  /** The latest check; null when there is none. */
  check: { findings: readonly Finding[]; verdict: Verdict } | null;
  direction: Direction;
  /** What the loan asks of the specimen. */
  uses: readonly VerdictUse[];
  /** A conservator has signed this specimen off for this journey. */
  signedOff: boolean;
};

/** The rules on grade, activity and verdict. Without a check nothing is known, which is attend. */
export function judgeCondition({ check, direction, uses, signedOff }: ConditionCase): ConditionRuling[] {
  if (check === null) {
    return [
      ruling("condition.grade", "attend", { grade: null }, "check-again", "what is not known is never clear"),
    ];
  }
  return [
    rulingOnGrade(check.findings, direction, signedOff),
    rulingOnActivity(check.findings),
    rulingOnVerdict(check.verdict, uses, direction),
  ];
}

function requireDay(day: string): void {
  if (!DateText.safeParse(day).success) throw new RangeError("A day is written YYYY-MM-DD.");
}

/** The same day some months on, or the last of that month where it has no such day. */
function addMonths(day: DateText, months: number): DateText {
  const date = toDate(day);
  const dayOfMonth = date.getUTCDate();
  date.setUTCDate(1);
  date.setUTCMonth(date.getUTCMonth() + months);
  const lastOfMonth = new Date(Date.UTC(date.getUTCFullYear(), date.getUTCMonth() + 1, 0)).getUTCDate();
  date.setUTCDate(Math.min(dayOfMonth, lastOfMonth));
  return toDateText(date);
}

export const recencyPurposes = ["packing", "approval"] as const;
export type RecencyPurpose = (typeof recencyPurposes)[number];

/** The last day on which a check still serves: 30 days for packing, 12 calendar months for approval. @throws {RangeError} */
export function servesUntil(checkedOn: string, purpose: RecencyPurpose): string {
  requireDay(checkedOn);
  return purpose === "approval" ? addMonths(checkedOn, 12) : addDays(checkedOn, 30);
}

/**
 * Whether the latest check is recent enough. Too old or missing is a bar to
 * packing outward and attend everywhere else; a check dated after today is
 * treated as missing.
 * @throws {RangeError} for a day that is not a calendar day
 */
export function judgeRecency(
  checkedOn: string | null,
  today: string,
  purpose: RecencyPurpose,
  direction: Direction = "out",
): ConditionRuling {
  requireDay(today);
  const where = "a check serves 30 days for packing, 12 months for approval";
  const until = checkedOn === null ? null : servesUntil(checkedOn, purpose);
  const recent = checkedOn !== null && until !== null && checkedOn <= today && today <= until;
  const facts = { checkedOn, today, servesUntil: until, purpose };
  if (recent) return ruling("condition.recency", "clear", facts, "none-needed", where);
  const outcome = purpose === "packing" && direction === "out" ? "bar" : "attend";
  return ruling("condition.recency", outcome, facts, "check-again", where);
}
