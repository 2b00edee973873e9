/** The venue of a loan against what its specimens need, for who may see facility facts. */
import type { ClimateComparison } from "#lib/environment/venue-climate.ts";
import { climateDeviations, type FacilityDeviation, facilityDeviations } from "#lib/loans/facility-needs.ts";
import { requireLoanFile } from "#lib/loans/queries/own-loan.ts";
import { endedStates } from "#lib/loans/transitions.ts";
import { answersFromFacts } from "#lib/people/facility-report.ts";
import { maySee } from "#lib/people/permission.ts";
import { newestReportOf } from "#lib/people/queries/facility.ts";
import { venueFactsOf } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { type DateText, toDateText } from "#lib/platform/dates.ts";
import { specimenFactsOf } from "#lib/specimens/queries.ts";
import { isPublicShow, type RequestFacts } from "#lib/suitability/rules/case.ts";
import { displayDays } from "#lib/suitability/rules/climate.ts";

export type FacilityOfLoan = {
  venueId: string;
  venue: string;
  report: { version: number; reportedOn: DateText; validUntil: DateText; reportedBy: string } | null;
  needs: FacilityDeviation[];
  climate: ClimateComparison[];
};

/** Null for who may not see it, and for a loan without specimens. */
export async function facilityOfLoan(viewer: Viewer, loanId: string): Promise<FacilityOfLoan | null> {
  const institutionId = await requireLoanFile(viewer, loanId);
  if (!maySee(viewer, "facilityFacts", { institutionId })) return null;
  const loan = await database().loan.findUniqueOrThrow({
    where: { id: loanId },
    select: {
      venueId: true,
      purpose: true,
      teachingUse: true,
      audience: true,
      paidAdmission: true,
      startsOn: true,
      endsOn: true,
      lines: { where: { state: { notIn: [...endedStates] } }, select: { specimenId: true } },
    },
  });
  if (loan.lines.length === 0) return null;
  const [venue, report, facts] = await Promise.all([
    venueFactsOf(database(), loan.venueId),
    newestReportOf(database(), loan.venueId),
    specimenFactsOf(
      database(),
      loan.lines.map(({ specimenId }) => specimenId),
    ),
  ]);
  const specimens = [...facts.values()];
  const days = displayDays({
    startsOn: toDateText(loan.startsOn),
    endsOn: toDateText(loan.endsOn),
    venue,
  });
  return {
    venueId: loan.venueId,
    venue: venue.name,
    report: report && {
      version: report.version,
      reportedOn: report.reportedOn,
      validUntil: report.validUntil,
      reportedBy: report.reportedBy,
    },
    needs: facilityDeviations(
      specimens,
      {
        handled: loan.purpose === "teaching" && loan.teachingUse === "handling",
        publicShow: isPublicShow({
          audience: loan.audience as RequestFacts["audience"],
          paidAdmission: loan.paidAdmission,
        }),
      },
      report?.answers ?? answersFromFacts(venue),
    ),
    climate: climateDeviations(specimens, venue, days),
  };
}
