/**
 * Recording a check. It is permanent: it stands beside the one before and never
 * over it. The grade is computed, not typed. A borrower records only checks of
 * specimens that are with it, on its own loan.
 */
import { type CheckComparison, compareChecks } from "#lib/condition/comparison.ts";
import { type Grade, gradeOf } from "#lib/condition/grade.ts";
import { latestChecksOf } from "#lib/condition/queries.ts";
import { borrowerOccasions, CheckRecord } from "#lib/condition/recording.ts";
import { command, type Work } from "#lib/people/command.ts";
import { authorise } from "#lib/people/permission.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { toDate } from "#lib/platform/dates.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

export type RecordedCheck = {
  id: Id;
  grade: Grade;
  /** Against the check before; null for the first one. */
  totals: CheckComparison["totals"] | null;
  needsReview: boolean;
};

/** The loan that a check belongs to has the specimen on it, and is the borrower's own. */
async function requireLine(work: Work, { loanId, specimenId, occasion }: CheckRecord): Promise<void> {
  if (isBorrower(work.viewer) && (loanId === null || !borrowerOccasions.includes(occasion)))
    throw new Refusal("conflict", "check.not-on-this-occasion", { occasion });
  if (loanId === null) return;
  const line = await work.transaction.loanLine.findUnique({
    where: { loanId_specimenId: { loanId, specimenId } },
    select: { loan: { select: { borrowerId: true } } },
  });
  if (line === null)
    throw isBorrower(work.viewer) ? notFound("loan") : new Refusal("conflict", "check.not-on-loan");
  authorise(work.viewer, "recordCheck", { institutionId: line.loan.borrowerId });
}

export const recordCheck = command(
  "recordCheck",
  CheckRecord,
  async (work, input): Promise<RecordedCheck> => {
    const { specimenId, loanId, occasion, checkedOn, check } = input;
    await requireLine(work, input);
    if (checkedOn > work.today) throw new Refusal("conflict", "check.in-future", { checkedOn });
    const specimen = await work.transaction.specimen.findUnique({
      where: { id: specimenId },
      select: { id: true },
    });
    if (specimen === null) throw notFound("specimen");
    const earlier = (await latestChecksOf(work.transaction, [specimenId])).get(specimenId) ?? null;
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
    const comparison = earlier === null ? null : compareChecks(earlier, check);
    return { id, grade, totals: comparison?.totals ?? null, needsReview: comparison?.needsReview ?? false };
  },
);
