/**
 * The catalogue as a list. Everyone signed in may search it; a picture is left out
 * where the viewer may not see it. A text is looked for in numbers and titles and,
 * by the vocabulary of anatomy, in what specimens are recorded as showing; what is
 * recorded as removed or absent does not count as shown. Each row says why it is there.
 */
import type { z } from "zod";
import { Prisma } from "#.generated/prisma/client.ts";
import {
  type FoundStructure,
  type StructureLabel,
  structuresMeant,
  structuresMeantForgiving,
} from "#lib/anatomy/queries.ts";
import { searchKey } from "#lib/anatomy/search-key.ts";
import { requireSight } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { now, today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import {
  likeTextCondition,
  oftenStatement,
  plainConditions,
  showsCondition,
  speaking,
  speakingOfEach,
  speakingOfItself,
  textCondition,
} from "#lib/specimens/conditions.ts";
import {
  type Evidence,
  parseSearch,
  readPageKey,
  SpecimenFilter,
  SpecimenPage,
  writePageKey,
} from "#lib/specimens/filter.ts";
import { type Hit, hitOf } from "#lib/specimens/hit.ts";
import { picturesSeen } from "#lib/specimens/queries.ts";
import { type Shown, type SpecimenInput, seenGrades } from "#lib/specimens/schema.ts";
import { searchPatterns } from "#lib/specimens/search-text.ts";
import {
  leadsOn,
  type Part,
  plainWay,
  type Spoken,
  type Way,
  walkStatement,
  wayStatement,
  waysInto,
} from "#lib/specimens/ways.ts";

export type SpecimenListRow = {
  id: string;
  accessionNumber: string;
  title: string;
  latinTitle: string;
  kind: SpecimenInput["kind"];
  preparation: SpecimenInput["preparation"];
  human: boolean;
  scientificName: string;
  use: SpecimenInput["use"];
  side: SpecimenInput["side"];
  massKg: number | null;
  mountedMassKg: number | null;
  seriesCode: string | null;
  numberInSeries: number | null;
  /** Null without a picture, and where the viewer may not see it. */
  pictureId: string | null;
  /** What it shows of the searched structure, that itself first, then the best seen; of implied evidence, the larger whole. */
  shows: (StructureLabel & { side: Shown["side"]; seen: Shown["seen"]; state: Shown["state"] })[];
  /** By what of its own words it was found; null where it was not. */
  hit: Hit | null;
};

export type SpecimenList = {
  rows: SpecimenListRow[];
  next: string | null;
  previous: string | null;
  /** The structures that the text was taken to mean. */
  meant: StructureLabel[];
};

type PageRow = Omit<SpecimenListRow, "shows" | "hit"> & { rank: number };
type Sql = Prisma.Sql;

type Search = {
  meant: FoundStructure[];
  /** Conditions on the specimen's own words. */
  text: { well: Sql | null; barely: Sql | null };
};

/** Whether a text is the name of a structure rather than the beginning of some. */
const isNamed = (meant: readonly FoundStructure[]) =>
  meant.some(({ tier }) => tier === "preferred name" || tier === "other name");

/** Searched structures and text of one filter: as written, and only if that finds nothing, forgivingly. */
async function readSearch(viewer: Viewer, text: string): Promise<Search> {
  const literal = textCondition(searchPatterns(text));
  if (literal === null) return { meant: [], text: { well: null, barely: null } };
  const meant = await structuresMeant(viewer, text);
  // "X" is the tenth cranial nerve, and an X in some number is found behind it.
  if (/^cn\d+$/.test(searchKey(text))) return { meant, text: { well: null, barely: literal } };
  if (isNamed(meant))
    return { meant, text: { well: textCondition(searchPatterns(text, "whole words")), barely: literal } };
  if (meant.length > 0) return { meant, text: { well: literal, barely: null } };
  const found = await database().$queryRaw<unknown[]>`SELECT 1 FROM specimen s WHERE ${literal} LIMIT 1`;
  if (found.length > 0) return { meant, text: { well: literal, barely: null } };
  // A number is right or it is another number.
  const alike = /\p{N}/u.test(text) ? null : likeTextCondition(text);
  return { meant: await structuresMeantForgiving(viewer, text), text: { well: null, barely: alike } };
}

const everything = Prisma.sql`TRUE`;

async function isOften(rows: Sql): Promise<boolean> {
  const [counted] = await database().$queryRaw<{ often: boolean }[]>(oftenStatement(rows));
  return counted?.often ?? false;
}

async function shows(structureIds: readonly string[], evidence: Evidence): Promise<Sql> {
  return showsCondition(structureIds, evidence, await isOften(speaking(structureIds, evidence)));
}

async function spokenOf(structureIds: readonly string[]): Promise<Spoken> {
  const all = speaking(structureIds, "recorded");
  const itself = speakingOfItself(structureIds);
  const often = await isOften(all);
  const each = speakingOfEach(structureIds);
  return { itself, itselfOften: often && (await isOften(itself)), all, each, often };
}

/** The ways into the list, and the structures that rows are asked for. */
async function readWays(
  viewer: Viewer,
  { text = "", structureId, evidence }: SpecimenFilter,
): Promise<{ ways: Way[]; conditions: Sql[]; meant: FoundStructure[]; sought: string[] }> {
  const chosen = structureId === undefined ? [] : [structureId];
  if (text === "") {
    if (structureId === undefined)
      return { ways: [plainWay(everything)], conditions: [], meant: [], sought: [] };
    const ways =
      evidence === "implied"
        ? [plainWay(await shows(chosen, evidence))]
        : waysInto({ well: null, barely: null }, await spokenOf(chosen));
    return { ways, conditions: [], meant: [], sought: chosen };
  }
  const { meant, text: own } = await readSearch(viewer, text);
  const meantIds = meant.map(({ id }) => id);
  const conditions = structureId === undefined ? [] : [await shows(chosen, evidence)];
  const sought = [...new Set([...meantIds, ...chosen])];
  const found = { conditions, meant, sought };
  if (evidence === "implied")
    return { ...found, ways: meantIds.length > 0 ? [plainWay(await shows(meantIds, evidence))] : [] };
  return { ...found, ways: waysInto(own, meantIds.length > 0 ? await spokenOf(meantIds) : null) };
}

/** The rows of one way: by a short walk where that fills what is wanted, else gathered. */
async function readWay(way: Way, conditions: readonly Sql[], part: Part): Promise<PageRow[]> {
  const walk = walkStatement(way, conditions, part);
  const walked = walk === null ? [] : await database().$queryRaw<PageRow[]>(walk);
  if (walked.length === part.limit) return walked;
  return await database().$queryRaw<PageRow[]>(wayStatement(way, conditions, part));
}

/** The rows of the ways, one after the other, until there are enough. */
async function readRows(ways: readonly Way[], conditions: readonly Sql[], part: Part): Promise<PageRow[]> {
  const { key, backwards, limit } = part;
  const rows: PageRow[] = [];
  for (const way of backwards ? [...ways].reverse() : ways) {
    if (rows.length >= limit) break;
    if (leadsOn(way, key, backwards))
      rows.push(...(await readWay(way, conditions, { key, backwards, limit: limit - rows.length })));
  }
  return backwards ? rows.reverse() : rows;
}

const mostSpecies = 200;

/** The animal species that the catalogue holds, by scientific name, for the filter of a list. */
export async function listAnimalSpecies(_viewer: Viewer): Promise<string[]> {
  const rows = await database().specimen.findMany({
    where: { human: false },
    distinct: ["scientificName"],
    select: { scientificName: true },
    orderBy: { scientificName: "asc" },
    take: mostSpecies,
  });
  return rows.map(({ scientificName }) => scientificName);
}

/** Specimens that answer best first, then by accession number. */
export async function listSpecimens(
  viewer: Viewer,
  asked: z.input<typeof SpecimenFilter> = {},
  page: z.input<typeof SpecimenPage> = {},
): Promise<SpecimenList> {
  const filter = parseSearch(SpecimenFilter, asked);
  const { after, before, size } = parseSearch(SpecimenPage, page);
  if (filter.placeId !== undefined) requireSight(viewer, "storeLocation");
  const backwards = before !== undefined;
  const written = before ?? after;
  const key = written === undefined ? null : readPageKey(written);
  const { ways, conditions, meant, sought } = await readWays(viewer, filter);
  const within = [filter.regionId, filter.systemId].filter((id) => id !== undefined);
  const found = await readRows(
    ways,
    [
      ...plainConditions(filter, { now: now(), today: today() }),
      ...(await Promise.all(within.map((id) => shows([id], "recorded")))),
      ...conditions,
    ],
    {
      key,
      backwards,
      limit: size + 1,
    },
  );
  const more = found.length > size;
  const rows = backwards ? found.slice(-size) : found.slice(0, size);
  const [matched, hits, seen] = await Promise.all([
    matchedStructures(rows, sought, filter.evidence),
    hitsOf(rows, filter),
    picturesSeen(viewer, rows),
  ]);
  const [first, last] = [rows[0], rows.at(-1)];
  return {
    rows: rows.map(({ rank: _rank, ...row }) => ({
      ...row,
      pictureId: seen.has(row.id) ? row.pictureId : null,
      shows: matched.get(row.id) ?? [],
      hit: hits.get(row.id) ?? null,
    })),
    next: last && (backwards || more) ? writePageKey(last) : null,
    previous: first && (backwards ? more : after !== undefined) ? writePageKey(first) : null,
    meant: meant.map(({ id, english, latin, kind }) => ({ id, english, latin, kind })),
  };
}

/** What each specimen of a page shows of the searched structures: themselves first, then the best seen. */
async function matchedStructures(
  specimens: readonly { id: string }[],
  structureIds: readonly string[],
  evidence: Evidence,
): Promise<Map<string, SpecimenListRow["shows"]>> {
  if (specimens.length === 0 || structureIds.length === 0) return new Map();
  const ids = specimens.map(({ id }) => id);
  type Row = SpecimenListRow["shows"][number] & { specimenId: string };
  const rows = await database().$queryRaw<Row[]>`
    SELECT shown.specimen_id AS "specimenId", structure.id, structure.english, structure.latin, structure.kind,
      shown.side, shown.seen, shown.state
    FROM shown JOIN structure ON structure.id = shown.structure_id
    WHERE shown.specimen_id = ANY(${ids}::uuid[]) AND ${speaking(structureIds, evidence)}
    ORDER BY NOT structure.id = ANY(${[...structureIds]}),
      array_position(${[...seenGrades]}::text[], shown.seen), structure.english`;
  const bySpecimen = new Map<string, SpecimenListRow["shows"]>();
  for (const { specimenId, ...shown } of rows) {
    const list = bySpecimen.get(specimenId);
    if (list) list.push(shown);
    else bySpecimen.set(specimenId, [shown]);
  }
  return bySpecimen;
}

/** By what of their own words the rows of a page were found. */
async function hitsOf(
  rows: readonly PageRow[],
  { text = "", evidence }: SpecimenFilter,
): Promise<Map<string, Hit>> {
  if (rows.length === 0 || text === "" || evidence === "implied") return new Map();
  const former = await database().formerNumber.findMany({
    where: { specimenId: { in: rows.map(({ id }) => id) } },
    select: { specimenId: true, number: true },
    orderBy: [{ kind: "asc" }, { number: "asc" }],
  });
  return new Map(
    rows.flatMap((row) => {
      const formerNumbers = former.filter(({ specimenId }) => specimenId === row.id);
      const hit = hitOf({ ...row, formerNumbers }, text);
      return hit ? [[row.id, hit] as const] : [];
    }),
  );
}
