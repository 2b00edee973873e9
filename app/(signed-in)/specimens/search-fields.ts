/** Between the address of the list and what the catalogue is asked. */
import type { z } from "zod";
import { parameterOf, type Search } from "#app/_parts/page-links.ts";
import { DateText } from "#lib/platform/dates.ts";
import type { DaysAround } from "#lib/specimens/days-around.ts";
import type { SpecimenFilter, SpecimenPage } from "#lib/specimens/filter.ts";
import { preparations, specimenKinds, uses } from "#lib/specimens/schema.ts";

const fieldNames = [
  "q",
  "structure",
  "kind",
  "preparation",
  "use",
  "origin",
  "region",
  "system",
  "species",
  "from",
  "until",
  "sheets",
  "implied",
  "after",
  "before",
] as const;
export type SearchFields = Partial<Record<(typeof fieldNames)[number], string>>;

/** One value for each field, whatever the address holds besides. */
export function readFields(search: Search): SearchFields {
  return Object.fromEntries(
    fieldNames.flatMap((name) => {
      const value = parameterOf(search, name);
      return value === undefined ? [] : [[name, value]];
    }),
  );
}

const oneOf = <Value extends string>(values: readonly Value[], text: string | undefined): Value | undefined =>
  values.find((value) => value === text);

/**
 * Sheets of series, which would fill the list, are left out unless they are asked for: by the box, by their kind,
 * or by a text with a figure, which may be the number of one.
 */
export function leavesSheetsOut({ q, sheets, kind }: SearchFields): boolean {
  return !sheets && kind !== "sheet" && !/\p{N}/u.test(q ?? "");
}

/** Values that no list offers are left out, so that an old or mistyped address still answers. */
export function readFilter(
  fields: SearchFields,
  around: readonly DaysAround[] = [],
): z.input<typeof SpecimenFilter> {
  const { q, structure, kind, preparation, use, origin, from, until, implied } = fields;
  const { region, system, species } = fields;
  const chosen = {
    text: q?.trim().slice(0, 200) || undefined,
    structureId: structure || undefined,
    kind: oneOf(specimenKinds, kind),
    preparation: oneOf(preparations, preparation),
    use: oneOf(uses, use),
    human: origin === "human" ? true : origin === "animal" ? false : undefined,
    regionId: region || undefined,
    systemId: system || undefined,
    species: species?.slice(0, 120) || undefined,
    freeFrom: from || undefined,
    freeUntil: until || undefined,
  };
  const given = Object.fromEntries(Object.entries(chosen).filter(([, value]) => value !== undefined));
  return {
    ...given,
    around: [...around],
    withoutSheets: leavesSheetsOut(fields),
    evidence: implied ? "implied" : "recorded",
  };
}

export function readPage(fields: SearchFields): z.input<typeof SpecimenPage> {
  if (fields.after) return { after: fields.after };
  return fields.before ? { before: fields.before } : {};
}

/** The days that are looked for, where both can be read and the first comes first. */
export function askedDays({ from, until }: SearchFields): { startsOn: string; endsOn: string } | null {
  const first = DateText.safeParse(from);
  const last = DateText.safeParse(until);
  if (!first.success || !last.success || !(first.data < last.data)) return null;
  return { startsOn: first.data, endsOn: last.data };
}

/** Where the list of what was found begins on the page: the focus goes there. */
export const listAnchor = "found";

/** The address of the same search with something changed; on its first page unless a key is given. */
export function searchAddress(fields: SearchFields, change: SearchFields): string {
  const { after: _after, before: _before, ...search } = fields;
  const parameters = Object.entries({ ...search, ...change }).filter(([, value]) => value);
  return `/specimens?${new URLSearchParams(parameters as [string, string][])}#${listAnchor}`;
}
