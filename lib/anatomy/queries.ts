/**
 * Reads of the vocabulary. It holds nothing confidential: everyone signed in may
 * search it. Words of a searched text are letters and digits only once they are
 * folded, so they stand in patterns as they are.
 */
import { Prisma } from "#.generated/prisma/client.ts";
import { type Candidate, meantBy, type Ranked, rankCandidates } from "#lib/anatomy/ranking.ts";
import type { MatchTier, NameKind, NameLanguage, Relation, StructureKind } from "#lib/anatomy/schema.ts";
import { foldedWords, searchKey, stemOf, withoutSide } from "#lib/anatomy/search-key.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";
import { notFound } from "#lib/platform/refusal.ts";

type Reader = Database | Transaction;

export type StructureLabel = { id: string; english: string; latin: string; kind: StructureKind };

export type FoundStructure = StructureLabel & {
  paired: boolean;
  animal: boolean;
  tier: MatchTier;
  /** The name that met the text, when it is not one of the two above. */
  name: string;
};

type CandidateRow = Candidate & StructureLabelColumns;
type StructureLabelColumns = {
  english: string;
  latin: string;
  structureKind: StructureKind;
  paired: boolean;
};

/** So many names are weighed for one text; more than any list shows. */
const mostCandidates = 400;
const leastWordLikeness = 0.3;

const columns = Prisma.sql`n.structure_id AS "structureId", n.text, n.kind, n.search_key AS "searchKey",
  s.english, s.latin, s.kind AS "structureKind", s.paired, s.animal`;

/** Names with the same key, or with a word beginning as each typed word does. */
async function findByWords(key: string, words: readonly string[]): Promise<CandidateRow[]> {
  const eachBegins = words.map((typed) => {
    const pattern = `(^| )(${typed}|${stemOf(typed)}( |$))`;
    return Prisma.sql`n.search_key ~ ${pattern}`;
  });
  return await database().$queryRaw<CandidateRow[]>`
    SELECT ${columns}, 1::float8 AS likeness
    FROM structure_name n JOIN structure s ON s.id = n.structure_id
    WHERE n.search_key = ${key} OR (${Prisma.join(eachBegins, " AND ")})
    ORDER BY n.search_key = ${key} DESC, length(n.search_key), n.kind, n.text
    LIMIT ${mostCandidates}`;
}

const likenessOf = (key: string) =>
  Prisma.sql`greatest(word_similarity(${key}, n.search_key), similarity(${key}, n.search_key))`;

/** Names that share many threes of letters with the text, by the index. */
async function findAlike(key: string): Promise<CandidateRow[]> {
  return await database().$queryRaw<CandidateRow[]>`
    SELECT ${columns}, ${likenessOf(key)} AS likeness
    FROM structure_name n JOIN structure s ON s.id = n.structure_id
    WHERE n.search_key % ${key} OR ${key} <% n.search_key
    ORDER BY likeness DESC, length(n.search_key), n.text
    LIMIT ${mostCandidates}`;
}

/** Names that share a few threes of letters with some word of the text, endings included. */
async function findFaintlyAlike(key: string, typed: string): Promise<CandidateRow[]> {
  // The index answers to the least likeness that is set, and that holds to the end of the transaction.
  return await database().$transaction(async (transaction) => {
    await transaction.$executeRaw`SELECT set_config('pg_trgm.word_similarity_threshold', ${String(leastWordLikeness)}, true)`;
    return await transaction.$queryRaw<CandidateRow[]>`
      SELECT * FROM (
        SELECT ${columns}, ${likenessOf(key)} AS likeness, word_similarity(${typed}, n.text) AS beside
        FROM structure_name n JOIN structure s ON s.id = n.structure_id
        WHERE n.id IN (
          SELECT id FROM structure_name WHERE ${key} <% search_key
          UNION SELECT id FROM structure_name WHERE search_key % ${key}
          UNION SELECT id FROM structure_name WHERE ${typed} <% text)
      ) weighed
      ORDER BY greatest(likeness, beside) DESC, length("searchKey"), text
      LIMIT ${mostCandidates}`;
  });
}

type RankedRows = Ranked<CandidateRow>[];

/** With so few literal finds, typing errors are weighed beside them. */
const fewFinds = 3;

async function rankMistyped(text: string, limit: number): Promise<RankedRows> {
  const key = searchKey(text);
  const alike = rankCandidates(text, await findAlike(key), limit);
  if (alike.some(({ tier }) => tier !== "likeness")) return alike;
  return rankCandidates(text, await findFaintlyAlike(key, foldedWords(text).join(" ")), limit);
}

async function rankLiteral(text: string, limit: number): Promise<RankedRows> {
  const key = searchKey(text);
  if (key === "") return [];
  return rankCandidates(text, await findByWords(key, foldedWords(text)), limit);
}

const isSure = (ranked: RankedRows) => ranked.some(({ tier }) => tier !== "likeness");

/** Typing errors forgiven, then words of side left out. */
async function rankForgiving(text: string, limit: number): Promise<RankedRows> {
  if (searchKey(text) === "") return [];
  const mistyped = await rankMistyped(text, limit);
  const unsided = withoutSide(text);
  if (isSure(mistyped) || unsided === text || searchKey(unsided) === "") return mistyped;
  const literal = await rankLiteral(unsided, limit);
  return literal.length > 0 ? literal : await rankMistyped(unsided, limit);
}

function toFound({ row, tier }: Ranked<CandidateRow>): FoundStructure {
  const { structureId: id, english, latin, structureKind: kind, paired, animal, text } = row;
  return { id, english, latin, kind, paired, animal, tier, name: text };
}

/** Structures that a text may mean, best first, for a field that suggests while somebody types. */
export async function searchStructures(_viewer: Viewer, text: string, limit = 20): Promise<FoundStructure[]> {
  const most = Math.max(1, Math.min(Math.trunc(limit), 100));
  const literal = await rankLiteral(text, most);
  const enough = literal.length >= fewFinds || (literal[0] !== undefined && literal[0].tier !== "beginning");
  if (enough) return literal.map(toFound);
  const found = new Set(literal.map(({ row }) => row.structureId));
  const further = (await rankForgiving(text, most)).filter(({ row }) => !found.has(row.structureId));
  return [...literal, ...further].slice(0, most).map(toFound);
}

const mostMeant = 100;

/** Structures that a text means as it is written, for a search through specimens: those of the best tier only. */
export async function structuresMeant(_viewer: Viewer, text: string): Promise<FoundStructure[]> {
  return meantBy(await rankLiteral(text, mostMeant)).map(toFound);
}

/** Structures that a text means when it may be mistyped or name a side; nothing that is merely alike. */
export async function structuresMeantForgiving(_viewer: Viewer, text: string): Promise<FoundStructure[]> {
  return meantBy(await rankForgiving(text, mostMeant)).map(toFound);
}

export type StructureSheet = StructureLabel & {
  paired: boolean;
  animal: boolean;
  names: { language: NameLanguage; text: string; kind: NameKind }[];
  parents: (StructureLabel & { relation: Relation })[];
  children: (StructureLabel & { relation: Relation })[];
};

const label = { select: { id: true, english: true, latin: true, kind: true } } as const;

/** One structure with its names and its nearest relations; of very many children the first thousand. */
export async function getStructure(_viewer: Viewer, id: string): Promise<StructureSheet> {
  if (!/^[a-z0-9-]{1,120}$/.test(id)) throw notFound("structure");
  const row = await database().structure.findUnique({
    where: { id },
    include: {
      names: { select: { language: true, text: true, kind: true }, orderBy: { id: "asc" } },
      parents: {
        select: { relation: true, parent: label },
        orderBy: [{ relation: "asc" }, { parentId: "asc" }],
      },
      children: {
        select: { relation: true, child: label },
        orderBy: [{ relation: "asc" }, { child: { english: "asc" } }],
        take: 1_000,
      },
    },
  });
  if (!row) throw notFound("structure");
  const { parents, children, names, kind, ...facts } = row;
  return {
    ...facts,
    kind: kind as StructureKind,
    names: names as StructureSheet["names"],
    parents: parents.map(
      ({ relation, parent }) => ({ ...parent, relation }) as StructureSheet["parents"][number],
    ),
    children: children.map(
      ({ relation, child }) => ({ ...child, relation }) as StructureSheet["children"][number],
    ),
  };
}

/** Names of structures by id, for records that hold ids. Unknown ids are left out. */
export async function structureLabels(
  reader: Reader,
  ids: readonly string[],
): Promise<Map<string, StructureLabel>> {
  const rows = await reader.structure.findMany({ where: { id: { in: [...new Set(ids)] } }, ...label });
  return new Map(rows.map((row) => [row.id, { ...row, kind: row.kind as StructureKind }]));
}

/** Ids of everything that follows from a structure by any way, itself included. */
export async function descendantsOf(reader: Reader, ids: readonly string[]): Promise<string[]> {
  const rows = await reader.structureAncestor.findMany({
    where: { ancestorId: { in: [...ids] } },
    select: { descendantId: true },
    distinct: ["descendantId"],
  });
  return rows.map((row) => row.descendantId);
}

/** The regions and systems, for the filters of a list. */
export async function listRegionsAndSystems(_viewer: Viewer): Promise<StructureLabel[]> {
  const rows = await database().structure.findMany({
    where: { kind: { in: ["region", "system"] } },
    ...label,
    orderBy: [{ kind: "asc" }, { english: "asc" }],
  });
  return rows.map((row) => ({ ...row, kind: row.kind as StructureKind }));
}
