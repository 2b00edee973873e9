/**
 * The list of what the program's figures rest on. A citation names an entry and
 * the place in it; the standing says how well we know it, and is shown to the
 * reader beside the figure.
 */
import { environmentSources } from "#lib/workings/sources/environment.ts";
import { trade } from "#lib/workings/sources/trade.ts";
import { transportSources } from "#lib/workings/sources/transport.ts";
import type { Source, Standing } from "#lib/workings/standing.ts";

export const sources = { ...trade, ...environmentSources, ...transportSources } satisfies Record<
  string,
  Source
>;
export type SourceId = keyof typeof sources;

export type Citation = { id: SourceId; title: string; where: string; standing: Standing };

/** @param where chapter, table, equation or page inside the source */
export function cite(id: SourceId, where = ""): Citation {
  const source: Source = sources[id];
  return { id, title: source.title, where, standing: source.standing };
}
