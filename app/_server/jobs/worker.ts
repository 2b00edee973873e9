/**
 * Letters and reminders, beside the pages: begins what `jobs.ts` registers, and
 * ends by itself when it cannot, so that the server begins it anew later.
 */
import { startJobs } from "#app/_server/jobs/jobs.ts";
import { readConfig, readMailServer } from "#lib/platform/config.ts";
import { useDatabase as pointProgramAt } from "#lib/platform/database.ts";

const connections = 8;
/** The same trouble is told once. */
let told = "";

function tell(error: unknown): void {
  const text = error instanceof Error ? error.message : String(error);
  if (text === told) return;
  told = text;
  process.stderr.write(`Letters and reminders: ${text}\n`);
}

const { databaseUrl, url } = readConfig();
const { pool } = pointProgramAt(databaseUrl, connections);
// A database that went away closes idle connections; the next look says so.
pool.on("error", tell);
await startJobs({ databaseUrl, url, mailServer: readMailServer(), onTrouble: tell });
