/** Between an address and the page of a list of specimens that it asks for. */
import type { z } from "zod";
import { parameterOf, type Search } from "#app/_parts/page-links.ts";
import type { SpecimenPage } from "#lib/specimens/filter.ts";

export function pageKeyOf(search: Search): z.input<typeof SpecimenPage> {
  const [after, before] = [parameterOf(search, "after"), parameterOf(search, "before")];
  if (after !== undefined) return { after };
  return before === undefined ? {} : { before };
}

/** The addresses of the pages around this one. @param section where on the page the list stands */
export function pagesOf(
  path: string,
  list: { next: string | null; previous: string | null },
  section: string,
): { next: string | null; previous: string | null } {
  const address = (name: "after" | "before", key: string | null) =>
    key === null ? null : `${path}?${new URLSearchParams({ [name]: key })}${section}`;
  return { next: address("after", list.next), previous: address("before", list.previous) };
}
