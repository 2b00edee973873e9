/**
 * Checks with their marks. A mark keeps its identity from check to check, so its
 * id follows from the specimen and the key of the mark. What a check does not
 * name is as it was; the examiner's answer follows from the check that stood
 * beside: home from a loan, the one before it left. Checks of one specimen are
 * told in the order of their days.
 */
import { v5 } from "uuid";
import { compareChecks } from "#lib/condition/comparison.ts";
import type { Finding, Occasion } from "#lib/condition/schema.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";
import type { DateText } from "#lib/platform/dates.ts";
import type { World } from "#seed/loading/world.ts";
import type { AccountKey } from "#seed/scenario/accounts.ts";
import type { Mark, Reading } from "#seed/scenario/shape.ts";

const markNamespace = "5b0c1d5e-2f64-4d0e-9a55-0c8a3f3f1d77";

function findingOf(
  accessionNumber: string,
  key: string,
  { term, place, x, y }: Mark,
  reading: Reading,
): Finding {
  const { severity, activity, mm, percent, note } = reading;
  return {
    markId: v5(`${accessionNumber}/${key}`, markNamespace),
    term,
    place,
    ...(x === undefined || y === undefined ? {} : { picturePoint: { x, y } }),
    ...(mm === undefined ? {} : { extentMm: mm }),
    ...(percent === undefined ? {} : { extentPercent: percent }),
    severity,
    activity,
    note: note ?? "",
  };
}

/** The findings of the checks before specimens left, by loan and specimen. */
const findingsOut = new WeakMap<World, Map<string, Finding[]>>();

function outOf(world: World): Map<string, Finding[]> {
  const known = findingsOut.get(world) ?? new Map<string, Finding[]>();
  findingsOut.set(world, known);
  return known;
}

/** What the examiner says of each mark beside an earlier check. */
function answer(before: readonly Finding[] | undefined, now: readonly Finding[]): Finding[] {
  if (before === undefined) return [...now];
  const changes = new Map(
    compareChecks({ findings: before }, { findings: now }).marks.map(({ markId, change }) => [
      markId,
      change,
    ]),
  );
  return now.map((finding) => {
    const change = changes.get(finding.markId);
    return change === undefined || change === "not-looked-at" ? finding : { ...finding, answer: change };
  });
}

export type CheckStory = {
  accessionNumber: string;
  on: DateText;
  by: AccountKey;
  occasion: Occasion;
  loanId: string | null;
  readings: Record<string, Reading>;
  newMarks?: Record<string, Mark>;
  fit: { show: boolean; handle: boolean; travel: boolean };
  grounds: string;
  witness?: string;
};

export async function recordCheckOf(world: World, story: CheckStory): Promise<void> {
  const { accessionNumber, on, by, occasion, loanId, readings, newMarks = {}, fit, grounds, witness } = story;
  const marks = { ...world.marks.get(accessionNumber), ...newMarks };
  world.marks.set(accessionNumber, marks);
  const before = world.lastFindings.get(accessionNumber);
  const named = Object.entries(readings).map(([key, reading]) => {
    const mark = marks[key];
    if (!mark)
      throw new Error(`A check of ${accessionNumber} reads the mark "${key}", which it does not have.`);
    return findingOf(accessionNumber, key, mark, reading);
  });
  const namedIds = new Set(named.map(({ markId }) => markId));
  const asBefore = (before ?? [])
    .filter(({ markId, severity }) => !namedIds.has(markId) && severity !== "none")
    .map(({ answer: _answer, ...finding }) => ({ ...finding, note: "" }));
  const leaving = `${loanId} ${accessionNumber}`;
  const beside = occasion === "home" ? (outOf(world).get(leaving) ?? before) : before;
  const findings = answer(beside, [...asBefore, ...named]);
  if (occasion === "out") outOf(world).set(leaving, findings);
  const viewer = world.as(by);
  await recordCheck(viewer, {
    specimenId: world.specimen(accessionNumber),
    loanId,
    occasion,
    checkedOn: on,
    check: {
      findings,
      verdict: { fitToShow: fit.show, fitToHandle: fit.handle, fitToTravel: fit.travel },
      grounds,
      checkedBy: viewer.name,
      ...(witness === undefined ? {} : { witness }),
    },
  });
  world.lastFindings.set(accessionNumber, findings);
  world.lastFit.set(accessionNumber, fit);
}
