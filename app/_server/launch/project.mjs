// @ts-check
/**
 * Where the project lies and what its files amount to. A fingerprint is a hash
 * over names and contents, never over times: a fresh clone of built sources is
 * recognised as unchanged, and a file put back as it was is no change.
 */
import crypto from "node:crypto";
import fs from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

/** The top folder of the project. */
export const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../../..");

/** @param {string[]} parts */
export const inProject = (...parts) => path.join(root, ...parts);

/** The program of an installed package, to be run with `process.execPath`.
 * @param {string} file */
export const installed = (file) => inProject("node_modules", file);

/** @param {string} place @returns {string[]} every file at or below the place, in order of name */
function filesAt(place) {
  if (!fs.existsSync(place)) return [];
  if (fs.statSync(place).isFile()) return [place];
  return fs
    .readdirSync(place)
    .sort()
    .flatMap((name) => filesAt(path.join(place, name)));
}

/**
 * @param {string[]} places files and folders, relative to the project
 * @returns {string} a hash of the names and contents of all files there
 */
export function fingerprint(places) {
  const hash = crypto.createHash("sha256");
  for (const file of places.flatMap((place) => filesAt(inProject(place)))) {
    const content = fs.readFileSync(file);
    hash.update(`${path.relative(root, file)}\0${content.length}\0`).update(content);
  }
  return hash.digest("hex");
}

/** Whether what was made last was made from these sources.
 * @param {string} stamp @param {string} expected */
export function isFresh(stamp, expected) {
  const file = inProject(stamp);
  return fs.existsSync(file) && fs.readFileSync(file, "utf8") === expected;
}

/**
 * The folder for what the program keeps, made if need be. Others may pass
 * through where root made it, because the database then runs under another account;
 * what is in it is closed to them file by file.
 * @param {string[]} parts below `.data`
 */
export function dataFolder(...parts) {
  const folder = inProject(".data", ...parts);
  fs.mkdirSync(folder, { recursive: true, mode: process.getuid?.() === 0 ? 0o711 : 0o700 });
  return folder;
}
