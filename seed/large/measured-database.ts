/**
 * The database that is filled and measured: the one that DATABASE_URL names, or
 * the one that comes with the program, where "npm start" has made it.
 */
import fs from "node:fs";
import path from "node:path";
import { databaseName } from "#app/_server/launch/database.mjs";
import { openCluster } from "#app/_server/launch/postgres.mjs";
import { dataFolder } from "#app/_server/launch/project.mjs";
import { Halt } from "#app/_server/launch/report.mjs";

export const noDatabase = 'There is no database yet: run "npm start" once, or set DATABASE_URL.';

/** @throws {Halt} where there is none */
export async function withMeasuredDatabase(work: (url: string) => Promise<void>): Promise<void> {
  const { DATABASE_URL: stated } = process.env;
  if (stated) {
    await work(stated);
    return;
  }
  const folder = dataFolder();
  if (!fs.existsSync(path.join(folder, "postgres.password"))) throw new Halt(noDatabase);
  const cluster = await openCluster(folder, { notice: (text) => console.log(text) });
  try {
    await work(cluster.url(databaseName));
  } finally {
    await cluster.leave();
  }
}
