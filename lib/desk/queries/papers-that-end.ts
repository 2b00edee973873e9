/**
 * Papers that end within some days: insurance and licences of an institution's
 * venues for whoever may see its facts, permits and consents for the house. A
 * consent is told by the specimen's number and names no donor.
 */
import type { FeedEvent } from "#lib/desk/calendar-events.ts";
import { maySee } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { type DateText, toDate, toDateText } from "#lib/platform/dates.ts";

const mostOfAKind = 300;
type Days = { gte: Date; lte: Date };

const isWithin = (day: Date | null, { gte, lte }: Days): day is Date =>
  day !== null && day >= gte && day <= lte;

async function insurancesThatEnd(own: { institutionId?: string }, days: Days): Promise<FeedEvent[]> {
  const rows = await database().insurance.findMany({
    where: { validUntil: days, ...own },
    include: { institution: { select: { name: true } } },
    take: mostOfAKind,
  });
  return rows.map(({ id, institutionId, institution, insurer, validUntil }) => ({
    key: `insurance ${id}`,
    code: "calendar.insurance-ends",
    parameters: { institution: institution.name, insurer },
    when: { day: toDateText(validUntil) },
    address: `/institutions/${institutionId}`,
    rows: [{ table: "insurance", key: id }],
  }));
}

async function licencesThatEnd(own: { institutionId?: string }, days: Days): Promise<FeedEvent[]> {
  const rows = await database().licence.findMany({
    where: { validUntil: days, venue: own },
    include: { venue: { select: { name: true, institution: { select: { name: true } } } } },
    take: mostOfAKind,
  });
  return rows.flatMap(({ id, venueId, venue, kind, number, validUntil }) =>
    validUntil === null
      ? []
      : [
          {
            key: `licence ${id}`,
            code: "calendar.licence-ends",
            parameters: { institution: venue.institution.name, venue: venue.name, kind, number },
            when: { day: toDateText(validUntil) },
            address: `/venues/${venueId}`,
            rows: [{ table: "licence", key: id }],
          },
        ],
  );
}

async function permitsThatEnd(days: Days): Promise<FeedEvent[]> {
  const rows = await database().permit.findMany({
    where: { validUntil: days, withdrawnOn: null },
    include: { specimen: { select: { accessionNumber: true } } },
    take: mostOfAKind,
  });
  return rows.flatMap(({ id, specimenId, specimen, kind, validUntil }) =>
    validUntil === null
      ? []
      : [
          {
            key: `permit ${id}`,
            code: "calendar.permit-ends",
            parameters: { specimen: specimen.accessionNumber, kind },
            when: { day: toDateText(validUntil) },
            address: `/specimens/${specimenId}/provenance`,
            rows: [{ table: "permit", key: id }],
          },
        ],
  );
}

/** The last day of a consent, and the day on which it is to be looked at again. */
async function consentsThatEnd(days: Days): Promise<FeedEvent[]> {
  const current = { supersededById: null };
  const linked = await database().specimenDonor.findMany({
    where: {
      donor: { consents: { some: { ...current, OR: [{ reviewDueOn: days }, { validUntil: days }] } } },
    },
    select: {
      specimenId: true,
      specimen: { select: { accessionNumber: true } },
      donor: {
        select: { consents: { where: current, select: { id: true, reviewDueOn: true, validUntil: true } } },
      },
    },
    orderBy: { specimen: { accessionNumber: "asc" } },
    take: mostOfAKind,
  });
  return linked.flatMap(({ specimenId, specimen, donor }) =>
    donor.consents.flatMap(({ id, reviewDueOn, validUntil }) => {
      const event = (code: string, key: string, day: Date): FeedEvent => ({
        key: `${key} ${specimenId} ${toDateText(day)}`,
        code,
        parameters: { specimen: specimen.accessionNumber },
        when: { day: toDateText(day) },
        address: `/specimens/${specimenId}/provenance`,
        rows: [{ table: "consent", key: id }],
      });
      return [
        ...(isWithin(reviewDueOn, days) ? [event("calendar.consent-review", "consent", reviewDueOn)] : []),
        ...(isWithin(validUntil, days) ? [event("calendar.consent-ends", "consent-end", validUntil)] : []),
      ];
    }),
  );
}

/** What of it the viewer may see; a borrower what is their own institution's. */
export async function papersThatEnd(viewer: Viewer, from: DateText, until: DateText): Promise<FeedEvent[]> {
  const days = { gte: toDate(from), lte: toDate(until) };
  const own = isBorrower(viewer) ? { institutionId: viewer.institutionId ?? "" } : {};
  const facility = maySee(viewer, "facilityFacts", { institutionId: viewer.institutionId });
  const provenance = maySee(viewer, "consentScopes");
  return [
    ...(facility ? await insurancesThatEnd(own, days) : []),
    ...(facility ? await licencesThatEnd(own, days) : []),
    ...(provenance ? await permitsThatEnd(days) : []),
    ...(provenance ? await consentsThatEnd(days) : []),
  ];
}
