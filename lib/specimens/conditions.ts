/**
 * The conditions of a list of specimens, as parts of one statement about a row
 * `s` of the specimens. A hit by number or title and a hit by what a specimen
 * shows stay apart: each is looked for by the index that suits it.
 */
import { Prisma } from "#.generated/prisma/client.ts";
import { addDays, type DateText } from "#lib/platform/dates.ts";
import { type DaysAround, mostDaysAround } from "#lib/specimens/days-around.ts";
import type { Evidence, PageKey, SpecimenFilter } from "#lib/specimens/filter.ts";
import { likenessText } from "#lib/specimens/search-text.ts";

type Sql = Prisma.Sql;

const all = (conditions: readonly Sql[]): Sql => Prisma.sql`(${Prisma.join([...conditions], " AND ")})`;
const any = (conditions: readonly Sql[]): Sql => Prisma.sql`(${Prisma.join([...conditions], " OR ")})`;

/** A specimen whose numbers or titles meet every pattern of one of the lists. Null without a list. */
export function textCondition(lists: readonly (readonly string[])[]): Sql | null {
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

/** Rows of what is shown that speak of one of these structures itself. */
export const speakingOfItself = (structureIds: readonly string[]): Sql =>
  Prisma.sql`shown.state IN ${positive} AND shown.structure_id = ANY(${[...structureIds]})`;

/** Rows that speak for a structure: of itself and what follows from it, or of what stands above it. */
export const speaking = (structureIds: readonly string[], evidence: Evidence) => {
  const ids = [...structureIds];
  return Prisma.sql`shown.state IN ${positive} AND shown.structure_id IN ${evidence === "recorded" ? below(ids) : above(ids)}`;
};

/** The same of recorded evidence, for asking one specimen after the other: the list of structures is looked up once. */
export const speakingOfEach = (structureIds: readonly string[]): Sql =>
  Prisma.sql`shown.state IN ${positive} AND (shown.structure_id IN ${below([...structureIds])}) IS TRUE`;

/** With so many rows that speak for a structure, a page is sooner found by walking the specimens in order. */
const manyRows = 5_000;

/** Tells whether there are so many rows of what is shown, as one row `{ often }`. */
export function oftenStatement(rows: Sql): Sql {
  return Prisma.sql`SELECT count(*) = ${manyRows} AS often FROM (
    SELECT 1 FROM shown WHERE ${rows} LIMIT ${manyRows}) counted`;
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

/** The days around of a row, by its kind and mass: of the first line that fits it. */
function daysAround(row: Sql, lines: readonly DaysAround[], which: "before" | "after"): Sql {
  if (lines.length === 0) return Prisma.sql`0`;
  const cases = lines.map((line) => {
    const conditions = [Prisma.sql`TRUE`];
    if (line.kind !== undefined) conditions.push(Prisma.sql`${row}.kind = ${line.kind}`);
    if (line.upToKg !== undefined)
      conditions.push(Prisma.sql`coalesce(${row}.mounted_mass_kg, ${row}.mass_kg) <= ${line.upToKg}::float8`);
    return Prisma.sql`WHEN ${all(conditions)} THEN ${line[which]}::int`;
  });
  return Prisma.sql`(CASE ${Prisma.join(cases, " ")} ELSE 0 END)`;
}

/**
 * A specimen that neither by itself, nor by a whole it belongs to, nor by a part of it is promised on the wanted
 * days or the days around them. Days that are past are nobody's matter.
 */
function free(wanted: { from: DateText; until: DateText }, lines: readonly DaysAround[], at: Moment): Sql {
  const most = mostDaysAround(lines);
  const near = Prisma.sql`near`;
  const from = Prisma.sql`greatest(${wanted.from}::date - ${daysAround(near, lines, "before")}, ${at.today}::date)`;
  const until = Prisma.sql`${wanted.until}::date + ${daysAround(near, lines, "after")}`;
  // The promised ones are gathered once; asking the calendar for each specimen would take longer.
  return Prisma.sql`s.id NOT IN (
    WITH RECURSIVE promised AS (
      SELECT specimen_id, starts_on, ends_on FROM booking
      WHERE released_at IS NULL AND (strength = 'firm' OR expires_at > ${at.now})
        AND starts_on < ${addDays(wanted.until, most.after)}::date
        AND ends_on > ${addDays(wanted.from, -most.before)}::date),
    above AS (
      SELECT specimen_id, starts_on, ends_on FROM promised
      UNION SELECT part.whole_id, above.starts_on, above.ends_on
      FROM above JOIN specimen part ON part.id = above.specimen_id WHERE part.whole_id IS NOT NULL),
    below AS (
      SELECT specimen_id, starts_on, ends_on FROM promised
      UNION SELECT part.id, below.starts_on, below.ends_on
      FROM below JOIN specimen part ON part.whole_id = below.specimen_id)
    SELECT near.id FROM (SELECT * FROM above UNION SELECT * FROM below) taken
    JOIN specimen near ON near.id = taken.specimen_id
    WHERE taken.starts_on < ${until} AND taken.ends_on > ${from})`;
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

export type Moment = { now: Date; today: DateText };

/** What a filter asks for beside its text and its structure. */
export function plainConditions(filter: SpecimenFilter, at: Moment): Sql[] {
  const conditions: Sql[] = [];
  if (filter.kind !== undefined) conditions.push(Prisma.sql`s.kind = ${filter.kind}`);
  if (filter.preparation !== undefined) conditions.push(Prisma.sql`s.preparation = ${filter.preparation}`);
  if (filter.use !== undefined) conditions.push(Prisma.sql`s.use = ${filter.use}`);
  if (filter.human !== undefined) conditions.push(Prisma.sql`s.human = ${filter.human}`);
  if (filter.species !== undefined) conditions.push(Prisma.sql`s.scientific_name = ${filter.species}`);
  if (filter.publishable !== undefined) conditions.push(Prisma.sql`s.publishable = ${filter.publishable}`);
  if (filter.seriesId !== undefined) conditions.push(Prisma.sql`s.series_id = ${filter.seriesId}::uuid`);
  if (filter.withoutSheets) conditions.push(Prisma.sql`s.series_id IS NULL`);
  if (filter.freeFrom !== undefined && filter.freeUntil !== undefined)
    conditions.push(free({ from: filter.freeFrom, until: filter.freeUntil }, filter.around, at));
  if (filter.placeId !== undefined) conditions.push(standsAt(filter.placeId));
  return conditions;
}

/** Rows of one rank behind a key, or before it when paging backwards. */
export function keyCondition(key: Omit<PageKey, "rank">, backwards: boolean): Sql {
  const row = Prisma.sql`(${key.accessionNumber}, ${key.id}::uuid)`;
  return backwards
    ? Prisma.sql`(s.accession_number, s.id) < ${row}`
    : Prisma.sql`(s.accession_number, s.id) > ${row}`;
}
