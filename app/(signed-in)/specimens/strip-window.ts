/**
 * Which days the strips of the list cover: the year from today, or, where days were
 * looked for, these with the longest days around them. They never begin in the past
 * and never cover more than three years, so that a month can still be seen.
 */
import { addDays, type DateText } from "#lib/platform/dates.ts";
import { type DaysAround, mostDaysAround } from "#lib/specimens/days-around.ts";

type Days = { startsOn: DateText; endsOn: DateText };
export type StripWindow = { from: DateText; until: DateText };

const yearDays = 365;
const longestDays = 3 * yearDays;

export function stripWindow(today: DateText, asked: Days | null, lines: readonly DaysAround[]): StripWindow {
  if (asked === null || asked.endsOn <= today) return { from: today, until: addDays(today, yearDays) };
  const { before, after } = mostDaysAround(lines);
  const first = addDays(asked.startsOn, -before);
  const from = first < today ? today : first;
  const last = addDays(asked.endsOn, after);
  const [until = last] = [last, addDays(from, longestDays)].sort();
  return { from, until };
}
