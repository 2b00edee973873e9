// @ts-check
/**
 * Serves the built pages on one port, as a child process that ends with us.
 */
import { spawn } from "node:child_process";
import { lookup } from "node:dns/promises";
import net from "node:net";
import { pause } from "./lock.mjs";
import { inProject, installed, root } from "./project.mjs";
import { Halt } from "./report.mjs";

const readyMs = 60_000;
const stopMs = 8_000;
/** A program that is just ending may hold its port for a moment. */
const portPatienceMs = 3_000;

/** @param {number} port @param {string} host @returns {Promise<boolean>} */
const answers = (port, host) =>
  new Promise((resolve) => {
    const socket = net.connect({ port, host, timeout: 1_000 });
    const end = (/** @type {boolean} */ result) => {
      socket.destroy();
      resolve(result);
    };
    socket.once("connect", () => end(true));
    socket.once("timeout", () => end(false));
    socket.once("error", () => end(false));
  });

/** @param {number} port @param {string} host @returns {Promise<string | undefined>} the code of the failure */
const tryToListen = (port, host) =>
  new Promise((resolve) => {
    const server = net.createServer();
    server.once("error", (error) => resolve(/** @type {NodeJS.ErrnoException} */ (error).code));
    server.listen({ port, host }, () => server.close(() => resolve(undefined)));
  });

/**
 * Makes sure that the port is ours to take, before anything long is begun.
 * @param {number} port @param {string} host
 */
export async function checkPort(port, host) {
  await lookup(host).catch(() => {
    throw new Halt(`The host name ${host} is not known on this machine: set HOST to an address of it.`);
  });
  const giveUpAt = Date.now() + portPatienceMs;
  for (;;) {
    const code = await tryToListen(port, host);
    // On some systems a listener on all addresses does not keep us from listening on one of them.
    const taken =
      code === "EADDRINUSE" ||
      (!code && ((await answers(port, "127.0.0.1")) || (await answers(port, "::1"))));
    if (!code && !taken) return;
    if (code === "EACCES") {
      throw new Halt(
        `This account may not serve on port ${port}: choose one above 1023, as in PORT=3000 npm start.`,
      );
    }
    if (!taken)
      throw new Halt(`Nothing can be served on ${host}, port ${port} (${code}): set HOST and PORT.`);
    if (Date.now() > giveUpAt) {
      throw new Halt(
        `Port ${port} is in use: stop the program that uses it (Anatheca itself, perhaps), or choose another, as in PORT=${port + 1} npm start.`,
      );
    }
    await pause(200);
  }
}

/**
 * @typedef {object} Server
 * @property {Promise<void>} ended settles when the server is gone, asked or not
 * @property {() => string} lastWords
 * @property {() => Promise<void>} stop
 */

/**
 * Starts the server and waits until it answers.
 * @param {{ port: number, host: string, env: import("./run.mjs").Environment, speaks?: boolean }} options
 * @returns {Promise<Server>}
 */
export async function serve({ port, host, env, speaks = true }) {
  const child = spawn(
    process.execPath,
    [
      "--import",
      inProject("app/_server/launch/leash.mjs"),
      "--import",
      inProject("app/_server/launch/addresses.mjs"),
      "--import",
      inProject("app/_server/launch/open-door.mjs"),
      "--import",
      inProject("app/_server/launch/jobs.mjs"),
      installed("next/dist/bin/next"),
      "start",
      "--hostname",
      host,
      "--port",
      String(port),
    ],
    {
      cwd: root,
      env: {
        ...process.env,
        ...env,
        PORT: String(port),
        NODE_ENV: "production",
        NEXT_TELEMETRY_DISABLED: "1",
      },
      stdio: ["ignore", "pipe", "pipe", "ipc"],
    },
  );
  let ready = false;
  let gone = false;
  let kept = "";
  const keep = (/** @type {string} */ text) => {
    kept = (kept + text).split("\n").slice(-40).join("\n");
  };
  // What the framework prints of its own start is not for the person who started us.
  child.stdout?.setEncoding("utf8").on("data", keep);
  child.stderr?.setEncoding("utf8").on("data", (text) => {
    keep(text);
    if (ready && speaks) process.stderr.write(text);
  });
  const ended = new Promise((/** @type {(nothing: void) => void} */ resolve) => {
    const end = () => {
      gone = true;
      resolve();
    };
    child.once("error", end);
    child.once("close", end);
  });
  const giveUpAt = Date.now() + readyMs;
  const probe = host === "0.0.0.0" || host === "::" ? "127.0.0.1" : host;
  const server = {
    ended,
    lastWords: () => kept,
    async stop() {
      if (gone) return;
      child.kill("SIGTERM");
      const force = setTimeout(() => child.kill("SIGKILL"), stopMs);
      await ended;
      clearTimeout(force);
    },
  };
  while (!(await answers(port, probe))) {
    if (gone)
      throw new Halt(`The server ended before it answered: mend what is said above and start again.`, kept);
    if (Date.now() > giveUpAt) {
      await server.stop();
      throw new Halt(`The server did not answer within ${readyMs / 1000} seconds: start again.`, kept);
    }
    await pause(50);
  }
  ready = true;
  return server;
}
