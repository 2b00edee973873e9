/**
 * How the tests run: everything but the browser, in Node. Files that touch the
 * database get a copy of a migrated template each (`tests/support/database.ts`).
 *
 * Reading the modules of a file takes longer than most of its tests, so the files of
 * one worker share what is read; `tests/support/setup.ts` takes back what a file
 * leaves behind. A file that replaces modules, the environment or the clock of the
 * language keeps a process of its own. With ANATHECA_TESTS=long the files of
 * `tests/long/` run instead, each with as much time as it needs.
 */
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { defineConfig, type ViteUserConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

const root = path.resolve(import.meta.dirname, "..");
const left = ["tests/browser", "tests/long"];

const keepsToItself = /\bvi\.(mock|doMock|stub\w+|useFakeTimers|resetModules)\(|process\.(env|chdir)/;

/** Files of tests that say something that others would feel. */
function filesAlone(): string[] {
  return fs
    .readdirSync(path.join(root, "tests"), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".test.ts"))
    .map((file) => path.posix.join("tests", file.split(path.sep).join("/")))
    .filter((file) => !left.some((folder) => file.startsWith(`${folder}/`)))
    .filter((file) => keepsToItself.test(fs.readFileSync(path.join(root, file), "utf8")));
}

/**
 * Who asks first for the demo scenario waits while it is loaded, and the others with
 * them: one file asks early, so that the rest goes on meanwhile, and the others last.
 */
class DemoLast extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const [first, ...others] = sorted.filter(({ moduleId }) =>
      fs.readFileSync(moduleId, "utf8").includes('testDatabase("demo")'),
    );
    if (first === undefined) return sorted;
    return [first, ...sorted.filter((file) => file !== first && !others.includes(file)), ...others];
  }
}

const common = {
  root,
  resolve: { alias: { "server-only": path.join(root, "tests/support/empty.ts") } },
} satisfies ViteUserConfig;

const setupFiles = ["tests/support/setup.ts"];
const patience = { testTimeout: 30_000, hookTimeout: 60_000 };
const alone = filesAlone();
const exclude = [...left.map((folder) => `${folder}/**`), "node_modules/**"];

const projects = [
  {
    ...common,
    test: {
      ...patience,
      setupFiles,
      name: "together",
      include: ["tests/**/*.test.ts"],
      exclude: [...exclude, ...alone],
      isolate: false,
    },
  },
  { ...common, test: { ...patience, setupFiles, name: "alone", include: alone, exclude } },
];
const long = {
  ...common,
  test: {
    setupFiles,
    name: "long",
    include: ["tests/long/**/*.test.ts"],
    testTimeout: 1_800_000,
    hookTimeout: 600_000,
  },
};

export default defineConfig({
  ...common,
  test: {
    globalSetup: ["tests/support/global-setup.ts"],
    // The runner leaves a core to whoever watches; nobody watches here.
    maxWorkers: os.availableParallelism(),
    sequence: { sequencer: DemoLast },
    projects: process.env.ANATHECA_TESTS === "long" ? [long] : projects,
  },
});
