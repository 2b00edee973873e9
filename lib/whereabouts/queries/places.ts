/**
 * Reads of places: the tree of them with how many specimens stand at each, one
 * place on its sheet, what stands there, and what has no place yet. A specimen
 * stands where its last move led. Borrowers see none of this.
 */
import type { z } from "zod";
import { Prisma } from "#.generated/prisma/client.ts";
import { requireSight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { Id } from "#lib/platform/identity.ts";
import { parseInput } from "#lib/platform/parse.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { keyCondition } from "#lib/specimens/conditions.ts";
import { readPageKey, SpecimenPage, writePageKey } from "#lib/specimens/filter.ts";
import type { SpecimenName } from "#lib/specimens/queries.ts";
import { idsInside, inTreeOrder, totalsInside } from "#lib/whereabouts/place-tree.ts";
import type { PlaceNow } from "#lib/whereabouts/queries.ts";
import type { PlaceKind } from "#lib/whereabouts/schema.ts";

/** More places than any house has; a list that is cut off here would still be read in order. */
const mostPlaces = 20_000;

type PlaceRow = Omit<PlaceNow, "within">;

async function readPlaces(): Promise<PlaceRow[]> {
  const rows = await database().place.findMany({ orderBy: { code: "asc" }, take: mostPlaces });
  return rows.map((row) => ({ ...row, kind: row.kind as PlaceKind }));
}

export type PlaceListed = PlaceNow & { depth: number };

/** All places in the order of their tree, with what they lie in. */
export async function listPlaces(viewer: Viewer): Promise<PlaceListed[]> {
  requireSight(viewer, "storeLocation");
  return inTreeOrder(await readPlaces());
}

/** How many specimens stand at each place; no entry where none does. */
async function countsEverywhere(): Promise<Map<string, number>> {
  const rows = await database().$queryRaw<{ placeId: string; count: number }[]>`
    SELECT place_id::text AS "placeId", count(*)::int AS count FROM (
      SELECT DISTINCT ON (specimen_id) place_id FROM move ORDER BY specimen_id, sequence DESC) AS last
    GROUP BY place_id`;
  return new Map(rows.map(({ placeId, count }) => [placeId, count]));
}

/** Up to so many moves to places, what came there is looked through; beyond, everything is, in its own order. */
const fewMoves = 5_000;

async function cameOften(placeIds: readonly string[]): Promise<boolean> {
  const moves = await database().$queryRaw<unknown[]>`
    SELECT 1 FROM move WHERE place_id = ANY(${[...placeIds]}::uuid[]) LIMIT ${fewMoves + 1}`;
  return moves.length > fewMoves;
}

/** How many specimens stand at some places; others may have an entry as well. */
async function countsAt(placeIds: readonly string[]): Promise<Map<string, number>> {
  if (await cameOften(placeIds)) return await countsEverywhere();
  const rows = await database().$queryRaw<{ placeId: string; count: number }[]>`
    SELECT place_id::text AS "placeId", count(*)::int AS count FROM (
      SELECT DISTINCT ON (specimen_id) place_id FROM move
      WHERE specimen_id IN (SELECT specimen_id FROM move WHERE place_id = ANY(${[...placeIds]}::uuid[]))
      ORDER BY specimen_id, sequence DESC) AS last
    WHERE place_id = ANY(${[...placeIds]}::uuid[]) GROUP BY place_id`;
  return new Map(rows.map(({ placeId, count }) => [placeId, count]));
}

export type PlaceCounted = PlaceListed & {
  /** Specimens that stand at the place itself. */
  here: number;
  /** The same with everything inside it. */
  total: number;
};

function withCounts(places: readonly PlaceRow[], counts: ReadonlyMap<string, number>): PlaceCounted[] {
  const totals = totalsInside(places, counts);
  return inTreeOrder(places).map((place) => ({
    ...place,
    here: counts.get(place.id) ?? 0,
    total: totals.get(place.id) ?? 0,
  }));
}

/** All places in the order of their tree, with how many specimens stand there. */
export async function listPlacesWithCounts(viewer: Viewer): Promise<PlaceCounted[]> {
  requireSight(viewer, "storeLocation");
  const places = await readPlaces();
  return withCounts(places, await countsEverywhere());
}

export type PlaceSheet = PlaceCounted & {
  /** The larger places it lies in, the largest first. */
  around: { id: string; name: string }[];
  /** The places directly in it. */
  inside: PlaceCounted[];
  /** Whose venue it stands for. */
  venue: { name: string; institution: { id: string; name: string } } | null;
};

/** A place by the name that people know it by. */
export async function getPlaceName(viewer: Viewer, placeId: string): Promise<{ code: string; name: string }> {
  requireSight(viewer, "storeLocation");
  if (!Id.safeParse(placeId).success) throw notFound("place");
  const place = await database().place.findUnique({
    where: { id: placeId },
    select: { code: true, name: true },
  });
  if (!place) throw notFound("place");
  return place;
}

export async function getPlace(viewer: Viewer, placeId: string): Promise<PlaceSheet> {
  requireSight(viewer, "storeLocation");
  if (!Id.safeParse(placeId).success) throw notFound("place");
  const places = await readPlaces();
  const byId = new Map(places.map((place) => [place.id, place]));
  const counted = withCounts(places, await countsAt([...idsInside(places, placeId)]));
  const place = counted.find(({ id }) => id === placeId);
  if (!place) throw notFound("place");
  const around: PlaceSheet["around"] = [];
  let next = place.parentId;
  while (next !== null && around.length < place.depth) {
    const larger = byId.get(next);
    if (!larger) break;
    around.unshift({ id: larger.id, name: larger.name });
    next = larger.parentId;
  }
  const venue =
    place.venueId &&
    (await database().venue.findUnique({
      where: { id: place.venueId },
      select: { name: true, institution: { select: { id: true, name: true } } },
    }));
  return {
    ...place,
    around,
    inside: counted.filter(({ parentId }) => parentId === placeId),
    venue: venue || null,
  };
}

export type SpecimenStanding = SpecimenName & {
  /** The place itself, or one inside it. */
  place: { id: string; code: string; name: string };
  since: Date;
};
type Page<Row> = { rows: Row[]; next: string | null; previous: string | null };

const lastMove = (specimenId: Prisma.Sql) =>
  Prisma.sql`LATERAL (SELECT place_id, moved_at FROM move WHERE specimen_id = ${specimenId} ORDER BY sequence DESC LIMIT 1) AS last`;

/** Specimens with their last move, where that led to one of the places. */
async function standingAt(placeIds: readonly string[]): Promise<Prisma.Sql> {
  const here = Prisma.sql`ANY(${[...placeIds]}::uuid[])`;
  if (await cameOften(placeIds))
    return Prisma.sql`specimen s JOIN ${lastMove(Prisma.sql`s.id`)} ON last.place_id = ${here}`;
  return Prisma.sql`(SELECT DISTINCT specimen_id FROM move WHERE place_id = ${here}) AS came
    JOIN ${lastMove(Prisma.sql`came.specimen_id`)} ON last.place_id = ${here}
    JOIN specimen s ON s.id = came.specimen_id`;
}

/** A page of specimens by accession number. @param read reads so many, behind the key or before it, in that order */
async function readPage<Row extends SpecimenName>(
  asked: z.input<typeof SpecimenPage>,
  read: (behind: Prisma.Sql, order: Prisma.Sql, most: number) => Promise<Row[]>,
): Promise<Page<Row>> {
  const { after, before, size } = parseInput(SpecimenPage, asked);
  const backwards = before !== undefined;
  const key = before ?? after;
  const behind = key === undefined ? Prisma.sql`TRUE` : keyCondition(readPageKey(key), backwards);
  const direction = backwards ? Prisma.sql`DESC` : Prisma.sql`ASC`;
  const order = Prisma.sql`s.accession_number ${direction}, s.id ${direction}`;
  const found = await read(behind, order, size + 1);
  const more = found.length > size;
  const rows = found.slice(0, size);
  if (backwards) rows.reverse();
  const [first, last] = [rows[0], rows.at(-1)];
  return {
    rows,
    next: last && (backwards || more) ? writePageKey(last) : null,
    previous: first && (backwards ? more : after !== undefined) ? writePageKey(first) : null,
  };
}

/** What stands at a place and at everything inside it, by accession number. */
export async function listSpecimensAt(
  viewer: Viewer,
  placeId: string,
  page: z.input<typeof SpecimenPage> = {},
): Promise<Page<SpecimenStanding>> {
  requireSight(viewer, "storeLocation");
  const placeIds = [...idsInside(await readPlaces(), placeId)];
  return await readPage(page, async (behind, order, most) => {
    type Row = SpecimenName & { since: Date; placeId: string; code: string; name: string };
    const rows = await database().$queryRaw<Row[]>`
      SELECT s.id::text AS id, s.accession_number AS "accessionNumber", s.title, last.moved_at AS since,
        place.id::text AS "placeId", place.code, place.name
      FROM ${await standingAt(placeIds)} JOIN place ON place.id = last.place_id
      WHERE ${behind} ORDER BY ${order} LIMIT ${most}`;
    return rows.map(({ placeId: id, code, name, ...standing }) => ({
      ...standing,
      place: { id, code, name },
    }));
  });
}

/** Specimens that were never moved to any place, by accession number. */
export async function listUnplaced(
  viewer: Viewer,
  page: z.input<typeof SpecimenPage> = {},
): Promise<Page<SpecimenName>> {
  requireSight(viewer, "storeLocation");
  // Gathered first and sorted then: most often there are none, and looking for them in order takes longer.
  return await readPage(
    page,
    (behind, order, most) => database().$queryRaw<SpecimenName[]>`
      WITH s AS MATERIALIZED (
        SELECT id, accession_number, title FROM specimen
        WHERE NOT EXISTS (SELECT 1 FROM move WHERE move.specimen_id = specimen.id))
      SELECT s.id::text AS id, s.accession_number AS "accessionNumber", s.title FROM s
      WHERE ${behind} ORDER BY ${order} LIMIT ${most}`,
  );
}
