/**
 * Reads of institutions, venues and accounts. A borrower sees the own institution
 * and its venues; facility facts are confidential to the two sides.
 */
import { z } from "zod";
import type { Prisma } from "#.generated/prisma/client.ts";
import { requireSight } from "#lib/people/permission.ts";
import { type PracticeFigures, practiceOf } from "#lib/people/practice.ts";
import {
  AccountInput,
  CentreSettings,
  InstitutionInput,
  type VenueFacts,
  VenueInput,
} from "#lib/people/schema.ts";
import { isBorrower, type Role, type Viewer } from "#lib/people/viewer.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { toDateText, toDateTextOrNull } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";

type Reader = Database | Transaction;

/** The viewer behind a signed-in account, or null when the account is closed. */
export async function findViewer(accountId: string): Promise<Viewer | null> {
  const account = await database().account.findUnique({ where: { id: accountId } });
  if (!account?.active) return null;
  const { id, name, email, roles, institutionId } = account;
  return { accountId: id, name, email, roles: roles as Role[], institutionId };
}

/** Where the settings keep what the centre says of itself, and the names that it had before. */
export const centreKeys = { settings: "centre", formerNames: "centre's former names" } as const;

/** What the centre says of itself. @throws {Refusal} "not-found" before it was configured */
export async function centreSettings(reader: Reader = database()): Promise<CentreSettings> {
  const setting = await reader.setting.findUnique({ where: { key: centreKeys.settings } });
  if (!setting) throw notFound("centre");
  return CentreSettings.parse(setting.value);
}

/** The figures by which the house lends; the defaults before it was configured. */
export async function practiceHere(reader: Reader = database()): Promise<PracticeFigures> {
  return practiceOf((await findCentre(reader))?.settings.practice);
}

/** The centre with the names that it had before: custody is written by name and never changed. */
export type Centre = { settings: CentreSettings; formerNames: string[] };

/** The centre, or null before it was configured. */
export async function findCentre(reader: Reader): Promise<Centre | null> {
  const rows = await reader.setting.findMany({ where: { key: { in: Object.values(centreKeys) } } });
  const kept = (key: string) => rows.find((row) => row.key === key)?.value;
  const settings = kept(centreKeys.settings);
  if (settings === undefined) return null;
  const formerNames = z.array(z.string()).parse(kept(centreKeys.formerNames) ?? []);
  return { settings: CentreSettings.parse(settings), formerNames };
}

/** The centre's name, where its catalogue is open to the public. @throws {Refusal} "not-found" where it is not */
export async function openCatalogueOf(reader: Reader): Promise<{ name: string; email: string }> {
  const centre = await findCentre(reader);
  if (centre?.settings.publicCatalogue !== true) throw notFound("catalogue");
  const { name, email } = centre.settings;
  return { name, email };
}

/** The centre for everybody of the house. */
export async function getCentre(viewer: Viewer): Promise<Centre | null> {
  requireSight(viewer, "institutions");
  return await findCentre(database());
}

const venueParts = {
  passages: { orderBy: { position: "asc" } },
  licences: true,
  reports: { orderBy: { version: "desc" }, take: 1, select: { validUntil: true } },
} as const satisfies Prisma.VenueInclude;
type VenueRow = Prisma.VenueGetPayload<{ include: typeof venueParts }>;

function toVenue(row: VenueRow): VenueFacts {
  const { passages, licences, reportedOn, reports, ...facts } = row;
  const venue = VenueInput.parse({
    ...facts,
    reportedOn: toDateTextOrNull(reportedOn),
    passages,
    licences: licences.map((licence) => ({
      ...licence,
      validFrom: toDateTextOrNull(licence.validFrom),
      validUntil: toDateTextOrNull(licence.validUntil),
    })),
  });
  const [report] = reports;
  return { ...venue, id: row.id, reportServesUntil: report ? toDateText(report.validUntil) : null };
}

/** A venue as rules read it, for a command that has already authorised. */
export async function venueFactsOf(reader: Reader, venueId: string): Promise<VenueFacts> {
  const row = await reader.venue.findUnique({ where: { id: venueId }, include: venueParts });
  if (!row) throw notFound("venue");
  return toVenue(row);
}

export async function getVenue(viewer: Viewer, venueId: string): Promise<VenueFacts> {
  if (!Id.safeParse(venueId).success) throw notFound("venue");
  const venue = await venueFactsOf(database(), venueId);
  requireSight(viewer, "facilityFacts", { institutionId: venue.institutionId });
  return venue;
}

/** The venues somebody may ask a loan for: name and place only. */
export async function listVenueNames(
  viewer: Viewer,
): Promise<{ id: string; name: string; institutionId: string; institution: string; countryCode: string }[]> {
  const rows = await database().venue.findMany({
    where: isBorrower(viewer)
      ? { institutionId: viewer.institutionId ?? "00000000-0000-0000-0000-000000000000" }
      : {},
    include: { institution: { select: { name: true } } },
    orderBy: [{ institution: { name: "asc" } }, { name: "asc" }],
    take: 500,
  });
  return rows.map(({ id, name, institutionId, institution, countryCode }) => ({
    id,
    name,
    institutionId,
    institution: institution.name,
    countryCode,
  }));
}

export type InstitutionRow = {
  id: string;
  name: string;
  kind: string;
  city: string;
  countryCode: string;
  standing: string;
  venues: number;
  loans: number;
};

export async function listInstitutions(viewer: Viewer): Promise<InstitutionRow[]> {
  requireSight(viewer, "institutions");
  const rows = await database().institution.findMany({
    orderBy: { name: "asc" },
    include: { _count: { select: { venues: true, loans: true } } },
    take: 500,
  });
  return rows.map(({ id, name, kind, city, countryCode, standing, _count }) => ({
    id,
    name,
    kind,
    city,
    countryCode,
    standing,
    venues: _count.venues,
    loans: _count.loans,
  }));
}

export type InstitutionSheet = InstitutionInput & { id: string; venues: VenueFacts[] };

export async function getInstitution(viewer: Viewer, institutionId: string): Promise<InstitutionSheet> {
  if (!Id.safeParse(institutionId).success) throw notFound("institution");
  const row = await database().institution.findUnique({
    where: { id: institutionId },
    include: { venues: { include: venueParts, orderBy: { name: "asc" } } },
  });
  if (!row) throw notFound("institution");
  requireSight(viewer, "facilityFacts", { institutionId });
  const { venues, verifiedOn, ...facts } = row;
  const institution = InstitutionInput.parse({ ...facts, verifiedOn: toDateTextOrNull(verifiedOn) });
  return { ...institution, id: row.id, venues: venues.map(toVenue) };
}

export async function listAccounts(viewer: Viewer): Promise<(AccountInput & { id: string })[]> {
  requireSight(viewer, "accounts");
  const rows = await database().account.findMany({ orderBy: { name: "asc" }, take: 1_000 });
  return rows.map((row) => ({ ...AccountInput.parse(row), id: row.id }));
}
