/** Venues where something is, with their newest report; and insurance near its end. For who may file or keep them. */
import type { DueItem } from "#lib/desk/due.ts";
import {
  dueFromInsurances,
  dueFromVenues,
  type InsuranceForDesk,
  type VenueInUse,
} from "#lib/desk/due-facility.ts";
import { mayDo } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, type DateText, toDate, toDateText } from "#lib/platform/dates.ts";

const most = 500;
const nowhere = "00000000-0000-0000-0000-000000000000";

const ownOnly = (viewer: Viewer) =>
  isBorrower(viewer) ? { institutionId: viewer.institutionId ?? nowhere } : {};

async function venuesInUse(viewer: Viewer): Promise<VenueInUse[]> {
  if (!mayDo(viewer, "fileFacilityReport")) return [];
  const there = { lines: { some: { state: { in: ["resting at venue", "at venue"] } } } };
  const rows = await database().venue.findMany({
    where: { ...ownOnly(viewer), loans: { some: there } },
    select: {
      id: true,
      name: true,
      institution: { select: { name: true } },
      reports: { orderBy: { version: "desc" }, take: 1, select: { reportedOn: true, validUntil: true } },
      loans: { where: there, orderBy: { startsOn: "asc" }, select: { number: true, startsOn: true } },
    },
    orderBy: { name: "asc" },
    take: most,
  });
  return rows.flatMap(({ id, name, institution, reports: [report], loans: [loan] }) =>
    loan === undefined
      ? []
      : [
          {
            venueId: id,
            venue: name,
            institution: institution.name,
            loan: loan.number,
            since: toDateText(loan.startsOn),
            report: report
              ? { reportedOn: toDateText(report.reportedOn), validUntil: toDateText(report.validUntil) }
              : null,
          },
        ],
  );
}

/** How long after its end an insurance is still asked after; later the institution has none, which its page says. */
const remembered = 60;

async function insurancesEnding(viewer: Viewer, day: DateText): Promise<InsuranceForDesk[]> {
  if (!mayDo(viewer, "keepInsurance")) return [];
  const rows = await database().insurance.findMany({
    where: { ...ownOnly(viewer), validUntil: { gt: toDate(addDays(day, -remembered)) } },
    select: {
      id: true,
      institutionId: true,
      insurer: true,
      policyNumber: true,
      validUntil: true,
      institution: { select: { name: true } },
    },
    orderBy: { validUntil: "asc" },
    take: most,
  });
  return rows.map((row) => ({
    id: row.id,
    institutionId: row.institutionId,
    institution: row.institution.name,
    insurer: row.insurer,
    policyNumber: row.policyNumber,
    validUntil: toDateText(row.validUntil),
    isFollowed: rows.some(
      (other) => other.institutionId === row.institutionId && other.validUntil > row.validUntil,
    ),
  }));
}

export async function dueFacility(viewer: Viewer, day: DateText): Promise<DueItem[]> {
  const [venues, insurances] = await Promise.all([venuesInUse(viewer), insurancesEnding(viewer, day)]);
  return [...dueFromVenues(venues, day), ...dueFromInsurances(insurances, day)];
}
