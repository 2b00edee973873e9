/** A test that writes to console.error has failed: nothing in this program complains in passing. */
import { afterEach, beforeEach, expect, vi } from "vitest";

beforeEach(() => {
  vi.spyOn(console, "error").mockImplementation(() => {});
});
afterEach(() => {
  const calls = vi.mocked(console.error).mock.calls;
  vi.restoreAllMocks();
  expect(calls, "console.error was called").toEqual([]);
});
