// @ts-check
/**
 * `npm run test:long`: what is checked too and takes too long for every change, the
 * files of `tests/long/`. What a whole run counted is written to `long-result.txt`, so
 * that it is known when it was last run and what came of it; a run of some files alone
 * (`npm run test:long -- tests/long/walks.test.ts`) writes nothing. The last line is
 * "N passed, N failed".
 */
import "../app/_server/launch/node-version.mjs";
import fs from "node:fs";
import path from "node:path";
import { install } from "../app/_server/launch/install.mjs";
import { inProject } from "../app/_server/launch/project.mjs";
import { explain, Interrupted, say } from "../app/_server/launch/report.mjs";
import { stopRuns } from "../app/_server/launch/run.mjs";
import { runUnits } from "./support/unit-run.mjs";

/** @param {string} file @returns {string} what its first lines say that it is about */
function groupOf(file) {
  const opening = /^\/\*\*\s*([\s\S]*?)\*\//.exec(fs.readFileSync(file, "utf8"))?.[1] ?? "";
  const [first = ""] = opening
    .replace(/\s*\n\s*\*\s*/g, " ")
    .replace(/^\*\s*/, "")
    .trim()
    .split(/(?<=[.;:])\s/);
  return `${path.basename(file, ".test.ts")}: ${first.replace(/[.;:]$/, "")}`;
}

/** @param {{ passed: number, failed: number }} counts */
const countWords = ({ passed, failed }) => `${passed} passed, ${failed} failed`;

/**
 * @param {Awaited<ReturnType<typeof runUnits>>} counts @param {number} seconds
 * @returns {string}
 */
function resultText({ files, ...all }, seconds) {
  const groups = [...files]
    .sort((first, second) => (first.name < second.name ? -1 : 1))
    .flatMap((file) => [groupOf(file.name), `  ${countWords(file)} in ${file.seconds.toFixed(0)} s`]);
  const day = new Date().toISOString().slice(0, 10);
  return `${[`npm run test:long, ${day}`, "", ...groups, "", `${countWords(all)} in ${seconds.toFixed(0)} s`].join("\n")}\n`;
}

for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, stopRuns);

let counts = { passed: 0, failed: 1 };
try {
  const files = process.argv.slice(2);
  await install();
  const { generateClient } = await import("../app/_server/launch/build.mjs");
  await generateClient();
  const begun = Date.now();
  const counted = await runUnits(files, { ANATHECA_TESTS: "long" });
  counts = counted;
  if (files.length === 0)
    fs.writeFileSync(inProject("tests/long-result.txt"), resultText(counted, (Date.now() - begun) / 1_000));
} catch (error) {
  if (error instanceof Interrupted) say("Stopped before the end.");
  else explain(error);
}
process.stdout.write(`\n${countWords(counts)}\n`, () => process.exit(counts.failed > 0 ? 1 : 0));
