/** Sources that no single room owns. */
import type { Source } from "#lib/workings/standing.ts";

export const trade = {
  practice: { title: "Common practice of the trade", standing: "common practice, no source" },
  derived: { title: "Worked out here from the stated inputs", standing: "derived here" },
} satisfies Record<string, Source>;
