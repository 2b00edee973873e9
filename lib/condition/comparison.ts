/**
 * Two checks of one specimen, mark by mark: what is new, worse, better, gone or
 * the same, and what was not looked at. Of the figures, severity decides first; at
 * equal severity the extent does, beyond what two people reading the same mark
 * differ by (1 mm or a tenth of the larger, whichever is more; 1 % of the area or
 * a tenth: common practice, no source). Who had both in view and said worse or
 * better is believed before the figures, which stand beside. A mark without
 * severity that only one of the checks mentions is left out; every other mark
 * appears exactly once.
 */
import { type Answer, type Finding, severityFigure } from "#lib/condition/schema.ts";

export const markChanges = ["new", "worse", "same", "better", "gone", "not-looked-at"] as const;
export type MarkChange = (typeof markChanges)[number];

/** What two readings of one mark may differ by without a change. */
export type ReadingTolerance = { mm: number; percentOfArea: number; share: number };
export const customaryTolerance: ReadingTolerance = { mm: 1, percentOfArea: 1, share: 0.1 };

export type MarkComparison = {
  markId: string;
  /** What counts: the examiner's worse or better, else what the figures say. */
  change: MarkChange;
  /** What severity and extent say by themselves. */
  measured: MarkChange;
  /** Null when the check has no such mark. */
  before: Finding | null;
  after: Finding | null;
  /** Steps of severity, positive when it rose; null when one side was not seen. */
  severityRise: number | null;
  /** Whether an extent in the same unit stands on both sides. */
  extentCompared: boolean;
  /** It was not active before and is now. */
  becameActive: boolean;
  /** The examiner's own answer says something else than what counts. */
  answerDiffers: boolean;
};

export type CheckComparison = {
  /** In the order of the earlier check, then what is new. */
  marks: MarkComparison[];
  totals: Record<MarkChange, number>;
  /** The gravest of what is new or worse; null when nothing is. */
  worst: MarkComparison | null;
  /** A mark is new, its severity rose, or it is worse by the examiner's word alone: someone must look at it again. */
  needsReview: boolean;
  /** Every mark of the earlier check was looked at. */
  complete: boolean;
};

/** Whether anything of a finding says what became worse or better: a measure, its activity, or a note. */
export function saysWhatChanged(
  before: Pick<Finding, "severity" | "activity" | "extentMm" | "extentPercent">,
  after: Pick<Finding, "severity" | "activity" | "extentMm" | "extentPercent" | "note">,
): boolean {
  const measured = (["extentMm", "extentPercent"] as const).some(
    (extent) => after[extent] !== undefined && after[extent] !== before[extent],
  );
  return (
    measured ||
    after.severity !== before.severity ||
    after.activity !== before.activity ||
    after.note.trim() !== ""
  );
}

type Checked = { readonly findings: readonly Finding[] };

/** -1 smaller, 0 within the tolerance, 1 larger; null when it cannot be compared. */
function compareExtent(before: number | undefined, after: number | undefined, least: number, share: number) {
  if (before === undefined || after === undefined) return null;
  const tolerance = Math.max(least, share * Math.max(before, after));
  // The slack keeps 10.1 − 9.1 from counting as more than 1.
  if (Math.abs(after - before) <= tolerance + 1e-9) return 0;
  return after > before ? 1 : -1;
}

function measuredChange(before: Finding, after: Finding, tolerance: ReadingTolerance) {
  const severityRise = severityFigure(after.severity) - severityFigure(before.severity);
  const extents = [
    compareExtent(before.extentMm, after.extentMm, tolerance.mm, tolerance.share),
    compareExtent(before.extentPercent, after.extentPercent, tolerance.percentOfArea, tolerance.share),
  ].filter((extent) => extent !== null);
  const extentCompared = extents.length > 0;
  let measured: MarkChange = "same";
  if (severityRise > 0) measured = "worse";
  else if (after.severity === "none" && severityRise < 0) measured = "gone";
  else if (severityRise < 0) measured = "better";
  else if (extents.includes(1)) measured = "worse";
  else if (extents.includes(-1)) measured = "better";
  return { measured, severityRise, extentCompared };
}

/** What is gone is gone whatever was said of it; and what was not there before can only be new. */
function changeThatCounts(measured: MarkChange, answer: Answer | undefined): MarkChange {
  if (measured === "new" || measured === "gone") return measured;
  return answer === "worse" || answer === "better" ? answer : measured;
}

function compareMark(
  markId: string,
  before: Finding | null,
  after: Finding | null,
  tolerance: ReadingTolerance,
): MarkComparison | null {
  const notLookedAt: MarkComparison = {
    markId,
    change: "not-looked-at",
    measured: "not-looked-at",
    before,
    after,
    severityRise: null,
    extentCompared: false,
    becameActive: false,
    answerDiffers: false,
  };
  if (after === null) return before === null || before.severity === "none" ? null : notLookedAt;
  if (after.answer === "not-visible") return notLookedAt;
  if (before === null && after.severity === "none") return null;
  const seen =
    before === null
      ? { measured: "new" as const, severityRise: severityFigure(after.severity), extentCompared: false }
      : measuredChange(before, after, tolerance);
  const change = changeThatCounts(seen.measured, after.answer);
  return {
    markId,
    before,
    after,
    ...seen,
    change,
    becameActive: before?.activity !== "active" && after.activity === "active",
    answerDiffers: after.answer !== undefined && after.answer !== change,
  };
}

/** Orders by severity reached, then by steps risen, then by extent. */
function graver(first: MarkComparison, second: MarkComparison): boolean {
  const rank = ({ after, severityRise }: MarkComparison) => [
    after === null ? 0 : severityFigure(after.severity),
    severityRise ?? 0,
    after?.extentMm ?? 0,
    after?.extentPercent ?? 0,
  ];
  const [left, right] = [rank(first), rank(second)];
  for (let place = 0; place < left.length; place++) {
    const difference = (left[place] ?? 0) - (right[place] ?? 0);
    if (difference !== 0) return difference > 0;
  }
  return false;
}

/** Compares a later check with the earlier one that it was made beside. */
export function compareChecks(
  earlier: Checked,
  later: Checked,
  tolerance: ReadingTolerance = customaryTolerance,
): CheckComparison {
  const before = new Map(earlier.findings.map((finding) => [finding.markId, finding]));
  const after = new Map(later.findings.map((finding) => [finding.markId, finding]));
  const marks: MarkComparison[] = [];
  for (const markId of new Set([...before.keys(), ...after.keys()])) {
    const mark = compareMark(markId, before.get(markId) ?? null, after.get(markId) ?? null, tolerance);
    if (mark !== null) marks.push(mark);
  }
  const totals: Record<MarkChange, number> = {
    new: 0,
    worse: 0,
    same: 0,
    better: 0,
    gone: 0,
    "not-looked-at": 0,
  };
  let worst: MarkComparison | null = null;
  for (const mark of marks) {
    totals[mark.change] += 1;
    const declined = mark.change === "new" || mark.change === "worse";
    if (declined && (worst === null || graver(mark, worst))) worst = mark;
  }
  return {
    marks,
    totals,
    worst,
    needsReview: marks.some(
      (mark) => (mark.severityRise ?? 0) > 0 || (mark.change === "worse" && mark.measured !== "worse"),
    ),
    complete: totals["not-looked-at"] === 0,
  };
}
