/**
 * Light that a specimen has taken on earlier loans within a year, from what the
 * venues stated: illuminance times hours times open days. Where a venue has not
 * stated a figure the sum is not known, never zero.
 */
import { doseLxHours } from "#lib/environment/light-dose.ts";
import { addDays, type DateText, daysBetween } from "#lib/platform/dates.ts";

export type PastLoan = {
  startsOn: DateText;
  endsOn: DateText;
  illuminanceLx: number | null;
  hoursOpenPerDay: number | null;
  daysOpenPerWeek: number | null;
};

/** Lux hours taken in the 365 days before today; null where a figure is not known. */
export function spentLxHours(loans: readonly PastLoan[], today: DateText): number | null {
  const yearAgo = addDays(today, -365);
  let spent = 0;
  for (const { startsOn, endsOn, illuminanceLx, hoursOpenPerDay, daysOpenPerWeek } of loans) {
    const from = [startsOn, yearAgo].sort()[1] ?? startsOn;
    const to = [endsOn, today].sort()[0] ?? endsOn;
    if (!(from < to)) continue;
    if (illuminanceLx === null || hoursOpenPerDay === null || daysOpenPerWeek === null) return null;
    const hours = ((daysBetween(from, to) * daysOpenPerWeek) / 7) * hoursOpenPerDay;
    spent += doseLxHours([{ illuminanceLx, hours }]);
  }
  return Math.round(spent);
}
