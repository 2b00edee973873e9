/**
 * Reads of the audit: the whole of it by page, and what happened to the rows of
 * one record. The newest entry comes first. Ids of other records are read as the
 * names people know them by; who acted is read from the accounts.
 */
import { z } from "zod";
import type { Prisma } from "#.generated/prisma/client.ts";
import {
  type AuditedTable,
  type Change,
  changesOf,
  hasPageOf,
  labelOf,
  type Operation,
  pageEnd,
  type RecordKey,
  type Row,
  recordOf,
  type StoredEntry,
  tablesShownTo,
} from "#lib/desk/audit-entry.ts";
import { requireSight } from "#lib/people/permission.ts";
import { programViewer, type Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { Id } from "#lib/platform/identity.ts";
import { parseInput } from "#lib/platform/parse.ts";
import { notFound } from "#lib/platform/refusal.ts";

/** One changed row as the viewer may read it. */
export type HappenedEntry = {
  id: string;
  /** Entries of one act share it. */
  transaction: string;
  at: Date;
  actor: string;
  /** The name of who acted; the account's id where the account is gone. */
  by: string;
  act: string;
  tableName: string;
  rowKey: string;
  operation: Operation;
  label: string | null;
  record: RecordKey | null;
  /** Whether the viewer has a page of the record; without one it is named and leads nowhere. */
  recordOpens: boolean;
  /** How people call the record, where the row alone does not say. */
  recordName: string | null;
  changes: Change[];
};

type AuditRow = Prisma.AuditEntryGetPayload<object>;

/** Which transaction wrote each row; the database keeps it with the row, not in a column. */
async function transactionsOf(rows: readonly AuditRow[]): Promise<Map<bigint, string>> {
  if (rows.length === 0) return new Map();
  const found = await database().$queryRaw<{ id: bigint; transaction: string }[]>`
    SELECT id, xmin::text AS transaction FROM audit_entry WHERE id = ANY(${rows.map(({ id }) => id)})`;
  return new Map(found.map(({ id, transaction }) => [id, transaction]));
}

function toStored(row: AuditRow, transaction: string): StoredEntry {
  return {
    ...row,
    id: String(row.id),
    transaction,
    operation: row.operation as Operation,
    before: row.before as Row | null,
    after: row.after as Row | null,
  };
}

/** What a column that holds an id points to. */
const pointsTo = {
  specimen_id: "specimen",
  whole_id: "specimen",
  series_id: "series",
  loan_id: "loan",
  venue_id: "venue",
  institution_id: "institution",
  borrower_id: "institution",
  place_id: "place",
  parent_id: "place",
  account_id: "account",
} as const;
type Pointed = (typeof pointsTo)[keyof typeof pointsTo];

const pointedBy = (column: string): Pointed | undefined =>
  column in pointsTo ? pointsTo[column as keyof typeof pointsTo] : undefined;

/** Names by id; one query for each kind of record that occurs. */
async function namesOf(wanted: ReadonlyMap<Pointed, ReadonlySet<string>>): Promise<Map<string, string>> {
  const reader = database();
  const names = new Map<string, string>();
  /** The ids of one kind that can be looked up, or null where there are none. */
  const where = (kind: Pointed) => {
    const ids = [...(wanted.get(kind) ?? [])].filter((id) => kind === "account" || Id.safeParse(id).success);
    return ids.length > 0 ? { id: { in: ids } } : null;
  };
  const keep = (rows: readonly { id: string; name: string }[]) => {
    for (const row of rows) names.set(row.id, row.name);
  };
  const byName = { id: true, name: true } as const;
  const specimens = where("specimen");
  if (specimens) {
    const select = { id: true, accessionNumber: true } as const;
    const rows = await reader.specimen.findMany({ where: specimens, select });
    keep(rows.map((row) => ({ id: row.id, name: row.accessionNumber })));
  }
  const series = where("series");
  if (series) {
    const rows = await reader.series.findMany({ where: series, select: { id: true, code: true } });
    keep(rows.map((row) => ({ id: row.id, name: row.code })));
  }
  const loans = where("loan");
  if (loans) {
    const rows = await reader.loan.findMany({ where: loans, select: { id: true, number: true } });
    keep(rows.map((row) => ({ id: row.id, name: row.number })));
  }
  const venues = where("venue");
  if (venues) keep(await reader.venue.findMany({ where: venues, select: byName }));
  const institutions = where("institution");
  if (institutions) keep(await reader.institution.findMany({ where: institutions, select: byName }));
  const places = where("place");
  if (places) keep(await reader.place.findMany({ where: places, select: byName }));
  const accounts = where("account");
  if (accounts) keep(await reader.account.findMany({ where: accounts, select: byName }));
  names.set(programViewer.accountId, programViewer.name);
  return names;
}

async function readStored(rows: readonly AuditRow[]): Promise<StoredEntry[]> {
  const transactions = await transactionsOf(rows);
  return rows.map((row) => toStored(row, transactions.get(row.id) ?? ""));
}

async function toEntries(stored: readonly StoredEntry[], viewer: Viewer): Promise<HappenedEntry[]> {
  const read = stored.map((entry) => {
    return { entry, record: recordOf(entry), changes: changesOf(entry, viewer) };
  });
  const wanted = new Map<Pointed, Set<string>>();
  const want = (kind: Pointed | undefined, id: unknown) => {
    if (!kind || typeof id !== "string") return;
    const ids = wanted.get(kind) ?? new Set<string>();
    wanted.set(kind, ids.add(id));
  };
  for (const { entry, record, changes } of read) {
    want("account", entry.actor);
    if (record && record.kind !== "donor" && record.kind !== "settings") want(record.kind, record.key);
    for (const change of changes) {
      want(pointedBy(change.field), change.before);
      want(pointedBy(change.field), change.after);
    }
  }
  const names = await namesOf(wanted);
  const named = (change: Change): Change => {
    if (!pointedBy(change.field)) return change;
    const read = (value: unknown) => (typeof value === "string" ? (names.get(value) ?? value) : value);
    return { ...change, before: read(change.before), after: read(change.after) };
  };
  return read.map(({ entry, record, changes }) => {
    const { id, transaction, at, actor, act, tableName, rowKey, operation } = entry;
    return {
      id,
      transaction,
      at,
      actor,
      by: names.get(actor) ?? actor,
      act,
      tableName,
      rowKey,
      operation,
      label: labelOf(entry),
      record,
      recordOpens: record !== null && hasPageOf(viewer, record),
      recordName: record && (names.get(record.key) ?? (record.kind === "donor" ? record.key : null)),
      changes: changes.map(named),
    };
  });
}

const words = (most: number) =>
  z
    .string()
    .trim()
    .max(most)
    .regex(/^\P{Cc}*$/u)
    .optional();

/** What the audit is asked for. All of it is optional, none of it is trusted. */
export const AuditFilter = z.object({
  tableName: words(60),
  /** A row's key, or what people call the record: an accession number, a loan's number, a name. */
  rowKey: words(200),
  /** An account's id, or a part of the person's name or address. */
  actor: words(200),
});
export type AuditFilter = z.infer<typeof AuditFilter>;

const AuditPage = z.object({
  after: z
    .string()
    .regex(/^\d{1,18}$/)
    .nullish(),
  limit: z.number().int().min(1).max(200).optional(),
});
export type AuditPage = z.infer<typeof AuditPage>;

/** The rows that somebody may mean by a text: a key, or what people call a record. */
async function rowsMeantBy(shown: readonly AuditedTable[], text: string): Promise<RowOfRecord[]> {
  const reader = database();
  const called = { equals: text, mode: "insensitive" } as const;
  const id = { select: { id: true }, take: 20 } as const;
  const specimens = await reader.specimen.findMany({
    where: {
      OR: [
        { accessionNumber: called },
        { formerNumbers: { some: { number: called } } },
        ...(Id.safeParse(text).success ? [{ id: text }] : []),
      ],
    },
    ...id,
  });
  const series = await reader.series.findMany({ where: { code: called }, ...id });
  const institutions = await reader.institution.findMany({ where: { name: called }, ...id });
  const loans = shown.includes("loan")
    ? await reader.loan.findMany({ where: { number: called }, ...id })
    : [];
  const keys = [text, ...[...series, ...institutions, ...loans].map((row) => row.id)];
  return [
    ...keys.flatMap((key) => shown.map((table) => ({ table, key, andBelow: true }))),
    ...(await rowsOfSpecimens(specimens.map((row) => row.id))),
  ];
}

async function accountsMeantBy(text: string): Promise<string[]> {
  const part = { contains: text, mode: "insensitive" } as const;
  const accounts = await database().account.findMany({
    where: { OR: [{ id: text }, { name: part }, { email: part }] },
    select: { id: true },
    take: 100,
  });
  const program = programViewer.name.toLowerCase().startsWith(text.toLowerCase());
  return [...accounts.map((account) => account.id), ...(program ? [programViewer.accountId] : [])];
}

/** A page of the audit, newest first. */
export async function listAuditEntries(
  viewer: Viewer,
  filter: AuditFilter = {},
  page: AuditPage = {},
): Promise<{ rows: HappenedEntry[]; next: string | null; tables: AuditedTable[] }> {
  requireSight(viewer, "audit");
  const { tableName, rowKey, actor } = parseInput(AuditFilter, filter);
  const { after, limit = 50 } = parseInput(AuditPage, page);
  const tables = tablesShownTo(viewer);
  const found = await database().auditEntry.findMany({
    where: {
      tableName: { in: tableName ? tables.filter((table) => table === tableName) : tables },
      ...(rowKey ? { OR: whereRows(tables, await rowsMeantBy(tables, rowKey)) } : {}),
      ...(actor ? { actor: { in: await accountsMeantBy(actor) } } : {}),
      ...(after ? { id: { lt: BigInt(after) } } : {}),
    },
    orderBy: { id: "desc" },
    take: limit + 1,
  });
  const stored = await readStored(found);
  const shown = stored.slice(0, pageEnd(stored, limit));
  const last = shown.at(-1);
  return {
    rows: await toEntries(shown, viewer),
    next: stored.length > shown.length && last ? last.id : null,
    tables,
  };
}

/**
 * One row of a record, by the name of its table and its key. `andBelow` takes the
 * rows in as well whose key begins with it, such as what a specimen shows.
 */
export type RowOfRecord = { table: AuditedTable; key: string; andBelow?: boolean };

/** The entries of rows, as far as the viewer may read their tables. */
function whereRows(
  shown: readonly AuditedTable[],
  rows: readonly RowOfRecord[],
): Prisma.AuditEntryWhereInput[] {
  const asked = rows.filter(({ table }) => shown.includes(table));
  const keysOf = new Map<AuditedTable, string[]>();
  for (const { table, key } of asked) keysOf.set(table, [...(keysOf.get(table) ?? []), key]);
  return [
    ...[...keysOf].map(([tableName, keys]) => ({ tableName, rowKey: { in: keys } })),
    ...asked
      .filter(({ andBelow }) => andBelow)
      .map(({ table, key }) => ({ tableName: table, rowKey: { startsWith: `${key}/` } })),
  ];
}

/** What happened to the rows of one record, newest first; rows that are not for the viewer are left out. */
export async function happenedTo(
  viewer: Viewer,
  rows: readonly RowOfRecord[],
  limit = 40,
): Promise<HappenedEntry[]> {
  requireSight(viewer, "audit");
  const where = whereRows(tablesShownTo(viewer), rows);
  if (where.length === 0) return [];
  const found = await database().auditEntry.findMany({
    where: { OR: where },
    orderBy: { id: "desc" },
    take: Math.min(Math.max(Math.trunc(limit), 1), 200),
  });
  return await toEntries(await readStored(found), viewer);
}

/** The rows that belong to specimens, each under the key that the audit knows it by. */
async function rowsOfSpecimens(ids: readonly string[]): Promise<RowOfRecord[]> {
  if (ids.length === 0) return [];
  const children = await database().$queryRaw<{ table: AuditedTable; key: string }[]>`
    WITH asked AS (SELECT unnest(${[...ids]}::uuid[]) AS specimen_id)
    SELECT 'component' AS "table", id::text AS key FROM component JOIN asked USING (specimen_id)
    UNION ALL SELECT 'former_number', id::text FROM former_number JOIN asked USING (specimen_id)
    UNION ALL SELECT 'preparation_step', id::text FROM preparation_step JOIN asked USING (specimen_id)
    UNION ALL SELECT 'permit', id::text FROM permit JOIN asked USING (specimen_id)
    UNION ALL SELECT 'move', id::text FROM move JOIN asked USING (specimen_id)
    UNION ALL SELECT 'custody_event', id::text FROM custody_event JOIN asked USING (specimen_id)
    UNION ALL SELECT 'booking', id::text FROM booking JOIN asked USING (specimen_id)
    UNION ALL SELECT 'condition_check', id::text FROM condition_check JOIN asked USING (specimen_id)`;
  const own = ids.flatMap((key): RowOfRecord[] => [
    { table: "specimen", key },
    { table: "title", key },
    { table: "shown", key, andBelow: true },
    { table: "hazard", key, andBelow: true },
    { table: "specimen_donor", key, andBelow: true },
  ]);
  return [...own, ...children];
}

/** What happened to a specimen and to everything recorded of it. */
export async function happenedToSpecimen(
  viewer: Viewer,
  specimenId: string,
  limit?: number,
): Promise<HappenedEntry[]> {
  if (!Id.safeParse(specimenId).success) throw notFound("specimen");
  return await happenedTo(viewer, await rowsOfSpecimens([specimenId]), limit);
}

/** What happened to an institution and its venues, their ways in and licences as they stand now. */
export async function happenedToInstitution(
  viewer: Viewer,
  institutionId: string,
  limit?: number,
): Promise<HappenedEntry[]> {
  if (!Id.safeParse(institutionId).success) throw notFound("institution");
  const id = { select: { id: true } } as const;
  const venues = await database().venue.findMany({
    where: { institutionId },
    select: { id: true, passages: id, licences: id, reports: id, records: id },
  });
  const insurances = await database().insurance.findMany({ where: { institutionId }, ...id });
  return await happenedTo(
    viewer,
    [
      { table: "institution", key: institutionId },
      ...insurances.map(({ id: key }): RowOfRecord => ({ table: "insurance", key })),
      ...venues.flatMap((venue): RowOfRecord[] => [
        { table: "venue", key: venue.id },
        ...venue.passages.map(({ id: key }) => ({ table: "passage" as const, key })),
        ...venue.licences.map(({ id: key }) => ({ table: "licence" as const, key })),
        ...venue.reports.map(({ id: key }) => ({ table: "facility_report" as const, key })),
        ...venue.records.map(({ id: key }) => ({ table: "climate_record" as const, key })),
      ]),
    ],
    limit,
  );
}
