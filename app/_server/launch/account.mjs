// @ts-check
/**
 * Under which account Postgres runs, and where it can keep its files. Postgres
 * refuses to run as root. Started by root it runs under an account without
 * privileges, which often cannot enter the project folder (a home of root, a
 * folder for one person alone): then the files lie in a private folder with a
 * random name outside, and `.data` holds a note of where that is.
 */
import { spawnSync } from "node:child_process";
import fs from "node:fs";
import path from "node:path";
import { Halt } from "./report.mjs";

/** @typedef {{ uid: number, gid: number }} Account */

/** Accounts that a Unix system has for this, best first. */
const unprivileged = ["postgres", "_postgres", "nobody"];

/** Folders for the lasting data of programs, of which root may make a part: Linux, macOS, others. */
const outsideFolders = ["/var/lib", "/var/db", "/usr/local/var"];

export const isRoot = () => process.getuid?.() === 0;

/**
 * @param {string} [existing] a data folder made earlier: its owner goes on
 * @returns {Account | undefined} nothing when we are nobody special and run Postgres ourselves
 */
export function postgresAccount(existing) {
  if (!isRoot()) return undefined;
  if (existing !== undefined && fs.existsSync(existing)) {
    const { uid, gid } = fs.statSync(existing);
    if (uid !== 0) return { uid, gid };
  }
  const accounts = fs
    .readFileSync("/etc/passwd", "utf8")
    .split("\n")
    .map((line) => line.split(":"));
  for (const name of unprivileged) {
    const fields = accounts.find((account) => account[0] === name);
    if (fields) return { uid: Number(fields[2]), gid: Number(fields[3]) };
  }
  throw new Halt(
    "Postgres does not run as root and this system has neither an account postgres nor nobody: start as another user, or set DATABASE_URL.",
  );
}

/**
 * Asks the system itself whether the account may do it, instead of reading mode bits:
 * access lists and mounts count as well.
 * @param {Account | undefined} account
 * @param {string} test a shell test over "$0"
 * @param {string} place
 */
function may(account, test, place) {
  return spawnSync("/bin/sh", ["-c", test, place], { ...account, cwd: "/", stdio: "ignore" }).status === 0;
}

/** @param {Account | undefined} account @param {string} folder */
export const canEnter = (account, folder) => may(account, 'cd "$0"', folder);

/** @param {Account | undefined} account @param {string} native */
const canRun = (account, native) =>
  may(account, 'test -x "$0/bin/postgres" && test -r "$0/lib" && test -r "$0/share/postgresql"', native);

/** @param {string} place @param {Account} account */
function giveTo(place, account) {
  fs.lchownSync(place, account.uid, account.gid);
  if (!fs.lstatSync(place).isDirectory()) return;
  for (const name of fs.readdirSync(place)) giveTo(path.join(place, name), account);
}

/** @param {string} folder @param {string} note */
function readNote(folder, note) {
  const outside = fs.readFileSync(note, "utf8").trim();
  const found = fs.lstatSync(outside, { throwIfNoEntry: false });
  if (found === undefined) {
    throw new Halt(
      `The database folder ${outside}, which ${note} names, is gone: put it back from a copy, or remove ${folder} to begin with a new database.`,
    );
  }
  if (!found.isDirectory() || (found.mode & 0o022) !== 0) {
    throw new Halt(
      `The database folder ${outside} is open to other people on this machine: run chmod 700 on it after you have looked what is in it.`,
    );
  }
  return outside;
}

/**
 * The folder in which the cluster and, if need be, a copy of the programs lie.
 * @param {string} folder the data folder of the program
 * @param {(line: string) => void} notice
 * @returns {{ home: string, account: Account | undefined }}
 */
export function clusterHome(folder, notice) {
  const note = path.join(folder, "postgres.folder");
  if (fs.existsSync(note)) {
    const home = readNote(folder, note);
    return { home, account: postgresAccount(home) };
  }
  const account = postgresAccount(path.join(folder, "postgres"));
  if (account === undefined || canEnter(account, folder)) return { home: folder, account };
  if (fs.existsSync(path.join(folder, "postgres"))) {
    throw new Halt(
      `The account that runs the database can no longer enter ${folder}: allow it on every folder of that path (chmod o+x) and start again.`,
    );
  }
  const parent = outsideFolders.find((outside) => fs.existsSync(outside) && canEnter(account, outside));
  if (parent === undefined) {
    throw new Halt(
      `No account without privileges can enter ${folder}: move the project to a folder that others may enter, start as another user, or set DATABASE_URL.`,
    );
  }
  const home = fs.mkdtempSync(path.join(parent, "anatheca-"));
  try {
    fs.chownSync(home, account.uid, account.gid);
    fs.writeFileSync(note, `${home}\n`, { mode: 0o600 });
  } catch (error) {
    // Without the note nobody would find it again.
    fs.rmSync(home, { recursive: true });
    throw error;
  }
  notice(`The database account cannot enter ${folder}, so the database lies in ${home}.`);
  return { home, account };
}

/**
 * The installed programs of Postgres, or a copy of them that the account can reach.
 * @param {string} native the folder in the installed package
 * @param {string} version
 * @param {string} home
 * @param {Account | undefined} account
 */
export function reachablePrograms(native, version, home, account) {
  if (account === undefined || canRun(account, native)) return native;
  const copy = path.join(home, `postgres-programs-${version}`);
  if (!fs.existsSync(copy)) {
    const draft = path.join(home, "postgres-programs-draft");
    fs.rmSync(draft, { recursive: true, force: true });
    fs.cpSync(native, draft, { recursive: true, verbatimSymlinks: true });
    fs.chmodSync(draft, 0o700);
    giveTo(draft, account);
    fs.renameSync(draft, copy);
  }
  return copy;
}
