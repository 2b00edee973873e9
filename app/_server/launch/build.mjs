// @ts-check
/**
 * Makes what is made from the sources, and only when it is not there yet: the
 * database client from the schema, and the pages. Each leaves a stamp with the
 * fingerprint of what it was made from; the stamp goes before the work begins,
 * so that a build cut short is never taken for a whole one.
 */
import crypto from "node:crypto";
import fs from "node:fs";
import path from "node:path";
import { requireSpace } from "./install.mjs";
import { withLock } from "./lock.mjs";
import { dataFolder, fingerprint, inProject, installed, isFresh, root } from "./project.mjs";
import { Halt, step } from "./report.mjs";
import { runNode } from "./run.mjs";

const clientStamp = ".generated/.stamp";
const clientSources = ["prisma/schema", "prisma/prisma.config.ts", "package-lock.json"];

const pagesStamp = ".next/.stamp";
const pagesSources = ["app", "lib", "prisma", "package-lock.json", "next.config.js", "tsconfig.json"];
const pagesBytes = 0.5 * 1024 ** 3;

/** What the pages ask for while they are built. No database is asked and nothing is signed. */
const environmentOfBuild = () => ({
  ...process.env,
  NODE_ENV: "production",
  NEXT_TELEMETRY_DISABLED: "1",
  DATABASE_URL: "postgresql://build@127.0.0.1:1/build",
  ANATHECA_SECRET: crypto.randomBytes(32).toString("base64url"),
  ANATHECA_URL: "http://localhost:3000",
});

/**
 * @param {string} stamp
 * @param {string[]} sources
 * @param {string} title
 * @param {() => Promise<{ code: number, output: string }>} make
 * @param {string} sentence what to say when it fails
 */
async function makeIfStale(stamp, sources, title, make, sentence) {
  const folder = inProject(path.dirname(stamp));
  await withLock(path.join(dataFolder(), "build.lock"), async () => {
    const expected = fingerprint(sources);
    if (isFresh(stamp, expected)) return;
    fs.rmSync(inProject(stamp), { force: true });
    await step(title, async () => {
      const made = await make();
      if (made.code !== 0) throw new Halt(sentence, made.output);
    });
    fs.mkdirSync(folder, { recursive: true });
    fs.writeFileSync(inProject(stamp), expected);
  });
}

/** The database client, in `.generated`. */
export const generateClient = () =>
  makeIfStale(
    clientStamp,
    clientSources,
    "Making the database client",
    () =>
      runNode([
        installed("prisma/build/index.js"),
        "generate",
        "--config",
        inProject("prisma/prisma.config.ts"),
      ]),
    "The database client could not be made: mend the schema as said above and run the same command again.",
  );

/** The pages, in `.next`. Needs the database client. */
export async function buildPages() {
  await makeIfStale(
    pagesStamp,
    pagesSources,
    "Building the pages",
    () => {
      requireSpace(pagesBytes, root, "Building the pages");
      return runNode([installed("next/dist/bin/next"), "build"], { env: environmentOfBuild() });
    },
    "The pages could not be built: mend what is said above and run the same command again.",
  );
}
