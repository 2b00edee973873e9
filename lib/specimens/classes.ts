/**
 * Which shock a crate must keep from a specimen by what it is and how it was
 * prepared: the bridge from the words of the catalogue to those of packing. Where
 * two answers are possible the stricter one is given; the curator's own figure
 * stands above it. Common practice, no source.
 */
import type { SpecimenInput } from "#lib/specimens/schema.ts";

/** How a specimen answers to shock; the same words as in the room of transport. */
export const fragilityClassNames = [
  "compact-organ",
  "organ-with-free-parts",
  "whole-body",
  "sheet",
  "jar",
  "corrosion-cast",
  "articulated-skeleton",
  "bone",
  "slide",
] as const;
export type FragilityClassName = (typeof fragilityClassNames)[number];

/** @returns the class whose shock limit a crate starts from */
export function fragilityClassOf({
  kind,
  preparation,
  partsAtRisk,
}: Pick<SpecimenInput, "kind" | "preparation" | "partsAtRisk">): FragilityClassName {
  if (preparation === "fluid-preserved" || kind === "fluid-preserved specimen") return "jar";
  if (preparation === "corrosion cast" || kind === "cast") return "corrosion-cast";
  if (preparation === "slide" || kind === "histological slide") return "slide";
  if (preparation === "epoxy sheet" || preparation === "polyester sheet" || kind === "sheet") return "sheet";
  if (preparation === "mounted skeleton") return "articulated-skeleton";
  if (kind === "skeleton or bone") return "bone";
  if (kind === "whole body") return "whole-body";
  const compact = kind === "organ" && preparation === "silicone-impregnated" && partsAtRisk.trim() === "";
  return compact ? "compact-organ" : "organ-with-free-parts";
}
