/** Words of the condition pages, in English. */
import { formatDate } from "#app/_words/format.ts";

export const conditionLabels = {
  findings: "Findings",
  noFindings: "Nothing was found.",
  mark: "Mark",
  term: "What",
  place: "Where",
  extent: "Extent",
  extentMm: "Extent, mm",
  extentPercent: "or % of the area",
  severity: "Severity",
  activity: "Activity",
  note: "Note",
  witness: "witnessed by",
  oneSignature: "one signature",
  fitForNothing: "none of these",
  allChecks: "All checks",
  sinceBefore: "Since the check before:",
  gradeSource: "Grade from the gravest finding and whether it is active (common practice, no source)",
  marksOf: (date: string) => `Marks of the check of ${formatDate(date)}; schematic drawing.`,
  totals: (totals: Readonly<Record<string, number>>) =>
    Object.entries(totals)
      .filter(([, count]) => count > 0)
      .map(([change, count]) => `${count} ${change.replaceAll("-", " ")}`)
      .join(", ") || "no marks",
  severities: (meanings: Readonly<Record<string, string>>) =>
    `Severity: ${Object.entries(meanings)
      .map(([severity, meaning]) => `${severity}, ${meaning}`)
      .join("; ")}.`,
  title: "Condition check",
  firstCheck: "No earlier check stands beside this one.",
  before: "Before",
  now: "Now",
  earlierFindings: "What was seen before. Now it is",
  answers: {
    same: "the same",
    worse: "worse",
    better: "better",
    gone: "gone",
    "not-visible": "not visible",
    new: "new",
  },
  newFindings: "New",
  addFinding: "Add a finding",
  remove: "Take this finding off",
  touchToMark: "Touch the picture to mark where it is.",
  marked: "marked on the picture",
  notMarked: "not marked on the picture",
  verdict: "Verdict",
  fitToShow: "Fit to show",
  fitToHandle: "Fit to handle",
  fitToTravel: "Fit to travel",
  yes: "yes",
  no: "no",
  grounds: "Grounds",
  checkedBy: "Who looked",
  witnessField: "Witness",
  witnessHint: "Two people sign at the four points of a loan. With one name the report says so.",
  checkedOn: "Checked on",
  occasion: "Occasion",
  sign: "Sign and record this check",
  fixed: "A recorded check is never changed; a later one stands beside it.",
  lookAgain: "Some fields need another look. Nothing has been recorded yet.",
  cancel: "Back without recording",
  nothingChosen: "Choose an answer for each earlier finding and each verdict; nothing is chosen for you.",
} as const;
