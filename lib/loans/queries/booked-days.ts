/** The days that are kept for a loan's specimens, as the calendar holds them. For whoever has authorised. */

import { now } from "#lib/platform/clock.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";
import { toDateText } from "#lib/platform/dates.ts";
import type { Days } from "#lib/suitability/period.ts";

/** By specimen; of a whole with its parts, the days on which all of them are kept. Nothing where nothing is kept. */
export async function bookedDaysOf(
  reader: Database | Transaction,
  loanId: string,
): Promise<Map<string, Days>> {
  const rows = await reader.booking.findMany({
    where: { line: { loanId }, releasedAt: null },
    select: { startsOn: true, endsOn: true, line: { select: { specimenId: true } } },
  });
  const booked = new Map<string, Days>();
  for (const { line, ...days } of rows) {
    if (line === null) continue;
    const [startsOn, endsOn] = [toDateText(days.startsOn), toDateText(days.endsOn)];
    const known = booked.get(line.specimenId);
    booked.set(line.specimenId, {
      startsOn: known && known.startsOn > startsOn ? known.startsOn : startsOn,
      endsOn: known && known.endsOn < endsOn ? known.endsOn : endsOn,
    });
  }
  return booked;
}

/** The moment at which the first of a loan's holds runs out; null where none runs. */
export async function heldUntilOf(reader: Database | Transaction, loanId: string): Promise<string | null> {
  const first = await reader.booking.findFirst({
    where: { line: { loanId }, releasedAt: null, strength: "hold", expiresAt: { gt: now() } },
    select: { expiresAt: true },
    orderBy: { expiresAt: "asc" },
  });
  return first?.expiresAt?.toISOString() ?? null;
}
