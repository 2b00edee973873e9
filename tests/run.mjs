// @ts-check
/**
 * `npm test`: everything that is checked, from a fresh clone. Each stage says what
 * it counted; a stage that cannot run counts as one failure. The last line is
 * "N passed, N failed".
 *
 * What is too long for every change is `npm run test:long` (`run-long.mjs`).
 * `npm test -- unit` runs one stage, `npm test -- unit tests/lib/loans` some of its files.
 */
import "../app/_server/launch/node-version.mjs";
import fs from "node:fs";
import { install } from "../app/_server/launch/install.mjs";
import { inProject, installed } from "../app/_server/launch/project.mjs";
import { explain, Halt, Interrupted, say, stopwatch } from "../app/_server/launch/report.mjs";
import { runNode, stopRuns } from "../app/_server/launch/run.mjs";
import { inRunFolder, runUnits } from "./support/unit-run.mjs";

/** @typedef {{ passed: number, failed: number }} Counts */

/**
 * Runs a tool that either finds nothing wrong or counts as one failure.
 * @param {string[][]} commands
 * @returns {Promise<Counts>}
 */
async function pass(...commands) {
  for (const command of commands) {
    const done = await runNode(command);
    if (done.code !== 0) {
      say(done.output.trimEnd());
      return { passed: 0, failed: 1 };
    }
  }
  return { passed: 1, failed: 0 };
}

const next = installed("next/dist/bin/next");

const types = () => pass([next, "typegen"], [installed("typescript/bin/tsc"), "--noEmit"]);

const lint = () =>
  pass([
    installed("@biomejs/biome/bin/biome"),
    "check",
    "--config-path=.biome.json",
    "--error-on-warnings",
    "--max-diagnostics=100",
    ".",
  ]);

/** @param {string[]} files @returns {Promise<Counts>} */
async function browser(files) {
  const { provideBrowser } = await import("./support/browser.mjs");
  const program = await provideBrowser();
  const { buildPages } = await import("../app/_server/launch/build.mjs");
  await buildPages();
  const { runBrowserTests } = await import("./support/browser-lanes.mjs");
  return await inRunFolder((folder) => runBrowserTests(folder, program, files));
}

/** @type {Record<string, { title: string, run: (files: string[]) => Promise<Counts> }>} in the order in which they run */
const stages = {
  types: { title: "Types", run: types },
  lint: { title: "Lint", run: lint },
  unit: { title: "Unit, published values, properties, database, architecture", run: runUnits },
  browser: { title: "Browser", run: browser },
};

/** @param {string[]} words */
function chosen(words) {
  const names = words.filter((word) => Object.hasOwn(stages, word));
  const files = words.filter((word) => !names.includes(word));
  const wrong = files.find((file) => !fs.existsSync(inProject(file)));
  if (wrong !== undefined) {
    throw new Halt(
      `${wrong} is neither a stage (${Object.keys(stages).join(", ")}) nor a file of the project.`,
    );
  }
  return { names: names.length > 0 ? names : Object.keys(stages), files };
}

/** @param {string} name @param {string[]} files @returns {Promise<Counts>} */
async function runStage(name, files) {
  const stage = stages[name];
  if (stage === undefined) return { passed: 0, failed: 0 };
  say(`\n# ${stage.title}`);
  const elapsed = stopwatch();
  /** @type {Counts} */
  let counts = { passed: 0, failed: 1 };
  try {
    counts = await stage.run(files);
  } catch (error) {
    if (error instanceof Interrupted) throw error;
    explain(error);
  }
  say(`${stage.title}: ${counts.passed} passed, ${counts.failed} failed in ${elapsed()}`);
  return counts;
}

for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, stopRuns);

let passed = 0;
let failed = 0;
try {
  const { names, files } = chosen(process.argv.slice(2));
  await install();
  const { generateClient } = await import("../app/_server/launch/build.mjs");
  await generateClient();
  for (const name of names) {
    const counts = await runStage(name, files);
    passed += counts.passed;
    failed += counts.failed;
  }
} catch (error) {
  failed += 1;
  if (error instanceof Interrupted) say("Stopped before the end.");
  else explain(error);
}
// One write for the last line, and nothing after it.
process.stdout.write(`\n${passed} passed, ${failed} failed\n`, () => process.exit(failed > 0 ? 1 : 0));
