/**
 * Writing a check. It is permanent: it stands beside the one before and never over
 * it. The grade is computed, not typed. Who may look on which occasion is decided
 * above, where loans are known.
 */
import { checkBeside } from "#lib/condition/beside.ts";
import { type DayFloor, floorsOf, requireCheckDay } from "#lib/condition/check-day.ts";
import { type CheckComparison, compareChecks } from "#lib/condition/comparison.ts";
import { type Grade, gradeOf } from "#lib/condition/grade.ts";
import { type CheckSheet, checksOfLoan, latestChecksOf } from "#lib/condition/queries.ts";
import type { CheckRecord } from "#lib/condition/recording.ts";
import type { Work } from "#lib/people/command.ts";
import { toDate, toDateTextOrNull } from "#lib/platform/dates.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";

export type RecordedCheck = {
  id: Id;
  grade: Grade;
  /** Against the check that it was made beside; null for the first one. */
  totals: CheckComparison["totals"] | null;
  needsReview: boolean;
};

/** Locks the specimen, so that its checks stand one after the other. */
async function takeSpecimen({ transaction }: Work, specimenId: string) {
  await transaction.$queryRaw`SELECT 1 FROM specimen WHERE id = ${specimenId}::uuid FOR NO KEY UPDATE`;
  const row = await transaction.specimen.findUnique({
    where: { id: specimenId },
    select: { preparedOn: true, acquiredOn: true },
  });
  if (row === null) throw notFound("specimen");
  return { preparedOn: toDateTextOrNull(row.preparedOn), acquiredOn: toDateTextOrNull(row.acquiredOn) };
}

/** The checks that a new one may be made beside, the newest first. */
async function earlierChecks(
  { transaction }: Work,
  { specimenId, loanId }: CheckRecord,
): Promise<CheckSheet[]> {
  const latest = (await latestChecksOf(transaction, [specimenId])).get(specimenId);
  if (latest === undefined) return [];
  const ofLoan = loanId === null ? [] : ((await checksOfLoan(transaction, loanId)).get(specimenId) ?? []);
  return [latest, ...ofLoan.toReversed()];
}

/**
 * @param floors what the occasion says of the day, beside what the specimen says
 * @throws {Refusal} for a specimen that is not there, and for a day on which the check cannot have been made
 */
export async function writeCheck(
  work: Work,
  input: CheckRecord,
  floors: readonly DayFloor[],
): Promise<RecordedCheck> {
  const { specimenId, loanId, occasion, checkedOn, check } = input;
  const specimen = await takeSpecimen(work, specimenId);
  const earlier = await earlierChecks(work, input);
  requireCheckDay(checkedOn, work.today, [...floors, ...floorsOf(specimen, earlier[0]?.checkedOn ?? null)]);
  const id = newId();
  const grade = gradeOf(check.findings);
  await work.transaction.conditionCheck.create({
    data: {
      id,
      recordedAt: work.now,
      specimenId,
      loanId,
      occasion,
      checkedOn: toDate(checkedOn),
      checkedBy: check.checkedBy,
      accountId: work.viewer.accountId,
      witness: check.witness ?? null,
      ...check.verdict,
      grounds: check.grounds,
      grade,
    },
  });
  await work.transaction.finding.createMany({
    data: check.findings.map((found) => ({
      id: newId(),
      checkId: id,
      markId: found.markId,
      term: found.term,
      place: found.place,
      x: found.picturePoint?.x ?? null,
      y: found.picturePoint?.y ?? null,
      extentMm: found.extentMm ?? null,
      extentPercent: found.extentPercent ?? null,
      severity: found.severity,
      activity: found.activity,
      answer: found.answer ?? "",
      note: found.note,
    })),
  });
  const beside = checkBeside(input, earlier);
  const comparison = beside === null ? null : compareChecks(beside, check);
  return { id, grade, totals: comparison?.totals ?? null, needsReview: comparison?.needsReview ?? false };
}
