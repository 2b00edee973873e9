/**
 * Which days the strips of the list cover: two years from today, or, where days were
 * looked for, these with the longest days around them. They never begin in the past
 * and never cover more than three years, so that a month can still be seen.
 */
import { addDays, type DateText } from "#lib/platform/dates.ts";
import { type DaysAround, mostDaysAround } from "#lib/specimens/days-around.ts";

type Days = { startsOn: DateText; endsOn: DateText };
export type StripWindow = { from: DateText; until: DateText };

const unaskedDays = 2 * 365;
const longestDays = 3 * 365;

export function stripWindow(today: DateText, asked: Days | null, lines: readonly DaysAround[]): StripWindow {
  if (asked === null || asked.endsOn <= today) return { from: today, until: addDays(today, unaskedDays) };
  const { before, after } = mostDaysAround(lines);
  const first = addDays(asked.startsOn, -before);
  const from = first < today ? today : first;
  const last = addDays(asked.endsOn, after);
  const [until = last] = [last, addDays(from, longestDays)].sort();
  return { from, until };
}

type Period = { startsOn: DateText; endsOn: DateText };

/**
 * Of free days those on which a loan can be with the borrower: the days around it are taken off, where they are
 * bounded by what is promised and by today, and not where only the window ends.
 * @param free as far as the days after a loan may reach beyond the window
 */
export function daysToBeHad(
  free: readonly Period[],
  { from, until }: StripWindow,
  { before, after }: Pick<DaysAround, "before" | "after">,
): Period[] {
  return free.flatMap(({ startsOn, endsOn }) => {
    const first = addDays(startsOn, before);
    const [last = until] = [addDays(endsOn, -after), until].sort();
    return first >= from && first < last ? [{ startsOn: first, endsOn: last }] : [];
  });
}
