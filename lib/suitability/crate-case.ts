/**
 * From a catalogue record to the question that the crate plan asks: outer sides
 * and mass with the mount where there is one, how the specimen answers to shock,
 * and the venue's passages. Nothing is guessed: without sides or mass there is no
 * question. Where a venue gives one width for a lift, the car is taken to be no
 * wider and no higher than its door.
 */

import type { z } from "zod";
import type { Passage as VenuePassage } from "#lib/people/schema.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { fragilityClassOf } from "#lib/specimens/classes.ts";
import type { LentSpecimen } from "#lib/suitability/rules/case.ts";
import { type CratePlan, type CratePlanInput, cratePlan } from "#lib/transport/crate-plan.ts";
import type { CarrierClass, FragilityClass, Passage, Sides } from "#lib/transport/schema.ts";

export type CrateQuestion = z.input<typeof CratePlanInput>;

/** What must stay upright on its way: fluid, frames, filigree, and posed bodies. */
export function isUprightOnly(fragilityClass: FragilityClass): boolean {
  return ["jar", "articulated-skeleton", "corrosion-cast", "whole-body"].includes(fragilityClass);
}

const known = (name: string, value: number | null) => (value === null ? {} : { [name]: value });

/** A venue's narrow point in the words of the way in. A measure that nobody has taken is left out. */
export function passageOf(passage: VenuePassage): Passage {
  const { name, widthMm, heightMm, depthMm, secondWidthMm, loadKg, slopePercent } = passage;
  switch (passage.kind) {
    case "door":
      return { kind: "door", name, clearWidthMm: widthMm, clearHeightMm: heightMm };
    case "corridor turn":
      return {
        kind: "corridor-turn",
        name,
        firstWidthMm: widthMm,
        clearHeightMm: heightMm,
        ...known("secondWidthMm", secondWidthMm),
      };
    case "lift":
      return {
        kind: "lift",
        name,
        doorWidthMm: widthMm,
        doorHeightMm: heightMm,
        carWidthMm: secondWidthMm ?? widthMm,
        carHeightMm: heightMm,
        ...known("carDepthMm", depthMm),
        ...known("ratedMassKg", loadKg),
      };
    case "ramp":
      return {
        kind: "ramp",
        name,
        clearWidthMm: widthMm,
        ...known("ratedMassKg", loadKg),
        ...known("slopePercent", slopePercent),
      };
  }
}

/** The longest two sides of a sheet span; the least is its thickness. */
function sheetOf(sides: Sides, thicknessMm: number | null) {
  const [thinnest, span] = [sides.lengthMm, sides.widthMm, sides.heightMm].sort((a, b) => a - b);
  return { thicknessMm: thicknessMm ?? thinnest ?? 1, spanMm: span ?? 1 };
}

export type CrateCircumstances = {
  passages: readonly VenuePassage[];
  carrierClass: CarrierClass;
  count: number;
  fragilityClass?: FragilityClass | undefined;
  curatorPeakG?: number | undefined;
};

/** The question for the crate of one specimen, or of several alike; null without sides or mass. */
export function crateQuestionOf(
  specimen: LentSpecimen,
  { passages, carrierClass, count, fragilityClass: given, curatorPeakG }: CrateCircumstances,
): CrateQuestion | null {
  const sides = specimen.mountedSize ?? specimen.size;
  const massKg = specimen.mountedMassKg ?? specimen.massKg;
  if (sides === null || massKg === null) return null;
  const fragilityClass = given ?? fragilityClassOf(specimen);
  return {
    sides,
    massKg,
    fragilityClass,
    uprightOnly: isUprightOnly(fragilityClass),
    count,
    carrierClass,
    passages: passages.map(passageOf),
    ...(fragilityClass === "sheet" ? { sheet: sheetOf(sides, specimen.sheetThicknessMm) } : {}),
    ...(curatorPeakG === undefined ? {} : { curatorPeakG }),
  };
}

/** The plan for a question; null where the tables of crates and cushions have none, and somebody has to design it. */
export function planCrate(question: CrateQuestion): CratePlan | null {
  try {
    return cratePlan(question);
  } catch (error) {
    if (error instanceof Refusal) return null;
    throw error;
  }
}
