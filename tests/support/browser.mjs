// @ts-check
/**
 * The browser for the browser tests: the one that CHROMIUM_PATH names, one that
 * Playwright brought along, or one that the system has. Root on Debian installs
 * the one without a window, which needs half the time; everybody else is told what to do.
 */
import fs from "node:fs";
import { Halt, say, step } from "../../app/_server/launch/report.mjs";
import { run } from "../../app/_server/launch/run.mjs";

const withoutWindow = { package: "chromium-headless-shell", program: "/usr/bin/chromium-headless-shell" };

/** Where systems keep a browser built on Chromium. */
const usualPlaces = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome-stable",
  "/usr/bin/google-chrome",
  "/usr/bin/microsoft-edge-stable",
  "/snap/bin/chromium",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
];

/** @param {string} file */
function isProgram(file) {
  try {
    fs.accessSync(file, fs.constants.X_OK);
    return fs.statSync(file).isFile();
  } catch {
    return false;
  }
}

function isDebian() {
  const file = "/etc/os-release";
  return fs.existsSync(file) && /^ID=debian$/m.test(fs.readFileSync(file, "utf8"));
}

/** @returns {Promise<string[]>} in the order in which they serve best */
async function findBrowsers() {
  const { chromium } = await import("@playwright/test");
  return [withoutWindow.program, chromium.executablePath(), ...usualPlaces].filter(isProgram);
}

/** @throws {Halt} with what apt-get says */
async function installFromDebian() {
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  for (const args of [["update"], ["install", "--yes", "--no-install-recommends", withoutWindow.package]]) {
    const done = await run("apt-get", args, { env });
    if (done.code !== 0) {
      throw new Halt(
        `apt-get could not install ${withoutWindow.package}: mend what it says above, or set CHROMIUM_PATH to a browser built on Chromium.`,
        done.output,
      );
    }
  }
}

/** @returns {Promise<string>} the program of the browser @throws {Halt} when there is none */
export async function provideBrowser() {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (isProgram(named)) return named;
    throw new Halt(`CHROMIUM_PATH names ${named}, which is no program: correct it.`);
  }
  const [found] = await findBrowsers();
  if (found === withoutWindow.program) return found;
  if (process.getuid?.() === 0 && isDebian()) {
    try {
      await step("Installing chromium", installFromDebian);
    } catch (error) {
      if (found === undefined) throw error;
      say("The browser that is here serves as well; it takes longer.");
    }
    const [installed] = await findBrowsers();
    if (installed) return installed;
  }
  if (found) return found;
  throw new Halt(
    "There is no browser for the browser tests: install Chromium (on Debian, apt-get install chromium), or set CHROMIUM_PATH to a browser built on it.",
  );
}
