/**
 * What a borrower's earlier loans came to within three years: how many came home
 * late, or are late now, and how many specimens came home damaged. The day home is
 * the day on which custody came back. For commands and queries that have already
 * authorised.
 */

import { awayStates, homeStates } from "#lib/loans/transitions.ts";
import { findCentre } from "#lib/people/queries.ts";
import type { Database, Transaction } from "#lib/platform/database.ts";
import { addDays, type DateText, toDate, toDateText } from "#lib/platform/dates.ts";
import type { BorrowerRecord } from "#lib/suitability/rules/case.ts";

const RECORD_DAYS = 1_096;

export async function borrowerRecordOf(
  reader: Database | Transaction,
  { borrowerId, loanId }: { borrowerId: string; loanId: string },
  today: DateText,
): Promise<BorrowerRecord> {
  const loans = await reader.loan.findMany({
    where: {
      borrowerId,
      id: { not: loanId },
      endsOn: { gt: toDate(addDays(today, -RECORD_DAYS)) },
      lines: { some: { state: { in: [...homeStates, ...awayStates] } } },
    },
    select: { id: true, endsOn: true, lines: { select: { state: true, verdict: true } } },
  });
  const centre = await findCentre(reader);
  const house = centre === null ? [] : [centre.settings.name, ...centre.formerNames];
  const returns = await reader.custodyEvent.groupBy({
    by: ["loanId"],
    where: { loanId: { in: loans.map(({ id }) => id) }, toParty: { in: house } },
    _max: { handedOverAt: true },
  });
  const homeOn = new Map(returns.map(({ loanId: id, _max }) => [id, _max.handedOverAt]));
  const isAway = (state: string) => (awayStates as readonly string[]).includes(state);
  const due = loans.filter(({ lines, endsOn }) => {
    const out = lines.some(({ state }) => isAway(state));
    return !out || toDateText(endsOn) < today;
  });
  const late = due.filter(({ id, endsOn, lines }) => {
    const home = homeOn.get(id);
    return (
      lines.some(({ state }) => isAway(state)) || (home != null && toDateText(home) > toDateText(endsOn))
    );
  });
  const damaged = due.flatMap(({ lines }) => lines).filter(({ verdict }) => verdict === "damage");
  return { loans: due.length, late: late.length, damaged: damaged.length };
}
