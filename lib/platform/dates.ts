/**
 * Calendar dates of the trade. Outside the database a date is the text
 * "YYYY-MM-DD", a local date of the venue; in the database it is a `date`, which
 * the client hands over as midnight in UTC. Ranges are half-open: the last day
 * is the first day that is free again.
 */
import { z } from "zod";

/** A calendar date that exists, in a year that the trade can mean. */
export const DateText = z.iso
  .date()
  .refine((text) => text >= "1500-01-01" && text < "2500-01-01", "date.year");
export type DateText = z.infer<typeof DateText>;

const dayMs = 86_400_000;

/** The database's form of a date. */
export function toDate(text: DateText): Date {
  return new Date(`${text}T00:00:00.000Z`);
}

/** The trade's form of a date from the database. */
export function toDateText(date: Date): DateText {
  return date.toISOString().slice(0, 10);
}

export function toDateTextOrNull(date: Date | null): DateText | null {
  return date === null ? null : toDateText(date);
}

export function toDateOrNull(text: DateText | null | undefined): Date | null {
  return text ? toDate(text) : null;
}

/** The clocks that are furthest ahead: UTC+14, on the Line Islands. @source time zone database, Pacific/Kiritimati */
const furthestAheadMs = 14 * 3_600_000;

/** Whether a day has begun nowhere yet. A day is a local one: in some place it may be tomorrow already. */
export function isToCome(text: DateText, now: Date): boolean {
  return text > toDateText(new Date(now.getTime() + furthestAheadMs));
}

export function addDays(text: DateText, days: number): DateText {
  return toDateText(new Date(toDate(text).getTime() + days * dayMs));
}

/** Days from the first date to the second; negative when the second is earlier. */
export function daysBetween(from: DateText, to: DateText): number {
  return Math.round((toDate(to).getTime() - toDate(from).getTime()) / dayMs) + 0;
}

/** Whether two half-open ranges share a day. */
export function rangesOverlap(
  first: { startsOn: DateText; endsOn: DateText },
  second: { startsOn: DateText; endsOn: DateText },
): boolean {
  return first.startsOn < second.endsOn && second.startsOn < first.endsOn;
}
