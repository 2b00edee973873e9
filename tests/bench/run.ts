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
import { proposeSet } from "#lib/loans/queries/propose-set.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { closeDatabase, useDatabase } from "#lib/platform/database.ts";
import { addDays, toDate } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { inTransaction } from "#lib/platform/transaction.ts";
import { listSpecimens } from "#lib/specimens/queries/list-specimens.ts";
import { findByNumber } from "#lib/specimens/queries.ts";
import { busyPeriodsOf } from "#lib/whereabouts/queries.ts";
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

const bookedSpecimens = 2_000;
const askedSpecimens = 1_000;
const bookingsEach = 5;
/** Days that nobody books: what is measured is taken back, and must not be refused before. */
const firstDay = "2400-01-01";
const month = { startsOn: "2400-05-01", endsOn: "2400-06-01" };

class TakenBack extends Error {}

/**
 * A month's availability of a thousand specimens with ten thousand bookings, beside the plainest question that could
 * be put to Postgres. The bookings are made in a transaction that is taken back.
 */
async function measureAvailability(): Promise<void> {
  const measured = inTransaction(programViewer, "bench", async (transaction) => {
    const specimens = await transaction.specimen.findMany({ select: { id: true }, take: bookedSpecimens });
    const rows = specimens.flatMap(({ id: specimenId }, at) =>
      Array.from({ length: bookingsEach }, (_, index) => {
        const startsOn = addDays(firstDay, index * 120 + (at % 100));
        return { specimenId, startsOn: toDate(startsOn), endsOn: toDate(addDays(startsOn, 10 + (at % 9))) };
      }),
    );
    const same = { purpose: "rest", strength: "firm", bookedBy: "bench" };
    await transaction.booking.createMany({ data: rows.map((row) => ({ id: newId(), ...row, ...same })) });
    const ids = specimens.slice(0, askedSpecimens).map(({ id }) => id);
    const bare = await medianMs(
      () => transaction.$queryRaw`
        SELECT specimen_id::text, starts_on::text, ends_on::text FROM booking
        WHERE specimen_id = ANY(${ids}::uuid[]) AND released_at IS NULL
          AND daterange(starts_on, ends_on) && daterange(${month.startsOn}::date, ${month.endsOn}::date)`,
    );
    const ours = await medianMs(() => busyPeriodsOf(transaction, ids, month.startsOn, month.endsOn));
    console.log(
      `a month of ${ids.length} specimens, ${rows.length} bookings: ${ours.toFixed(1)} ms, ${(ours / bare).toFixed(1)} of the bare SQL`,
    );
    throw new TakenBack();
  });
  await measured.catch((error: unknown) => {
    if (!(error instanceof TakenBack)) throw error;
  });
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
  "a set of four structures": () =>
    proposeSet(programViewer, {
      structureIds: ["heart", "vagus-nerve", "brachial-plexus", "femur"],
      startsOn: free.freeFrom,
      endsOn: free.freeUntil,
      use: "viewing only",
    }),
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
  await measureAvailability();
  await closeDatabase();
});
