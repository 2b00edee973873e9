/**
 * Filing a facility report as the next version of a venue, with the plain facts,
 * the way in and the licences that follow from it in the same act. A report that
 * was written from an older version than the newest is refused, so that nobody's
 * answers are lost unseen.
 */
import { command, refuseDaysToCome } from "#lib/people/command.ts";
import {
  FileFacilityReportInput,
  factsOfReport,
  monthsLater,
  reportMonths,
} from "#lib/people/facility-report.ts";
import { authorise } from "#lib/people/permission.ts";
import { findCentre, venueFactsOf } from "#lib/people/queries.ts";
import { Licence, Passage } from "#lib/people/schema.ts";
import type { Transaction } from "#lib/platform/database.ts";
import { toDate, toDateOrNull, toDateText } from "#lib/platform/dates.ts";
import { canonicalText } from "#lib/platform/hash.ts";
import { newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

/** The way in and the licences replace what was stated before; what is the same stays untouched. */
export async function stateWayAndLicences(
  transaction: Transaction,
  venueId: string,
  stated: { passages: readonly Passage[]; licences: readonly Licence[] },
): Promise<void> {
  const before = await venueFactsOf(transaction, venueId);
  const passages = stated.passages.map((passage) => Passage.parse(passage));
  const licences = stated.licences.map((licence) => Licence.parse(licence));
  const sorted = (rows: readonly Licence[]) => rows.map(canonicalText).sort();
  if (canonicalText(before.passages) !== canonicalText(passages)) {
    await transaction.passage.deleteMany({ where: { venueId } });
    await transaction.passage.createMany({
      data: passages.map((passage, index) => ({ id: newId(), venueId, position: index + 1, ...passage })),
    });
  }
  if (canonicalText(sorted(before.licences)) !== canonicalText(sorted(licences))) {
    await transaction.licence.deleteMany({ where: { venueId } });
    await transaction.licence.createMany({
      data: licences.map(({ validFrom, validUntil, ...licence }) => ({
        id: newId(),
        venueId,
        ...licence,
        validFrom: toDateOrNull(validFrom),
        validUntil: toDateOrNull(validUntil),
      })),
    });
  }
}

export const fileFacilityReport = command(
  "fileFacilityReport",
  FileFacilityReportInput,
  async (work, input): Promise<{ version: number }> => {
    const { transaction, viewer } = work;
    const { venueId, answers, reportedOn } = input;
    refuseDaysToCome(work, { reportedOn });
    // Two who file at once do so one after the other.
    await transaction.$executeRaw`SELECT 1 FROM venue WHERE id = ${venueId}::uuid FOR UPDATE`;
    const venue = await transaction.venue.findUnique({
      where: { id: venueId },
      include: { reports: { orderBy: { version: "desc" }, take: 1 } },
    });
    if (!venue) throw notFound("venue");
    authorise(viewer, "fileFacilityReport", { institutionId: venue.institutionId });
    const [newest] = venue.reports;
    if ((newest?.version ?? 0) !== input.follows)
      throw new Refusal("conflict", "facility.superseded", { version: newest?.version ?? 0 });
    if (newest && reportedOn < toDateText(newest.reportedOn))
      throw new Refusal("invalid", "input.invalid", {}, [
        { path: "reportedOn", message: "facility.earlier-than-last" },
      ]);
    const months = (await findCentre(transaction))?.settings.facilityReportMonths ?? reportMonths;
    const version = input.follows + 1;
    await transaction.facilityReport.create({
      data: {
        id: newId(),
        venueId,
        version,
        answers: answers as object,
        reportedOn: toDate(reportedOn),
        validUntil: toDate(monthsLater(reportedOn, months)),
        reportedBy: input.reportedBy,
        accountId: viewer.accountId,
        filedAt: work.now,
      },
    });
    await transaction.venue.update({
      where: { id: venueId },
      data: { ...factsOfReport(answers), reportedOn: toDate(reportedOn) },
    });
    await stateWayAndLicences(transaction, venueId, answers);
    return { version };
  },
);
