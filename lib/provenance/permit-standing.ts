/**
 * What of a permit counts on a day. A permit that was taken back counts no longer
 * from that day on. One that will be taken back on a later day still counts, and
 * its last day is the day before, or the one that it names itself where that is
 * earlier.
 */
import { addDays, type DateText } from "#lib/platform/dates.ts";
import type { PermitInput, PermitRecord } from "#lib/provenance/schema.ts";

/** The last day on which a permit counts; null where no end is stated. */
export function lastDayOf(permit: Pick<PermitRecord, "validUntil" | "withdrawnOn">): DateText | null {
  const { validUntil, withdrawnOn } = permit;
  if (withdrawnOn === null) return validUntil;
  const dayBefore = addDays(withdrawnOn, -1);
  return validUntil !== null && validUntil < dayBefore ? validUntil : dayBefore;
}

/** The permit as rules may count on it; null once it was taken back. */
export function permitOn(permit: PermitRecord, day: DateText): PermitInput | null {
  const { id, withdrawnOn, withdrawnBecause, ...stated } = permit;
  if (withdrawnOn !== null && withdrawnOn <= day) return null;
  return { ...stated, validUntil: lastDayOf(permit) };
}
