/**
 * `npm run demo:large -- --specimens 100000`: fills a database with a large
 * invented collection, for measuring. It writes as the owner, by COPY, past the
 * triggers (it would else write an audit entry for each of millions of rows), and
 * leaves one audit entry that says so. DATABASE_URL names the database; without
 * it, the one that comes with the program is filled.
 */
import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import pg from "pg";
import { Halt } from "#app/_server/launch/report.mjs";
import { toDateText } from "#lib/platform/dates.ts";
import { copyTable, dropReadingIndexes } from "#seed/large/copy.ts";
import { layGround } from "#seed/large/ground.ts";
import { noDatabase, withMeasuredDatabase } from "#seed/large/measured-database.ts";
import { accessionNumbers } from "#seed/large/numbers.ts";
import { largeTables } from "#seed/large/rows.ts";

const most = 1_000_000;
const accountId = "program";

export type Filled = { specimens: number; rows: number; seconds: number };

function requireCount(count: number): void {
  if (!(Number.isInteger(count) && count >= 1 && count <= most))
    throw new Halt(`Say how many specimens, from 1 to ${grouped(most)}: --specimens 100000.`);
}

const secondsSince = (began: number) => (performance.now() - began) / 1000;
const grouped = (value: number) => Math.round(value).toLocaleString("en-GB").replaceAll(",", " ");

async function writeTables(
  client: pg.Client,
  count: number,
  beganAt: Date,
  tell: (line: string) => void,
): Promise<Record<string, number>> {
  const act = "SELECT set_config('anatheca.actor', $1, true), set_config('anatheca.act', 'fillLarge', true)";
  await client.query(act, [accountId]);
  const ground = await layGround(client, beganAt.getTime());
  const { rows } = await client.query<{ number: string }>("SELECT accession_number AS number FROM specimen");
  const tables = largeTables({
    ...ground,
    count,
    beganAtMs: beganAt.getTime(),
    today: toDateText(beganAt),
    accessionNumbers: accessionNumbers(count, new Set(rows.map(({ number }) => number))),
    accountId,
  });
  await client.query("SET LOCAL session_replication_role = replica");
  await client.query("SET LOCAL maintenance_work_mem = '512MB'");
  const indexes = await dropReadingIndexes(
    client,
    tables.map(({ name }) => name),
  );
  const written: Record<string, number> = {};
  for (const table of tables) {
    const began = performance.now();
    const rate = (done: number) => `${grouped(done / Math.max(0.001, secondsSince(began)))} rows a second`;
    written[table.name] = await copyTable(client, table, (done) => {
      if (done % 1_000_000 === 0) tell(`  ${table.name}: ${grouped(done)} rows, ${rate(done)}`);
    });
    tell(
      `  ${table.name}: ${grouped(written[table.name] ?? 0)} rows done, ${rate(written[table.name] ?? 0)}`,
    );
  }
  const began = performance.now();
  for (const definition of indexes) await client.query(definition);
  tell(`  ${indexes.length} indexes made again in ${secondsSince(began).toFixed(1)} s`);
  await client.query(
    `INSERT INTO audit_entry (actor, act, table_name, row_key, operation, after)
     VALUES ($1, 'fillLarge', 'specimen', $2, 'insert', $3)`,
    [
      accountId,
      `${count} rows`,
      { note: "A large collection for measuring, written past the triggers.", rows: written },
    ],
  );
  return written;
}

/**
 * Fills one database.
 * @throws {Error} with a sentence; the database is as it was before
 */
export async function fillLarge(
  databaseUrl: string,
  count: number,
  tell: (line: string) => void = () => {},
): Promise<Filled> {
  requireCount(count);
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  const began = performance.now();
  try {
    await client.query("BEGIN");
    const written = await writeTables(client, count, new Date(), tell);
    await client.query("COMMIT");
    await client.query(`ANALYZE ${Object.keys(written).join(", ")}`);
    const rows = Object.values(written).reduce((sum, one) => sum + one, 0);
    return { specimens: count, rows, seconds: secondsSince(began) };
  } catch (error) {
    await client.query("ROLLBACK").catch(() => {});
    const { code } = error as { code?: string };
    if (code === "42501")
      throw new Halt(
        "This needs a superuser of the database: fill one of your own, or the one that comes with the program.",
      );
    if (code === "42P01")
      throw new Halt(
        "This database has no tables yet: start the program on it once, so that it is migrated.",
      );
    throw error;
  } finally {
    await client.end();
  }
}

async function main(): Promise<number> {
  try {
    const { values } = parseArgs({ options: { specimens: { type: "string", default: "100000" } } });
    const count = Number(values.specimens);
    requireCount(count);
    await withMeasuredDatabase(async (url) => {
      console.log(`Filling in ${grouped(count)} specimens`);
      const { rows, seconds } = await fillLarge(url, count, (line) => console.log(line));
      console.log(
        `${grouped(rows)} rows in ${seconds.toFixed(1)} s, ${grouped(rows / seconds)} rows a second.`,
      );
    });
    return 0;
  } catch (error) {
    const { code } = error as { code?: string };
    const sentence = code === "3D000" ? noDatabase : error instanceof Error ? error.message : String(error);
    console.error(sentence);
    return 1;
  }
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href)
  process.exitCode = await main();
