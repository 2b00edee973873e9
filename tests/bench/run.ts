/**
 * How the catalogue's questions compare with the plainest one, within one run on
 * one database: the page of forty rows by key, asked of Postgres directly, is 1.
 *
 *   npm run demo:large -- --specimens 100000
 *   DATABASE_URL=... npm run bench
 */
import type pg from "pg";
import { programViewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { closeDatabase, databasePool } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { findByNumber, listSpecimens } from "#lib/specimens/queries.ts";

const rounds = 15;

/** @returns the median of some rounds, in milliseconds */
async function medianMs(ask: () => Promise<unknown>): Promise<number> {
  await ask();
  const times: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const start = process.hrtime.bigint();
    await ask();
    times.push(Number(process.hrtime.bigint() - start) / 1e6);
  }
  return times.sort((one, other) => one - other)[Math.floor(rounds / 2)] ?? Number.NaN;
}

const free = { freeFrom: today(), freeUntil: addDays(today(), 120) };
const questions: Record<string, () => Promise<unknown>> = {
  "first page": () => listSpecimens(programViewer),
  "kind and preparation": () =>
    listSpecimens(programViewer, { kind: "organ", preparation: "silicone-impregnated" }),
  "a structure": () => listSpecimens(programViewer, { text: "vagus" }),
  "a region": () => listSpecimens(programViewer, { text: "upper limb" }),
  "a typing error": () => listSpecimens(programViewer, { text: "brachal plexus" }),
  "a region that is free": () => listSpecimens(programViewer, { text: "upper limb", ...free }),
  "a number": () => findByNumber(programViewer, "AN 2019.0142"),
};

const pool: pg.Pool = databasePool();
const plain = await medianMs(() =>
  pool.query("SELECT id, accession_number, title FROM specimen ORDER BY accession_number, id LIMIT 40"),
);
const { rows } = await pool.query<{ count: string }>("SELECT count(*) FROM specimen");
console.log(`${rows[0]?.count} specimens; the plain page took ${plain.toFixed(2)} ms and is 1`);
for (const [question, ask] of Object.entries(questions))
  console.log(`${question.padEnd(24)} ${((await medianMs(ask)) / plain).toFixed(1)}`);
await closeDatabase();
