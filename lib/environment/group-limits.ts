/**
 * The limits of several specimens that travel or stand together: bands are
 * intersected, ceilings take the lowest. Each figure names the specimens that
 * set it. Where a level has no common band the band is null and every pair of
 * specimens that excludes each other is named; no compromise is invented.
 * Bands on a line have a common point exactly when every two of them have one,
 * so an empty level always names at least one pair.
 */
import type { Band, CommonLimits, Ground, LimitQuantity, Limits } from "#lib/environment/schema.ts";

/** A specimen, or the agreement itself, with its limits. */
export type GroupMember = { id: string; limits: Limits };

export type LimitLevel = "target" | "warn" | "alarm" | "max";

/** One end of a common band, or one ceiling, with those that set it. */
export type CommonFigure = {
  quantity: LimitQuantity;
  level: LimitLevel;
  side: "low" | "high";
  value: number;
  setBy: string[];
  ground: Ground[];
};

/** `needsAtLeast` wants more than `allowsAtMost` bears. */
export type ExcludingPair = { needsAtLeast: string; atLeast: number; allowsAtMost: string; atMost: number };

export type LimitConflict = { quantity: LimitQuantity; level: LimitLevel; pairs: ExcludingPair[] };

export type GroupLimits = { limits: CommonLimits; figures: CommonFigure[]; conflicts: LimitConflict[] };

type Holding<Value> = { id: string; value: Value; ground: Ground[] };

function uniqueGrounds(grounds: readonly Ground[]): Ground[] {
  const seen = new Map<string, Ground>();
  for (const ground of grounds) seen.set(`${ground.id}\n${ground.where}`, ground);
  return [...seen.values()];
}

function settersOf(holdings: readonly Holding<number>[], value: number) {
  const setters = holdings.filter((holding) => holding.value === value);
  return {
    setBy: setters.map((holding) => holding.id),
    ground: uniqueGrounds(setters.flatMap((holding) => holding.ground)),
  };
}

function excludingPairs(holdings: readonly Holding<Band>[]): ExcludingPair[] {
  const pairs: ExcludingPair[] = [];
  for (const upper of holdings) {
    for (const lower of holdings) {
      if (upper.value.low > lower.value.high) {
        pairs.push({
          needsAtLeast: upper.id,
          atLeast: upper.value.low,
          allowsAtMost: lower.id,
          atMost: lower.value.high,
        });
      }
    }
  }
  return pairs;
}

/**
 * The strictest common limits.
 * @throws {RangeError} when no member is given: nothing has no limits.
 */
export function groupLimits(members: readonly GroupMember[]): GroupLimits {
  if (members.length === 0) throw new RangeError("The limits of a group need at least one specimen.");
  const figures: CommonFigure[] = [];
  const conflicts: LimitConflict[] = [];

  const commonBand = (
    quantity: LimitQuantity,
    level: LimitLevel,
    pick: (limits: Limits) => Band,
  ): Band | null => {
    const holdings = members.map(({ id, limits }) => ({
      id,
      value: pick(limits),
      ground: limits[quantity].ground,
    }));
    const low = Math.max(...holdings.map((holding) => holding.value.low));
    const high = Math.min(...holdings.map((holding) => holding.value.high));
    if (low > high) {
      conflicts.push({ quantity, level, pairs: excludingPairs(holdings) });
      return null;
    }
    const ends = { low, high };
    for (const side of ["low", "high"] as const) {
      const values = holdings.map((holding) => ({ ...holding, value: holding.value[side] }));
      figures.push({ quantity, level, side, value: ends[side], ...settersOf(values, ends[side]) });
    }
    return ends;
  };

  const lowest = (quantity: LimitQuantity, level: LimitLevel, pick: (limits: Limits) => number): number => {
    const holdings = members.map(({ id, limits }) => ({
      id,
      value: pick(limits),
      ground: limits[quantity].ground,
    }));
    const value = Math.min(...holdings.map((holding) => holding.value));
    figures.push({ quantity, level, side: "high", value, ...settersOf(holdings, value) });
    return value;
  };

  const nestedBands = (quantity: "temperatureC" | "humidity") => ({
    target: commonBand(quantity, "target", (limits) => limits[quantity].target),
    warn: commonBand(quantity, "warn", (limits) => limits[quantity].warn),
    alarm: commonBand(quantity, "alarm", (limits) => limits[quantity].alarm),
  });
  const rising = (quantity: "temperatureChange24hK" | "humidityChange24h" | "shockG") => ({
    warn: lowest(quantity, "warn", (limits) => limits[quantity].warn),
    alarm: lowest(quantity, "alarm", (limits) => limits[quantity].alarm),
  });

  const limits: CommonLimits = {
    temperatureC: nestedBands("temperatureC"),
    transitTemperatureC: {
      alarm: commonBand("transitTemperatureC", "alarm", (limits) => limits.transitTemperatureC.alarm),
    },
    humidity: nestedBands("humidity"),
    temperatureChange24hK: rising("temperatureChange24hK"),
    humidityChange24h: rising("humidityChange24h"),
    illuminanceLx: { max: lowest("illuminanceLx", "max", (limits) => limits.illuminanceLx.max) },
    lightLxHoursPerYear: {
      max: lowest("lightLxHoursPerYear", "max", (limits) => limits.lightLxHoursPerYear.max),
    },
    uvMicrowattPerLumen: {
      target: lowest("uvMicrowattPerLumen", "target", (limits) => limits.uvMicrowattPerLumen.target),
      alarm: lowest("uvMicrowattPerLumen", "alarm", (limits) => limits.uvMicrowattPerLumen.alarm),
    },
    shockG: rising("shockG"),
  };
  return { limits, figures, conflicts };
}
