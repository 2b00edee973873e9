/** On which days the end of a cover is announced; common practice, no source. */

/** Days before its end on which cover is announced anew, the last time as a bar. */
export const coverWarningDays = [60, 30, 7] as const;

/** The warning that an end so many days ahead has come to; null while it is far. */
export function coverWarningOf(days: number): (typeof coverWarningDays)[number] | null {
  return coverWarningDays.findLast((warning) => days <= warning) ?? null;
}
