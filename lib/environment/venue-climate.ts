/**
 * A venue's stated climate and light against limits, one comparison for each
 * quantity. Inside the warning band is clear, outside it attend, outside the
 * alarm band bar; light over its limit is bar. What the venue has not stated is
 * attend, never clear, unless another figure of its own settles it: a room that
 * never leaves a narrow band cannot swing by more than its width.
 */
import { z } from "zod";
import {
  type Band,
  type CommonLimits,
  Humidity,
  type LimitQuantity,
  TemperatureC,
} from "#lib/environment/schema.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

/** As the venue states it; null is not stated. */
export const StatedClimate = z
  .object({
    temperatureLowC: TemperatureC.nullable().default(null),
    temperatureHighC: TemperatureC.nullable().default(null),
    humidityLow: Humidity.nullable().default(null),
    humidityHigh: Humidity.nullable().default(null),
    temperatureSwing24hK: z.number().min(0).max(100).nullable().default(null),
    humiditySwing24h: z.number().min(0).max(1).nullable().default(null),
    illuminanceLx: z.number().min(0).max(200_000).nullable().default(null),
    uvMicrowattPerLumen: z.number().min(0).max(10_000).nullable().default(null),
    lightHoursPerDay: z.number().min(0).max(24).nullable().default(null),
    displayDays: z.number().int().min(0).max(3660).nullable().default(null),
  })
  .refine(
    (stated) =>
      stated.temperatureLowC === null ||
      stated.temperatureHighC === null ||
      stated.temperatureLowC <= stated.temperatureHighC,
    { message: "The lowest temperature lies above the highest.", path: ["temperatureLowC"] },
  )
  .refine(
    (stated) =>
      stated.humidityLow === null ||
      stated.humidityHigh === null ||
      stated.humidityLow <= stated.humidityHigh,
    { message: "The lowest humidity lies above the highest.", path: ["humidityLow"] },
  );
export type StatedClimate = z.infer<typeof StatedClimate>;

export const climateReasons = [
  "within",
  "outside-warn",
  "outside-alarm",
  "over-target",
  "over-limit",
  "not-stated",
  "no-common-band",
] as const;
export type ClimateReason = (typeof climateReasons)[number];

export type ClimateQuantity = Exclude<LimitQuantity, "transitTemperatureC" | "shockG">;

export type ClimateComparison = {
  quantity: ClimateQuantity;
  outcome: Outcome;
  reason: ClimateReason;
  /** What the venue states, or what follows from it; null is not stated. */
  stated: { low: number | null; high: number | null };
  /** Up to here it is clear; a null band means that the specimens have none in common. */
  clearWithin: { low: number | null; high: number | null } | null;
  /** Beyond it is a bar. */
  barBeyond: { low: number | null; high: number | null } | null;
};

/** Slack for sums of decimal fractions, far below what any instrument reads. */
const slack = 1e-9;

/** A stated end that is not known cannot put the room outside a band; it only keeps it from being clear. */
function within(band: Band, low: number | null, high: number | null): boolean {
  const ends = [low, high].filter((end) => end !== null);
  return ends.every((end) => end >= band.low - slack && end <= band.high + slack);
}

function compareBands(
  quantity: "temperatureC" | "humidity",
  low: number | null,
  high: number | null,
  limits: CommonLimits["humidity"],
): ClimateComparison {
  const figures = {
    quantity,
    stated: { low, high },
    clearWithin: limits.warn,
    barBeyond: limits.alarm,
  };
  if (limits.alarm === null) return { ...figures, outcome: "bar", reason: "no-common-band" };
  if (!within(limits.alarm, low, high)) return { ...figures, outcome: "bar", reason: "outside-alarm" };
  if (low === null || high === null) return { ...figures, outcome: "attend", reason: "not-stated" };
  if (limits.warn === null) return { ...figures, outcome: "attend", reason: "no-common-band" };
  if (!within(limits.warn, low, high)) return { ...figures, outcome: "attend", reason: "outside-warn" };
  return { ...figures, outcome: "clear", reason: "within" };
}

type Ceilings = { clear: number; bar: number; attendReason: ClimateReason; barReason: ClimateReason };

function compareCeiling(
  quantity: ClimateQuantity,
  value: number | null,
  ceilings: Ceilings,
): ClimateComparison {
  const figures = {
    quantity,
    stated: { low: null, high: value },
    clearWithin: { low: null, high: ceilings.clear },
    barBeyond: { low: null, high: ceilings.bar },
  };
  if (value === null) return { ...figures, outcome: "attend", reason: "not-stated" };
  if (value > ceilings.bar + slack) return { ...figures, outcome: "bar", reason: ceilings.barReason };
  if (value > ceilings.clear + slack) return { ...figures, outcome: "attend", reason: ceilings.attendReason };
  return { ...figures, outcome: "clear", reason: "within" };
}

/** The stated swing, or the width of the stated band where that alone keeps the swing clear. */
function knownSwing(
  stated: number | null,
  low: number | null,
  high: number | null,
  clearUpTo: number,
): number | null {
  if (stated !== null || low === null || high === null) return stated;
  return high - low <= clearUpTo + slack ? high - low : null;
}

/** Light on show; longer than a year is held against as many years' light. */
function plannedDose(stated: StatedClimate): number | null {
  const { illuminanceLx, lightHoursPerDay, displayDays } = stated;
  if (illuminanceLx === 0 || lightHoursPerDay === 0 || displayDays === 0) return 0;
  if (illuminanceLx === null || lightHoursPerDay === null || displayDays === null) return null;
  return illuminanceLx * lightHoursPerDay * displayDays;
}

/**
 * One comparison for each quantity, always in the same order.
 * @param spentLxHours light that the specimen has already taken in the same year; null is not known
 */
export function compareVenueClimate(
  stated: StatedClimate,
  limits: CommonLimits,
  spentLxHours: number | null = 0,
): ClimateComparison[] {
  if (!(spentLxHours === null || spentLxHours >= 0))
    throw new RangeError("The light already spent must not be negative.");
  const { temperatureChange24hK, humidityChange24h, uvMicrowattPerLumen } = limits;
  const dose = plannedDose(stated);
  const years = Math.max(1, (stated.displayDays ?? 0) / 365);
  // Where one part is not known the other alone can still go over the limit.
  const atLeast = (dose ?? 0) + (spentLxHours ?? 0);
  const allKnown = dose !== null && spentLxHours !== null;
  const yearlyLight = limits.lightLxHoursPerYear.max * years;
  const knownDose = allKnown || atLeast > yearlyLight + slack ? atLeast : null;
  const alarmReasons = { attendReason: "outside-warn", barReason: "outside-alarm" } as const;
  const limitReasons = { attendReason: "over-limit", barReason: "over-limit" } as const;
  return [
    compareBands("temperatureC", stated.temperatureLowC, stated.temperatureHighC, limits.temperatureC),
    compareCeiling(
      "temperatureChange24hK",
      knownSwing(
        stated.temperatureSwing24hK,
        stated.temperatureLowC,
        stated.temperatureHighC,
        temperatureChange24hK.warn,
      ),
      { clear: temperatureChange24hK.warn, bar: temperatureChange24hK.alarm, ...alarmReasons },
    ),
    compareBands("humidity", stated.humidityLow, stated.humidityHigh, limits.humidity),
    compareCeiling(
      "humidityChange24h",
      knownSwing(stated.humiditySwing24h, stated.humidityLow, stated.humidityHigh, humidityChange24h.warn),
      { clear: humidityChange24h.warn, bar: humidityChange24h.alarm, ...alarmReasons },
    ),
    compareCeiling("illuminanceLx", stated.illuminanceLx, {
      clear: limits.illuminanceLx.max,
      bar: limits.illuminanceLx.max,
      ...limitReasons,
    }),
    compareCeiling("lightLxHoursPerYear", knownDose, {
      clear: yearlyLight,
      bar: yearlyLight,
      ...limitReasons,
    }),
    compareCeiling("uvMicrowattPerLumen", stated.uvMicrowattPerLumen, {
      clear: uvMicrowattPerLumen.target,
      bar: uvMicrowattPerLumen.alarm,
      attendReason: "over-target",
      barReason: "over-limit",
    }),
  ];
}
