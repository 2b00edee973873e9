/**
 * The one clock. Rules take "today" as an argument; commands, queries and pages
 * read it here, so that a test or the demo scenario can stand still.
 */
import { type DateText, toDateText } from "#lib/platform/dates.ts";

const kept = globalThis as typeof globalThis & { anathecaClock?: () => Date };

export function now(): Date {
  return kept.anathecaClock ? kept.anathecaClock() : new Date();
}

export function today(): DateText {
  return toDateText(now());
}

/** Makes the program live at another moment; without an argument, at the true one again. */
export function setClock(clock?: () => Date): void {
  if (clock) kept.anathecaClock = clock;
  else delete kept.anathecaClock;
}
