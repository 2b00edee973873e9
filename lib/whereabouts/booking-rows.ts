/**
 * The rows that a booking takes in the calendar: one for each physical thing. A
 * whole takes its parts along, unless a part is asked for by itself on the same
 * days. Rows come in order of the specimens' ids, and no two of them meet.
 */
import { rangesOverlap } from "#lib/platform/dates.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import type { BookingPurpose, BookingStrength, Period } from "#lib/whereabouts/schema.ts";

export type Wanted = {
  specimenId: string;
  loanLineId: string | null;
  period: Period;
  purpose: BookingPurpose;
  strength: BookingStrength;
  expiresAt: Date | null;
};
export type BookingRow = Wanted & { askedFor: Wanted };

/** One row for each physical thing: what is asked for by itself, then the parts that come along. */
export function bookingRows(wanted: readonly Wanted[], tree: Map<string, string[]>): BookingRow[] {
  const rows = new Map<string, BookingRow[]>();
  const add = (row: BookingRow, comesAlong: boolean) => {
    const taken = rows.get(row.specimenId) ?? [];
    const meets = taken.find(({ period }) => rangesOverlap(period, row.period));
    const covers =
      meets && meets.period.startsOn <= row.period.startsOn && meets.period.endsOn >= row.period.endsOn;
    if (meets && !(comesAlong && covers)) throw new Refusal("conflict", "booking.asked-twice");
    if (!meets) rows.set(row.specimenId, [...taken, row]);
  };
  for (const asked of wanted) add({ ...asked, askedFor: asked }, false);
  for (const asked of wanted) {
    for (const id of tree.get(asked.specimenId) ?? []) {
      if (id !== asked.specimenId) add({ ...asked, specimenId: id, askedFor: asked }, true);
    }
  }
  return [...rows.values()].flat().sort((first, second) => (first.specimenId < second.specimenId ? -1 : 1));
}
