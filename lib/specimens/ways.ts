/**
 * The ways by which a specimen comes into a list, from the best answer to the
 * least, as parts of one statement for each:
 *
 *   rank 0     its number or its title holds the text
 *   rank 1–4   it shows the structure itself: fully exposed, partly, in section, as a landmark
 *   rank 5–8   it shows what follows from the structure, in the same order
 *   rank 9     its number or its title holds no more than the beginning of the words
 *
 * A specimen comes by the best of its ways only; each way leaves out what the ways
 * before it give. What speaks of a structure is gathered and ranked together. Where
 * that would be very many rows, a page is first sought by a short walk along the
 * specimens in their order, for one rank; only if that does not fill it, it is gathered.
 */
import { Prisma } from "#.generated/prisma/client.ts";
import { keyCondition } from "#lib/specimens/conditions.ts";
import { bestRank, type PageKey, worstRank } from "#lib/specimens/filter.ts";
import { seenGrades } from "#lib/specimens/schema.ts";

type Sql = Prisma.Sql;

export type Way = {
  /** The first and the last rank that it gives. */
  ranks: readonly [first: number, last: number];
  rank: Sql;
  /** Where the rows `s` of the specimens come from. */
  from: Sql;
  where: Sql;
  /** Whether a specimen has one of its ranks, asked of it alone; given where that may be sooner found. */
  walk?: (rank: number) => Sql;
};

const specimens = Prisma.sql`specimen s`;

function wayOf(rank: number, where: Sql): Way {
  return { ranks: [rank, rank], rank: Prisma.sql`${rank}::int`, from: specimens, where };
}

export const itselfRank = 1;
export const belowRank = itselfRank + seenGrades.length;

/** The rank within four of one row of what is shown. */
const gradeRank = Prisma.sql`(array_position(${[...seenGrades]}::text[], shown.seen) - 1)`;

const shownOf = (rows: Sql) =>
  Prisma.sql`EXISTS (SELECT 1 FROM shown WHERE shown.specimen_id = s.id AND ${rows})`;
/** The same, asked of one specimen after the other: the database may not turn it into a look through all rows. */
const shownBy = (rows: Sql) =>
  Prisma.sql`(SELECT TRUE FROM shown WHERE shown.specimen_id = s.id AND ${rows} LIMIT 1)`;

/** What speaks of a structure, and how much of it there is. */
export type Spoken = {
  /** Of the structure itself. */
  itself: Sql;
  itselfOften: boolean;
  /** Of the structure and of all that follows from it. */
  all: Sql;
  /** The same rows, for asking one specimen after the other. */
  each: Sql;
  often: boolean;
};

/** All ranks that rows give, the best of each specimen. */
function gathered(rows: Sql, ranks: Way["ranks"], rank: Sql): Way {
  return {
    ranks,
    rank: Prisma.sql`hit.rank`,
    from: Prisma.sql`(
      SELECT shown.specimen_id, min(${rank} + ${gradeRank}) AS rank FROM shown WHERE ${rows}
      GROUP BY shown.specimen_id) hit JOIN specimen s ON s.id = hit.specimen_id`,
    where: Prisma.sql`TRUE`,
  };
}

/** A specimen that shows rows in one grade and not in a better one. */
function inGrade(rows: Sql, index: number): Sql {
  const seen = Prisma.sql`${shownBy(Prisma.sql`${rows} AND shown.seen = ${seenGrades[index]}`)}`;
  const better = seenGrades.slice(0, index);
  if (better.length === 0) return seen;
  return Prisma.sql`${seen} AND ${shownBy(Prisma.sql`${rows} AND shown.seen = ANY(${better})`)} IS NULL`;
}

const lastOf = (first: number) => first + seenGrades.length - 1;

function spokenWays({ itself, itselfOften, all, each, often }: Spoken): Way[] {
  const both = Prisma.sql`CASE WHEN ${itself} THEN ${itselfRank}::int ELSE ${belowRank}::int END`;
  if (!often) return [gathered(all, [itselfRank, lastOf(belowRank)], both)];
  const own = gathered(itself, [itselfRank, lastOf(itselfRank)], Prisma.sql`${itselfRank}::int`);
  const below = gathered(all, [belowRank, lastOf(belowRank)], Prisma.sql`${belowRank}::int`);
  return [
    itselfOften ? { ...own, walk: (rank) => inGrade(itself, rank - itselfRank) } : own,
    {
      ...below,
      where: Prisma.sql`NOT ${shownOf(itself)}`,
      walk: (rank) => Prisma.sql`${inGrade(each, rank - belowRank)} AND ${shownBy(itself)} IS NULL`,
    },
  ];
}

/**
 * @param text conditions on the specimen's own words: what answers well, and what does so barely
 * @param spoken what speaks of the searched structures, where the text means some
 */
export function waysInto(text: { well: Sql | null; barely: Sql | null }, spoken: Spoken | null): Way[] {
  const notByText = text.well ? [Prisma.sql`NOT ${text.well}`] : [];
  const without = (way: Way): Way => {
    const { walk } = way;
    const and = (condition: Sql) => Prisma.join([condition, ...notByText], " AND ");
    return { ...way, where: and(way.where), ...(walk ? { walk: (rank: number) => and(walk(rank)) } : {}) };
  };
  const ways: Way[] = [];
  if (text.well) ways.push(wayOf(bestRank, text.well));
  if (spoken) ways.push(...spokenWays(spoken).map(without));
  if (text.barely) {
    const not = spoken ? [...notByText, Prisma.sql`NOT ${shownOf(spoken.all)}`] : notByText;
    ways.push(wayOf(worstRank, Prisma.join([text.barely, ...not], " AND ")));
  }
  return ways;
}

/** The one way of a list in which all rows answer alike. */
export function plainWay(where: Sql): Way {
  return wayOf(bestRank, where);
}

/** Whether a way has rows behind the key, or before it when paging backwards. */
export function leadsOn({ ranks: [first, last] }: Way, key: PageKey | null, backwards: boolean): boolean {
  return key === null || (backwards ? first <= key.rank : last >= key.rank);
}

const pageColumns = Prisma.sql`s.id, s.accession_number AS "accessionNumber", s.title, s.latin_title AS "latinTitle",
  s.kind, s.preparation, s.human, s.scientific_name AS "scientificName", s.use, s.side,
  s.mass_kg AS "massKg", s.mounted_mass_kg AS "mountedMassKg",
  s.number_in_series AS "numberInSeries", s.picture_id AS "pictureId", series.code AS "seriesCode"`;

export type Part = { key: PageKey | null; backwards: boolean; limit: number };

/** The first rows of one way behind the key, or the last before it. */
export function wayStatement(way: Way, conditions: readonly Sql[], { key, backwards, limit }: Part): Sql {
  const order = backwards ? Prisma.sql`DESC` : Prisma.sql`ASC`;
  const [first, last] = way.ranks;
  const where = [way.where, ...conditions];
  if (first !== last) {
    if (key) {
      const row = Prisma.sql`(${key.rank}::int, ${key.accessionNumber}, ${key.id}::uuid)`;
      const behind = backwards ? Prisma.sql`<` : Prisma.sql`>`;
      where.push(Prisma.sql`(${way.rank}, s.accession_number, s.id) ${behind} ${row}`);
    }
  } else if (key?.rank === first) where.push(keyCondition(key, backwards));
  // A rank that all rows share is left out of the order, so that an index can give it.
  const byRank = first === last ? Prisma.empty : Prisma.sql`${way.rank} ${order}, `;
  return Prisma.sql`SELECT ${pageColumns}, ${way.rank} AS rank
    FROM ${way.from} LEFT JOIN series ON series.id = s.series_id
    WHERE ${Prisma.join(where, " AND ")}
    ORDER BY ${byRank}s.accession_number ${order}, s.id ${order} LIMIT ${limit}`;
}

/** So many specimens are looked at for each row that is wanted before all is gathered. */
const strideForRow = 100;
const longestWalk = 10_000;

/**
 * The rows of the rank that comes next in a way, within a short walk. They are the page only where they are as many
 * as wanted; null where the way is not walked.
 */
export function walkStatement(way: Way, conditions: readonly Sql[], part: Part): Sql | null {
  if (!way.walk) return null;
  const { key, backwards, limit } = part;
  const [first, last] = way.ranks;
  const isWithin = key !== null && key.rank >= first && key.rank <= last;
  const rank = isWithin ? key.rank : backwards ? last : first;
  const order = backwards ? Prisma.sql`DESC` : Prisma.sql`ASC`;
  const near = [...conditions, ...(isWithin ? [keyCondition(key, backwards)] : [])];
  const within = near.length > 0 ? Prisma.join(near, " AND ") : Prisma.sql`TRUE`;
  return Prisma.sql`SELECT ${pageColumns}, ${rank}::int AS rank
    FROM (SELECT s.* FROM specimen s WHERE ${within}
      ORDER BY s.accession_number ${order}, s.id ${order} LIMIT ${Math.min(longestWalk, limit * strideForRow)}) s
    LEFT JOIN series ON series.id = s.series_id
    WHERE ${way.walk(rank)}
    ORDER BY s.accession_number ${order}, s.id ${order} LIMIT ${limit}`;
}
