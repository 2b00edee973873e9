/** Between the address of the list and what the catalogue is asked. */
import type { z } from "zod";
import { parameterOf, type Search } from "#app/_parts/page-links.ts";
import type { SpecimenFilter, SpecimenPage } from "#lib/specimens/filter.ts";
import { preparations, specimenKinds, uses } from "#lib/specimens/schema.ts";

const fieldNames = [
  "q",
  "structure",
  "kind",
  "preparation",
  "use",
  "origin",
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

/** Values that no list offers are left out, so that an old or mistyped address still answers. */
export function readFilter(fields: SearchFields): z.input<typeof SpecimenFilter> {
  const { q, structure, kind, preparation, use, origin, from, until, sheets, implied } = fields;
  const chosen = {
    text: q?.trim().slice(0, 200) || undefined,
    structureId: structure || undefined,
    kind: oneOf(specimenKinds, kind),
    preparation: oneOf(preparations, preparation),
    use: oneOf(uses, use),
    human: origin === "human" ? true : origin === "animal" ? false : undefined,
    freeFrom: from || undefined,
    freeUntil: until || undefined,
  };
  const given = Object.fromEntries(Object.entries(chosen).filter(([, value]) => value !== undefined));
  return {
    ...given,
    withoutSheets: !sheets && kind !== "sheet" && !q,
    evidence: implied ? "implied" : "recorded",
  };
}

export function readPage(fields: SearchFields): z.input<typeof SpecimenPage> {
  if (fields.after) return { after: fields.after };
  return fields.before ? { before: fields.before } : {};
}

/** The address of another page of the same search. */
export function pageAddress(fields: SearchFields, key: { after?: string; before?: string }): string {
  const { after: _after, before: _before, ...search } = fields;
  const parameters = Object.entries({ ...search, ...key }).filter(([, value]) => value);
  return `/specimens?${new URLSearchParams(parameters as [string, string][])}`;
}
