/**
 * Reads of whereabouts. A whole takes its parts along, so a specimen is busy when
 * it, one of its parts or one of its wholes is. A hold that has run out counts no
 * more. Who borrows sees free days only, never for whom the others are taken.
 */
import { maySee, requireSight } from "#lib/people/permission.ts";
import { findCentre } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { now } from "#lib/platform/clock.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { type DateText, daysBetween, toDateText } from "#lib/platform/dates.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { busyStatement } from "#lib/whereabouts/busy-statement.ts";
import { type House, holderOf, isInHouse } from "#lib/whereabouts/custody.ts";
import { freePeriods } from "#lib/whereabouts/free-periods.ts";
import {
  type BookingPurpose,
  type BookingStrength,
  type BusyPeriod,
  type Handover,
  homeKinds,
  longestBookingDays,
  type Period,
  type PlaceKind,
} from "#lib/whereabouts/schema.ts";

type Reader = Database | Transaction;

/** Each specimen with everything below it in the tree of wholes and parts. Every id that exists has an entry. */
export async function withPartsOf(
  reader: Reader,
  specimenIds: readonly string[],
): Promise<Map<string, string[]>> {
  const rows = await reader.$queryRaw<{ root: string; id: string }[]>`
    WITH RECURSIVE tree (root, id) AS (
      SELECT id, id FROM specimen WHERE id = ANY(${[...specimenIds]}::uuid[])
      UNION SELECT tree.root, specimen.id FROM tree JOIN specimen ON specimen.whole_id = tree.id
    )
    SELECT root::text AS root, id::text AS id FROM tree ORDER BY root, id`;
  return collect(rows.map(({ root, id }) => [root, id]));
}

/** The wholes above each specimen, the nearest and those further up; none for what is no part. */
export async function wholesOf(
  reader: Reader,
  specimenIds: readonly string[],
): Promise<Map<string, string[]>> {
  const rows = await reader.$queryRaw<{ root: string; id: string }[]>`
    WITH RECURSIVE tree (root, id) AS (
      SELECT id, whole_id FROM specimen WHERE id = ANY(${[...specimenIds]}::uuid[]) AND whole_id IS NOT NULL
      UNION SELECT tree.root, specimen.whole_id FROM tree JOIN specimen ON specimen.id = tree.id
        WHERE specimen.whole_id IS NOT NULL
    )
    SELECT root::text AS root, id::text AS id FROM tree ORDER BY root, id`;
  return collect(rows.map(({ root, id }) => [root, id]));
}

function collect<Value>(pairs: Iterable<readonly [string, Value]>): Map<string, Value[]> {
  const groups = new Map<string, Value[]>();
  for (const [key, value] of pairs) {
    const group = groups.get(key);
    if (group) group.push(value);
    else groups.set(key, [value]);
  }
  return groups;
}

type BusyRow = {
  root: string;
  bookingId: string;
  specimenId: string;
  startsOn: DateText;
  endsOn: DateText;
  purpose: string;
  strength: string;
  loanLineId: string | null;
};

/**
 * The bookings that touch each specimen within a window, in order of their first day. Every id has an entry. One
 * statement, whatever is asked: the tree of wholes and parts of each, and by the index of ranges what is promised.
 */
export async function busyPeriodsOf(
  reader: Reader,
  specimenIds: readonly string[],
  from: DateText,
  to: DateText,
): Promise<Map<string, BusyPeriod[]>> {
  const ids = [...new Set(specimenIds)];
  const busy = new Map<string, BusyPeriod[]>(ids.map((id) => [id, []]));
  if (ids.length === 0) return busy;
  const rows = await reader.$queryRaw<BusyRow[]>(busyStatement(ids, from, to, now()));
  for (const { root, purpose, strength, ...row } of rows)
    busy.get(root)?.push({
      ...row,
      purpose: purpose as BookingPurpose,
      strength: strength as BookingStrength,
    });
  return busy;
}

/** The free days of each specimen within a window. Open to everyone who is signed in. */
export async function freePeriodsOf(
  _viewer: Viewer,
  specimenIds: readonly string[],
  from: DateText,
  to: DateText,
): Promise<Map<string, Period[]>> {
  if (specimenIds.some((id) => !Id.safeParse(id).success)) throw notFound("specimen");
  const window = { startsOn: from, endsOn: to };
  if (!(from < to)) throw new Refusal("invalid", "booking.period-reversed");
  if (!(daysBetween(from, to) <= longestBookingDays)) throw new Refusal("invalid", "booking.too-long");
  const busy = await busyPeriodsOf(database(), specimenIds, from, to);
  return new Map([...busy].map(([id, periods]) => [id, freePeriods(periods, window)]));
}

export type PlaceNow = {
  id: string;
  code: string;
  name: string;
  kind: PlaceKind;
  /** The larger place it lies in. */
  parentId: string | null;
  venueId: string | null;
  /** The larger places it lies in, the largest first. */
  within: string[];
};

/** The place each specimen was last moved to; no entry for what was never moved. */
export async function placesOf(reader: Reader, specimenIds: readonly string[]): Promise<Map<string, string>> {
  const rows = await reader.$queryRaw<{ specimen_id: string; place_id: string }[]>`
    SELECT asked.id::text AS specimen_id, last.place_id::text AS place_id
    FROM unnest(${[...new Set(specimenIds)]}::uuid[]) AS asked (id)
    JOIN LATERAL (SELECT place_id FROM move WHERE specimen_id = asked.id ORDER BY sequence DESC LIMIT 1) AS last ON true`;
  return new Map(rows.map((row) => [row.specimen_id, row.place_id]));
}

/** The last place inside the house where each specimen stood: where it belongs when it comes home. */
export async function homePlacesOf(
  reader: Reader,
  specimenIds: readonly string[],
): Promise<Map<string, string>> {
  const rows = await reader.$queryRaw<{ specimen_id: string; place_id: string }[]>`
    SELECT asked.id::text AS specimen_id, last.place_id::text AS place_id
    FROM unnest(${[...new Set(specimenIds)]}::uuid[]) AS asked (id)
    JOIN LATERAL (
      SELECT place_id FROM move JOIN place ON place.id = place_id
      WHERE specimen_id = asked.id AND place.kind = ANY(${[...homeKinds]})
      ORDER BY sequence DESC LIMIT 1
    ) AS last ON true`;
  return new Map(rows.map((row) => [row.specimen_id, row.place_id]));
}

/** The last hand-over of each specimen; no entry where no chain has begun. */
export async function lastHandoversOf(
  reader: Reader,
  specimenIds: readonly string[],
): Promise<Map<string, { sequence: number; toParty: string; handedOverAt: Date }>> {
  const rows = await reader.$queryRaw<
    { specimen_id: string; sequence: number; to_party: string; handed_over_at: Date }[]
  >`
    SELECT asked.id::text AS specimen_id, last.sequence, last.to_party, last.handed_over_at
    FROM unnest(${[...new Set(specimenIds)]}::uuid[]) AS asked (id)
    JOIN LATERAL (
      SELECT sequence, to_party, handed_over_at FROM custody_event
      WHERE specimen_id = asked.id ORDER BY sequence DESC LIMIT 1
    ) AS last ON true`;
  return new Map(
    rows.map(({ specimen_id: id, sequence, to_party: toParty, handed_over_at: handedOverAt }) => [
      id,
      { sequence, toParty, handedOverAt },
    ]),
  );
}

/** The house as custody knows it; without a name before the centre was configured. */
export async function houseOf(reader: Reader): Promise<House> {
  const centre = await findCentre(reader);
  return { name: centre?.settings.name ?? "", formerNames: centre?.formerNames ?? [] };
}

export type Custody = { holder: string | null; chain: Handover[] };

async function custodyChain(reader: Reader, specimenId: string): Promise<Custody> {
  const rows = await reader.custodyEvent.findMany({ where: { specimenId }, orderBy: { sequence: "asc" } });
  const chain = rows.map(({ id, specimenId: _, ...handover }) => handover);
  return { holder: holderOf(chain), chain };
}

/** The chain of custody of one specimen, for the house. */
export async function custodyOf(viewer: Viewer, specimenId: string): Promise<Custody> {
  requireSight(viewer, "allLoans");
  await requireSpecimen(specimenId);
  return await custodyChain(database(), specimenId);
}

async function requireSpecimen(specimenId: string): Promise<string> {
  if (!Id.safeParse(specimenId).success) throw notFound("specimen");
  const row = await database().specimen.findUnique({
    where: { id: specimenId },
    select: { accessionNumber: true },
  });
  if (!row) throw notFound("specimen");
  return row.accessionNumber;
}

export type MoveRow = {
  sequence: string;
  placeId: string;
  placeCode: string;
  placeName: string;
  movedAt: Date;
  movedBy: string;
  reason: string;
};
export type BookingRow = BusyPeriod & {
  expiresAt: Date | null;
  bookedBy: string;
  bookedAt: Date;
  /** Given back, or a hold that has run out. */
  released: boolean;
  releasedAt: Date | null;
  /** The loan that it belongs to; null for a booking of the house. */
  loan: { id: string; number: string } | null;
};

export type Whereabouts = {
  specimenId: string;
  accessionNumber: string;
  /** Where it stands now. Null when it was never moved, or when the viewer may not know. */
  place: PlaceNow | null;
  /** Who has it, and how it came there; null when the viewer may not know. */
  custody: Custody | null;
  /** Whether the house has it; null when the viewer may not know. */
  inTheHouse: boolean | null;
  /** The newest first; null when the viewer may not know. */
  moves: MoveRow[] | null;
  /** The newest first, released ones included; null when the viewer may not know. */
  bookings: BookingRow[] | null;
};

export async function getWhereabouts(viewer: Viewer, specimenId: string): Promise<Whereabouts> {
  const accessionNumber = await requireSpecimen(specimenId);
  const seesPlaces = maySee(viewer, "storeLocation");
  const seesLoans = maySee(viewer, "allLoans");
  const placeId = seesPlaces ? (await placesOf(database(), [specimenId])).get(specimenId) : undefined;
  const custody = seesLoans ? await custodyChain(database(), specimenId) : null;
  return {
    specimenId,
    accessionNumber,
    place: placeId ? ((await placesById([placeId])).get(placeId) ?? null) : null,
    custody,
    inTheHouse: custody && isInHouse(custody.holder, await houseOf(database())),
    moves: seesPlaces ? await movesOf(specimenId) : null,
    bookings: seesLoans ? await bookingsOf(specimenId) : null,
  };
}

async function movesOf(specimenId: string): Promise<MoveRow[]> {
  const rows = await database().move.findMany({
    where: { specimenId },
    orderBy: { sequence: "desc" },
    take: 500,
    include: { place: { select: { code: true, name: true } } },
  });
  return rows.map(({ sequence, placeId, place, movedAt, movedBy, reason }) => ({
    sequence: String(sequence),
    placeId,
    placeCode: place.code,
    placeName: place.name,
    movedAt,
    movedBy,
    reason,
  }));
}

async function bookingsOf(specimenId: string): Promise<BookingRow[]> {
  const rows = await database().booking.findMany({
    where: { specimenId },
    orderBy: [{ startsOn: "desc" }, { bookedAt: "desc" }],
    take: 500,
    include: { line: { select: { loan: { select: { id: true, number: true } } } } },
  });
  return rows.map((row) => ({
    bookingId: row.id,
    specimenId: row.specimenId,
    startsOn: toDateText(row.startsOn),
    endsOn: toDateText(row.endsOn),
    purpose: row.purpose as BookingPurpose,
    strength: row.strength as BookingStrength,
    loanLineId: row.loanLineId,
    expiresAt: row.expiresAt,
    bookedBy: row.bookedBy,
    bookedAt: row.bookedAt,
    released: row.releasedAt !== null || (row.expiresAt !== null && row.expiresAt <= now()),
    releasedAt: row.releasedAt,
    loan: row.line?.loan ?? null,
  }));
}

async function placesById(ids: readonly string[]): Promise<Map<string, PlaceNow>> {
  const rows = await database().$queryRaw<(Omit<PlaceNow, "kind"> & { kind: string })[]>`
    WITH RECURSIVE up (id, parent_id, name, depth) AS (
      SELECT id, parent_id, NULL::text, 0 FROM place WHERE id = ANY(${[...ids]}::uuid[])
      UNION SELECT up.id, place.parent_id, place.name, up.depth + 1 FROM up JOIN place ON place.id = up.parent_id
        WHERE up.depth < 20
    )
    SELECT place.id::text AS id, code, place.name, kind, place.parent_id::text AS "parentId",
      venue_id::text AS "venueId",
      coalesce(array_agg(up.name ORDER BY up.depth DESC) FILTER (WHERE up.name IS NOT NULL), '{}') AS within
    FROM up JOIN place ON place.id = up.id GROUP BY place.id ORDER BY code`;
  return new Map(rows.map((place) => [place.id, { ...place, kind: place.kind as PlaceKind }]));
}
