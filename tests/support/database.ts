/**
 * Databases for tests. `await testDatabase()` in `beforeAll` gives the file a
 * copy of a migrated template, points the program at it in the application's
 * role, and drops it after the last test. Templates are made once in a run, by
 * the first file that asks.
 */
import { execFile } from "node:child_process";
import crypto from "node:crypto";
import path from "node:path";
import { promisify } from "node:util";
import pg from "pg";
import { inject } from "vitest";
import { withLock } from "#app/_server/launch/lock.mjs";
import { type Cluster, openCluster } from "#app/_server/launch/postgres.mjs";
import { root } from "#app/_server/launch/project.mjs";
import { closeDatabase, useDatabase as pointProgramAt } from "#lib/platform/database.ts";
import { applyMigrations } from "#lib/platform/migrate.ts";
import { afterThisFile } from "#tests/support/after-file.ts";
import { hastySettings } from "#tests/support/run-folder.mjs";

/** What a database holds at first: only tables, the vocabularies as well, or the whole demo scenario. */
export type Contents = "tables" | "vocabularies" | "demo";

export type TestDatabase = {
  /** As the owner, who migrates and may do anything. */
  url: string;
  /** As the role of the application, which the database refuses what must never be. */
  applicationUrl: string;
};

/** A name in the database is an object of the owner; the template names are fixed within a run. */
const templateName: Record<Contents, string> = {
  tables: "template_tables",
  vocabularies: "template_vocabularies",
  demo: "template_demo",
};
const loader = { vocabularies: "seed/reference.ts", demo: "seed/demo.ts" } as const;

const objectInUse = "55006";

let opened: Promise<Cluster> | undefined;

function cluster(): Promise<Cluster> {
  opened ??= openCluster(inject("runFolder"), { settings: hastySettings });
  return opened;
}

async function asAdministrator<Result>(work: (client: pg.Client) => Promise<Result>): Promise<Result> {
  const client = new pg.Client({ connectionString: (await cluster()).url("postgres") });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

async function exists(name: string): Promise<boolean> {
  const { rowCount } = await asAdministrator((client) =>
    client.query("SELECT 1 FROM pg_database WHERE datname = $1", [name]),
  );
  return rowCount === 1;
}

async function copyDatabase(from: string, to: string): Promise<void> {
  await asAdministrator((client) => client.query(`CREATE DATABASE ${to} TEMPLATE ${from}`));
}

function environmentFor(url: string): NodeJS.ProcessEnv {
  return {
    ...process.env,
    DATABASE_URL: url,
    ANATHECA_SECRET: "only for tests, only for tests, only for tests",
    ANATHECA_URL: "http://localhost:3000",
  };
}

async function fill(contents: Contents, url: string): Promise<void> {
  if (contents === "tables") {
    await applyMigrations(url);
    return;
  }
  const args = ["--import", "tsx", "--conditions=react-server", path.join(root, loader[contents])];
  await promisify(execFile)(process.execPath, args, { cwd: root, env: environmentFor(url) });
}

/** Makes the template unless it is there: each kind is filled on top of the one below. */
async function template(contents: Contents): Promise<string> {
  const name = templateName[contents];
  await withLock(path.join(inject("runFolder"), `${name}.lock`), async () => {
    if (await exists(name)) return;
    const below =
      contents === "tables" ? "template0" : await template(contents === "demo" ? "vocabularies" : "tables");
    const draft = `draft_${contents}`;
    await asAdministrator((client) => client.query(`DROP DATABASE IF EXISTS ${draft} WITH (FORCE)`));
    await copyDatabase(below, draft);
    await fill(contents, (await cluster()).url(draft));
    await asAdministrator((client) => client.query(`ALTER DATABASE ${draft} RENAME TO ${name}`));
  });
  return name;
}

/** A database without a single table, for tests of the migrations themselves. It is dropped at the end of the file. */
export async function emptyDatabase(): Promise<string> {
  const name = `test_${crypto.randomUUID().replaceAll("-", "")}`;
  afterThisFile(() => dropDatabase(name));
  await copyDatabase("template0", name);
  return (await cluster()).url(name);
}

/** A copy of the template, which the program uses from now on. It is dropped at the end of the file. */
export async function testDatabase(contents: Contents = "tables"): Promise<TestDatabase> {
  const from = await template(contents);
  const name = `test_${crypto.randomUUID().replaceAll("-", "")}`;
  afterThisFile(() => dropDatabase(name));
  afterThisFile(closeDatabase);
  await copyDatabase(from, name);
  const url = (await cluster()).url(name);
  Object.assign(process.env, environmentFor(url));
  pointProgramAt(url);
  const applicationUrl = `${url}?options=${encodeURIComponent("-c role=anatheca_app")}`;
  return { url, applicationUrl };
}

async function dropDatabase(name: string): Promise<void> {
  await asAdministrator((client) => client.query(`DROP DATABASE IF EXISTS ${name}`)).catch(
    (error: pg.DatabaseError) => {
      // A file that keeps a connection of its own to the end: the whole cluster goes after the run.
      if (error.code !== objectInUse) throw error;
    },
  );
}
