/**
 * Brings a database to the state that `prisma/migrations` describes, and says
 * where schema, migrations and a database differ. It runs the schema engine that
 * Prisma ships as WebAssembly, so nothing is downloaded, and the record of what
 * was applied is Prisma's own table.
 *
 * Invariants: one run at a time on one database; applying twice changes nothing;
 * a migration file is sent as one script, which Postgres treats as one
 * transaction, so a file that fails leaves nothing behind and may be tried
 * again. For the same reason a file may not open or end transactions itself.
 */
import fs from "node:fs";
import path from "node:path";
import pg from "pg";
import {
  type EngineInput,
  type SchemaState,
  ScriptError,
  withSchemaEngine,
} from "#lib/platform/schema-engine.ts";

/** The folder `prisma/` of the project, or one like it. */
export type PrismaFolder = { migrations: string; schema: string };

export const projectPrisma: PrismaFolder = {
  migrations: path.resolve(import.meta.dirname, "../../prisma/migrations"),
  schema: path.resolve(import.meta.dirname, "../../prisma/schema"),
};

/** Why the database could not be brought up to date; the message is a sentence for its keeper. */
export class MigrationFailure extends Error {
  readonly reason: "failed" | "changed" | "newer" | "foreign" | "unfit";

  constructor(reason: MigrationFailure["reason"], sentence: string, cause?: unknown) {
    super(sentence, { cause });
    this.name = "MigrationFailure";
    this.reason = reason;
  }
}

/** A number of our own for the lock that lets one run wait for another. */
const advisoryLock = 20_260_718;

const transactionControl =
  /^\s*(begin(\s+(work|transaction))?\s*;|commit\b|rollback\b|start\s+transaction)/im;

function readMigrations(folder: string): EngineInput["migrations"] {
  const lockFile = path.join(folder, "migration_lock.toml");
  const names = fs.existsSync(folder)
    ? fs
        .readdirSync(folder, { withFileTypes: true })
        .filter((entry) => entry.isDirectory())
        .map((entry) => entry.name)
        .sort()
    : [];
  return {
    baseDir: folder,
    shadowDbInitScript: "",
    lockfile: {
      path: path.basename(lockFile),
      content: fs.existsSync(lockFile) ? fs.readFileSync(lockFile, "utf8") : 'provider = "postgresql"',
    },
    migrationDirectories: names.map((name) => {
      const sql = fs.readFileSync(path.join(folder, name, "migration.sql"), "utf8");
      if (transactionControl.test(sql)) {
        throw new MigrationFailure(
          "unfit",
          `Migration ${name} opens or ends a transaction; each file is one already. Take those statements out.`,
        );
      }
      return { path: name, migrationFile: { path: "migration.sql", content: { tag: "ok", value: sql } } };
    }),
  };
}

function readSchema(folder: string): EngineInput["schema"] {
  const names = fs.existsSync(folder) ? fs.readdirSync(folder).sort() : [];
  return names
    .filter((name) => name.endsWith(".prisma"))
    .map((name) => {
      const file = path.join(folder, name);
      return { path: file, content: fs.readFileSync(file, "utf8") };
    });
}

function readInput(url: string, prisma: PrismaFolder): EngineInput {
  return { url, schema: readSchema(prisma.schema), migrations: readMigrations(prisma.migrations) };
}

async function withAdvisoryLock<Result>(url: string, work: () => Promise<Result>): Promise<Result> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query("SELECT pg_advisory_lock($1)", [advisoryLock]);
    return await work();
  } finally {
    await client.end();
  }
}

/**
 * Applies the migrations that the database does not have yet.
 * @param url of the owner of the database
 * @returns the names of the migrations applied now, in order
 * @throws {MigrationFailure} leaving the database as the last whole migration left it
 */
export async function applyMigrations(url: string, prisma: PrismaFolder = projectPrisma): Promise<string[]> {
  const input = readInput(url, prisma);
  if (input.migrations.migrationDirectories.length === 0) return [];
  return await withAdvisoryLock(url, async () => {
    await settleHistory(input);
    try {
      return await withSchemaEngine(input, (engine) => engine.apply());
    } catch (error) {
      if (error instanceof Error && /schema is not empty/.test(error.message)) {
        throw new MigrationFailure(
          "foreign",
          "This database holds tables of something else: make an empty database for Anatheca and name that one.",
          error,
        );
      }
      if (!(error instanceof ScriptError)) throw error;
      throw new MigrationFailure(
        "failed",
        `Migration ${error.migration} failed${error.line ? ` in line ${error.line}` : ""}: ${error.message}. It was undone; mend its cause and start again.`,
        error,
      );
    }
  });
}

/** Refuses a history that is not ours, and clears the record of failures, which left nothing behind. */
async function settleHistory(input: EngineInput): Promise<void> {
  const found = await withSchemaEngine(input, (engine) => engine.diagnose());
  for (const name of found.failedMigrationNames) {
    await withSchemaEngine(input, (engine) => engine.markRolledBack(name));
  }
  const changed = found.editedMigrationNames.find((name) => !found.failedMigrationNames.includes(name));
  if (changed !== undefined) {
    throw new MigrationFailure(
      "changed",
      `Migration ${changed} was changed after this database had applied it: put the file back as it was and write a new migration, or use a new database.`,
    );
  }
  const history = found.history;
  if (history && history.diagnostic !== "databaseIsBehind") {
    throw new MigrationFailure(
      "newer",
      `This database has migrations that this release does not know (${history.unpersistedMigrationNames.join(", ")}): run the release that made it, or a later one.`,
    );
  }
}

/**
 * Compares two states: the schema files, what the migrations lead to, the database as it is, an empty one.
 * @param url of an owner who may make databases: migrations are tried out in a shadow, which is removed again
 * @returns the SQL that leads from the one to the other; empty when they agree.
 *   Constraints, triggers and views that the schema language cannot say are not compared.
 */
export async function diffSchema(
  url: string,
  from: SchemaState,
  to: SchemaState,
  prisma: PrismaFolder = projectPrisma,
): Promise<string> {
  return await withSchemaEngine(readInput(url, prisma), (engine) => engine.diff(from, to));
}
