/**
 * Writes the next migration: `npx tsx prisma/make-migration.ts add-crate-seals`.
 * It compares what the migrations lead to with the schema files, on a database
 * that lives only for this run, and writes the SQL between the two. Read it
 * before you commit it: what the schema language cannot say (exclusion
 * constraints, triggers, generated columns, rights) is added by hand.
 */
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { destroyCluster, openCluster } from "#app/_server/launch/postgres.mjs";
import { diffSchema, projectPrisma } from "#lib/platform/migrate.ts";

async function differenceFromSchema(): Promise<string> {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "anatheca-migration-"));
  fs.chmodSync(folder, 0o711);
  try {
    const cluster = await openCluster(folder);
    const sql = await diffSchema(cluster.url("postgres"), "migrations", "schema");
    await cluster.leave();
    return sql;
  } finally {
    await destroyCluster(folder);
    fs.rmSync(folder, { recursive: true, force: true });
  }
}

/** The moment in UTC as Prisma names it: 20260718093000. */
const stamp = (moment: Date): string => moment.toISOString().replace(/\D/g, "").slice(0, 14);

async function makeMigration(name: string): Promise<string> {
  const sql = await differenceFromSchema();
  if (sql === "") return "The migrations lead to the schema already: nothing to write.";
  const folder = path.join(projectPrisma.migrations, `${stamp(new Date())}_${name.replaceAll("-", "_")}`);
  fs.mkdirSync(folder, { recursive: true });
  fs.writeFileSync(path.join(folder, "migration.sql"), sql);
  return path.relative(process.cwd(), path.join(folder, "migration.sql"));
}

const name = process.argv[2];
if (name === undefined || !/^[a-z0-9]+([_-][a-z0-9]+)*$/.test(name)) {
  process.stderr.write(
    "Name the migration by what it does: npx tsx prisma/make-migration.ts add-crate-seals\n",
  );
  process.exit(1);
}
const outcome = await makeMigration(name);
// The engine's wait for its lock leaves a timer of ten seconds behind.
process.stdout.write(`${outcome}\n`, () => process.exit(0));
