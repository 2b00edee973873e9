/**
 * The words of packing and moving one specimen: who carries it, how much shock
 * it bears, in which kind of case it lies, what the way in is made of. Lengths
 * are millimetres, masses kilograms, shock is in multiples of gravity (G).
 *
 * A measure of a passage that nobody has taken is left out, never guessed: the
 * answer is then "attend".
 */
import { z } from "zod";
import { fragilityClassNames } from "#lib/specimens/classes.ts";

/** Who carries it, from the gentlest to the roughest. */
export const carrierClasses = [
  "specialist-door-to-door",
  "specialist-with-air",
  "mixed-carriers",
  "commercial-freight",
  "parcel-or-courier",
] as const;
export const CarrierClass = z.enum(carrierClasses).meta({ title: "Carrier" });
export type CarrierClass = z.infer<typeof CarrierClass>;

/** How a specimen answers to shock, in the words of the catalogue. */
export const fragilityClasses = fragilityClassNames;
export const FragilityClass = z.enum(fragilityClasses).meta({ title: "Fragility class" });
export type FragilityClass = z.infer<typeof FragilityClass>;

export const crateKinds = [
  "single-case",
  "double-case",
  "full-face-sheet-carrier",
  "upright-slot-case",
  "jar-case",
] as const;
export const CrateKind = z.enum(crateKinds).meta({ title: "Kind of crate" });
export type CrateKind = z.infer<typeof CrateKind>;

/** How a closed crate may stand on its way. */
export const crateOrientations = ["this-side-up", "any-side"] as const;
export const CrateOrientation = z.enum(crateOrientations).meta({ title: "Orientation" });
export type CrateOrientation = z.infer<typeof CrateOrientation>;

/** Why a plan is not clear. */
export const planReasons = [
  "no-cushion-holds",
  "passage-bars",
  "passage-to-attend",
  "way-in-not-known",
  "base-to-be-engineered",
  "tips-unlashed",
] as const;
export type PlanReason = (typeof planReasons)[number];

export const sheetSupports = ["full-face", "upright-in-slots"] as const;
export const SheetSupport = z.enum(sheetSupports).meta({ title: "Support of the sheet" });
export type SheetSupport = z.infer<typeof SheetSupport>;

/** A length that something has: from a thin film up to the longest that any road vehicle takes. */
const lengthMm = (title: string) => z.number().min(0.1).max(20_000).meta({ title, unit: "mm" });

/** Outside measures, standing as it travels: height is the vertical. */
export const Sides = z.object({
  lengthMm: lengthMm("Length"),
  widthMm: lengthMm("Width"),
  heightMm: lengthMm("Height"),
});
export type Sides = z.infer<typeof Sides>;

/** Grown by the same amount on all six faces. */
export function growSides(sides: Sides, perFaceMm: number): Sides {
  return {
    lengthMm: sides.lengthMm + 2 * perFaceMm,
    widthMm: sides.widthMm + 2 * perFaceMm,
    heightMm: sides.heightMm + 2 * perFaceMm,
  };
}

export function volumeM3(sides: Sides): number {
  return (sides.lengthMm * sides.widthMm * sides.heightMm) / 1e9;
}

export const MassKg = z.number().min(0.001).max(3_000).meta({ title: "Mass", unit: "kg" });
export const PeakG = z.number().min(5).max(300).meta({ title: "Greatest shock it bears", unit: "G" });
export const DropHeightMm = z.number().min(1).max(2_000).meta({ title: "Drop height", unit: "mm" });

// ------------------------------------------------------------------- the foam

export const foamIds = ["polyethylene-35", "ester-polyurethane-32"] as const;
export const FoamId = z.enum(foamIds).meta({ title: "Foam" });
export type FoamId = z.infer<typeof FoamId>;

/** Sold thicknesses of foam board. */
export const boardThicknessesMm = [25, 50, 75, 100, 125, 150] as const;
export const BoardThicknessMm = z
  .literal(boardThicknessesMm)
  .meta({ title: "Thickness of the cushion", unit: "mm" });
export type BoardThicknessMm = z.infer<typeof BoardThicknessMm>;

/** One measured point of a maker's cushion curve. */
export const CushionPoint = z.object({
  thicknessMm: z.number().min(1).max(500).meta({ title: "Thickness", unit: "mm" }),
  dropHeightMm: DropHeightMm,
  staticStressKpa: z.number().min(0.01).max(200).meta({ title: "Static stress", unit: "kPa" }),
  peakG: z.number().min(1).max(1_000).meta({ title: "Peak shock", unit: "G" }),
});
export type CushionPoint = z.infer<typeof CushionPoint>;

/** A foam that the house has its own curve for; it takes the place of the list. */
export const OwnFoam = z.object({
  densityKgM3: z.number().min(5).max(500).meta({ title: "Density", unit: "kg/m³" }),
  creepLimitKpa: z.number().min(0.01).max(200).meta({ title: "Creep limit", unit: "kPa" }),
  points: z.array(CushionPoint).min(3).max(200),
});
export type OwnFoam = z.infer<typeof OwnFoam>;

// ----------------------------------------------------------------- the way in

export const passageKinds = ["door", "corridor-turn", "lift", "ramp"] as const;

const name = z.string().trim().min(1).max(120).optional().meta({ title: "Name" });
const measured = (title: string) => lengthMm(title).optional();
const ratedMassKg = z.number().positive().max(50_000).optional().meta({ title: "Rated load", unit: "kg" });

export const Door = z.object({
  kind: z.literal("door"),
  name,
  clearWidthMm: measured("Clear width"),
  clearHeightMm: measured("Clear height"),
});

/** A turn of 90° from one corridor into another. */
export const CorridorTurn = z.object({
  kind: z.literal("corridor-turn"),
  name,
  firstWidthMm: measured("Width before the turn"),
  secondWidthMm: measured("Width after the turn"),
  clearHeightMm: measured("Clear height"),
});

export const Lift = z.object({
  kind: z.literal("lift"),
  name,
  doorWidthMm: measured("Clear width of the door"),
  doorHeightMm: measured("Clear height of the door"),
  carWidthMm: measured("Width of the car"),
  carDepthMm: measured("Depth of the car"),
  carHeightMm: measured("Height of the car"),
  ratedMassKg,
});

export const Ramp = z.object({
  kind: z.literal("ramp"),
  name,
  clearWidthMm: measured("Clear width"),
  /** Rise by run: 8.3 % is 1 in 12. */
  slopePercent: z.number().min(0).max(100).optional().meta({ title: "Slope", unit: "%" }),
  ratedMassKg,
});

export const Passage = z.discriminatedUnion("kind", [Door, CorridorTurn, Lift, Ramp]);
export type Passage = z.infer<typeof Passage>;
