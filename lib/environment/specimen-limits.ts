/**
 * From a catalogue record to its limits. The catalogue says how a specimen was
 * prepared; this file says which row of limits that is. Where the record leaves
 * it open (a fluid of another kind, or none named) the stricter row is taken.
 */
import { limitsFor } from "#lib/environment/limits.ts";
import type { ColourTrait, Limits, PreparationCode } from "#lib/environment/schema.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";

export type PreparedSpecimen = Pick<SpecimenInput, "kind" | "preparation" | "fluidName" | "light">;

/** The row of limits that a specimen falls under. */
export function preparationCodeOf({ kind, preparation, fluidName }: PreparedSpecimen): PreparationCode {
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
      return "bone";
    case "slide":
      return "slide";
    case "dry":
      return kind === "skeleton or bone" ? "bone" : "dry";
  }
}

function colourTraitsOf(specimen: PreparedSpecimen): ColourTrait[] {
  if (specimen.light === "ordinary") return [];
  return [specimen.preparation === "corrosion cast" ? "dyed-resin" : "colour-preserved"];
}

/** The default limits of a specimen as the catalogue describes it. */
export function limitsOfSpecimen(specimen: PreparedSpecimen): Limits {
  return limitsFor(preparationCodeOf(specimen), colourTraitsOf(specimen));
}
