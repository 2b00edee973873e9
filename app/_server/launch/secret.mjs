// @ts-check
/** The secret that signs sessions: given, or made once and kept for its owner alone. */
import crypto from "node:crypto";
import fs from "node:fs";
import path from "node:path";
import { Halt } from "./report.mjs";

const shortest = 32;

/** @param {string} folder */
export function sessionSecret(folder) {
  const given = process.env.ANATHECA_SECRET;
  if (given !== undefined) {
    if (given.length >= shortest) return given;
    throw new Halt(`ANATHECA_SECRET is shorter than ${shortest} characters: take a longer one, at random.`);
  }
  const file = path.join(folder, "secret");
  const kept = fs.existsSync(file) ? fs.readFileSync(file, "utf8").trim() : "";
  if (kept.length >= shortest) return kept;
  const made = crypto.randomBytes(32).toString("base64url");
  fs.writeFileSync(file, `${made}\n`, { mode: 0o600 });
  return made;
}
