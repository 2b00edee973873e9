/** Statements that are handed to one connection side by side. */
import { beforeAll, expect, test } from "vitest";
import { database, databasePool } from "#lib/platform/database.ts";
import { testDatabase } from "#tests/support/database.ts";

beforeAll(async () => {
  await testDatabase();
}, 120_000);

test("run one after the other, and the driver has nothing to warn of", async () => {
  const warnings: string[] = [];
  const listen = ({ message }: Error) => warnings.push(message);
  process.on("warning", listen);
  const client = await databasePool().connect();
  try {
    const rows = await Promise.all(
      ["0.05", "0.02", "0", "0"].map((seconds, index) =>
        client.query<{ index: number; at: string }>(
          `SELECT pg_sleep(${seconds}), ${index} AS index, clock_timestamp()::text AS at`,
        ),
      ),
    );
    const told = rows.map(({ rows: [row] }) => row);
    expect(told.map((row) => row?.index)).toEqual([0, 1, 2, 3]);
    const moments = told.map((row) => row?.at ?? "");
    expect(moments).toEqual([...moments].sort());
  } finally {
    client.release();
  }
  await new Promise((resolve) => setImmediate(resolve));
  process.off("warning", listen);
  expect(warnings).toEqual([]);
});

test("go on after one that failed", async () => {
  const client = await databasePool().connect();
  try {
    const [first, failed, last] = await Promise.allSettled([
      client.query("SELECT 1 AS one"),
      client.query("SELECT nothing_of_the_kind"),
      client.query<{ two: number }>("SELECT 2 AS two"),
    ]);
    expect([first.status, failed.status]).toEqual(["fulfilled", "rejected"]);
    expect(last.status === "fulfilled" && last.value.rows).toEqual([{ two: 2 }]);
  } finally {
    client.release();
  }
});

test("of one transaction are undone together when one of them fails", async () => {
  const key = "test.side-by-side";
  const work = database().$transaction(async (transaction) => {
    await transaction.$executeRaw`SELECT set_config('anatheca.actor', gen_random_uuid()::text, true), set_config('anatheca.act', 'test', true)`;
    await Promise.all([
      transaction.setting.create({ data: { key, value: 1 } }),
      transaction.$queryRaw`SELECT 1 / 0`,
      transaction.setting.count(),
    ]);
  });
  await expect(work).rejects.toThrow(/division by zero/);
  expect(await database().setting.count({ where: { key } })).toBe(0);
});
