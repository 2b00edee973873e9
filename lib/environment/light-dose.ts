/**
 * Light as a dose that is spent: illuminance times hours, against what a class
 * of material may take in a year, and in just noticeable fades of the ISO Blue
 * Wool scale. Dose is taken as reciprocal, which holds at the levels of a
 * gallery. Dark hours count nothing; work light does.
 */
import { z } from "zod";
import { cite } from "#lib/workings/sources.ts";
import { working } from "#lib/workings/working.ts";

/** CIE 157:2004, from memory. Null is no limit. */
export const lightClasses = {
  irresponsive: { illuminanceLx: null, lxHoursPerYear: null },
  low: { illuminanceLx: 200, lxHoursPerYear: 600_000 },
  medium: { illuminanceLx: 50, lxHoursPerYear: 150_000 },
  high: { illuminanceLx: 50, lxHoursPerYear: 15_000 },
} as const;

export const blueWools = [1, 2, 3, 4, 5, 6, 7, 8] as const;
export type BlueWool = (typeof blueWools)[number];

/** Mlx·h to one just noticeable fade; Canadian conservation institute, from memory. */
const fadeMlxHours: Readonly<Record<BlueWool, { withUv: number; withoutUv: number }>> = {
  1: { withUv: 0.22, withoutUv: 0.3 },
  2: { withUv: 0.6, withoutUv: 1 },
  3: { withUv: 1.5, withoutUv: 3 },
  4: { withUv: 3.5, withoutUv: 10 },
  5: { withUv: 8, withoutUv: 30 },
  6: { withUv: 20, withoutUv: 100 },
  7: { withUv: 50, withoutUv: 300 },
  8: { withUv: 120, withoutUv: 1100 },
};

export type LightSpan = { illuminanceLx: number; hours: number };

/** Dose of spans of even light. @returns lx·h @throws {RangeError} for a negative or missing figure */
export function doseLxHours(spans: readonly LightSpan[]): number {
  let dose = 0;
  for (const { illuminanceLx, hours } of spans) {
    if (!(illuminanceLx >= 0 && hours >= 0))
      throw new RangeError("Illuminance and hours must not be negative.");
    dose += illuminanceLx * hours;
  }
  return dose;
}

/** Share of a light budget, 1 when it is all spent. @throws {RangeError} for a budget that is not positive */
export function budgetShare(dose: number, budgetLxHours: number): number {
  if (!(dose >= 0)) throw new RangeError("The dose must not be negative.");
  if (!(budgetLxHours > 0)) throw new RangeError("The light budget must be positive.");
  return dose / budgetLxHours;
}

/**
 * Just noticeable fades (grey scale 4) that a dose causes in a Blue Wool.
 * @param uvRemoved light filtered at 400 nm @throws {RangeError}
 * @source blue-wool-fades, table of doses
 */
export function noticeableFades(dose: number, blueWool: BlueWool, uvRemoved: boolean): number {
  if (!(dose >= 0)) throw new RangeError("The dose must not be negative.");
  const row = fadeMlxHours[blueWool];
  return dose / 1e6 / (uvRemoved ? row.withoutUv : row.withUv);
}

/** Years until one just noticeable fade. @throws {RangeError} for light that is not positive */
export function yearsToNoticeableFade(
  lxHoursPerYear: number,
  blueWool: BlueWool,
  uvRemoved: boolean,
): number {
  if (!(lxHoursPerYear > 0)) throw new RangeError("The yearly light must be positive.");
  return 1 / noticeableFades(lxHoursPerYear, blueWool, uvRemoved);
}

const lx = z.number().min(0).max(200_000).meta({ title: "Illuminance", unit: "lx" });

export const lightDose = working({
  id: "light-dose",
  title: "Light dose",
  about: "How much light a specimen takes on show and at work, and what share of its budget that is.",
  input: z.object({
    spans: z
      .array(
        z.object({
          illuminanceLx: lx,
          days: z.number().min(0).max(3660).meta({ title: "Days on show", unit: "d" }),
          hoursPerDay: z.number().min(0).max(24).meta({ title: "Hours of light a day", unit: "h" }),
        }),
      )
      .min(1)
      .max(100),
    workIlluminanceLx: lx.default(150),
    workHours: z.number().min(0).max(10_000).default(0).meta({ title: "Hours of work light", unit: "h" }),
    spentLxHours: z.number().min(0).max(1e9).default(0).meta({ title: "Already spent", unit: "lx·h" }),
    lxHoursPerYear: z.number().positive().max(1e9).meta({ title: "Light allowed in a year", unit: "lx·h" }),
    years: z
      .number()
      .min(1)
      .max(10)
      .default(1)
      .meta({ title: "Years pooled by written decision", unit: "a" }),
    uvRemoved: z.boolean().default(true).meta({ title: "Ultraviolet removed" }),
  }),
  output: z.object({
    doseLxHours: z.number().meta({ title: "Dose", unit: "lx·h" }),
    budgetLxHours: z.number().meta({ title: "Budget", unit: "lx·h" }),
    share: z.number().meta({ title: "Share of the budget with what is already spent", unit: "fraction" }),
    remainingLxHours: z.number().meta({ title: "Remaining, negative when overdrawn", unit: "lx·h" }),
    fades: z.array(
      z.object({
        blueWool: z.number().meta({ title: "ISO Blue Wool" }),
        noticeableFades: z.number().meta({ title: "Just noticeable fades by this dose" }),
      }),
    ),
  }),
  sources: [
    cite("light-reciprocity"),
    cite("cie-157", "limiting exposure in a year"),
    cite("blue-wool-fades", "dose to one just noticeable fade"),
  ],
  cautions: [
    "A filter for ultraviolet is no licence for more light: for sensitive colours ultraviolet is a small part of the fading.",
    "Light in closed hours, cleaning and guarding light included, must be counted where it is on.",
    "A Blue Wool stands for a class of colour; it does not tell when one specimen fades.",
  ],
  compute(input, note) {
    let dose = 0;
    input.spans.forEach(({ illuminanceLx, days, hoursPerDay }, index) => {
      dose += note(
        `On show ${index + 1}`,
        doseLxHours([{ illuminanceLx, hours: days * hoursPerDay }]),
        "lx·h",
        "lx · d · h/d",
      );
    });
    if (input.workHours > 0) {
      dose += note(
        "Work light",
        doseLxHours([{ illuminanceLx: input.workIlluminanceLx, hours: input.workHours }]),
        "lx·h",
        "lx · h",
      );
    }
    note("Dose", dose, "lx·h", "sum");
    const budget = note("Budget", input.lxHoursPerYear * input.years, "lx·h", "a year's light · years");
    const total = dose + input.spentLxHours;
    const share = note("Share", budgetShare(total, budget), "", "(dose + already spent) / budget");
    const remaining = note("Remaining", budget - total, "lx·h", "budget − dose − already spent");
    const fades = blueWools.map((blueWool) => ({
      blueWool,
      noticeableFades: note(
        `Fades of Blue Wool ${blueWool}`,
        noticeableFades(dose, blueWool, input.uvRemoved),
        "",
        "dose / dose to one fade",
      ),
    }));
    return { doseLxHours: dose, budgetLxHours: budget, share, remainingLxHours: remaining, fades };
  },
});
