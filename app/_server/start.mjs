// @ts-check
/**
 * `npm start`: from a fresh clone to a served program, and back on Ctrl-C.
 * Nothing but Node is taken for granted until the packages are installed, so
 * whatever needs a package is imported after that. What was opened is closed in
 * reverse order, whichever way the start ends.
 */
import "./launch/node-version.mjs";
import { install } from "./launch/install.mjs";
import { checkMailServer, help, readOptions, readPort } from "./launch/options.mjs";
import { whenOrphaned } from "./launch/orphan.mjs";
import { dataFolder } from "./launch/project.mjs";
import { explain, Halt, Interrupted, say, step, stopwatch } from "./launch/report.mjs";
import { stopRuns } from "./launch/run.mjs";
import { checkPort, serve } from "./launch/serve.mjs";

/** @type {(() => Promise<void>)[]} */
const toClose = [];
const stopAsked = new Promise((/** @type {(nothing: void) => void} */ resolve) => {
  const ask = () => {
    resolve();
    stopRuns();
  };
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, ask);
  // npm may be killed without a word to us; what it started must not stay behind.
  if (process.env.npm_lifecycle_event === "start") whenOrphaned(ask);
});

/** @param {import("./launch/options.mjs").Options} options */
async function start(options) {
  const elapsed = stopwatch();
  const port = readPort(process.env.PORT);
  checkMailServer(process.env);
  const host = process.env.HOST || "127.0.0.1";
  const ownDatabase = process.env.DATABASE_URL;
  const folder = dataFolder();

  await checkPort(port, host);
  await install();
  const { bringUpToDate, checkReachable, databaseName, demoSignIns, loadDemo, prepareEmbedded } =
    await import("./launch/database.mjs");
  const { sessionSecret } = await import("./launch/secret.mjs");
  const { buildPages, generateClient } = await import("./launch/build.mjs");
  if (ownDatabase) await checkReachable(ownDatabase);
  await generateClient();
  await buildPages();

  /** @type {import("./launch/run.mjs").Environment} */
  const settings = {
    ANATHECA_SECRET: sessionSecret(folder),
    ANATHECA_URL: process.env.ANATHECA_URL ?? `http://localhost:${port}`,
  };
  let env = { ...settings, DATABASE_URL: ownDatabase ?? "" };
  let hasDemo = false;
  /** @type {Promise<void>} */
  let databaseLost = new Promise(() => {});
  if (ownDatabase) {
    await bringUpToDate(env);
    if (options.demo) {
      await loadDemo(env);
      hasDemo = true;
    }
  } else {
    const { openCluster } = await import("./launch/postgres.mjs");
    const cluster = await step("Starting the database", () => openCluster(folder, { notice: say }));
    toClose.push(async () => {
      if ((await cluster.leave()) === "still in use") say("The database stays up: another program uses it.");
    });
    databaseLost = cluster.lost;
    env = { ...settings, DATABASE_URL: cluster.url(databaseName) };
    hasDemo = await prepareEmbedded(folder, cluster, env, options);
  }

  const server = await step("Starting the server", () => serve({ port, host, env }));
  toClose.push(server.stop);
  say(`\nAnatheca is at ${settings.ANATHECA_URL} (ready after ${elapsed()}; Ctrl-C stops it)`);
  if (hasDemo) say(["\nSign-ins of the demo scenario", ...demoSignIns(), ""].join("\n"));

  const reason = await Promise.race([
    stopAsked.then(() => "asked"),
    server.ended.then(() => "server"),
    databaseLost.then(() => "database"),
  ]);
  if (reason === "database") {
    throw new Halt(
      "The database has ended: look into .data/postgres/server.log for the cause and start again.",
    );
  }
  // Ctrl-C reaches the server as well as us, and it may be the quicker one.
  const alsoAsked = await Promise.race([
    stopAsked.then(() => true),
    new Promise((r) => setTimeout(r, 500, false)),
  ]);
  if (!alsoAsked) throw new Halt("The server has ended by itself: start again.", server.lastWords());
}

async function closeAll() {
  for (const close of toClose.reverse()) await close();
}

try {
  const options = readOptions(process.argv.slice(2));
  if (options.help) say(help);
  else {
    try {
      await start(options);
      say("\nStopping.");
    } finally {
      await closeAll();
    }
  }
  process.exit(0);
} catch (error) {
  if (error instanceof Interrupted) {
    say("Stopped before the program was ready.");
    process.exit(130);
  }
  explain(error);
  process.exit(1);
}
