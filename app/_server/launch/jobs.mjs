// @ts-check
/**
 * Loaded into the server before anything else: once the pages are being served, a
 * thread of the same process sends letters and takes reminders. It never holds the
 * server up, ends with it, and is begun anew when it fails.
 */
import { isMainThread, Worker } from "node:worker_threads";

/** The pages come first. */
const beginAfterMs = 1_000;
const againAfterMs = 60_000;

/** @type {string} */
let told = "";

function begin() {
  const thread = new Worker(new URL("../jobs/thread.mjs", import.meta.url), {
    // Nothing of what is loaded into the server; server-only modules are read as the server reads them.
    execArgv: ["--conditions=react-server"],
  });
  thread.unref();
  thread.on("error", (error) => {
    const text = error instanceof Error ? error.message : String(error);
    if (text !== told) process.stderr.write(`Letters and reminders wait: ${text}\n`);
    told = text;
  });
  thread.on("exit", () => setTimeout(begin, againAfterMs).unref());
}

if (isMainThread) setTimeout(begin, beginAfterMs).unref();
