/**
 * On which days a check can have been made. Nobody looks at a specimen before it
 * was prepared and had come into the collection, and a check stands after the
 * ones before it: of the same day or later, never earlier, so that the check of
 * the latest day is the one that was recorded last. A loan may set a floor of its
 * own. Every floor is a day that is still allowed.
 */
import type { DateText } from "#lib/platform/dates.ts";
import { Refusal } from "#lib/platform/refusal.ts";

export const dayFloorCodes = [
  "check.before-prepared",
  "check.before-acquired",
  "check.before-latest",
  "check.before-accepted",
  "check.before-arrived",
  "check.before-opened",
  "check.before-counted",
] as const;
export type DayFloorCode = (typeof dayFloorCodes)[number];

/** The first day that is allowed, and why it is the first. */
export type DayFloor = { day: DateText; code: DayFloorCode };

export type DatedSpecimen = { preparedOn: DateText | null; acquiredOn: DateText | null };

/** What the specimen itself and its checks so far allow. @param latestOn the day of its latest check */
export function floorsOf({ preparedOn, acquiredOn }: DatedSpecimen, latestOn: DateText | null): DayFloor[] {
  const floors = [
    ["check.before-latest", latestOn],
    ["check.before-acquired", acquiredOn],
    ["check.before-prepared", preparedOn],
  ] as const;
  return floors.flatMap(([code, day]) => (day === null ? [] : [{ code, day }]));
}

/** The floor that decides, which is the latest; of one day the first named. */
export function highestFloor(floors: readonly DayFloor[]): DayFloor | null {
  return floors.reduce<DayFloor | null>(
    (highest, floor) => (highest === null || floor.day > highest.day ? floor : highest),
    null,
  );
}

const refuseDay = (code: DayFloorCode | "check.in-future", parameters: Record<string, string>) =>
  new Refusal("conflict", code, parameters, [{ path: "checkedOn", message: "check.other-day" }]);

/** @throws {Refusal} for a day to come, and for one before the highest floor */
export function requireCheckDay(checkedOn: DateText, today: DateText, floors: readonly DayFloor[]): void {
  if (!(checkedOn <= today)) throw refuseDay("check.in-future", { checkedOn });
  const floor = highestFloor(floors);
  if (floor !== null && !(checkedOn >= floor.day))
    throw refuseDay(floor.code, { checkedOn, from: floor.day });
}
