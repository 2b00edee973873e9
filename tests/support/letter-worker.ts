/**
 * The program's own work as a process of its own, so that a test can kill it in the
 * middle. It looks often and takes up soon what a dead one left.
 */
import { startJobs } from "#app/_server/jobs/jobs.ts";
import { readConfig, readMailServer } from "#lib/platform/config.ts";
import { useDatabase as pointProgramAt } from "#lib/platform/database.ts";

const { databaseUrl, url } = readConfig();
pointProgramAt(databaseUrl, 4);
await startJobs({
  databaseUrl,
  url,
  mailServer: readMailServer(),
  onTrouble: (error) => {
    throw error;
  },
  lookEverySeconds: 0.5,
  letterPatience: { expireInSeconds: 2, retryDelay: 1 },
});
process.send?.("begun");
