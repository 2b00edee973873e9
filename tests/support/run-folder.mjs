// @ts-check
/**
 * A folder for one run of tests below `.data/test`, with whatever that run starts
 * in it. A run that was killed leaves its folder behind, and perhaps a database
 * that still runs: the next run recognises both by the name of the process in it
 * and clears them away. Runs at the same time do not know of each other.
 */
import fs from "node:fs";
import path from "node:path";
import { isAlive, processIdentity } from "../../app/_server/launch/lock.mjs";
import { dataFolder } from "../../app/_server/launch/project.mjs";

const ownerFile = "owner";
const signedWithinMs = 60_000;

/** @param {string} folder */
async function clearAway(folder) {
  // Imported late: it needs an installed package, and this file is read before the install.
  const { destroyCluster } = await import("../../app/_server/launch/postgres.mjs");
  // Under another name first, so that a worker which is still at it cannot begin anew in there.
  const gone = `${folder}-gone`;
  fs.renameSync(folder, gone);
  const below = fs.readdirSync(gone, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  for (const place of [gone, ...below.map(({ name }) => path.join(gone, name))]) {
    const begun = ["postgres.folder", "postgres.password"].some((name) =>
      fs.existsSync(path.join(place, name)),
    );
    if (begun) await destroyCluster(place);
  }
  fs.rmSync(gone, { recursive: true, force: true });
}

/** @param {string} all */
async function clearAwayAbandoned(all) {
  for (const name of fs.readdirSync(all)) {
    const folder = path.join(all, name);
    const owner = path.join(folder, ownerFile);
    const abandoned = fs.existsSync(owner)
      ? !isAlive(fs.readFileSync(owner, "utf8"))
      : // A run that has just begun has not signed its folder yet.
        Date.now() - fs.statSync(folder).mtimeMs > signedWithinMs;
    if (abandoned) await clearAway(folder);
  }
}

/** @returns {Promise<{ folder: string, remove: () => Promise<void> }>} */
export async function openRunFolder() {
  const all = dataFolder("test");
  await clearAwayAbandoned(all);
  const folder = fs.mkdtempSync(path.join(all, "run-"));
  // The database runs under another account when root runs the tests.
  if (process.getuid?.() === 0) fs.chmodSync(folder, 0o711);
  fs.writeFileSync(path.join(folder, ownerFile), processIdentity(process.pid) ?? "");
  return { folder, remove: () => clearAway(folder) };
}

/** Nothing in a test database needs to outlive a power cut. */
export const hastySettings = { fsync: "off", synchronous_commit: "off", full_page_writes: "off" };
