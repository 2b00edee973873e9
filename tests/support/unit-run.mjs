// @ts-check
/**
 * One run of the files that need no browser, in a folder that exists only while it
 * runs, with its results by file. A file that could not even be read has failed and
 * counts as one failure; so does a run that failed outside of any test.
 */
import fs from "node:fs";
import path from "node:path";
import { installed } from "../../app/_server/launch/project.mjs";
import { runNode } from "../../app/_server/launch/run.mjs";

/** @typedef {{ passed: number, failed: number }} Counts */
/** @typedef {Counts & { name: string, seconds: number }} FileCounts */
/** @typedef {{ name: string, startTime: number, endTime: number, status: string, assertionResults: { status: string }[] }} FileResult */

/**
 * Gives the work a folder that exists only while it runs.
 * @template T
 * @param {(folder: string) => Promise<T>} work
 */
export async function inRunFolder(work) {
  const { openRunFolder } = await import("./run-folder.mjs");
  const { folder, remove } = await openRunFolder();
  try {
    return await work(folder);
  } finally {
    await remove();
  }
}

/**
 * A tool that reports failure and counts none has failed outside any test.
 * @template {Counts} Counted
 * @param {Counted} counts @param {number} code
 * @returns {Counted}
 */
export const withExitCode = (counts, code) => ({
  ...counts,
  failed: code === 0 || counts.failed > 0 ? counts.failed : 1,
});

/** @param {FileResult} file @returns {FileCounts} */
function countsOf({ name, startTime, endTime, status, assertionResults }) {
  const times = (/** @type {string} */ wanted) =>
    assertionResults.filter((result) => result.status === wanted).length;
  const failed = times("failed");
  return {
    name,
    seconds: (endTime - startTime) / 1_000,
    passed: times("passed"),
    failed: failed === 0 && status === "failed" ? 1 : failed,
  };
}

/**
 * @param {string[]} files @param {Record<string, string>} [environment] what is said to the configuration
 * @returns {Promise<Counts & { files: FileCounts[] }>}
 */
export const runUnits = (files, environment = {}) =>
  inRunFolder(async (folder) => {
    const output = path.join(folder, "unit.json");
    const { code } = await runNode(
      [
        installed("vitest/vitest.mjs"),
        "run",
        "--config=tests/vitest.config.ts",
        "--reporter=default",
        "--reporter=json",
        `--outputFile.json=${output}`,
        ...files,
      ],
      { speaks: true, env: { ...process.env, ...environment, ANATHECA_RUN_FOLDER: folder } },
    );
    if (!fs.existsSync(output)) return { passed: 0, failed: 1, files: [] };
    /** @type {{ testResults: FileResult[] }} */
    const { testResults } = JSON.parse(fs.readFileSync(output, "utf8"));
    const counted = testResults.map(countsOf);
    const sum = (/** @type {"passed" | "failed"} */ what) =>
      counted.reduce((total, each) => total + each[what], 0);
    return withExitCode({ passed: sum("passed"), failed: sum("failed"), files: counted }, code);
  });
