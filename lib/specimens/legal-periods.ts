/**
 * The coarse periods of a specimen's law as days: the first and the last day that
 * each can mean. Comparisons are made with the end that is least favourable, so a
 * period that straddles a bound is never taken to lie on one side of it.
 */
import type { DateText } from "#lib/platform/dates.ts";
import type { deathPeriods, madePeriods } from "#lib/specimens/schema.ts";

type Period = (typeof deathPeriods)[number] | (typeof madePeriods)[number];
type Days = { from: DateText | null; to: DateText | null };

const daysOf: Record<Period, Days> = {
  "before September 1906": { from: null, to: "1906-08-31" },
  "September 1906 to 1919": { from: "1906-09-01", to: "1919-12-31" },
  "1920 to 1932": { from: "1920-01-01", to: "1932-12-31" },
  "1933 to 1945": { from: "1933-01-01", to: "1945-12-31" },
  "1946 to 1969": { from: "1946-01-01", to: "1969-12-31" },
  "1970 to 1999": { from: "1970-01-01", to: "1999-12-31" },
  "2000 or later": { from: "2000-01-01", to: null },
  "before 1800": { from: null, to: "1799-12-31" },
  "1800 to 1849": { from: "1800-01-01", to: "1849-12-31" },
  "1850 to 1899": { from: "1850-01-01", to: "1899-12-31" },
  "1900 to 1949": { from: "1900-01-01", to: "1949-12-31" },
  "1950 to 1999": { from: "1950-01-01", to: "1999-12-31" },
};

/** Whether all of a period lies before a day; null where it is not known or the period straddles the day. */
export function liesBefore(period: Period | null, day: DateText): boolean | null {
  if (period === null) return null;
  const { from, to } = daysOf[period];
  if (to !== null && to < day) return true;
  return from !== null && from >= day ? false : null;
}

/** The same day so many years earlier; the last of February stands in for a leap day. */
export function yearsBefore(day: DateText, years: number): DateText {
  const year = String(Number(day.slice(0, 4)) - years).padStart(4, "0");
  const rest = day.slice(4);
  return `${year}${rest === "-02-29" ? "-02-28" : rest}`;
}
