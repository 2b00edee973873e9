/** Between what a check form holds and the record it becomes. */
import type { DraftFinding } from "#app/_parts/check-form-finding.tsx";
import type { EarlierFinding } from "#app/_parts/check-material.tsx";
import { readNumber } from "#app/_parts/typed-number.ts";

export function emptyDraft(): DraftFinding {
  return {
    markId: crypto.randomUUID(),
    term: "",
    place: "",
    point: null,
    extentMm: "",
    extentPercent: "",
    severity: "",
    activity: "",
    answer: "new",
    note: "",
  };
}

/** An earlier finding, not answered yet. */
export function draftOf({ finding }: EarlierFinding): DraftFinding {
  return {
    markId: finding.markId,
    term: finding.term,
    place: finding.place,
    point: finding.picturePoint ?? null,
    extentMm: finding.extentMm === undefined ? "" : String(finding.extentMm),
    extentPercent: finding.extentPercent === undefined ? "" : String(finding.extentPercent),
    severity: finding.severity,
    activity: finding.activity,
    answer: "",
    note: finding.note,
  };
}

const verdictNames = ["fitToShow", "fitToHandle", "fitToTravel"] as const;

/** Whether something still waits for a choice. */
export function unanswered(
  old: readonly DraftFinding[],
  fresh: readonly DraftFinding[],
  fields: FormData,
): boolean {
  return (
    old.some((finding) => finding.answer === "") ||
    fresh.some((finding) => finding.severity === "" || finding.term === "" || finding.activity === "") ||
    verdictNames.some((name) => fields.get(name) === null)
  );
}

function findingOf(draft: DraftFinding) {
  const gone = draft.answer === "gone";
  const [extentMm, extentPercent] = gone
    ? [null, null]
    : [readNumber(draft.extentMm), readNumber(draft.extentPercent)];
  return {
    markId: draft.markId,
    term: draft.term,
    place: draft.place,
    ...(draft.point ? { picturePoint: draft.point } : {}),
    ...(extentMm === null ? {} : { extentMm }),
    ...(extentPercent === null ? {} : { extentPercent }),
    severity: gone ? "none" : draft.severity,
    activity: draft.activity,
    answer: draft.answer,
    note: draft.note,
  };
}

/** The record as the schema reads it; it may still be refused. */
export function recordOf(
  about: { specimenId: string; loanId: string | null },
  old: readonly DraftFinding[],
  fresh: readonly DraftFinding[],
  fields: FormData,
): unknown {
  const text = (name: string) => String(fields.get(name) ?? "").trim();
  const [fitToShow, fitToHandle, fitToTravel] = verdictNames.map((name) => text(name) === "yes");
  return {
    specimenId: about.specimenId,
    loanId: about.loanId,
    occasion: text("occasion"),
    checkedOn: text("checkedOn"),
    check: {
      findings: [...old, ...fresh].map(findingOf),
      verdict: { fitToShow, fitToHandle, fitToTravel },
      grounds: text("grounds"),
      checkedBy: text("checkedBy"),
      ...(text("witness") ? { witness: text("witness") } : {}),
    },
  };
}
