/**
 * The conditions of a list of specimens, as parts of one statement about a row
 * `s` of the specimens. A hit by number or title and a hit by what a specimen
 * shows stay apart: each is looked for by the index that suits it.
 */
import { Prisma } from "#.generated/prisma/client.ts";
import type { Evidence, PageKey, SpecimenFilter } from "#lib/specimens/filter.ts";
import { likenessText, searchPatterns } from "#lib/specimens/search-text.ts";

type Sql = Prisma.Sql;

const all = (conditions: readonly Sql[]): Sql => Prisma.sql`(${Prisma.join([...conditions], " AND ")})`;
const any = (conditions: readonly Sql[]): Sql => Prisma.sql`(${Prisma.join([...conditions], " OR ")})`;

/** A specimen whose numbers or titles hold every word of the text. Null for a text without a word. */
export function textCondition(text: string): Sql | null {
  const lists = searchPatterns(text);
  if (lists.length === 0) return null;
  return any(
    lists.map((patterns) => all(patterns.map((pattern) => Prisma.sql`s.search_key LIKE ${pattern}`))),
  );
}

/** A specimen whose titles hold something like the text. */
export function likeTextCondition(text: string): Sql {
  return Prisma.sql`${likenessText(text)} <% s.search_key`;
}

const positive = Prisma.sql`('shown', 'variant')`;

const below = (ids: string[]) =>
  Prisma.sql`(SELECT descendant_id FROM structure_ancestor WHERE ancestor_id = ANY(${ids}))`;
const above = (ids: string[]) =>
  Prisma.sql`(SELECT ancestor_id FROM structure_ancestor
    WHERE descendant_id = ANY(${ids}) AND via IN ('part', 'region') AND NOT ancestor_id = ANY(${ids}))`;

/** Rows that speak for a structure: of itself and what follows from it, or of what stands above it. */
const speaking = (structureIds: readonly string[], evidence: Evidence) => {
  const ids = [...structureIds];
  return Prisma.sql`shown.state IN ${positive} AND shown.structure_id IN ${evidence === "recorded" ? below(ids) : above(ids)}`;
};

/** With so many rows that speak for a structure, a page is sooner found by walking the specimens in order. */
const manyRows = 5_000;

/** Tells whether a structure is recorded so often, as one row `{ often }`. */
export function oftenStatement(structureIds: readonly string[], evidence: Evidence): Sql {
  return Prisma.sql`SELECT count(*) = ${manyRows} AS often FROM (
    SELECT 1 FROM shown WHERE ${speaking(structureIds, evidence)} LIMIT ${manyRows}) counted`;
}

/**
 * A specimen in whose record a structure stands as shown, or something that follows from it ("recorded");
 * or one that should contain it because a whole or region above it is recorded as shown, where no row speaks of
 * the structure, of what follows from it, or of something above it being gone ("implied").
 * @param often gathers no hits beforehand; the answer is the same
 */
export function showsCondition(structureIds: readonly string[], evidence: Evidence, often: boolean): Sql {
  const ids = [...structureIds];
  const rows = speaking(ids, evidence);
  const spoken = often
    ? Prisma.sql`EXISTS (SELECT 1 FROM shown WHERE shown.specimen_id = s.id AND ${rows})`
    : Prisma.sql`s.id IN (
        WITH hits AS MATERIALIZED (SELECT DISTINCT shown.specimen_id FROM shown WHERE ${rows})
        SELECT specimen_id FROM hits)`;
  if (evidence === "recorded") return spoken;
  // Two lists in one would be found by reading every row.
  return Prisma.sql`s.kind IN ('whole body', 'body region', 'organ', 'organ system') AND ${spoken}
    AND s.id NOT IN (
      SELECT shown.specimen_id FROM shown WHERE shown.structure_id IN ${below(ids)}
      UNION ALL
      SELECT shown.specimen_id FROM shown
      WHERE shown.state IN ('removed', 'absent') AND shown.structure_id IN ${above(ids)})`;
}

/** A specimen that neither by itself, nor by its whole, nor by a part of it is promised within the days. */
function free(from: string, until: string, moment: Date): Sql {
  // The promised ones are gathered once; asking the calendar for each specimen would take longer.
  const promised = Prisma.sql`booking.released_at IS NULL
    AND booking.starts_on < ${until}::date AND booking.ends_on > ${from}::date
    AND (booking.strength = 'firm' OR booking.expires_at > ${moment})`;
  return Prisma.sql`s.id NOT IN (SELECT booking.specimen_id FROM booking WHERE ${promised})
    AND (s.whole_id IS NULL OR s.whole_id NOT IN (SELECT booking.specimen_id FROM booking WHERE ${promised}))
    AND s.id NOT IN (
      SELECT part.whole_id FROM booking JOIN specimen part ON part.id = booking.specimen_id
      WHERE part.whole_id IS NOT NULL AND ${promised})`;
}

/** A specimen whose last move led to a place or to one inside it. */
function standsAt(placeId: string): Sql {
  return Prisma.sql`s.id IN (
    WITH RECURSIVE inside (id) AS (
      SELECT ${placeId}::uuid UNION SELECT place.id FROM place JOIN inside ON place.parent_id = inside.id)
    SELECT move.specimen_id FROM move JOIN inside ON inside.id = move.place_id
    WHERE NOT EXISTS (
      SELECT 1 FROM move later WHERE later.specimen_id = move.specimen_id AND later.sequence > move.sequence))`;
}

/** What a filter asks for beside its text and its structure. */
export function plainConditions(filter: SpecimenFilter, moment: Date): Sql[] {
  const conditions: Sql[] = [];
  if (filter.kind !== undefined) conditions.push(Prisma.sql`s.kind = ${filter.kind}`);
  if (filter.preparation !== undefined) conditions.push(Prisma.sql`s.preparation = ${filter.preparation}`);
  if (filter.use !== undefined) conditions.push(Prisma.sql`s.use = ${filter.use}`);
  if (filter.human !== undefined) conditions.push(Prisma.sql`s.human = ${filter.human}`);
  if (filter.seriesId !== undefined) conditions.push(Prisma.sql`s.series_id = ${filter.seriesId}::uuid`);
  if (filter.withoutSheets) conditions.push(Prisma.sql`s.series_id IS NULL`);
  if (filter.freeFrom !== undefined && filter.freeUntil !== undefined)
    conditions.push(free(filter.freeFrom, filter.freeUntil, moment));
  if (filter.placeId !== undefined) conditions.push(standsAt(filter.placeId));
  return conditions;
}

/** Rows behind a key, or before it when paging backwards. */
export function keyCondition(key: PageKey, backwards: boolean): Sql {
  const row = Prisma.sql`(${key.accessionNumber}, ${key.id}::uuid)`;
  return backwards
    ? Prisma.sql`(s.accession_number, s.id) < ${row}`
    : Prisma.sql`(s.accession_number, s.id) > ${row}`;
}
