/**
 * A logger's readings against limits. A reading stands until the next one, but never
 * longer than two hours: what lies beyond is a gap, in which nothing is known, and a
 * gap counts against the record. Change is the range, highest less lowest, within any
 * 24 hours of the clock; hours outside are counted by the reading that begins them.
 */
import type { LoggerReadingRow } from "#lib/environment/logger-file.ts";
import type { Band, CommonLimits } from "#lib/environment/schema.ts";
import type { Outcome } from "#lib/workings/outcome.ts";

const hourMs = 3_600_000;
/** Longer than this without a reading is a gap (common practice, no source). */
export const longestSpanHours = 2;
/** Slack for sums of decimal fractions, far below what any instrument reads. */
const slack = 1e-9;

type Ceiling = { warn: number; alarm: number };
/** Null where nothing is asked. Bands where specimens have none in common are empty. */
export type ReadingLimits = {
  temperatureC: { warn: Band | null; alarm: Band | null };
  humidity: { warn: Band | null; alarm: Band | null };
  temperatureChange24hK: Ceiling | null;
  humidityChange24h: Ceiling;
  illuminanceLx: Ceiling;
  uvMicrowattPerLumen: Ceiling;
};

/**
 * What a room is held against where no specimen says more: 16–25 °C, 40–60 % RH, at most
 * 10 % RH in 24 hours; 200 lx and 75 µW/lm as the upper ends of what is usual for light.
 * @source bizot-2023 for climate; common practice for light
 */
export const defaultLimits: ReadingLimits = {
  temperatureC: { warn: { low: 16, high: 25 }, alarm: { low: 16, high: 25 } },
  humidity: { warn: { low: 0.4, high: 0.6 }, alarm: { low: 0.4, high: 0.6 } },
  temperatureChange24hK: null,
  humidityChange24h: { warn: 0.1, alarm: 0.1 },
  illuminanceLx: { warn: 200, alarm: 200 },
  uvMicrowattPerLumen: { warn: 75, alarm: 75 },
};

export function readingLimitsOf(limits: CommonLimits): ReadingLimits {
  const { temperatureC, humidity, temperatureChange24hK, humidityChange24h } = limits;
  const { illuminanceLx, uvMicrowattPerLumen } = limits;
  return {
    temperatureC: { warn: temperatureC.warn, alarm: temperatureC.alarm },
    humidity: { warn: humidity.warn, alarm: humidity.alarm },
    temperatureChange24hK: { ...temperatureChange24hK },
    humidityChange24h: { ...humidityChange24h },
    illuminanceLx: { warn: illuminanceLx.max, alarm: illuminanceLx.max },
    uvMicrowattPerLumen: { warn: uvMicrowattPerLumen.target, alarm: uvMicrowattPerLumen.alarm },
  };
}

export const judgedQuantities = [
  "temperatureC",
  "temperatureChange24hK",
  "humidity",
  "humidityChange24h",
  "illuminanceLx",
  "uvMicrowattPerLumen",
] as const;
export type JudgedQuantity = (typeof judgedQuantities)[number];

export type JudgedLine = {
  quantity: JudgedQuantity;
  outcome: Outcome;
  lowest: number | null;
  highest: number;
  /** When the highest was read; of a change, when its 24 hours end. */
  highestAt: string;
  hoursOutsideWarn: number;
  hoursOutsideAlarm: number;
  clearWithin: Band | number | null;
  barBeyond: Band | number | null;
};

export type Gap = { from: string; until: string; hours: number };
export type Judgement = {
  outcome: Outcome;
  lines: JudgedLine[];
  gaps: Gap[];
  gapHours: number;
  hoursRead: number;
  /** lx·h over the hours that were read; null without readings of light. */
  lightLxHours: number | null;
};

type Point = { ms: number; at: string; value: number; hours: number };
type Read = "temperatureC" | "humidity" | "illuminanceLx" | "uvMicrowattPerLumen";

const round = (value: number) => Math.round(value * 1e6) / 1e6;

/** The readings of one quantity with the hours that each stands for; the last stands for none. */
function pointsOf(readings: readonly LoggerReadingRow[], quantity: Read): Point[] {
  const known = readings.flatMap((reading) => {
    const value = reading[quantity];
    return value === null ? [] : [{ ms: Date.parse(reading.at), at: reading.at, value }];
  });
  return known.map((point, index) => {
    const next = known[index + 1];
    const hours = next === undefined ? 0 : (next.ms - point.ms) / hourMs;
    return { ...point, hours: hours > longestSpanHours + slack ? 0 : hours };
  });
}

/** The range within the 24 hours that end at each reading, by two queues that hold the extremes. */
export function rangesWithin24h(points: readonly { ms: number; value: number }[]): number[] {
  const rising: number[] = [];
  const falling: number[] = [];
  const at = (index: number | undefined) => points[index ?? 0] ?? { ms: 0, value: 0 };
  let [rise, fall] = [0, 0];
  return points.map(({ ms, value }, index) => {
    while (rising.length > rise && at(rising.at(-1)).value >= value) rising.pop();
    while (falling.length > fall && at(falling.at(-1)).value <= value) falling.pop();
    rising.push(index);
    falling.push(index);
    while (ms - at(rising[rise]).ms > 24 * hourMs) rise += 1;
    while (ms - at(falling[fall]).ms > 24 * hourMs) fall += 1;
    return round(at(falling[fall]).value - at(rising[rise]).value);
  });
}

const outsideBand = (value: number, band: Band | null) =>
  band === null || !(value >= band.low - slack && value <= band.high + slack);
const hoursOf = (points: readonly Point[], counts: (point: Point) => boolean) =>
  round(points.reduce((sum, point) => (counts(point) ? sum + point.hours : sum), 0));

type Beyond = { warn: (value: number) => boolean; alarm: (value: number) => boolean };

function lineOf(
  quantity: JudgedQuantity,
  points: readonly Point[],
  beyond: Beyond,
  limits: Pick<JudgedLine, "clearWithin" | "barBeyond">,
  hasLowest: boolean,
): JudgedLine[] {
  const [first] = points;
  if (first === undefined) return [];
  const highest = points.reduce((most, point) => (point.value > most.value ? point : most), first);
  const lowest = points.reduce((least, point) => Math.min(least, point.value), first.value);
  const outcome = points.some(({ value }) => beyond.alarm(value))
    ? "bar"
    : points.some(({ value }) => beyond.warn(value))
      ? "attend"
      : "clear";
  return [
    {
      quantity,
      outcome,
      lowest: hasLowest ? lowest : null,
      highest: highest.value,
      highestAt: highest.at,
      hoursOutsideWarn: hoursOf(points, ({ value }) => beyond.warn(value)),
      hoursOutsideAlarm: hoursOf(points, ({ value }) => beyond.alarm(value)),
      ...limits,
    },
  ];
}

function bandLine(quantity: "temperatureC" | "humidity", points: readonly Point[], limits: ReadingLimits) {
  const { warn, alarm } = limits[quantity];
  const beyond = {
    warn: (value: number) => outsideBand(value, warn),
    alarm: (value: number) => outsideBand(value, alarm),
  };
  return lineOf(quantity, points, beyond, { clearWithin: warn, barBeyond: alarm }, true);
}

function ceilingLine(quantity: JudgedQuantity, points: readonly Point[], ceiling: Ceiling | null) {
  if (ceiling === null) return [];
  const beyond = {
    warn: (value: number) => value > ceiling.warn + slack,
    alarm: (value: number) => value > ceiling.alarm + slack,
  };
  return lineOf(quantity, points, beyond, { clearWithin: ceiling.warn, barBeyond: ceiling.alarm }, false);
}

function changesOf(points: readonly Point[]): Point[] {
  const ranges = rangesWithin24h(points);
  return points.map((point, index) => ({ ...point, value: ranges[index] ?? 0 }));
}

/** Stretches of more than two hours between readings of any kind. */
export function gapsOf(readings: readonly LoggerReadingRow[]): Gap[] {
  return readings.slice(1).flatMap((reading, index) => {
    const before = readings[index];
    if (before === undefined) return [];
    const hours = (Date.parse(reading.at) - Date.parse(before.at)) / hourMs;
    return hours > longestSpanHours + slack
      ? [{ from: before.at, until: reading.at, hours: round(hours) }]
      : [];
  });
}

const rank = { clear: 0, attend: 1, bar: 2 } as const;

/** @param readings in order of time; @throws {RangeError} for none */
export function judgeReadings(readings: readonly LoggerReadingRow[], limits: ReadingLimits): Judgement {
  const [first] = readings;
  const last = readings.at(-1);
  if (first === undefined || last === undefined) throw new RangeError("A record without readings.");
  const temperature = pointsOf(readings, "temperatureC");
  const humidity = pointsOf(readings, "humidity");
  const light = pointsOf(readings, "illuminanceLx");
  const lines = [
    ...bandLine("temperatureC", temperature, limits),
    ...ceilingLine("temperatureChange24hK", changesOf(temperature), limits.temperatureChange24hK),
    ...bandLine("humidity", humidity, limits),
    ...ceilingLine("humidityChange24h", changesOf(humidity), limits.humidityChange24h),
    ...ceilingLine("illuminanceLx", light, limits.illuminanceLx),
    ...ceilingLine(
      "uvMicrowattPerLumen",
      pointsOf(readings, "uvMicrowattPerLumen"),
      limits.uvMicrowattPerLumen,
    ),
  ];
  const gaps = gapsOf(readings);
  const gapHours = round(gaps.reduce((sum, { hours }) => sum + hours, 0));
  const worst = lines.reduce<Outcome>(
    (found, { outcome }) => (rank[outcome] > rank[found] ? outcome : found),
    gaps.length > 0 ? "attend" : "clear",
  );
  return {
    outcome: worst,
    lines,
    gaps,
    gapHours,
    hoursRead: round((Date.parse(last.at) - Date.parse(first.at)) / hourMs - gapHours),
    lightLxHours:
      light.length === 0 ? null : round(light.reduce((sum, { value, hours }) => sum + value * hours, 0)),
  };
}

/** One stretch of a curve: the least and the greatest of its readings, so that no peak is lost. */
export type CurvePoint = { at: string; low: number; high: number };

/** At most so many stretches of even length; stretches without a reading are left out. */
export function thinnedCurve(
  readings: readonly LoggerReadingRow[],
  quantity: Read,
  most: number,
): CurvePoint[] {
  const points = pointsOf(readings, quantity);
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined) return [];
  const span = Math.max(1, (last.ms - first.ms + 1) / most);
  const stretches = new Map<number, CurvePoint>();
  for (const { ms, at, value } of points) {
    const place = Math.floor((ms - first.ms) / span);
    const kept = stretches.get(place);
    if (kept === undefined) stretches.set(place, { at, low: value, high: value });
    else {
      kept.low = Math.min(kept.low, value);
      kept.high = Math.max(kept.high, value);
    }
  }
  return [...stretches.values()];
}
