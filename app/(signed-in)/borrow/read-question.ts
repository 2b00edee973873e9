/** Between the address of the page and the question for a set. */
import { parameterOf, type Search } from "#app/_parts/page-links.ts";
import { mostWanted } from "#lib/loans/wanted.ts";
import { uses } from "#lib/specimens/schema.ts";
import { audiences, purposes } from "#lib/suitability/schema.ts";

export type SetFields = {
  /** Ids of structures. */
  shows: string[];
  /** Names of structures, as somebody types them who has no script. */
  names: string[];
  from: string;
  until: string;
  use: (typeof uses)[number];
  purpose: (typeof purposes)[number];
  audience: (typeof audiences)[number];
  paid: boolean;
  /** Id of a venue, or nothing. */
  venue: string;
  /** "human", "animal", or nothing for both. */
  origin: string;
  sheets: boolean;
};

/** Longer than any name of a structure. */
const longestName = 120;

export function readSetFields(search: Search): SetFields {
  const given = search.shows ?? [];
  const ids = (Array.isArray(given) ? given : [given]).filter((id) => /^[a-z0-9-]{1,120}$/.test(id));
  const names = (parameterOf(search, "names") ?? "")
    .split(",")
    .map((name) => name.trim().slice(0, longestName));
  return {
    shows: [...new Set(ids)].slice(0, mostWanted),
    names: names.filter(Boolean).slice(0, mostWanted),
    from: parameterOf(search, "from") ?? "",
    until: parameterOf(search, "until") ?? "",
    use: uses.find((use) => use === parameterOf(search, "use")) ?? "viewing only",
    purpose: purposes.find((purpose) => purpose === parameterOf(search, "purpose")) ?? "teaching",
    audience: audiences.find((one) => one === parameterOf(search, "audience")) ?? "enrolled students",
    paid: parameterOf(search, "paid") !== undefined,
    venue: parameterOf(search, "venue") ?? "",
    origin: ["human", "animal"].find((origin) => origin === parameterOf(search, "origin")) ?? "",
    sheets: parameterOf(search, "sheets") !== undefined,
  };
}
