/**
 * Which shock a crate must keep from a specimen by what it is and how it was
 * prepared: the words in which the rooms of limits and of packing speak of it.
 * Where two answers are possible the stricter one is given; the curator's own
 * figure stands above it. Common practice, no source.
 */
import type { SpecimenInput } from "#lib/specimens/schema.ts";

/** How a specimen answers to shock. */
export const fragilityClassNames = [
  "compact-organ",
  "organ-with-free-parts",
  "whole-body",
  "sheet",
  "jar",
  "corrosion-cast",
  "articulated-skeleton",
  "bone",
  "teeth-or-thin-bone",
  "dry-tissue",
  "slide",
] as const;
export type FragilityClassName = (typeof fragilityClassNames)[number];

export type FragilityFacts = Pick<SpecimenInput, "kind" | "preparation" | "partsAtRisk"> & {
  /** As the record of what it shows says (teeth.ts). */
  hasTeeth: boolean;
};

/** @returns the class whose shock limit holds for the specimen and its crate */
export function fragilityClassOf({
  kind,
  preparation,
  partsAtRisk,
  hasTeeth,
}: FragilityFacts): FragilityClassName {
  const hasPartsAtRisk = partsAtRisk.trim() !== "";
  if (preparation === "fluid-preserved" || kind === "fluid-preserved specimen") return "jar";
  if (preparation === "corrosion cast" || kind === "cast") return "corrosion-cast";
  if (preparation === "slide" || kind === "histological slide") return "slide";
  if (preparation === "epoxy sheet" || preparation === "polyester sheet" || kind === "sheet") return "sheet";
  if (preparation === "mounted skeleton") return "articulated-skeleton";
  if (kind === "skeleton or bone") return hasTeeth || hasPartsAtRisk ? "teeth-or-thin-bone" : "bone";
  if (preparation === "dry") return "dry-tissue";
  if (kind === "whole body") return "whole-body";
  const compact = kind === "organ" && preparation === "silicone-impregnated" && !hasPartsAtRisk;
  return compact ? "compact-organ" : "organ-with-free-parts";
}
