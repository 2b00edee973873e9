/**
 * Which days may be asked for, seen from today: not before the days that are kept
 * in front of a loan have room, and not years ahead of what anybody can promise.
 * And the days that a slip begins with, before anybody has stated them: those that
 * were looked for, or else the first on which everything noted is free.
 */

import { addDays, DateText, daysBetween } from "#lib/platform/dates.ts";
import { type Buffers, busyRange, type Days } from "#lib/suitability/period.ts";
import { faultOfDays } from "#lib/suitability/schema.ts";
import { nextFreeStart } from "#lib/whereabouts/free-periods.ts";

/** Five years: beyond that nobody knows rooms, consents and cover (common practice, no source). */
export const furthestStartDays = 1_826;
/** A teaching loan nearby is asked for six weeks ahead (common practice, no source). */
const USUAL_LEAD_DAYS = 42;
const USUAL_LENGTH_DAYS = 120;

/** The first possible day of delivery: before it lie the days for checks, packing and travel. */
export function earliestStart(today: DateText, { daysBefore }: Pick<Buffers, "daysBefore">): DateText {
  return addDays(today, Math.max(1, daysBefore));
}

export type FaultOfStart = { code: string; earliest: DateText; latest: DateText };

/**
 * @param mayHurry whether somebody of the house asks, who may agree on a shorter preparation
 * @returns why the loan cannot begin on that day; null when it can
 */
export function faultOfStart(
  startsOn: DateText,
  { today, daysBefore, mayHurry }: { today: DateText; daysBefore: number; mayHurry: boolean },
): FaultOfStart | null {
  const earliest = mayHurry ? addDays(today, 1) : earliestStart(today, { daysBefore });
  const latest = addDays(today, furthestStartDays);
  const fault = (code: string) => ({ code, earliest, latest });
  if (!(startsOn > today)) return fault("loan.starts-in-past");
  if (!(startsOn >= earliest)) return fault("loan.starts-too-soon");
  return startsOn <= latest ? null : fault("loan.starts-too-late");
}

const MONTH_AND_DAY = 5;

/** The same day of another year; the 29th of February is the 1st of March where there is none. */
function inYear(year: number, day: DateText): DateText {
  const text = `${String(year).padStart(4, "0")}-${day.slice(MONTH_AND_DAY)}`;
  return DateText.safeParse(text).success ? text : `${text.slice(0, MONTH_AND_DAY)}03-01`;
}

/**
 * As many days as last time, on the same day of the first year in which that is possible.
 * @param wished another day of delivery, where one is stated
 */
export function daysLikeLastTime(last: Days, earliest: DateText, wished: DateText | null = null): Days {
  let year = Math.max(Number(last.startsOn.slice(0, 4)), Number(earliest.slice(0, 4)));
  if (inYear(year, last.startsOn) < earliest) year += 1;
  const startsOn = wished ?? inYear(year, last.startsOn);
  return { startsOn, endsOn: addDays(startsOn, daysBetween(last.startsOn, last.endsOn)) };
}

/** The days that were looked for, where a loan of them is possible. */
function possibleWish(wish: Days | null, earliest: DateText, today: DateText): Days | null {
  if (wish === null) return null;
  const days = { ...wish, startsOn: wish.startsOn < earliest ? earliest : wish.startsOn };
  const isNear = daysBetween(today, days.startsOn) <= furthestStartDays;
  return faultOfDays(days) === null && isNear ? days : null;
}

/**
 * The days that a slip begins with.
 * @param wish what was looked for in the catalogue
 * @param busy days on which something that is noted is promised
 */
export function firstDays(
  today: DateText,
  buffers: Buffers,
  busy: readonly Days[],
  wish: Days | null = null,
): Days {
  const earliest = earliestStart(today, buffers);
  const wished = possibleWish(wish, earliest, today);
  if (wished !== null) return wished;
  const { daysBefore, daysAfter } = buffers;
  const startsOn = addDays(today, Math.max(USUAL_LEAD_DAYS, daysBefore));
  const asked = busyRange({ startsOn, endsOn: addDays(startsOn, USUAL_LENGTH_DAYS), daysBefore, daysAfter });
  const free = addDays(nextFreeStart(busy, asked), daysBefore);
  const first = daysBetween(today, free) <= furthestStartDays ? free : startsOn;
  return { startsOn: first, endsOn: addDays(first, USUAL_LENGTH_DAYS) };
}
