/**
 * Free days by month only, for eyes that shall not read the calendar day by day: a
 * month counts as free where all of its days are, those that are past left aside.
 */
import { addDays, type DateText } from "#lib/platform/dates.ts";
import { mergePeriods } from "#lib/whereabouts/free-periods.ts";
import type { Period } from "#lib/whereabouts/schema.ts";

const MONTH_TEXT = 7;
const LONGEST_MONTH_DAYS = 31;

const firstOf = (day: DateText): DateText => `${day.slice(0, MONTH_TEXT)}-01`;
const nextMonth = (first: DateText): DateText => firstOf(addDays(first, LONGEST_MONTH_DAYS));

/** The months from the one of a day on, each as its days. */
export function monthsFrom(day: DateText, count: number): Period[] {
  const months: Period[] = [];
  for (let startsOn = firstOf(day); months.length < count; startsOn = nextMonth(startsOn))
    months.push({ startsOn, endsOn: nextMonth(startsOn) });
  return months;
}

/** The months that are free as a whole, those that follow each other joined. */
export function freeMonths(free: readonly Period[], months: readonly Period[], today: DateText): Period[] {
  const isFree = ({ startsOn, endsOn }: Period) => {
    const from = startsOn < today ? today : startsOn;
    return free.some((period) => period.startsOn <= from && period.endsOn >= endsOn);
  };
  return mergePeriods(months.filter(isFree));
}
