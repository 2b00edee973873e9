/**
 * Keeping for a loan every day that it takes as it is planned now. A stage before
 * or after the days that were booked makes the bookings wider; a specimen that is
 * not back yet keeps its days going. What somebody else has is left to them.
 */
import { type LoanAtHand, linesIn } from "#lib/loans/at-hand.ts";
import type { LineState } from "#lib/loans/schema.ts";
import type { Work } from "#lib/people/command.ts";
import { toDateText } from "#lib/platform/dates.ts";
import { stagesOf } from "#lib/shipments/queries.ts";
import { keptDays } from "#lib/suitability/period.ts";
import { type DaysTaken, setLineDays } from "#lib/whereabouts/commands/set-line-days.ts";

const inTheHouse: readonly LineState[] = ["accepted", "packed"];
const outOfItsPlace: readonly LineState[] = [
  "travelling out",
  "resting at venue",
  "at venue",
  "travelling home",
  "resting at home",
  "missing",
];

/** @returns which of the days somebody else has */
export async function keepDays(work: Work, loan: Pick<LoanAtHand, "id" | "lines">): Promise<DaysTaken[]> {
  const row = await work.transaction.loan.findUniqueOrThrow({
    where: { id: loan.id },
    select: { startsOn: true, endsOn: true, daysBefore: true, daysAfter: true },
  });
  const away = linesIn(loan, ...outOfItsPlace);
  const lines = [...linesIn(loan, ...inTheHouse), ...away];
  const days = keptDays(
    { ...row, startsOn: toDateText(row.startsOn), endsOn: toDateText(row.endsOn) },
    await stagesOf(work.transaction, loan.id),
    away.length > 0 ? work.today : null,
  );
  return await setLineDays(
    work,
    lines.map(({ id }) => id),
    days,
  );
}
