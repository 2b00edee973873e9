/**
 * Vertebral levels of a series of sheets, from the few sheets at which a level is
 * known. Levels are counted from C1 = 1 downwards (C7 = 7, T12 = 19, L5 = 24,
 * S1 = 25 to S5 = 29, Co = 30), and between two known sheets the level runs
 * straight. Beyond the outermost known sheets nothing is said unless asked for.
 */
import { vertebralLevels } from "#lib/specimens/schema.ts";

export type VertebralLevel = (typeof vertebralLevels)[number];
export type Landmark = { number: number; level: VertebralLevel };

/** C1 = 1 … Co = 30. */
export function levelCount(level: VertebralLevel): number {
  return (vertebralLevels as readonly string[]).indexOf(level) + 1;
}

/** The level at a count; counts between two levels belong to the nearer one, halves to the lower. */
export function levelAtCount(count: number): VertebralLevel | null {
  return (vertebralLevels[Math.round(count) - 1] as VertebralLevel | undefined) ?? null;
}

/** Landmarks in the order of their sheets, when each further sheet means a further level the same way. */
export function orderedLandmarks(landmarks: readonly Landmark[]): Landmark[] | null {
  const ordered = [...landmarks].sort((one, other) => one.number - other.number);
  const steps = ordered.slice(1).map((landmark, index) => {
    const before = ordered[index];
    return before && landmark.number > before.number
      ? Math.sign(levelCount(landmark.level) - levelCount(before.level))
      : 0;
  });
  return steps.every((step) => step !== 0 && step === steps[0]) ? ordered : null;
}

type Point = { at: number; value: number };

function interpolate(points: readonly Point[], at: number, beyond: boolean): number | null {
  const [first, second] = points;
  if (!first || !Number.isFinite(at)) return null;
  if (!second) return at === first.at ? first.value : null;
  const last = points.at(-1) ?? first;
  if (!beyond && !(at >= first.at && at <= last.at)) return null;
  const index = points.findIndex((point) => point.at >= at);
  const upper = Math.max(1, index === -1 ? points.length - 1 : index);
  const from = points[upper - 1] ?? first;
  const to = points[upper] ?? second;
  return from.value + ((at - from.at) * (to.value - from.value)) / (to.at - from.at);
}

/**
 * @param beyond also outside the known sheets, along the nearest known stretch
 * @returns the level at a sheet as a count, or null where nothing is known
 */
export function levelCountAtSheet(
  landmarks: readonly Landmark[],
  number: number,
  beyond = false,
): number | null {
  const ordered = orderedLandmarks(landmarks);
  if (!ordered) return null;
  return interpolate(
    ordered.map((landmark) => ({ at: landmark.number, value: levelCount(landmark.level) })),
    number,
    beyond,
  );
}

/** @returns the level at a sheet, or null where nothing is known */
export function levelAtSheet(
  landmarks: readonly Landmark[],
  number: number,
  beyond = false,
): VertebralLevel | null {
  const count = levelCountAtSheet(landmarks, number, beyond);
  return count === null ? null : levelAtCount(count);
}

/** @returns the sheet at a level, not rounded, or null where nothing is known */
export function sheetAtLevel(
  landmarks: readonly Landmark[],
  level: VertebralLevel,
  beyond = false,
): number | null {
  const ordered = orderedLandmarks(landmarks);
  if (!ordered) return null;
  const points = ordered.map((landmark) => ({ at: levelCount(landmark.level), value: landmark.number }));
  const first = points[0];
  const last = points.at(-1);
  if (first && last && first.at > last.at) points.reverse();
  return interpolate(points, levelCount(level), beyond);
}
