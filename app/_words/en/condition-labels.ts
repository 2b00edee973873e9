/** Words of the condition pages, in English. */
import { formatDate, formatMoment } from "#app/_words/format.ts";
import type { MarkComparison } from "#lib/condition/comparison.ts";
import type { Measure } from "#lib/condition/measured-severities.ts";
import type { Answer } from "#lib/condition/schema.ts";

const answers: Record<Answer, string> = {
  same: "the same",
  worse: "worse",
  better: "better",
  gone: "gone",
  "not-visible": "not visible",
  new: "new",
};

const changes: Record<MarkComparison["change"], string> = {
  new: "new",
  worse: "worse",
  same: "the same",
  better: "better",
  gone: "gone",
  "not-looked-at": "not looked at",
};

const findingFields = {
  answer: "Now it is",
  term: "What",
  place: "Where",
  severity: "Severity",
  extentMm: "Extent, mm",
  extentPercent: "Extent, % of the area",
  activity: "Activity",
  note: "Note",
} as const;

const checkFields = {
  fitToShow: "Fit to show",
  fitToHandle: "Fit to handle",
  fitToTravel: "Fit to travel",
  grounds: "Grounds",
  occasion: "Occasion",
  checkedOn: "Checked on",
  checkedBy: "Who looked",
  witness: "Witness",
} as const;

const measures: Record<Measure, (above: string) => string> = {
  "colour-difference": (above) => `a colour difference ΔE00 above ${above}`,
  "yellowness-rise": (above) => `a rise of the yellowness index above ${above}`,
  "shrinkage-a-year": (above) => `more than ${above} of a length lost in a year`,
  "fluid-loss-a-year": (above) => `more than ${above} of the fluid lost in a year`,
};

export const conditionLabels = {
  findings: "Findings",
  noFindings: "Nothing was found.",
  mark: "Mark",
  extent: "Extent",
  ...findingFields,
  findingFields,
  ...checkFields,
  checkFields,
  answers,
  changes,
  witnessedBy: "witnessed by",
  oneSignature: "one signature",
  fitForNothing: "none of these",
  allChecks: "All checks",
  gradeSource: "Grade from the gravest finding and whether it is active (common practice, no source)",
  marksOf: (date: string) => `Marks of the check of ${formatDate(date)}; schematic drawing.`,
  sinceCheck: (date: string) => `Since the check of ${formatDate(date)}`,
  totals: (totals: Readonly<Record<string, number>>) =>
    Object.entries(totals)
      .filter(([, count]) => count > 0)
      .map(([change, count]) => `${count} ${change.replaceAll("-", " ")}`)
      .join(", ") || "no marks",
  change: "Change",
  before: "Before",
  now: "Now",
  nothingChanged: "Every mark is as it was.",
  /** Where the examiner and the figures say different things, both. */
  bothSaid: ({ change, measured, after, answerDiffers }: MarkComparison): string => {
    if (change !== measured) return `as the examiner saw it; by severity and extent ${changes[measured]}`;
    if (answerDiffers && after?.answer)
      return `by severity and extent; the examiner said “${answers[after.answer]}”`;
    return "";
  },
  severities: (meanings: Readonly<Record<string, string>>) =>
    `Severity: ${Object.entries(meanings)
      .map(([severity, meaning]) => `${severity}, ${meaning}`)
      .join("; ")}.`,
  title: "Condition check",
  checkOf: (date: string) => `Condition check of ${formatDate(date)}`,
  backToSpecimen: "To the specimen",
  recorded: "Recorded",
  neverChanged: "Never changed since.",
  onALoan: "On a loan",
  toLoan: "To the loan",
  firstCheck: "No earlier check stands beside this one.",
  photograph: "The photograph of the catalogue. Marks are set on the drawing.",
  earlierFindings: "What was seen before",
  earlierAbout: "Look at each, then say what it is now.",
  newFindings: "What is new",
  newAbout: "Touch the drawing where it is, or add a finding without a mark.",
  addFinding: "Add a finding",
  remove: "Take this finding off",
  touchToMark: "Touch the picture to mark where it is.",
  marked: "marked on the picture",
  notMarked: "not marked on the picture",
  beforeIt: (words: string) => `before: ${words}`,
  measureAgain: "Leave the extent empty where it was not measured again.",
  verdict: "Verdict",
  yes: "yes",
  no: "no",
  signing: "Signature",
  witnessHint: "Two people sign at the four points of a loan. With one name the report says so.",
  crateClosed: (crate: string, notBefore: string | null) =>
    notBefore === null
      ? `Crate ${crate} is still closed. The check there follows once it has been opened and counted.`
      : `Crate ${crate} rests closed, not before ${formatMoment(notBefore)}. The check there follows once it has been opened and counted.`,
  sign: "Sign and record this check",
  fixed: "A recorded check is never changed; a later one stands beside it.",
  lookAgain: "Some fields need another look. Nothing has been recorded yet.",
  cancel: "Back without recording",
  choose: "Choose one; nothing is chosen for you.",
  answerIt: "Say what it is now.",
  sayWhere: "Say where it is.",
  sayWorse: "Say what is worse: severity, extent, or a note.",
  sayBetter: "Say what is better: severity, extent, or a note.",
  units: { extentMm: "mm", extentPercent: "% of the area" },
  between: (most: string, unit: string) => `Between 0 and ${most} ${unit}.`,
  wordsNote: "The words",
  wordsAbout: "are those asked of this preparation, the most telling group first.",
  severityNote: "Severity:",
  measuredNote: "A measurement calls for at least:",
  measured: (measure: Measure, above: string, severity: string) =>
    `${severity} for ${measures[measure](above)}`,
  whereFrom: "Where these come from",
  gradeNote: "The grade is worked out, not typed.",
} as const;
