/**
 * Gives the run a folder of its own and takes away whatever ran in it; under
 * `npm test` the folder is given, and taken away by whoever gave it. The
 * database itself starts with the first file that asks for one, so a run
 * without such files starts none.
 */
import type { TestProject } from "vitest/node";
import { openRunFolder } from "#tests/support/run-folder.mjs";

declare module "vitest" {
  interface ProvidedContext {
    runFolder: string;
  }
}

export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const given = process.env.ANATHECA_RUN_FOLDER;
  const { folder, remove } = given ? { folder: given, remove: async () => {} } : await openRunFolder();
  project.provide("runFolder", folder);
  return remove;
}
