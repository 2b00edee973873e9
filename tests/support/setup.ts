/**
 * Before and after each file and test. A test that writes to console.error has failed:
 * nothing in this program complains in passing. A file leaves no clock and nothing open
 * behind for the next file of its worker.
 */
import { afterAll, afterEach, beforeEach, expect, vi } from "vitest";
import { setClock } from "#lib/platform/clock.ts";
import { clearAfterFile } from "#tests/support/after-file.ts";

beforeEach(() => {
  vi.spyOn(console, "error").mockImplementation(() => {});
});
afterEach(() => {
  const calls = vi.mocked(console.error).mock.calls;
  vi.restoreAllMocks();
  expect(calls, "console.error was called").toEqual([]);
});
afterAll(async () => {
  setClock();
  await clearAfterFile();
});
