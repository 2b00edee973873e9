/**
 * A search as it stands in an address of the API: names and texts. Each known name
 * is read into what the filter asks for; a name that is not known, or stands twice,
 * is refused, since a search that quietly leaves something out answers another
 * question. An empty value counts as not given, as forms send it.
 */
import type { z } from "zod";
import { type FieldIssue, Refusal } from "#lib/platform/refusal.ts";
import type { SpecimenFilter, SpecimenPage } from "#lib/specimens/filter.ts";

type Kind = "text" | "yes or no" | "number";

const filterParameters = {
  text: "text",
  structureId: "text",
  evidence: "text",
  kind: "text",
  preparation: "text",
  use: "text",
  human: "yes or no",
  regionId: "text",
  systemId: "text",
  species: "text",
  placeId: "text",
  freeFrom: "text",
  freeUntil: "text",
  seriesId: "text",
  withoutSheets: "yes or no",
} as const satisfies Partial<Record<keyof SpecimenFilter, Kind>>;
const pageParameters = { after: "text", before: "text", size: "number" } as const satisfies Record<
  keyof SpecimenPage,
  Kind
>;
const known: ReadonlyMap<string, Kind> = new Map(Object.entries({ ...filterParameters, ...pageParameters }));

function readValue(kind: Kind, text: string): string | number | boolean | null {
  if (kind === "text") return text;
  if (kind === "number") return Number(text);
  return text === "true" ? true : text === "false" ? false : null;
}

export type SearchQuery = { filter: z.input<typeof SpecimenFilter>; page: z.input<typeof SpecimenPage> };

/** @throws {Refusal} "invalid" with one issue for each parameter that is not known, stands twice or is no yes or no */
export function readSearchQuery(parameters: Iterable<readonly [name: string, text: string]>): SearchQuery {
  const given = [...parameters];
  const unknown = [...new Set(given.map(([name]) => name))].filter((name) => !known.has(name));
  if (unknown.length > 0)
    throw new Refusal(
      "invalid",
      "filter.unknown-parameter",
      { known: [...known.keys()].join(", ") },
      unknown.map((path) => ({ path, message: "filter.no-such-parameter" })),
    );
  const filter: Record<string, unknown> = {};
  const page: Record<string, unknown> = {};
  const seen = new Set<string>();
  const issues: FieldIssue[] = [];
  for (const [name, text] of given) {
    if (seen.has(name)) issues.push({ path: name, message: "filter.parameter-twice" });
    seen.add(name);
    if (text === "") continue;
    const value = readValue(known.get(name) ?? "text", text);
    if (value === null) issues.push({ path: name, message: "filter.true-or-false" });
    else if (Object.hasOwn(pageParameters, name)) page[name] = value;
    else filter[name] = value;
  }
  if (issues.length > 0) throw new Refusal("invalid", "filter.unreadable", {}, issues);
  return { filter, page };
}
