/** The Postgres that comes with the program: made, shared, left, and taken up again after a violent end. */
import fs from "node:fs";
import path from "node:path";
import pg from "pg";
import { afterAll, beforeAll, describe, expect, inject, test } from "vitest";
import { destroyCluster, openCluster } from "#app/_server/launch/postgres.mjs";
import { hastySettings } from "#tests/support/run-folder.mjs";

let folder: string;
beforeAll(() => {
  folder = path.join(inject("runFolder"), "own-cluster");
  fs.mkdirSync(folder, { mode: 0o711 });
});
afterAll(async () => {
  await destroyCluster(folder);
  fs.rmSync(folder, { recursive: true, force: true });
});

const open = () => openCluster(folder, { settings: hastySettings });

/** The folder of the cluster itself, which may lie elsewhere when root runs the tests. */
function dataFolder(): string {
  const note = path.join(folder, "postgres.folder");
  return path.join(fs.existsSync(note) ? fs.readFileSync(note, "utf8").trim() : folder, "postgres");
}
const serverFile = () => path.join(dataFolder(), "postmaster.pid");
const serverPid = () => Number(fs.readFileSync(serverFile(), "utf8").split("\n")[0]);

async function ask(url: string, sql: string): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query(sql)).rows;
  } finally {
    await client.end();
  }
}

describe("the embedded database", () => {
  test("is made for its owner alone, by password, reachable from this machine only", async () => {
    const cluster = await open();
    expect(cluster.adopted).toBe(false);
    expect(fs.statSync(path.join(folder, "postgres.password")).mode & 0o777).toBe(0o600);
    expect(fs.statSync(dataFolder()).mode & 0o777).toBe(0o700);
    const [settings] = await ask(
      cluster.url("postgres"),
      "SELECT current_setting('listen_addresses') AS listens, current_setting('unix_socket_directories') AS sockets, current_setting('max_connections') AS connections",
    );
    expect(settings).toEqual({ listens: "127.0.0.1", sockets: "", connections: "300" });
    const wrong = new URL(cluster.url("postgres"));
    wrong.password = "guessed";
    await expect(ask(wrong.href, "SELECT 1")).rejects.toMatchObject({ code: "28P01" });
    expect(await cluster.leave()).toBe("stopped");
  });

  test("takes letters with marks for letters when it compares words", async () => {
    const cluster = await open();
    await ask(cluster.url("postgres"), "CREATE EXTENSION pg_trgm");
    const [row] = await ask(
      cluster.url("postgres"),
      "SELECT lower('ÜÄÖ') AS lower, similarity('Gefäßbündel', 'Gefäßbundel') > 0.5 AS alike, cardinality(show_trgm('üß')) AS trigrams",
    );
    // Two letters give three groups of three: "  ü", " üß", "üß ".
    expect(row).toEqual({ lower: "üäö", alike: true, trigrams: 3 });
    await cluster.leave();
  });

  test("is shared by all who open it and stopped by the last to leave", async () => {
    const [one, two, three] = await Promise.all([open(), open(), open()]);
    expect([one, two, three].filter((cluster) => !cluster.adopted)).toHaveLength(1);
    expect(new Set([one.port, two.port, three.port]).size).toBe(1);
    expect(await one.leave()).toBe("still in use");
    expect(await three.leave()).toBe("still in use");
    expect(await ask(two.url("postgres"), "SELECT 1 AS one")).toEqual([{ one: 1 }]);
    expect(await two.leave()).toBe("stopped");
    expect(fs.existsSync(serverFile())).toBe(false);
  });

  test("stays up for a guest that did not come through the program", async () => {
    const cluster = await open();
    const guest = new pg.Client({ connectionString: cluster.url("postgres") });
    await guest.connect();
    expect(await cluster.leave()).toBe("still in use");
    await guest.end();
    const again = await open();
    expect(again.adopted).toBe(true);
    expect(await again.leave()).toBe("stopped");
  });

  test("starts again after it was killed, and tells whoever was there", async () => {
    const cluster = await open();
    await ask(cluster.url("postgres"), "CREATE TABLE kept AS SELECT 7 AS seven");
    await ask(cluster.url("postgres"), "CHECKPOINT");
    process.kill(serverPid(), "SIGKILL");
    const again = await open();
    expect(again.adopted).toBe(false);
    expect(await ask(again.url("postgres"), "SELECT seven FROM kept")).toEqual([{ seven: 7 }]);
    await again.leave();
    await cluster.lost;
  });

  test("starts although the file of its last run names a process that is something else by now", async () => {
    const cluster = await open();
    await cluster.leave();
    fs.writeFileSync(serverFile(), `${process.pid}\n${dataFolder()}\n1\n5432\n\n127.0.0.1\n\nready   \n`, {
      mode: 0o600,
    });
    const again = await open();
    expect(again.adopted).toBe(false);
    await again.leave();
  });

  test("says what to do when its password is lost", async () => {
    const file = path.join(folder, "postgres.password");
    const password = fs.readFileSync(file, "utf8");
    fs.rmSync(file);
    await expect(open()).rejects.toThrow(/put it back/);
    fs.writeFileSync(file, "another\n", { mode: 0o600 });
    await expect(open()).rejects.toThrow(/put the right postgres.password back/);
    fs.writeFileSync(file, password, { mode: 0o600 });
    const cluster = await open();
    await cluster.leave();
  });
});
