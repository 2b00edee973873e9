/**
 * Reads of provenance. What a donor allowed is shown without the donor: who may
 * not see the pseudonym reads "donor 1", "donor 2" in its place, and no id that
 * would tie two specimens to one person. The sealed record is never read here;
 * it is opened by a command, which leaves a look behind.
 *
 * A part without a donor of its own comes from the donors of the nearest whole
 * that has some; a whole comes from the donors of its parts as well.
 */
import type { Prisma } from "#.generated/prisma/client.ts";
import { maySee, requireSight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { type DateText, toDate, toDateTextOrNull } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { type ConsentStatus, consentStatusOn } from "#lib/provenance/consent-status.ts";
import { permitOn } from "#lib/provenance/permit-standing.ts";
import {
  type ConsentFacts,
  type ConsentInput,
  DonorCode,
  type PermitInput,
  type PermitRecord,
  type ProvenanceFacts,
  type TitleInput,
} from "#lib/provenance/schema.ts";
import { toConsent, toConsentFacts, toPermit, toTitle } from "#lib/provenance/stored.ts";
import { type StrictestConsent, strictestConsent } from "#lib/provenance/strictest.ts";

type Reader = Database | Transaction;

/** A page by key: rows after the key, as many as asked for. */
export type Page = { after?: string | null; limit?: number };
const mostRows = 200;
export const rowsAsked = (page: Page) => Math.min(Math.max(Math.trunc(page.limit ?? 50) || 1, 1), mostRows);
/** A key that is none begins at the beginning. */
const afterCode = (page: Page) =>
  DonorCode.safeParse(page.after).success ? { gt: page.after as string } : {};

const current = { supersededById: null } as const;
const newestFirst = [
  { recordedAt: "desc" },
  { id: "desc" },
] as const satisfies Prisma.ConsentOrderByWithRelationInput[];

/** The donors of each specimen, its parts and, where it has none, its whole considered. */
async function donorCodesOf(reader: Reader, specimenIds: readonly string[]): Promise<Map<string, string[]>> {
  const rows = await reader.$queryRaw<{ root: string; donor_code: string; distance: number }[]>`
    WITH RECURSIVE
      asked AS (SELECT DISTINCT unnest(${[...specimenIds]}::uuid[]) AS id),
      below (root, id) AS (
        SELECT id, id FROM asked
        UNION SELECT below.root, specimen.id FROM below JOIN specimen ON specimen.whole_id = below.id
      ),
      above (root, id, distance) AS (
        SELECT asked.id, specimen.whole_id, 1 FROM asked JOIN specimen ON specimen.id = asked.id
          WHERE specimen.whole_id IS NOT NULL
        UNION SELECT above.root, specimen.whole_id, above.distance + 1 FROM above JOIN specimen ON specimen.id = above.id
          WHERE specimen.whole_id IS NOT NULL AND above.distance < 32
      )
    SELECT below.root::text AS root, donor_code, 0 AS distance
      FROM below JOIN specimen_donor ON specimen_donor.specimen_id = below.id
    UNION SELECT above.root::text, donor_code, above.distance
      FROM above JOIN specimen_donor ON specimen_donor.specimen_id = above.id
    ORDER BY root, distance, donor_code`;
  const nearest = new Map<string, number>();
  const codes = new Map<string, string[]>();
  for (const { root, donor_code: code, distance } of rows) {
    if (!nearest.has(root)) nearest.set(root, distance);
    if (nearest.get(root) !== distance) continue;
    codes.set(root, [...(codes.get(root) ?? []), code]);
  }
  return codes;
}

const byKindAndNumber = [
  { kind: "asc" },
  { number: "asc" },
] as const satisfies Prisma.PermitOrderByWithRelationInput[];

/** What rules may know of specimens today, for a command or query that has already authorised. Every id has an entry. */
export async function provenanceFactsOf(
  reader: Reader,
  specimenIds: readonly string[],
): Promise<Map<string, ProvenanceFacts>> {
  const ids = [...new Set(specimenIds)];
  if (ids.length === 0) return new Map();
  const donorCodes = await donorCodesOf(reader, ids);
  const where = { specimenId: { in: ids } };
  const consents = await reader.consent.findMany({
    where: { ...current, donorCode: { in: [...new Set([...donorCodes.values()].flat())] } },
    include: { answers: true },
  });
  const permits = await reader.permit.findMany({ where, orderBy: [...byKindAndNumber] });
  const titles = await reader.title.findMany({ where });

  const consentOf = new Map(consents.map((row) => [row.donorCode, toConsentFacts(row)]));
  const permitsOf = new Map<string, PermitInput[]>(ids.map((id) => [id, []]));
  const day = today();
  for (const row of permits) {
    const counts = permitOn(toPermit(row), day);
    if (counts) permitsOf.get(row.specimenId)?.push(counts);
  }
  const titleOf = new Map(titles.map((row) => [row.specimenId, toTitle(row)]));
  return new Map(
    ids.map((id) => {
      const codes = donorCodes.get(id) ?? [];
      const given = codes.flatMap((code) => consentOf.get(code) ?? []);
      return [
        id,
        {
          consents: given,
          donorsWithoutConsent: codes.length - given.length,
          permits: permitsOf.get(id) ?? [],
          title: titleOf.get(id) ?? null,
        },
      ];
    }),
  );
}

/** A consent as it stands on a specimen's sheet. */
export type ConsentSheet = Omit<ConsentFacts, "consentId" | "donorCode"> & {
  /** The pseudonym, or "donor 1" for who may not see it. */
  donor: string;
  status: ConsentStatus;
};

/** One opening of a sealed record: whose, by whom, why, when. */
export type SealedLook = { donorCode: string; by: string; reason: string; lookedAt: Date };

export type ProvenanceSheet = {
  specimenId: string;
  accessionNumber: string;
  human: boolean;
  /** How many donors are known; null when consent is not for the viewer. */
  donorCount: number | null;
  donorsWithoutConsent: number | null;
  consents: ConsentSheet[] | null;
  /** The strictest of them today; donors stand in it as in `consents`. */
  strictest: StrictestConsent | null;
  donorCodes: string[] | null;
  /** Donors linked to this very specimen, without those of its parts and whole. */
  linkedDonorCodes: string[] | null;
  /** Those that count today. */
  permits: PermitInput[];
  /** Every permit as it was stated, those taken back included. */
  permitRecords: PermitRecord[];
  title: TitleInput | null;
  looks: SealedLook[] | null;
};

async function looksAt(reader: Reader, donorCodes: readonly string[]): Promise<SealedLook[]> {
  const rows = await reader.donorLook.findMany({
    where: { donorCode: { in: [...donorCodes] } },
    orderBy: { lookedAt: "desc" },
    take: 500,
  });
  const accounts = await reader.account.findMany({
    where: { id: { in: [...new Set(rows.map(({ accountId }) => accountId))] } },
    select: { id: true, name: true },
  });
  const nameOf = new Map(accounts.map(({ id, name }) => [id, name]));
  return rows.map(({ donorCode, accountId, reason, lookedAt }) => ({
    donorCode,
    by: nameOf.get(accountId) ?? accountId,
    reason,
    lookedAt,
  }));
}

export async function getProvenance(viewer: Viewer, specimenId: string): Promise<ProvenanceSheet> {
  if (!Id.safeParse(specimenId).success) throw notFound("specimen");
  const specimen = await database().specimen.findUnique({
    where: { id: specimenId },
    select: { accessionNumber: true, human: true, donors: { orderBy: { donorCode: "asc" } } },
  });
  if (!specimen) throw notFound("specimen");
  const facts = (await provenanceFactsOf(database(), [specimenId])).get(specimenId);
  if (!facts) throw notFound("specimen");
  const codes = (await donorCodesOf(database(), [specimenId])).get(specimenId) ?? [];
  const permits = await database().permit.findMany({
    where: { specimenId },
    orderBy: [...byKindAndNumber],
  });

  const seesScopes = maySee(viewer, "consentScopes");
  const seesCodes = maySee(viewer, "donorCode");
  const day = today();
  const shown = facts.consents.map((consent, index) => ({
    ...consent,
    donorCode: seesCodes ? consent.donorCode : `donor ${index + 1}`,
  }));
  return {
    specimenId,
    accessionNumber: specimen.accessionNumber,
    human: specimen.human,
    donorCount: seesScopes ? codes.length : null,
    donorsWithoutConsent: seesScopes ? facts.donorsWithoutConsent : null,
    consents: seesScopes
      ? shown.map(({ consentId, donorCode: donor, ...consent }) => ({
          ...consent,
          donor,
          status: consentStatusOn(consent, day),
        }))
      : null,
    strictest: seesScopes && specimen.human ? strictestConsent({ ...facts, consents: shown }, day) : null,
    donorCodes: seesCodes ? codes : null,
    linkedDonorCodes: seesCodes ? specimen.donors.map(({ donorCode }) => donorCode) : null,
    permits: facts.permits,
    permitRecords: permits.map(toPermit),
    title: facts.title,
    looks: maySee(viewer, "sealedLooks") ? await looksAt(database(), codes) : null,
  };
}

export type ConsentRecord = ConsentInput & {
  id: string;
  withdrawalReceivedOn: DateText | null;
  withdrawalEffectiveOn: DateText | null;
  status: ConsentStatus;
  /** Whether a later form has taken its place. */
  superseded: boolean;
  recordedAt: Date;
};

export type DonorSheet = {
  code: string;
  specimens: { id: string; accessionNumber: string; title: string }[];
  /** The current one first, then earlier ones, newest first. */
  consents: ConsentRecord[];
  sealedRecordKept: boolean;
  looks: SealedLook[] | null;
};

export async function getDonor(viewer: Viewer, code: string): Promise<DonorSheet> {
  requireSight(viewer, "donorCode");
  if (!DonorCode.safeParse(code).success) throw notFound("donor");
  const donor = await database().donor.findUnique({
    where: { code },
    include: {
      consents: { include: { answers: true }, orderBy: [...newestFirst] },
      specimens: {
        include: { specimen: { select: { id: true, accessionNumber: true, title: true } } },
        orderBy: { specimen: { accessionNumber: "asc" } },
        take: 2_000,
      },
    },
  });
  if (!donor) throw notFound("donor");
  const day = today();
  const consents = donor.consents.map((row) => {
    const withdrawal = {
      withdrawalReceivedOn: toDateTextOrNull(row.withdrawalReceivedOn),
      withdrawalEffectiveOn: toDateTextOrNull(row.withdrawalEffectiveOn),
    };
    const consent = toConsent(row);
    return {
      ...consent,
      ...withdrawal,
      id: row.id,
      status: consentStatusOn({ ...consent, ...withdrawal }, day),
      superseded: row.supersededById !== null,
      recordedAt: row.recordedAt,
    };
  });
  // The table itself is sealed; that something was put into it is in the audit.
  const kept = await database().auditEntry.findFirst({
    where: { tableName: "donor_identity", rowKey: code },
    select: { id: true },
  });
  return {
    code,
    specimens: donor.specimens.map(({ specimen }) => specimen),
    consents: consents.sort((first, second) => Number(first.superseded) - Number(second.superseded)),
    sealedRecordKept: kept !== null,
    looks: maySee(viewer, "sealedLooks") ? await looksAt(database(), [code]) : null,
  };
}

export type DonorRow = {
  code: string;
  specimens: number;
  /** The current consent; null where there is no form. */
  consent: { basis: string; signedOn: DateText | null; status: ConsentStatus } | null;
};

export async function listDonors(
  viewer: Viewer,
  page: Page = {},
): Promise<{ rows: DonorRow[]; next: string | null }> {
  requireSight(viewer, "donorCode");
  const limit = rowsAsked(page);
  const found = await database().donor.findMany({
    where: { code: afterCode(page) },
    orderBy: { code: "asc" },
    take: limit + 1,
    include: { consents: { where: current, take: 1 }, _count: { select: { specimens: true } } },
  });
  const day = today();
  const rows = found.slice(0, limit).map(({ code, consents: [consent], _count }) => ({
    code,
    specimens: _count.specimens,
    consent: consent
      ? {
          basis: consent.basis,
          signedOn: toDateTextOrNull(consent.signedOn),
          status: consentStatusOn(
            {
              validUntil: toDateTextOrNull(consent.validUntil),
              reviewDueOn: toDateTextOrNull(consent.reviewDueOn),
              withdrawalReceivedOn: toDateTextOrNull(consent.withdrawalReceivedOn),
              withdrawalEffectiveOn: toDateTextOrNull(consent.withdrawalEffectiveOn),
            },
            day,
          ),
        }
      : null,
  }));
  return { rows, next: found.length > limit ? (rows.at(-1)?.code ?? null) : null };
}

export type ConsentToReview = {
  donorCode: string;
  specimens: number;
  status: ConsentStatus;
  reviewDueOn: DateText | null;
};

/** Current consents that were withdrawn, or whose review or last day falls before the given day. */
export async function listConsentsToReview(
  viewer: Viewer,
  filter: { before: DateText },
  page: Page = {},
): Promise<{ rows: ConsentToReview[]; next: string | null }> {
  requireSight(viewer, "donorCode");
  const limit = rowsAsked(page);
  const before = { lt: toDate(filter.before) };
  const found = await database().consent.findMany({
    where: {
      ...current,
      donorCode: afterCode(page),
      OR: [{ reviewDueOn: before }, { validUntil: before }, { withdrawalReceivedOn: { not: null } }],
    },
    orderBy: { donorCode: "asc" },
    take: limit + 1,
    include: { donor: { select: { _count: { select: { specimens: true } } } }, answers: true },
  });
  const day = today();
  const rows = found.slice(0, limit).map((row) => {
    const consent = toConsentFacts(row);
    return {
      donorCode: row.donorCode,
      specimens: row.donor._count.specimens,
      status: consentStatusOn(consent, day),
      reviewDueOn: consent.reviewDueOn,
    };
  });
  return { rows, next: found.length > limit ? (rows.at(-1)?.donorCode ?? null) : null };
}
