// @ts-check
/**
 * Runs the browser tests side by side. Tests share a scenario and go one after the
 * other within a lane; each lane has a copy of the demo database, a server with a
 * clock of its own, and every second file. What a lane counted is added up.
 */
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import pg from "pg";
import { databaseName, prepareEmbedded } from "../../app/_server/launch/database.mjs";
import { freePort, openCluster } from "../../app/_server/launch/postgres.mjs";
import { inProject, installed } from "../../app/_server/launch/project.mjs";
import { say, step } from "../../app/_server/launch/report.mjs";
import { runNode } from "../../app/_server/launch/run.mjs";
import { sessionSecret } from "../../app/_server/launch/secret.mjs";
import { serve } from "../../app/_server/launch/serve.mjs";
import { hastySettings } from "./run-folder.mjs";

/** A server and a browser together keep about one core busy. */
const mostLanes = 2;

/** @typedef {{ passed: number, failed: number }} Counts */
/** @typedef {import("../../app/_server/launch/postgres.mjs").Cluster} Cluster */

/** @param {Cluster} cluster @param {string} name */
async function copyDatabase(cluster, name) {
  const client = new pg.Client({ connectionString: cluster.url("postgres") });
  await client.connect();
  try {
    await client.query(`CREATE DATABASE ${name} TEMPLATE ${databaseName}`);
  } finally {
    await client.end();
  }
}

/**
 * @param {{ folder: string, url: string, program: string, files: string[], lane: number }} place
 * @returns {Promise<Counts>}
 */
async function runLane({ folder, url, program, files, lane }) {
  const port = await freePort();
  const env = {
    DATABASE_URL: url,
    ANATHECA_SECRET: sessionSecret(folder),
    ANATHECA_URL: `http://localhost:${port}`,
    ANATHECA_TEST_CLOCK: path.join(folder, `hours-ahead-${lane}`),
  };
  const movable = { NODE_OPTIONS: `--import=${pathToFileURL(inProject("tests/support/movable-clock.mjs"))}` };
  const server = await serve({ port, host: "127.0.0.1", env: { ...env, ...movable }, speaks: false });
  try {
    const results = path.join(folder, `browser-${lane}.json`);
    const command = [installed("@playwright/test/cli.js"), "test", "--config=tests/playwright.config.ts"];
    const { code } = await runNode([...command, ...files], {
      speaks: true,
      env: {
        ...process.env,
        ...env,
        CHROMIUM_PATH: program,
        ANATHECA_BROWSER_RESULTS: results,
        ANATHECA_BROWSER_OUTPUT: inProject(`test-results/lane-${lane}`),
      },
    });
    if (!fs.existsSync(results)) return { passed: 0, failed: 1 };
    const { stats } = JSON.parse(fs.readFileSync(results, "utf8"));
    if (stats.unexpected > 0) say(`The server's last words:\n${server.lastWords()}`);
    const failed = stats.unexpected + stats.flaky;
    return { passed: stats.expected, failed: code === 0 || failed > 0 ? failed : 1 };
  } finally {
    await server.stop();
  }
}

const allFiles = () =>
  fs
    .readdirSync(inProject("tests/browser"))
    .filter((name) => name.endsWith(".test.ts"))
    .map((name) => `tests/browser/${name}`);

/** @param {string} folder @param {string} program the browser @param {string[]} named none for all files @returns {Promise<Counts>} */
export async function runBrowserTests(folder, program, named) {
  const cluster = await step("Starting a database", () => openCluster(folder, { settings: hastySettings }));
  const urlOf = (/** @type {number} */ lane) =>
    cluster.url(lane === 1 ? databaseName : `${databaseName}_${lane}`);
  const env = { DATABASE_URL: urlOf(1), ANATHECA_SECRET: sessionSecret(folder) };
  await prepareEmbedded(folder, cluster, env, { demo: true, empty: false });
  const files = named.length > 0 ? named : allFiles();
  const lanes = Math.min(mostLanes, os.availableParallelism(), files.length);
  const numbers = Array.from({ length: lanes }, (_, index) => index + 1);
  for (const lane of numbers.slice(1)) await copyDatabase(cluster, `${databaseName}_${lane}`);
  const counts = await Promise.all(
    numbers.map((lane) => {
      const share = files.filter((_, index) => index % lanes === lane - 1);
      return runLane({ folder, url: urlOf(lane), program, files: share, lane });
    }),
  );
  return counts.reduce((sum, each) => ({
    passed: sum.passed + each.passed,
    failed: sum.failed + each.failed,
  }));
}
