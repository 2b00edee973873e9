/**
 * Between what a check form holds and the record that it becomes. What is not
 * there yet or cannot be is told field by field, each by its name and in the unit
 * that was typed. What was answered "the same" or "not visible" stays as it was;
 * nothing else is taken over from the check before.
 */
import type { FormIssue } from "#app/_parts/form-state.ts";
import { readNumber } from "#app/_parts/typed-number.ts";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { formatNumber } from "#app/_words/format.ts";
import { sentence, sentenceForIssue } from "#app/_words/sentences.ts";
import { saysWhatChanged } from "#lib/condition/comparison.ts";
import { CheckRecord } from "#lib/condition/recording.ts";
import { type Finding, mostExtent, type Occasion } from "#lib/condition/schema.ts";

export type DraftFinding = {
  markId: string;
  term: string;
  place: string;
  point: { x: number; y: number } | null;
  extentMm: string;
  extentPercent: string;
  severity: string;
  activity: string;
  answer: string;
  note: string;
};

export type EarlierFinding = { number: number; words: string; finding: Finding };

/** An occasion that fits, the first day that it allows, and why. */
export type OfferedOccasion = { occasion: Occasion; from: string | null; tooSoon: string };

/** What is wrong with one field: where it stands, what it is called, and a sentence. */
export type Fault = { name: string; label: string; message: string };

export type CheckForms = {
  about: { specimenId: string; loanId: string | null; today: string; occasions: readonly OfferedOccasion[] };
  earlier: readonly EarlierFinding[];
  /** One for each earlier finding. */
  old: readonly DraftFinding[];
  fresh: readonly DraftFinding[];
  /** The number of the first new finding. */
  firstNew: number;
};

const unmeasured = { extentMm: "", extentPercent: "", severity: "", activity: "", answer: "", note: "" };

export function emptyDraft(markId: string, point: DraftFinding["point"]): DraftFinding {
  return { ...unmeasured, markId, point, term: "", place: "", answer: "new" };
}

/** An earlier finding, neither answered nor measured yet. */
export function draftOf({ finding }: Pick<EarlierFinding, "finding">): DraftFinding {
  const { markId, term, place, picturePoint } = finding;
  return { ...unmeasured, markId, term, place, point: picturePoint ?? null };
}

/** Whether an answer asks for new measures. */
export function asksForMeasures(answer: string): boolean {
  return answer === "worse" || answer === "better" || answer === "new";
}

export const verdictNames = ["fitToShow", "fitToHandle", "fitToTravel"] as const;

/** A field of the finding with a number, as the form calls it. */
export const nameOf = (number: number, field: string) => `finding-${number}-${field}`;

type FindingField = keyof typeof labels.findingFields;
const isFindingField = (field: string): field is FindingField => Object.hasOwn(labels.findingFields, field);

function faultOf(number: number, field: FindingField, message: string): Fault {
  return { name: nameOf(number, field), label: `${number}. ${labels.findingFields[field]}`, message };
}

function extentFaults(number: number, draft: DraftFinding): Fault[] {
  return (["extentMm", "extentPercent"] as const).flatMap((field) => {
    const value = readNumber(draft[field]);
    if (value === null) return [];
    if (Number.isNaN(value)) return [faultOf(number, field, fieldWords.notANumber)];
    const most = mostExtent[field];
    return value >= 0 && value <= most
      ? []
      : [faultOf(number, field, labels.between(formatNumber(most), labels.units[field]))];
  });
}

/** What is missing of a finding that is measured. */
function measureFaults(number: number, draft: DraftFinding): Fault[] {
  const empty = (["term", "place", "severity", "activity"] as const).filter(
    (field) => draft[field].trim() === "",
  );
  return [
    ...empty.map((field) => faultOf(number, field, field === "place" ? labels.sayWhere : labels.choose)),
    ...extentFaults(number, draft),
  ];
}

/** What was measured of a finding, as the record holds it. */
function measuresOf(draft: DraftFinding) {
  const extentMm = readNumber(draft.extentMm);
  const extentPercent = readNumber(draft.extentPercent);
  return {
    ...(extentMm === null ? {} : { extentMm }),
    ...(extentPercent === null ? {} : { extentPercent }),
    severity: draft.severity as Finding["severity"],
    activity: draft.activity as Finding["activity"],
    note: draft.note.trim(),
  };
}

function oldFaults({ earlier, old }: CheckForms): Fault[] {
  return earlier.flatMap(({ number, finding }, index) => {
    const draft = old[index];
    if (!draft || draft.answer === "") return [faultOf(number, "answer", labels.answerIt)];
    if (!asksForMeasures(draft.answer)) return [];
    const faults = measureFaults(number, draft);
    if (faults.length > 0 || saysWhatChanged(finding, measuresOf(draft))) return faults;
    return [faultOf(number, "severity", draft.answer === "worse" ? labels.sayWorse : labels.sayBetter)];
  });
}

const textIn = (fields: FormData, name: string) => String(fields.get(name) ?? "").trim();

/** The faults of what is not about a single finding. */
function formFaults({ about }: CheckForms, fields: FormData): Fault[] {
  const fault = (name: keyof typeof labels.checkFields, message: string) => ({
    name,
    label: labels.checkFields[name],
    message,
  });
  const faults = [...verdictNames, "occasion" as const]
    .filter((name) => textIn(fields, name) === "")
    .map((name) => fault(name, labels.choose));
  const checkedOn = textIn(fields, "checkedOn");
  const offered = about.occasions.find(({ occasion }) => occasion === textIn(fields, "occasion"));
  if (checkedOn > about.today) faults.push(fault("checkedOn", sentence("check.in-future")));
  else if (checkedOn !== "" && offered?.from && checkedOn < offered.from)
    faults.push(fault("checkedOn", offered.tooSoon));
  return faults;
}

function oldFinding({ finding }: EarlierFinding, draft: DraftFinding) {
  if (draft.answer === "") return finding;
  if (draft.answer === "same" || draft.answer === "not-visible") return { ...finding, answer: draft.answer };
  const { markId, term, place, picturePoint, activity } = finding;
  return {
    markId,
    term,
    place,
    ...(picturePoint ? { picturePoint } : {}),
    ...(draft.answer === "gone" ? { severity: "none", activity, note: "" } : measuresOf(draft)),
    answer: draft.answer,
  };
}

function freshFinding(draft: DraftFinding) {
  const { markId, term, place, point, answer } = draft;
  return { markId, term, place, ...(point ? { picturePoint: point } : {}), ...measuresOf(draft), answer };
}

function recordOf({ about, earlier, old, fresh }: CheckForms, fields: FormData): unknown {
  const [fitToShow, fitToHandle, fitToTravel] = verdictNames.map((name) => textIn(fields, name) === "yes");
  const witness = textIn(fields, "witness");
  return {
    specimenId: about.specimenId,
    loanId: about.loanId,
    occasion: textIn(fields, "occasion"),
    checkedOn: textIn(fields, "checkedOn"),
    check: {
      findings: [
        ...earlier.map((known, index) => oldFinding(known, old[index] ?? draftOf(known))),
        ...fresh.map(freshFinding),
      ],
      verdict: { fitToShow, fitToHandle, fitToTravel },
      grounds: textIn(fields, "grounds"),
      checkedBy: textIn(fields, "checkedBy"),
      ...(witness === "" ? {} : { witness }),
    },
  };
}

/** What the schema or the server said of a record, at the fields of the form; what has no field is left out. */
export function faultsOfIssues(forms: CheckForms, issues: readonly FormIssue[]): Fault[] {
  const { earlier, firstNew } = forms;
  return issues.flatMap(({ path, message }): Fault[] => {
    const [, index, inside] = /^check\.findings\.(\d+)\.(\w+)/.exec(path) ?? [];
    if (index !== undefined && inside !== undefined) {
      const number = earlier[Number(index)]?.number ?? firstNew + Number(index) - earlier.length;
      return isFindingField(inside) ? [faultOf(number, inside, message)] : [];
    }
    const name = path.split(".").at(-1) ?? "";
    const label = Object.entries(labels.checkFields).find(([field]) => field === name)?.[1];
    return label === undefined ? [] : [{ name, label, message }];
  });
}

/** Where a field stands in the form; findings come first. */
const placeOf = ({ name }: Fault) => Object.keys(labels.checkFields).indexOf(name);

/** The record, or what is wrong with it in the order of the form: one sentence a field. */
export function readCheck(
  forms: CheckForms,
  fields: FormData,
): { record: CheckRecord } | { faults: Fault[] } {
  const read = CheckRecord.safeParse(recordOf(forms, fields));
  const told = [
    ...oldFaults(forms),
    ...forms.fresh.flatMap((draft, index) => measureFaults(forms.firstNew + index, draft)),
    ...formFaults(forms, fields),
    ...faultsOfIssues(
      forms,
      (read.error?.issues ?? []).map((issue) => ({
        path: issue.path.join("."),
        message: sentenceForIssue(issue.message),
      })),
    ),
  ];
  const faults = told
    .filter(({ name }, index) => told.findIndex((one) => one.name === name) === index)
    .sort((first, second) => placeOf(first) - placeOf(second));
  return read.success && faults.length === 0 ? { record: read.data } : { faults };
}
