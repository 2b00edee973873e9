/**
 * Reads of the vocabulary. It holds nothing confidential: everyone signed in may
 * search it. Its names, some ten thousand, are compared in memory; they are read
 * again as soon as the database holds another vocabulary, so several servers on
 * one database agree.
 */
import { indexNames, literalNames, type NameIndex, nearNames, readTyped } from "#lib/anatomy/name-index.ts";
import { isLiteral, isSure, meantBy, type Ranked, rankNames } from "#lib/anatomy/ranking.ts";
import type { MatchTier, NameKind, StructureKind } from "#lib/anatomy/schema.ts";
import { withoutSide } from "#lib/anatomy/search-key.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { type Database, database, type Transaction } from "#lib/platform/database.ts";

type Reader = Database | Transaction;

export type StructureLabel = { id: string; english: string; latin: string; kind: StructureKind };

export type FoundStructure = StructureLabel & {
  paired: boolean;
  animal: boolean;
  tier: MatchTier;
  /** The name that met the text, when it is not one of the two above. */
  name: string;
};

type NameRow = {
  structureId: string;
  text: string;
  kind: NameKind;
  searchKey: string;
  animal: boolean;
  english: string;
  latin: string;
  structureKind: StructureKind;
  paired: boolean;
};

/** Where the loader of the vocabulary keeps the hash of what it loaded. */
const hashKey = "reference.content-hash";

type Kept = { hash: string; index: Promise<NameIndex<NameRow>> };
const kept = new WeakMap<Database, Kept>();

async function readIndex(): Promise<NameIndex<NameRow>> {
  return indexNames(
    await database().$queryRaw<NameRow[]>`
      SELECT n.structure_id AS "structureId", n.text, n.kind, n.search_key AS "searchKey",
        s.english, s.latin, s.kind AS "structureKind", s.paired, s.animal
      FROM structure_name n JOIN structure s ON s.id = n.structure_id ORDER BY n.id`,
  );
}

async function nameIndex(): Promise<NameIndex<NameRow>> {
  const reader = database();
  const stored = await reader.setting.findUnique({ where: { key: hashKey } });
  const hash = JSON.stringify(stored?.value ?? null);
  const before = kept.get(reader);
  if (before?.hash === hash) return await before.index;
  const index = readIndex();
  kept.set(reader, { hash, index });
  index.catch(() => kept.delete(reader));
  return await index;
}

type RankedRows = Ranked<NameRow>[];

function rankLiteral(index: NameIndex<NameRow>, text: string, limit: number): RankedRows {
  const typed = readTyped(text);
  return rankNames(typed, literalNames(index, typed), limit).filter(isLiteral);
}

function rankMistyped(index: NameIndex<NameRow>, text: string, limit: number): RankedRows {
  const typed = readTyped(text);
  return rankNames(typed, nearNames(index, typed), limit);
}

/** As written; where that is only the beginning of some word of longer names, beside whole names within a slip. */
function rankWritten(index: NameIndex<NameRow>, text: string, limit: number): RankedRows {
  const written = rankLiteral(index, text, limit);
  if (written[0]?.tier !== "loose beginning") return written;
  const near = rankMistyped(index, text, limit).filter(({ tier }) => tier === "near name");
  const nearer = new Set(near.map(({ row }) => row.structureId));
  return [...near, ...written.filter(({ row }) => !nearer.has(row.structureId))].slice(0, limit);
}

/** Typing errors forgiven, then words of side left out. */
function rankForgiving(index: NameIndex<NameRow>, text: string, limit: number): RankedRows {
  const mistyped = rankMistyped(index, text, limit);
  const unsided = withoutSide(text);
  if (isSure(mistyped) || unsided === text) return mistyped;
  const literal = rankLiteral(index, unsided, limit);
  return literal.length > 0 ? literal : rankMistyped(index, unsided, limit);
}

/** The last resort for suggestions: names that look like the text. */
function rankAlike(index: NameIndex<NameRow>, text: string, limit: number): RankedRows {
  const typed = readTyped(text);
  return typed.key === "" ? [] : rankNames(typed, index.all, limit);
}

function toFound({ row, tier }: Ranked<NameRow>): FoundStructure {
  const { structureId: id, english, latin, structureKind: kind, paired, animal, text } = row;
  return { id, english, latin, kind, paired, animal, tier, name: text };
}

/** With so few finds, others are offered beside them. */
const fewFinds = 3;

/** Structures that a text may mean, best first, for a field that suggests while somebody types. */
export async function searchStructures(_viewer: Viewer, text: string, limit = 20): Promise<FoundStructure[]> {
  const most = Math.max(1, Math.min(Math.trunc(limit), 100));
  const index = await nameIndex();
  const written = rankWritten(index, text, most);
  const isNamed = written[0] !== undefined && !/beginning/.test(written[0].tier);
  if (written.length >= fewFinds || isNamed) return written.map(toFound);
  const found = new Map(written.map((one) => [one.row.structureId, one]));
  const forgiving = rankForgiving(index, text, most);
  for (const one of forgiving.length > 0 ? forgiving : rankAlike(index, text, most))
    if (!found.has(one.row.structureId)) found.set(one.row.structureId, one);
  return [...found.values()].slice(0, most).map(toFound);
}

const mostMeant = 100;

/** Structures that a text means as it is written, for a search through specimens: those of the best tier only. */
export async function structuresMeant(_viewer: Viewer, text: string): Promise<FoundStructure[]> {
  return meantBy(rankWritten(await nameIndex(), text, mostMeant)).map(toFound);
}

/** Structures that a text means when it may be mistyped or name a side; nothing that is merely alike. */
export async function structuresMeantForgiving(_viewer: Viewer, text: string): Promise<FoundStructure[]> {
  return meantBy(rankForgiving(await nameIndex(), text, mostMeant)).map(toFound);
}

const label = { select: { id: true, english: true, latin: true, kind: true } } as const;

/** Names of structures by id, for records that hold ids. Unknown ids are left out. */
export async function structureLabels(
  reader: Reader,
  ids: readonly string[],
): Promise<Map<string, StructureLabel>> {
  const rows = await reader.structure.findMany({ where: { id: { in: [...new Set(ids)] } }, ...label });
  return new Map(rows.map((row) => [row.id, { ...row, kind: row.kind as StructureKind }]));
}

/** Structures by id, in the order of the ids, then what each name means first; what nothing is called so is left out. */
export async function structuresNamed(
  viewer: Viewer,
  ids: readonly string[],
  names: readonly string[] = [],
): Promise<StructureLabel[]> {
  const labels = await structureLabels(database(), ids);
  const found = ids.flatMap((id) => labels.get(id) ?? []);
  for (const name of names) {
    const [first] = await searchStructures(viewer, name, 1);
    if (first) found.push({ id: first.id, english: first.english, latin: first.latin, kind: first.kind });
  }
  return [...new Map(found.map((one) => [one.id, one])).values()];
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
