/**
 * How the tests run: everything but the browser, in Node. Files that touch the
 * database get a copy of a migrated template each (`tests/support/database.ts`).
 */
import os from "node:os";
import path from "node:path";
import { defineConfig } from "vitest/config";

const root = path.resolve(import.meta.dirname, "..");

export default defineConfig({
  root,
  resolve: { alias: { "server-only": path.join(root, "tests/support/empty.ts") } },
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/browser/**", "node_modules/**"],
    globalSetup: ["tests/support/global-setup.ts"],
    setupFiles: ["tests/support/setup.ts"],
    // The runner leaves a core to whoever watches; nobody watches here.
    maxWorkers: os.availableParallelism(),
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
});
