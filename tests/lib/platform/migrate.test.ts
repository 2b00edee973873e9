/** Migrations on databases of their own, with folders of migrations made up for each test. */
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import pg from "pg";
import { afterEach, describe, expect, test } from "vitest";
import {
  applyMigrations,
  diffSchema,
  MigrationFailure,
  type PrismaFolder,
  projectPrisma,
} from "#lib/platform/migrate.ts";
import { emptyDatabase, testDatabase } from "#tests/support/database.ts";

const first = "20260101000000_shelf";
const second = "20260102000000_label";

const shelfSql = `CREATE TABLE "shelf" ("id" UUID NOT NULL, "note" TEXT NOT NULL, CONSTRAINT "shelf_pkey" PRIMARY KEY ("id"));
CREATE FUNCTION stamp_note() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW.note := 'one; two';
  RETURN NEW;
END; $$;
CREATE TRIGGER shelf_stamp BEFORE INSERT ON "shelf" FOR EACH ROW EXECUTE FUNCTION stamp_note();
`;
const labelSql = `ALTER TABLE "shelf" ADD COLUMN "label" TEXT;\n`;

const schemaWith = (fields: string) => `datasource db {
  provider = "postgresql"
}

model Shelf {
  id   String @id @db.Uuid
  note String
${fields}
  @@map("shelf")
}
`;

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) fs.rmSync(folder, { recursive: true, force: true });
});

function prismaFolder(migrations: Record<string, string>, schema = schemaWith("")): PrismaFolder {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "anatheca-migrate-"));
  folders.push(folder);
  const prisma = { migrations: path.join(folder, "migrations"), schema: path.join(folder, "schema") };
  fs.mkdirSync(prisma.schema);
  fs.writeFileSync(path.join(prisma.schema, "shelf.prisma"), schema);
  for (const [name, sql] of Object.entries(migrations)) writeMigration(prisma, name, sql);
  return prisma;
}

function writeMigration(prisma: PrismaFolder, name: string, sql: string): void {
  fs.mkdirSync(path.join(prisma.migrations, name), { recursive: true });
  fs.writeFileSync(path.join(prisma.migrations, name, "migration.sql"), sql);
}

async function ask<Row extends pg.QueryResultRow>(url: string, sql: string): Promise<Row[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query<Row>(sql)).rows;
  } finally {
    await client.end();
  }
}

const tablesOf = async (url: string) =>
  (
    await ask<{ name: string }>(
      url,
      "SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' ORDER BY tablename",
    )
  ).map(({ name }) => name);

const databasesLike = async (url: string, pattern: string) =>
  (await ask(url, `SELECT datname FROM pg_database WHERE datname LIKE '${pattern}'`)).length;

async function failureOf(attempt: Promise<unknown>): Promise<MigrationFailure> {
  const outcome = await attempt.then(
    (value) => value,
    (error: unknown) => error,
  );
  if (outcome instanceof MigrationFailure) return outcome;
  throw new Error(`It was not refused: ${String(outcome)}`);
}

describe("applying migrations", () => {
  test("brings an empty database up to date, once, and keeps Prisma's own record", async () => {
    const url = await emptyDatabase();
    const prisma = prismaFolder({ [second]: labelSql, [first]: shelfSql });
    expect(await applyMigrations(url, prisma)).toEqual([first, second]);
    expect(await applyMigrations(url, prisma)).toEqual([]);
    expect(await tablesOf(url)).toEqual(["_prisma_migrations", "shelf"]);
    const record = await ask(
      url,
      "SELECT migration_name, length(checksum) AS digits, applied_steps_count AS steps, finished_at IS NOT NULL AS finished FROM _prisma_migrations ORDER BY 1",
    );
    expect(record).toEqual([
      { migration_name: first, digits: 64, steps: 1, finished: true },
      { migration_name: second, digits: 64, steps: 1, finished: true },
    ]);
  });

  test("keeps a function whose body holds semicolons whole", async () => {
    const url = await emptyDatabase();
    await applyMigrations(url, prismaFolder({ [first]: shelfSql }));
    const id = "0198b8d0-0000-7000-8000-000000000001";
    const rows = await ask(url, `INSERT INTO shelf VALUES ('${id}', 'x') RETURNING note`);
    expect(rows).toEqual([{ note: "one; two" }]);
  });

  test("is done by one of several programs that start at the same moment", async () => {
    const url = await emptyDatabase();
    const prisma = prismaFolder({ [first]: shelfSql, [second]: labelSql });
    const outcomes = await Promise.all(Array.from({ length: 5 }, () => applyMigrations(url, prisma)));
    expect(outcomes.toSorted((a, b) => b.length - a.length)).toEqual([[first, second], [], [], [], []]);
  });

  test("undoes a migration that fails, says where it failed, and tries it again once it is mended", async () => {
    const url = await emptyDatabase();
    const prisma = prismaFolder({
      [first]: shelfSql,
      [second]: "CREATE TABLE half (a int);\nCREATE TABLE other (b no_such_type);\n",
    });
    const failure = await failureOf(applyMigrations(url, prisma));
    expect(failure.reason).toBe("failed");
    expect(failure.message).toContain(
      `Migration ${second} failed in line 2: type "no_such_type" does not exist.`,
    );
    expect(await tablesOf(url)).toEqual(["_prisma_migrations", "shelf"]);

    writeMigration(prisma, second, labelSql);
    expect(await applyMigrations(url, prisma)).toEqual([second]);
    expect(await applyMigrations(url, prisma)).toEqual([]);
  });

  test("refuses when an applied migration was changed afterwards", async () => {
    const url = await emptyDatabase();
    const prisma = prismaFolder({ [first]: shelfSql });
    await applyMigrations(url, prisma);
    writeMigration(prisma, first, `${shelfSql}-- one more thing\n`);
    expect((await failureOf(applyMigrations(url, prisma))).reason).toBe("changed");
  });

  test("refuses a database that a later release has migrated", async () => {
    const url = await emptyDatabase();
    const prisma = prismaFolder({ [first]: shelfSql, [second]: labelSql });
    await applyMigrations(url, prisma);
    fs.rmSync(path.join(prisma.migrations, second), { recursive: true });
    const failure = await failureOf(applyMigrations(url, prisma));
    expect(failure.reason).toBe("newer");
    expect(failure.message).toContain(second);
  });

  test("refuses a database that holds tables of something else", async () => {
    const url = await emptyDatabase();
    await ask(url, "CREATE TABLE stranger (a int)");
    expect((await failureOf(applyMigrations(url, prismaFolder({ [first]: shelfSql })))).reason).toBe(
      "foreign",
    );
    expect(await tablesOf(url)).toEqual(["stranger"]);
  });

  test.each(["BEGIN;\nCREATE TABLE a (b int);\nCOMMIT;", "CREATE TABLE a (b int);\nROLLBACK;"])(
    "refuses a file that ends a transaction itself: %j",
    async (sql) => {
      const url = await emptyDatabase();
      expect((await failureOf(applyMigrations(url, prismaFolder({ [first]: sql })))).reason).toBe("unfit");
      expect(await tablesOf(url)).toEqual([]);
    },
  );

  test("leaves no connection behind, so the database can serve as a template", async () => {
    const url = await emptyDatabase();
    await applyMigrations(url, prismaFolder({ [first]: shelfSql }));
    const name = new URL(url).pathname.slice(1);
    const [row] = await ask<{ guests: string }>(
      url,
      `SELECT count(*) AS guests FROM pg_stat_activity WHERE datname = '${name}' AND pid <> pg_backend_pid()`,
    );
    expect(row?.guests).toBe("0");
  });
});

describe("comparing states", () => {
  test("finds no difference where there is none, and takes the shadow database away", async () => {
    const url = await emptyDatabase();
    const prisma = prismaFolder({ [first]: shelfSql });
    await applyMigrations(url, prisma);
    expect(await diffSchema(url, "migrations", "schema", prisma)).toBe("");
    expect(await diffSchema(url, "migrations", "database", prisma)).toBe("");
    expect(await diffSchema(url, "database", "schema", prisma)).toBe("");
    expect(await databasesLike(url, "anatheca_shadow_%")).toBe(0);
  });

  test("gives the SQL that leads from the migrations to a changed schema", async () => {
    const url = await emptyDatabase();
    const prisma = prismaFolder({ [first]: shelfSql }, schemaWith("  label String?\n"));
    expect(await diffSchema(url, "migrations", "schema", prisma)).toContain(
      'ALTER TABLE "shelf" ADD COLUMN     "label" TEXT;',
    );
  });

  test("sees a column that somebody added to the database by hand", async () => {
    const url = await emptyDatabase();
    const prisma = prismaFolder({ [first]: shelfSql });
    await applyMigrations(url, prisma);
    await ask(url, 'ALTER TABLE "shelf" ADD COLUMN "by_hand" TEXT');
    expect(await diffSchema(url, "migrations", "database", prisma)).toContain('"by_hand"');
  });
});

describe("the migrations of the program", () => {
  test("lead to exactly the schema that the program is compiled against", async () => {
    const { url } = await testDatabase();
    expect(await diffSchema(url, "database", "schema", projectPrisma)).toBe("");
    expect(await diffSchema(url, "migrations", "schema", projectPrisma)).toBe("");
    expect(await diffSchema(url, "migrations", "database", projectPrisma)).toBe("");
  });
});
