// @ts-check
/**
 * One at a time, across processes: a lock is a file that names its holder, by
 * process number and the moment the process began. A number alone would lie:
 * after a restart it may belong to somebody else. A lock whose holder no longer
 * lives is taken over, so `kill -9` leaves nothing to clean up by hand.
 */
import { execFileSync } from "node:child_process";
import crypto from "node:crypto";
import fs from "node:fs";
import { Halt, say } from "./report.mjs";

const pauseMs = 50;
const patienceMs = 10 * 60_000;
/** How long somebody waits before being told why. */
const silenceMs = 1_500;

/** @param {number} ms @returns {Promise<void>} */
export const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/**
 * @param {number} pid
 * @returns {string | undefined} the process as "number beginning", or nothing when no such process lives
 */
export function processIdentity(pid) {
  if (!Number.isInteger(pid) || pid <= 0) return undefined;
  try {
    if (process.platform === "linux") {
      // After the name in brackets: state is field 3 of the line, the beginning is field 22 (proc(5)).
      const stat = fs.readFileSync(`/proc/${pid}/stat`, "utf8");
      const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
      return fields[0] === "Z" ? undefined : `${pid} ${fields[19]}`;
    }
    const began = execFileSync("ps", ["-o", "lstart=", "-p", String(pid)], { encoding: "utf8" }).trim();
    return began ? `${pid} ${began}` : undefined;
  } catch {
    return undefined;
  }
}

/** Whether the process that wrote this identity still lives.
 * @param {string} identity */
export const isAlive = (identity) =>
  identity !== "" && processIdentity(Number.parseInt(identity, 10)) === identity;

/** @param {string} file @returns {string | undefined} */
function readIfThere(file) {
  try {
    return fs.readFileSync(file, "utf8");
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code === "ENOENT") return undefined;
    throw error;
  }
}

/**
 * Writes the lock with its content in one step (a link to a finished file), so
 * that nobody ever reads an empty lock.
 * @param {string} file @param {string} content @returns {boolean} whether it is ours now
 */
function place(file, content) {
  const draft = `${file}.${crypto.randomUUID()}`;
  fs.writeFileSync(draft, content, { mode: 0o600 });
  try {
    fs.linkSync(draft, file);
    return true;
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code === "EEXIST") return false;
    throw error;
  } finally {
    fs.rmSync(draft, { force: true });
  }
}

/**
 * Moves a dead holder's lock out of the way. Should a living process have taken
 * it over between our look and our move, it gets its lock back.
 * @param {string} file @param {string} dead
 */
function clearAway(file, dead) {
  const aside = `${file}.${crypto.randomUUID()}`;
  try {
    fs.renameSync(file, aside);
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code === "ENOENT") return;
    throw error;
  }
  const moved = readIfThere(aside);
  if (moved !== undefined && moved !== dead) place(file, moved);
  fs.rmSync(aside, { force: true });
}

/**
 * Does the work while holding the lock; waits while another living process holds it.
 * @template T
 * @param {string} file
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function withLock(file, work) {
  const identity = processIdentity(process.pid) ?? String(process.pid);
  // Two pieces of work in one process exclude each other too, hence the random end.
  const mine = `${identity}\n${crypto.randomUUID()}`;
  const giveUpAt = Date.now() + patienceMs;
  let tellAt = Date.now() + silenceMs;
  while (!place(file, mine)) {
    const holder = readIfThere(file);
    if (holder === undefined) continue;
    const holderIdentity = holder.split("\n")[0] ?? "";
    if (!isAlive(holderIdentity)) clearAway(file, holder);
    else if (Date.now() > giveUpAt) {
      throw new Halt(
        `Process ${Number.parseInt(holder, 10)} has held ${file} for ten minutes: end that process and run the same command again.`,
      );
    } else {
      if (Date.now() > tellAt) {
        say(`Waiting for process ${Number.parseInt(holder, 10)}, which is at the same work.`);
        tellAt = Number.POSITIVE_INFINITY;
      }
      await pause(pauseMs);
    }
  }
  try {
    return await work();
  } finally {
    if (readIfThere(file) === mine) fs.rmSync(file, { force: true });
  }
}
