/**
 * Whether a resin sheet may travel upright in slots, or must lie on a carrier
 * over its full face. A sheet held on two edges bends under its own inertia:
 *
 *         ▽ G · g · ρ t  (load per area)
 *     ┌───────────────────┐ t       σ = ¾ ρ g G L² / t
 *     △                   △
 *     └──────── L ────────┘
 *
 * It goes with 1/t, because a thicker sheet is also heavier. Lying on a full face
 * it does not bend. A sheet whose thickness or span is unknown gets its full face.
 */
import { z } from "zod";
import { STANDARD_GRAVITY } from "#lib/transport/foam.ts";
import { PeakG, SheetSupport } from "#lib/transport/schema.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

/** Resin with tissue in it; from memory. */
export const SHEET_DENSITY_KG_M3 = 1200;
/**
 * Cured resin breaks in bending at about 80 MPa (from memory); a quarter of that is
 * left for tissue, saw marks, bubbles and age. Common practice, no source.
 */
export const SHEET_DESIGN_STRENGTH_MPA = 20;

type SlotCase = { count: number; thicknessMm: number; paddingMm: number; dividerMm: number };

/** D = n (t + 2p) + (n + 1) d  @returns mm */
export function slotCaseDepthMm({ count, thicknessMm, paddingMm, dividerMm }: SlotCase): number {
  if (!(Number.isInteger(count) && count >= 1 && thicknessMm > 0 && paddingMm >= 0 && dividerMm >= 0)) {
    throw new RangeError("a slot case needs at least one sheet and no negative measure");
  }
  return count * (thicknessMm + 2 * paddingMm) + (count + 1) * dividerMm;
}

/** @returns MPa, the bending stress of a sheet on two edges under a transverse shock */
export function sheetBendingStressMpa(
  peakG: number,
  spanMm: number,
  thicknessMm: number,
  densityKgM3: number,
): number {
  if (!(peakG >= 0 && spanMm > 0 && thicknessMm > 0 && densityKgM3 > 0)) {
    throw new RangeError("span, thickness and density must be above 0, the shock at least 0");
  }
  const spanM = spanMm / 1000;
  return (0.75 * densityKgM3 * STANDARD_GRAVITY * peakG * spanM ** 2) / (thicknessMm / 1000) / 1e6;
}

export const sheetSupport = working({
  id: "sheet-support",
  title: "Support of a sheet",
  about: "Whether a resin sheet may stand in slots, or needs a carrier over its full face.",
  input: z.object({
    thicknessMm: z.number().min(0.1).max(100).meta({ title: "Thickness", unit: "mm" }),
    spanMm: z.number().min(1).max(3_000).meta({ title: "Span between the held edges", unit: "mm" }),
    peakG: PeakG.meta({ title: "Transverse shock", unit: "G" }),
    densityKgM3: z
      .number()
      .min(800)
      .max(3_000)
      .default(SHEET_DENSITY_KG_M3)
      .meta({ title: "Density", unit: "kg/m³" }),
    designStrengthMpa: z
      .number()
      .min(0.1)
      .max(200)
      .default(SHEET_DESIGN_STRENGTH_MPA)
      .meta({ title: "Design strength in bending", unit: "MPa" }),
  }),
  output: z.object({
    bendingStressMpa: z.number().meta({ title: "Bending stress", unit: "MPa" }),
    greatestSpanMm: z.number().meta({ title: "Greatest span upright", unit: "mm" }),
    support: SheetSupport,
  }),
  sources: [
    cite("derived", "beam on two supports under its own inertia"),
    cite("densities", "resin sheet 1200 kg/m³"),
    cite("practice", "design strength of 20 MPa"),
  ],
  cautions: [
    "A cracked or delaminated sheet needs its full face whatever the stress.",
    "No contact in the area of the specimen; glass only when taped or laminated.",
  ],
  compute({ thicknessMm, spanMm, peakG, densityKgM3, designStrengthMpa }, note) {
    const bendingStressMpa = note(
      "bending stress",
      sheetBendingStressMpa(peakG, spanMm, thicknessMm, densityKgM3),
      "MPa",
      "0.75 ρ g G L² / t",
    );
    note("design strength", designStrengthMpa, "MPa");
    const greatestSpanMm = note(
      "greatest span upright",
      spanMm * Math.sqrt(designStrengthMpa / bendingStressMpa),
      "mm",
      "L √(strength / stress)",
    );
    const support: SheetSupport = bendingStressMpa <= designStrengthMpa ? "upright-in-slots" : "full-face";
    note("support", support);
    return { bendingStressMpa, greatestSpanMm, support };
  },
});
