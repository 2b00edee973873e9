/** Which of a borrower's insurances are offered for a loan: those that share days with it and are not on it yet. */
import type { InsuranceSheet } from "#lib/people/queries/facility.ts";
import { addDays, type DateText } from "#lib/platform/dates.ts";

export type Offer = {
  insurance: InsuranceSheet;
  firstDay: DateText;
  /** The last day that is covered. */
  lastDay: DateText;
  /** The first day that is not. */
  until: DateText;
};

/** @param days the days of the loan with those kept around it, half-open */
export function offersFor(
  insurances: readonly InsuranceSheet[],
  days: { startsOn: DateText; endsOn: DateText },
  covers: readonly { policyNumber: string }[],
): Offer[] {
  const known = new Set(covers.map(({ policyNumber }) => policyNumber));
  return insurances.flatMap((insurance): Offer[] => {
    const [, firstDay = days.startsOn] = [insurance.validFrom, days.startsOn].sort();
    const [until = days.endsOn] = [insurance.validUntil, days.endsOn].sort();
    if (!(firstDay < until) || known.has(insurance.policyNumber)) return [];
    return [{ insurance, firstDay, lastDay: addDays(until, -1), until }];
  });
}
