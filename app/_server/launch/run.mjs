// @ts-check
/**
 * Runs other programs. Everything under way is known here, so that one call
 * stops it all when the person presses Ctrl-C. Output is kept and only shown
 * when the program fails, unless it is asked to speak for itself.
 */
import { spawn } from "node:child_process";
import { root } from "./project.mjs";
import { Interrupted } from "./report.mjs";

/** @type {Set<import("node:child_process").ChildProcess>} */
const underWay = new Set();
let stopping = false;

/**
 * @typedef {Record<string, string | undefined>} Environment
 *
 * @typedef {object} RunOptions
 * @property {Environment} [env] the whole environment; ours if not given
 * @property {string} [cwd]
 * @property {boolean} [speaks] its output goes straight to the terminal
 * @property {boolean} [evenWhenStopping] part of stopping cleanly, so neither refused nor ended by Ctrl-C
 * @property {number} [uid]
 * @property {number} [gid]
 */

/**
 * Runs a program to its end.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {RunOptions} [options]
 * @returns {Promise<{ code: number, output: string, errors: string }>} `output` holds both streams, `errors` only the second
 * @throws {Interrupted} when everything was asked to stop meanwhile
 */
export function run(command, args, options = {}) {
  const { speaks = false, evenWhenStopping = false, env = process.env, ...place } = options;
  return new Promise((resolve, reject) => {
    if (stopping && !evenWhenStopping) return reject(new Interrupted());
    const child = spawn(command, args, {
      cwd: root,
      ...place,
      env: /** @type {NodeJS.ProcessEnv} */ (env),
      stdio: speaks ? ["ignore", "inherit", "inherit"] : ["ignore", "pipe", "pipe"],
    });
    if (!evenWhenStopping) underWay.add(child);
    let output = "";
    let errors = "";
    child.stdout?.setEncoding("utf8").on("data", (text) => {
      output += text;
    });
    child.stderr?.setEncoding("utf8").on("data", (text) => {
      output += text;
      errors += text;
    });
    child.on("error", (error) => {
      underWay.delete(child);
      reject(error);
    });
    child.on("close", (code) => {
      underWay.delete(child);
      if (stopping && !evenWhenStopping) reject(new Interrupted());
      else resolve({ code: code ?? 1, output, errors });
    });
  });
}

/** Runs a file with this Node.
 * @param {readonly string[]} args @param {RunOptions} [options] */
export const runNode = (args, options) => run(process.execPath, args, options);

/** Runs a TypeScript file the way the server sees it.
 * @param {string} file @param {RunOptions} [options] */
export const runTypeScript = (file, options) =>
  runNode(["--import", "tsx", "--conditions=react-server", file], options);

/** Ends whatever runs now, and refuses to run anything more. */
export function stopRuns() {
  stopping = true;
  for (const child of underWay) child.kill("SIGTERM");
}
