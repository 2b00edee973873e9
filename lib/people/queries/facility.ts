/** A venue's facility reports, and an institution's insurance, for who may see facility facts. */
import { FacilityAnswers } from "#lib/people/facility-report.ts";
import type { InsuranceInput } from "#lib/people/insurance.ts";
import { requireSight } from "#lib/people/permission.ts";
import { getVenue } from "#lib/people/queries.ts";
import type { VenueFacts } from "#lib/people/schema.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { type DateText, toDateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";

export type FacilityVersion = {
  version: number;
  answers: FacilityAnswers;
  reportedOn: DateText;
  validUntil: DateText;
  reportedBy: string;
  filedAt: string;
};

type Row = Awaited<ReturnType<Database["facilityReport"]["findMany"]>>[number];

function toVersion(row: Row): FacilityVersion {
  return {
    version: row.version,
    answers: FacilityAnswers.parse(row.answers),
    reportedOn: toDateText(row.reportedOn),
    validUntil: toDateText(row.validUntil),
    reportedBy: row.reportedBy,
    filedAt: row.filedAt.toISOString(),
  };
}

const mostVersions = 50;

/** The newest version's answers, for who has authorised; null where nobody has reported. */
export async function newestReportOf(
  reader: Database | Transaction,
  venueId: string,
): Promise<FacilityVersion | null> {
  const row = await reader.facilityReport.findFirst({ where: { venueId }, orderBy: { version: "desc" } });
  return row === null ? null : toVersion(row);
}

export type VenueSheet = {
  venue: VenueFacts;
  institution: string;
  /** BCP 47 tags, as the institution states them. */
  languages: string[];
  /** The newest first. */
  reports: FacilityVersion[];
};

/** @throws {Refusal} "not-found" also for a venue of another institution */
export async function getVenueSheet(viewer: Viewer, venueId: string): Promise<VenueSheet> {
  const venue = await getVenue(viewer, venueId);
  const [institution, rows] = await Promise.all([
    database().institution.findUniqueOrThrow({
      where: { id: venue.institutionId },
      select: { name: true, languages: true },
    }),
    database().facilityReport.findMany({
      where: { venueId },
      orderBy: { version: "desc" },
      take: mostVersions,
    }),
  ]);
  return {
    venue,
    institution: institution.name,
    languages: institution.languages,
    reports: rows.map(toVersion),
  };
}

export type InsuranceSheet = Omit<InsuranceInput, "id"> & { id: string };

/** The one that ends last comes first. */
export async function listInsurances(viewer: Viewer, institutionId: string): Promise<InsuranceSheet[]> {
  requireSight(viewer, "facilityFacts", { institutionId });
  if (!Id.safeParse(institutionId).success) return [];
  const rows = await database().insurance.findMany({
    where: { institutionId },
    orderBy: [{ validUntil: "desc" }, { policyNumber: "asc" }],
    take: 100,
  });
  return rows.map(({ amountMinor, validFrom, validUntil, ...row }) => ({
    ...row,
    minor: Number(amountMinor),
    validFrom: toDateText(validFrom),
    validUntil: toDateText(validUntil),
  }));
}
