/**
 * What an air carrier charges for: the larger of gross mass and volumetric mass,
 * rounded up to the half kilogram. It assumes the greatest length, width and
 * height, knobs and skids included.
 */
import { z } from "zod";
import { MassKg, Sides } from "#lib/transport/schema.ts";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

/** cm³ for each kilogram: 6000 by the rule of air cargo, 5000 with some parcel services. */
export const AIR_DIVISOR_CM3_PER_KG = 6000;
const CHARGE_STEP_KG = 0.5;

/** @returns kg  @source air-volumetric-divisor */
export function volumetricMassKg(sides: Sides, divisorCm3PerKg = AIR_DIVISOR_CM3_PER_KG): number {
  if (!(divisorCm3PerKg > 0)) throw new RangeError("the divisor must be above 0 cm³/kg");
  return (sides.lengthMm * sides.widthMm * sides.heightMm) / 1000 / divisorCm3PerKg;
}

export const volumetricMass = working({
  id: "volumetric-mass",
  title: "Volumetric mass",
  about: "The mass that air freight charges for: gross or volumetric, whichever is larger.",
  input: z.object({
    outer: Sides,
    grossMassKg: MassKg.meta({ title: "Gross mass", unit: "kg" }),
    divisorCm3PerKg: z
      .number()
      .min(3000)
      .max(7000)
      .default(AIR_DIVISOR_CM3_PER_KG)
      .meta({ title: "Divisor", unit: "cm³/kg" }),
  }),
  output: z.object({
    volumetricMassKg: z.number().meta({ title: "Volumetric mass", unit: "kg" }),
    chargeableMassKg: z.number().meta({ title: "Chargeable mass", unit: "kg" }),
  }),
  sources: [cite("air-volumetric-divisor", "6000 cm³/kg")],
  cautions: ["Some parcel services divide by 5000: ask."],
  compute({ outer, grossMassKg, divisorCm3PerKg }, note) {
    const byVolumeKg = note(
      "volumetric mass",
      volumetricMassKg(outer, divisorCm3PerKg),
      "kg",
      "L W H / divisor",
    );
    const largerKg = Math.max(byVolumeKg, grossMassKg);
    const chargeableMassKg = Math.ceil(largerKg / CHARGE_STEP_KG - 1e-9) * CHARGE_STEP_KG;
    note("chargeable mass", chargeableMassKg, "kg", "the larger, up to the next 0.5 kg");
    return { volumetricMassKg: byVolumeKg, chargeableMassKg };
  },
});
