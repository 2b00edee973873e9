/**
 * From a catalogue record to its limits. The catalogue says how a specimen was
 * prepared, what it shows and what is at risk on it; this file says which row of
 * limits that is. Where the record leaves it open the stricter row is taken: a
 * fluid of another kind, or none named; a cast that is not of resin, which is taken
 * for wax; bone with teeth in it, whose limits lie within those of bone. Shock
 * follows the class that the crate is designed for.
 */
import { limitsFor } from "#lib/environment/limits.ts";
import type { ColourTrait, Limits, PreparationCode } from "#lib/environment/schema.ts";
import { type FragilityFacts, fragilityClassOf } from "#lib/specimens/classes.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";

export type PreparedSpecimen = FragilityFacts & Pick<SpecimenInput, "fluidName" | "light">;

/** The row of limits that a specimen falls under. */
export function preparationCodeOf({
  kind,
  preparation,
  fluidName,
  hasTeeth,
}: Omit<PreparedSpecimen, "light" | "partsAtRisk">): PreparationCode {
  const boneRow = hasTeeth ? "teeth" : "bone";
  switch (preparation) {
    case "silicone-impregnated":
      return kind === "whole body" || kind === "body region" ? "silicone-body" : "silicone-organ";
    case "epoxy sheet":
      return "epoxy-sheet";
    case "polyester sheet":
      return "polyester-sheet";
    case "fluid-preserved":
      return fluidName === "formaldehyde solution" || fluidName === "glycerol"
        ? "aqueous-jar"
        : "alcohol-jar";
    case "corrosion cast":
      return "corrosion-cast";
    case "mounted skeleton":
      return boneRow;
    case "slide":
      return "slide";
    case "dry":
      if (kind === "cast") return "wax";
      return kind === "skeleton or bone" ? boneRow : "dry";
  }
}

function colourTraitsOf(specimen: PreparedSpecimen): ColourTrait[] {
  if (specimen.light === "ordinary") return [];
  return [specimen.preparation === "corrosion cast" ? "dyed-resin" : "colour-preserved"];
}

/** The default limits of a specimen as the catalogue describes it. */
export function limitsOfSpecimen(specimen: PreparedSpecimen): Limits {
  return limitsFor(preparationCodeOf(specimen), colourTraitsOf(specimen), fragilityClassOf(specimen));
}
