/**
 * The rules run anew, by the program itself, for every loan that the database
 * noted because consent, a licence or a venue changed, and for those whose papers
 * ended by the calendar. Nothing is kept where nothing changed. Where something got
 * worse the registrars are written to; nothing is undone and nothing is barred that
 * is on its way home.
 */
import { keepRun } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import {
  type ChangeOccasion,
  changeOccasions,
  countWorse,
  findingsSinceRelease,
} from "#lib/loans/judged-again.ts";
import { lineStatesSinceRelease } from "#lib/loans/loan-state.ts";
import { loanCaseOf } from "#lib/loans/queries/loan-case.ts";
import type { Work } from "#lib/people/command.ts";
import { programViewer, type Viewer } from "#lib/people/viewer.ts";
import { now } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, toDateText } from "#lib/platform/dates.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { runDifference } from "#lib/suitability/run-difference.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import { judgeSuitability } from "#lib/suitability/suitability.ts";

/** Loans at one look; the next look takes the rest. */
const most = 200;

/** The name under which the audit knows it. */
const act = "judgeAgain";

/** What was noted of a loan, taken off the notes; none where another server was first. */
async function takeNotes({ transaction }: Work, loanId: string): Promise<ChangeOccasion[]> {
  const rows = await transaction.$queryRaw<
    { occasion: string }[]
  >`DELETE FROM loan_to_judge WHERE loan_id = ${loanId}::uuid RETURNING occasion`;
  return changeOccasions.filter((occasion) => rows.some((row) => row.occasion === occasion));
}

/** @returns whether an evaluation was kept */
async function judge(work: Work, loanId: string): Promise<boolean> {
  const { transaction, today } = work;
  await transaction.$queryRaw`SELECT 1 FROM loan WHERE id = ${loanId}::uuid FOR NO KEY UPDATE`;
  const occasions = await takeNotes(work, loanId);
  const [occasion] = occasions;
  const last = await transaction.suitabilityRun.findFirst({
    where: { loanId },
    orderBy: [{ runAt: "desc" }, { id: "desc" }],
  });
  const loanCase = await loanCaseOf(transaction, loanId, today);
  if (!occasion || !last || loanCase.row.closedAt !== null) return false;
  const before = last.findings as unknown as Finding[];
  const found = judgeSuitability(loanCase.request, loanCase.subjects);
  const hasLeft = loanCase.lines.some(({ state }) => lineStatesSinceRelease.includes(state));
  const findings = hasLeft ? findingsSinceRelease(before, found, occasions) : found;
  if (runDifference(before, findings).length === 0) return false;
  await keepRun(work, loanId, occasion, findings, loanCase);
  const count = countWorse(before, findings);
  if (count > 0) await writeLetters(work, loanId, "judged-worse", { count });
  return true;
}

/**
 * @param viewer whose act it is: the program's
 * @returns how many evaluations were kept
 * @throws what went wrong with a loan, after the others were judged
 */
export async function judgeAgain(viewer: Viewer = programViewer): Promise<number> {
  const noted = await database().loanToJudge.findMany({
    distinct: ["loanId"],
    select: { loanId: true },
    orderBy: [{ loanId: "asc" }],
    take: most,
  });
  const troubles: unknown[] = [];
  let kept = 0;
  for (const { loanId } of noted) {
    try {
      const moment = now();
      const wasKept = await inTransaction(viewer, act, (transaction) =>
        judge({ viewer, transaction, now: moment, today: toDateText(moment) }, loanId),
      );
      if (wasKept) kept += 1;
    } catch (trouble) {
      troubles.push(trouble);
    }
  }
  if (troubles.length > 0) throw troubles[0];
  return kept;
}

/** Days back from which an end is looked at, so that a day without the program is made up for. */
const daysBack = 7;

/** Notes the loans whose consent, permit, licence or facility report ended in these days. */
export async function noteWhatEnded(viewer: Viewer = programViewer): Promise<void> {
  const today = toDateText(now());
  const from = addDays(today, -daysBack);
  await inTransaction(viewer, act, async (transaction) => {
    await transaction.$executeRaw`
      INSERT INTO loan_to_judge (loan_id, occasion, transaction_id)
      SELECT DISTINCT loan.id, ended.occasion, pg_current_xact_id()::text::bigint
      FROM loan JOIN (
        SELECT loan_line.loan_id, 'consent changed' AS occasion
        FROM consent
        JOIN specimen_donor ON specimen_donor.donor_code = consent.donor_code
        JOIN loan_line ON loan_line.specimen_id = specimen_donor.specimen_id
        WHERE consent.superseded_by_id IS NULL
          AND (consent.valid_until BETWEEN ${from}::date AND ${today}::date
            OR consent.withdrawal_effective_on BETWEEN ${from}::date AND ${today}::date)
        UNION
        SELECT loan_line.loan_id, 'licence changed'
        FROM permit JOIN loan_line ON loan_line.specimen_id = permit.specimen_id
        WHERE permit.valid_until BETWEEN ${from}::date AND ${today}::date
          OR permit.withdrawn_on BETWEEN ${from}::date AND ${today}::date
        UNION
        SELECT loan.id, 'licence changed'
        FROM licence JOIN loan ON loan.venue_id = licence.venue_id
        WHERE licence.valid_until BETWEEN ${from}::date AND ${today}::date
        UNION
        SELECT loan.id, 'venue changed'
        FROM facility_report JOIN loan ON loan.venue_id = facility_report.venue_id
        WHERE facility_report.valid_until BETWEEN ${from}::date AND ${today}::date
      ) AS ended ON ended.loan_id = loan.id
      WHERE loan.closed_at IS NULL AND loan.submitted_at IS NOT NULL
      ON CONFLICT DO NOTHING`;
  });
}
