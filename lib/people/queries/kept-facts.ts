/**
 * What is kept of the venues of an institution, and of the institution itself, so
 * that a request need not state it again: the way there, climate and light, the
 * last facility report, licences, insurance. Facility facts and policies are
 * confidential to the two sides; who may not see them learns only until when
 * papers count.
 */
import type { Prisma } from "#.generated/prisma/client.ts";
import { maySee } from "#lib/people/permission.ts";
import type { VenueClimate } from "#lib/people/schema.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { type DateText, toDateText, toDateTextOrNull } from "#lib/platform/dates.ts";

export type KeptPaper = {
  /** What it is: the kind of a licence, the name of an insurer; empty where it may not be seen. */
  what: string;
  number: string;
  validUntil: DateText | null;
};

export type KeptFacts = {
  venueId: string;
  address: string;
  countryCode: string;
  /** Null for who may not see facility facts. */
  climate: Pick<
    VenueClimate,
    "temperatureLowC" | "temperatureHighC" | "humidityLow" | "humidityHigh" | "illuminanceLx"
  > | null;
  /** Doors, turns and lifts that are described on the way in. */
  passages: number;
  /** When the facts of the venue were last reported; null where nobody has. */
  reportedOn: DateText | null;
  report: { version: number; reportedOn: DateText; validUntil: DateText } | null;
  licences: KeptPaper[];
  insurances: KeptPaper[];
};

const parts = {
  licences: { orderBy: [{ kind: "asc" }, { number: "asc" }] },
  reports: { orderBy: { version: "desc" }, take: 1 },
  institution: { select: { insurances: { orderBy: { validUntil: "desc" } } } },
  _count: { select: { passages: true } },
} as const satisfies Prisma.VenueInclude;

/** By venue; nothing of another institution's venues for who borrows. */
export async function keptFactsOf(viewer: Viewer, institutionId: string): Promise<KeptFacts[]> {
  const subject = { institutionId };
  if (!maySee(viewer, "loanFile", subject)) return [];
  const seesAll = maySee(viewer, "facilityFacts", subject);
  const rows = await database().venue.findMany({
    where: { institutionId },
    include: parts,
    orderBy: { name: "asc" },
  });
  const paper = (what: string, number: string, validUntil: Date | null): KeptPaper => ({
    what: seesAll ? what : "",
    number: seesAll ? number : "",
    validUntil: toDateTextOrNull(validUntil),
  });
  return rows.map((row) => {
    const { temperatureLowC, temperatureHighC, humidityLow, humidityHigh, illuminanceLx } = row;
    const [report] = row.reports;
    return {
      venueId: row.id,
      address: row.address,
      countryCode: row.countryCode,
      climate: seesAll
        ? { temperatureLowC, temperatureHighC, humidityLow, humidityHigh, illuminanceLx }
        : null,
      passages: row._count.passages,
      reportedOn: toDateTextOrNull(row.reportedOn),
      report: report
        ? {
            version: report.version,
            reportedOn: toDateText(report.reportedOn),
            validUntil: toDateText(report.validUntil),
          }
        : null,
      licences: row.licences.map(({ kind, number, validUntil }) => paper(kind, number, validUntil)),
      insurances: row.institution.insurances.map(({ insurer, policyNumber, validUntil }) =>
        paper(insurer, policyNumber, validUntil),
      ),
    };
  });
}
