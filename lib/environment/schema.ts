/**
 * The words of the environment room: how a specimen is preserved as far as its
 * surroundings care, and the shape of the limits that follow. Humidity is a
 * fraction, bands are closed at both ends, and a target lies inside its warning
 * band, which lies inside its alarm band. Every figure carries its ground.
 */
import { z } from "zod";
import { Share } from "#lib/platform/share.ts";
import { standings } from "#lib/workings/standing.ts";

export const preparationCodes = [
  "silicone-body",
  "silicone-organ",
  "epoxy-sheet",
  "polyester-sheet",
  "alcohol-jar",
  "aqueous-jar",
  "corrosion-cast",
  "bone",
  "teeth",
  "slide",
  "wax",
  "dry",
] as const;
export const PreparationCode = z.enum(preparationCodes);
export type PreparationCode = z.infer<typeof PreparationCode>;

/** What narrows the light limits of some preparations. */
export const colourTraits = ["dyed-resin", "colour-preserved"] as const;
export const ColourTrait = z.enum(colourTraits);
export type ColourTrait = z.infer<typeof ColourTrait>;

/** A citation as it is stored with a figure. */
export const Ground = z.object({
  id: z.string().min(1),
  title: z.string().min(1),
  where: z.string(),
  standing: z.enum(standings),
});
export type Ground = z.infer<typeof Ground>;

const grounds = z.array(Ground).min(1);

function bandOf(quantity: z.ZodNumber) {
  return z.object({ low: quantity, high: quantity }).refine((band) => band.low <= band.high, {
    message: "The low end lies above the high end.",
    path: ["low"],
  });
}

export const TemperatureC = z.number().min(-80).max(100).meta({ title: "Temperature", unit: "°C" });
export const Humidity = Share.meta({ title: "Relative humidity", unit: "fraction of saturation" });

export type Band = { low: number; high: number };

function contains(outer: Band, inner: Band): boolean {
  return outer.low <= inner.low && inner.high <= outer.high;
}

function nestedBandsOf(quantity: z.ZodNumber) {
  const band = bandOf(quantity);
  return z
    .object({ target: band, warn: band, alarm: band, ground: grounds })
    .refine((bands) => contains(bands.warn, bands.target), {
      message: "The target reaches outside the warning band.",
      path: ["target"],
    })
    .refine((bands) => contains(bands.alarm, bands.warn), {
      message: "The warning band reaches outside the alarm band.",
      path: ["warn"],
    });
}

function risingOf(quantity: z.ZodNumber) {
  return z
    .object({ warn: quantity, alarm: quantity, ground: grounds })
    .refine((pair) => pair.warn <= pair.alarm, {
      message: "The warning lies above the alarm.",
      path: ["warn"],
    });
}

/** The limits of one preparation or one specimen. Shock is measured on the specimen's mount. */
export const Limits = z.object({
  preparation: PreparationCode,
  temperatureC: nestedBandsOf(TemperatureC),
  /** On the road the alarm alone counts; a resin sheet bears more heat there than in store. */
  transitTemperatureC: z.object({ alarm: bandOf(TemperatureC), ground: grounds }),
  humidity: nestedBandsOf(Humidity),
  /** Range, highest minus lowest, within any 24 hours. */
  temperatureChange24hK: risingOf(
    z.number().min(0).max(100).meta({ title: "Change of temperature in 24 h", unit: "K" }),
  ),
  humidityChange24h: risingOf(
    z.number().min(0).max(1).meta({ title: "Change of humidity in 24 h", unit: "fraction of saturation" }),
  ),
  illuminanceLx: z.object({
    max: z.number().min(0).max(200_000).meta({ title: "Illuminance", unit: "lx" }),
    ground: grounds,
  }),
  lightLxHoursPerYear: z.object({
    max: z.number().min(0).max(1e9).meta({ title: "Light in a year", unit: "lx·h" }),
    ground: grounds,
  }),
  uvMicrowattPerLumen: z
    .object({
      target: z.number().min(0).max(10_000).meta({ title: "Ultraviolet", unit: "µW/lm" }),
      alarm: z.number().min(0).max(10_000).meta({ title: "Ultraviolet", unit: "µW/lm" }),
      ground: grounds,
    })
    .refine((pair) => pair.target <= pair.alarm, {
      message: "The target lies above the alarm.",
      path: ["target"],
    }),
  shockG: risingOf(z.number().positive().max(1000).meta({ title: "Shock on the mount", unit: "g" })),
});
export type Limits = z.infer<typeof Limits>;

export const limitQuantities = [
  "temperatureC",
  "transitTemperatureC",
  "humidity",
  "temperatureChange24hK",
  "humidityChange24h",
  "illuminanceLx",
  "lightLxHoursPerYear",
  "uvMicrowattPerLumen",
  "shockG",
] as const satisfies readonly (keyof Limits)[];
export type LimitQuantity = (typeof limitQuantities)[number];

/**
 * Limits without grounds, where a band may be missing because specimens that
 * travel together have none in common. Limits of one specimen fit this type.
 */
export type CommonLimits = {
  temperatureC: { target: Band | null; warn: Band | null; alarm: Band | null };
  transitTemperatureC: { alarm: Band | null };
  humidity: { target: Band | null; warn: Band | null; alarm: Band | null };
  temperatureChange24hK: { warn: number; alarm: number };
  humidityChange24h: { warn: number; alarm: number };
  illuminanceLx: { max: number };
  lightLxHoursPerYear: { max: number };
  uvMicrowattPerLumen: { target: number; alarm: number };
  shockG: { warn: number; alarm: number };
};
