// @ts-check
/**
 * Notices that npm, which started us, is gone. Between npm and us there may be
 * a shell, which stays when npm goes: then the shell's own parent changes.
 */
import fs from "node:fs";

const everyMs = 1_000;

/** @param {number} pid @returns {number | undefined} its parent, where the system tells without another program */
function parentOf(pid) {
  try {
    const stat = fs.readFileSync(`/proc/${pid}/stat`, "utf8");
    // After the name in brackets: the state, then the parent (proc(5)).
    return Number(stat.slice(stat.lastIndexOf(")") + 2).split(" ")[1]);
  } catch {
    return undefined;
  }
}

/** @param {number} pid */
function isShell(pid) {
  try {
    return /^(sh|dash|bash|ash|zsh)$/.test(fs.readFileSync(`/proc/${pid}/comm`, "utf8").trim());
  } catch {
    return false;
  }
}

/** @param {() => void} tell */
export function whenOrphaned(tell) {
  const parent = process.ppid;
  const grandparent = isShell(parent) ? parentOf(parent) : undefined;
  setInterval(() => {
    if (process.ppid !== parent || (grandparent !== undefined && parentOf(parent) !== grandparent)) tell();
  }, everyMs).unref();
}
