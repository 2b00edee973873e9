/**
 * How the catalogue's questions compare with the plainest one, within one run on
 * one database: the page of forty rows by key, asked of Postgres directly, is 1.
 *
 *   npm run demo:large -- --specimens 100000
 *   npm run bench
 */
import { listDue } from "#lib/desk/queries/due.ts";
import { listAuditEntries } from "#lib/desk/queries/happened.ts";
import { listLoans } from "#lib/loans/queries/list-loans.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { closeDatabase, useDatabase } from "#lib/platform/database.ts";
import { addDays } from "#lib/platform/dates.ts";
import { listSpecimens } from "#lib/specimens/queries/list-specimens.ts";
import { findByNumber } from "#lib/specimens/queries.ts";
import { withMeasuredDatabase } from "#seed/large/measured-database.ts";

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
  "anything that is free": () => listSpecimens(programViewer, free),
  "a structure, implied": () => listSpecimens(programViewer, { text: "vagus", evidence: "implied" }),
  "a bone, implied": () => listSpecimens(programViewer, { text: "femur", evidence: "implied" }),
  "words that nothing has": () => listSpecimens(programViewer, { text: "windmill harbour" }),
  "what is due": () => listDue(programViewer),
  "what happened": () => listAuditEntries(programViewer),
  "loans under way": () => listLoans(programViewer),
  "a number": () => findByNumber(programViewer, "AN 2019.0142"),
};

await withMeasuredDatabase(async (url) => {
  const { pool } = useDatabase(url);
  const plain = await medianMs(() =>
    pool.query("SELECT id, accession_number, title FROM specimen ORDER BY accession_number, id LIMIT 40"),
  );
  const { rows } = await pool.query<{ count: string }>("SELECT count(*) FROM specimen");
  console.log(`${rows[0]?.count} specimens; the plain page took ${plain.toFixed(2)} ms and is 1`);
  for (const [question, ask] of Object.entries(questions))
    console.log(`${question.padEnd(26)} ${((await medianMs(ask)) / plain).toFixed(1)}`);
  await closeDatabase();
});
