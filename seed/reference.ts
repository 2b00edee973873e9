/**
 * Loads what the program knows before anybody types anything: the vocabulary of
 * anatomy and the table of moves of a loan line. It runs as the owner of the
 * database, because the application's role may not change either.
 *
 * One transaction, one loader at a time. What is stored is hashed as it stands in
 * the tables, so a change of a file, of a key or of a rule of inference is loaded
 * again, and nothing else is: loading twice changes nothing.
 */
import { createHash } from "node:crypto";
import fs from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import pg from "pg";
import {
  readVocabulary,
  tablesOf,
  type VocabularyFile,
  type VocabularyTables,
} from "#lib/anatomy/vocabulary.ts";
import { lineMoveRows } from "#lib/loans/transitions.ts";

/** Why nothing was loaded; the message is a sentence for whoever keeps the vocabulary. */
export class ReferenceFailure extends Error {}

export type LoadedReference = { structures: number; names: number; ancestors: number; changed: boolean };

const vocabularyFolder = path.resolve(import.meta.dirname, "vocabulary");
const settingKey = "reference.content-hash";
/** A number of our own for the lock that lets one loader wait for another. */
const advisoryLock = 20_260_719;
const mostProblemsShown = 20;

export function readVocabularyFiles(folder: string = vocabularyFolder): VocabularyFile[] {
  return fs
    .readdirSync(folder)
    .filter((name) => name.endsWith(".tsv"))
    .sort()
    .map((name) => ({ name, text: fs.readFileSync(path.join(folder, name), "utf8") }));
}

function readTables(files: readonly VocabularyFile[]): VocabularyTables {
  const { rows, problems } = readVocabulary(files);
  if (problems.length > 0) {
    const shown = problems
      .slice(0, mostProblemsShown)
      .map(({ file, line, sentence }) => `${file}, line ${line}: ${sentence}`);
    const more = problems.length > shown.length ? [`and ${problems.length - shown.length} more.`] : [];
    throw new ReferenceFailure(
      [
        "The vocabulary cannot be loaded; mend these lines in seed/vocabulary and start again.",
        ...shown,
        ...more,
      ].join("\n"),
    );
  }
  if (rows.length === 0)
    throw new ReferenceFailure("There is no vocabulary in seed/vocabulary: fetch the whole project again.");
  return tablesOf(rows);
}

type ColumnType = "text[]" | "boolean[]";

/** Inserts all rows in one statement, column by column. */
async function insertRows<Row extends object>(
  client: pg.Client,
  table: string,
  columns: Record<string, [keyof Row, ColumnType]>,
  rows: readonly Row[],
  onConflict = "",
): Promise<void> {
  const entries = Object.entries(columns);
  const lists = entries.map(([, [field, type]], index) => ({
    sql: `$${index + 1}::${type}`,
    values: rows.map((row) => row[field]),
  }));
  const names = entries.map(([name]) => name).join(", ");
  await client.query(
    `INSERT INTO ${table} (${names}) SELECT * FROM unnest(${lists.map((list) => list.sql).join(", ")}) ${onConflict}`,
    lists.map((list) => list.values),
  );
}

/** Refuses to take a structure away that a specimen shows. */
async function removeOthers(client: pg.Client, ids: readonly string[]): Promise<void> {
  const still = await client.query<{ structure_id: string; specimens: string }>(
    `SELECT structure_id, count(DISTINCT specimen_id) AS specimens FROM shown
     WHERE NOT structure_id = ANY($1::text[]) GROUP BY structure_id ORDER BY structure_id LIMIT 5`,
    [ids],
  );
  if (still.rows.length > 0) {
    const named = still.rows.map((row) => `${row.structure_id} (${row.specimens})`).join(", ");
    throw new ReferenceFailure(
      `The new vocabulary lacks structures that specimens of this collection show: ${named}. Put them back into seed/vocabulary.`,
    );
  }
  await client.query("DELETE FROM structure WHERE NOT id = ANY($1::text[])", [ids]);
}

async function write(client: pg.Client, tables: VocabularyTables): Promise<void> {
  await client.query("DELETE FROM structure_ancestor");
  await client.query("DELETE FROM structure_link");
  await client.query("DELETE FROM structure_name");
  await removeOthers(
    client,
    tables.structures.map((row) => row.id),
  );
  await insertRows<VocabularyTables["structures"][number]>(
    client,
    "structure",
    {
      id: ["id", "text[]"],
      english: ["english", "text[]"],
      latin: ["latin", "text[]"],
      kind: ["kind", "text[]"],
      paired: ["paired", "boolean[]"],
      animal: ["animal", "boolean[]"],
    },
    tables.structures,
    `ON CONFLICT (id) DO UPDATE SET english = excluded.english, latin = excluded.latin, kind = excluded.kind,
       paired = excluded.paired, animal = excluded.animal`,
  );
  await insertRows<VocabularyTables["names"][number]>(
    client,
    "structure_name",
    {
      structure_id: ["structureId", "text[]"],
      language: ["language", "text[]"],
      text: ["text", "text[]"],
      kind: ["kind", "text[]"],
      search_key: ["searchKey", "text[]"],
    },
    tables.names,
  );
  await insertRows<VocabularyTables["links"][number]>(
    client,
    "structure_link",
    { child_id: ["childId", "text[]"], relation: ["relation", "text[]"], parent_id: ["parentId", "text[]"] },
    tables.links,
  );
  await insertRows<VocabularyTables["ancestors"][number]>(
    client,
    "structure_ancestor",
    {
      ancestor_id: ["ancestorId", "text[]"],
      descendant_id: ["descendantId", "text[]"],
      via: ["via", "text[]"],
    },
    tables.ancestors,
  );
  await client.query("DELETE FROM loan_line_move");
  await insertRows<(typeof lineMoveRows)[number]>(
    client,
    "loan_line_move",
    { from_state: ["fromState", "text[]"], to_state: ["toState", "text[]"] },
    lineMoveRows,
  );
}

/**
 * Brings the reference data of one database up to date.
 * @param databaseUrl of the owner, migrations applied
 * @throws {ReferenceFailure} with sentences that say what to mend; the database is as before
 */
export async function loadReference(
  databaseUrl: string,
  files: readonly VocabularyFile[] = readVocabularyFiles(),
): Promise<LoadedReference> {
  const tables = readTables(files);
  const hash = createHash("sha256")
    .update(JSON.stringify([tables, lineMoveRows]))
    .digest("hex");
  const counts = {
    structures: tables.structures.length,
    names: tables.names.length,
    ancestors: tables.ancestors.length,
  };
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  try {
    await client.query("BEGIN");
    await client.query("SELECT pg_advisory_xact_lock($1)", [advisoryLock]);
    const stored = await client.query<{ value: string }>("SELECT value FROM setting WHERE key = $1", [
      settingKey,
    ]);
    const changed = stored.rows[0]?.value !== hash;
    if (changed) {
      await client.query(
        "SELECT set_config('anatheca.actor', 'program', true), set_config('anatheca.act', 'loadReference', true)",
      );
      await write(client, tables);
      await client.query(
        "INSERT INTO setting (key, value) VALUES ($1, to_jsonb($2::text)) ON CONFLICT (key) DO UPDATE SET value = excluded.value",
        [settingKey, hash],
      );
    }
    await client.query("COMMIT");
    if (changed) await client.query("ANALYZE structure, structure_name, structure_link, structure_ancestor");
    return { ...counts, changed };
  } catch (error) {
    await client.query("ROLLBACK").catch(() => undefined);
    throw error;
  } finally {
    await client.end();
  }
}

async function main(): Promise<number> {
  const url = process.env.DATABASE_URL;
  if (!url) {
    console.error("DATABASE_URL is not set: name the database whose reference data should be loaded.");
    return 1;
  }
  try {
    const { structures, names, ancestors, changed } = await loadReference(url);
    const done = changed ? "loaded" : "already up to date";
    console.log(`Vocabulary ${done}: ${structures} structures, ${names} names, ${ancestors} relations.`);
    return 0;
  } catch (error) {
    const sentence =
      error instanceof ReferenceFailure
        ? error.message
        : `The reference data could not be loaded: ${String(error)}`;
    console.error(sentence);
    return 1;
  }
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href)
  process.exitCode = await main();
