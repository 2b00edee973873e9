/**
 * The calendar of one person: what of the loans, permits, insurance and consents
 * they may see falls on a day within the next two years. Consents are told by the
 * specimen's number, to the house alone. When each record last changed is read
 * from the audit.
 */

import { eventsOfLoan, type FeedEvent, type LoanInFeed, type RecordRow } from "#lib/desk/calendar-events.ts";
import { borrowersSteps } from "#lib/desk/due-plan.ts";
import { papersThatEnd } from "#lib/desk/queries/papers-that-end.ts";
import { loanState, statesBeforeRelease } from "#lib/loans/loan-state.ts";
import { planOfLoan } from "#lib/loans/queries/loan-plan.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { outStates } from "#lib/loans/transitions.ts";
import { maySee } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, type DateText, toDateText, toDateTextOrNull } from "#lib/platform/dates.ts";
import { crateState, notBeforeOf } from "#lib/shipments/crate-state.ts";
import type { CrateEventKind } from "#lib/shipments/schema.ts";

const mostLoans = 300;
/** Plans are counted for the loans that leave next; beyond these the day is far. */
const mostPlans = 40;
const daysBack = 60;
const daysAhead = 730;

/** An event with when its record last changed, and how often. */
export type DatedEvent = FeedEvent & { changedAt: string; sequence: number };

async function loansInFeed(viewer: Viewer, day: DateText): Promise<LoanInFeed[]> {
  if (!maySee(viewer, "loanFile", { institutionId: viewer.institutionId })) return [];
  const rows = await database().loan.findMany({
    where: {
      closedAt: null,
      submittedAt: { not: null },
      lines: { some: { state: { notIn: ["noted", "closed", "declined", "withdrawn"] } } },
      ...(isBorrower(viewer) ? { borrowerId: viewer.institutionId ?? "" } : {}),
    },
    include: {
      borrower: { select: { name: true } },
      lines: { select: { state: true, stateSince: true, specimenId: true } },
      stages: true,
      covers: { select: { id: true, insurer: true, endsAt: true } },
      recalls: { select: { id: true, returnBy: true, specimenIds: true } },
      agreements: {
        orderBy: { version: "desc" },
        take: 1,
        include: { signatures: { select: { party: true } } },
      },
      crates: {
        select: {
          id: true,
          code: true,
          events: { orderBy: { sequence: "asc" }, select: { kind: true, notBefore: true } },
        },
      },
    },
    orderBy: { startsOn: "asc" },
    take: mostLoans,
  });
  const loans: LoanInFeed[] = [];
  let plans = 0;
  for (const row of rows) {
    const lines = row.lines.map((line) => ({ ...line, state: line.state as LineState }));
    const state = loanState({
      lines: lines.map((line) => line.state),
      signedByBoth: row.agreements[0]?.signatures.length === 2,
      hasCrates: row.crates.length > 0,
      isEnded: false,
    });
    const isBefore = statesBeforeRelease.includes(state);
    const out = new Set(
      lines.filter((line) => outStates.includes(line.state)).map((line) => line.specimenId),
    );
    const home = lines.filter((line) => line.state === "resting at home");
    plans += isBefore ? 1 : 0;
    loans.push({
      id: row.id,
      number: row.number,
      borrower: row.borrower.name,
      title: row.title,
      opensOn: toDateTextOrNull(row.opensOn),
      endsOn: toDateText(row.endsOn),
      isHome: state === "home, to be checked" || state === "checked in",
      homeSince: home.map((line) => toDateText(line.stateSince)).sort()[0] ?? null,
      stages: row.stages.map(({ id, direction, departsOn, arrivesOn, carrier }) => ({
        id,
        direction,
        carrier,
        departsOn: toDateText(departsOn),
        arrivesOn: toDateText(arrivesOn),
      })),
      covers: row.covers.map(({ id, insurer, endsAt }) => ({ id, insurer, endsAt: endsAt.toISOString() })),
      resting: row.crates.flatMap(({ id, code, events }) => {
        const happened = events.map(({ kind, notBefore }) => ({
          kind: kind as CrateEventKind,
          notBefore: notBefore?.toISOString() ?? null,
        }));
        const notBefore = notBeforeOf(happened);
        const rests = crateState(happened) === "resting closed";
        return rests && notBefore !== null ? [{ id, code, notBefore }] : [];
      }),
      recalls: row.recalls
        .filter(({ specimenIds }) => specimenIds.some((id) => out.has(id)))
        .map(({ id, returnBy }) => ({ id, returnBy: toDateText(returnBy) })),
      steps: isBefore && plans <= mostPlans ? await stepsToDo(viewer, row.id, day) : [],
    });
  }
  return loans;
}

/** Steps of the plan that are not done, as this viewer has part in them. */
async function stepsToDo(viewer: Viewer, loanId: string, day: DateText): Promise<LoanInFeed["steps"]> {
  const { rows } = await planOfLoan(database(), loanId, day);
  return rows
    .filter(({ step, done, stated }) => done === null && !stated && step !== "opening")
    .filter(({ step }) => !isBorrower(viewer) || borrowersSteps.includes(step))
    .map(({ step, lastDay }) => ({ step, lastDay }));
}

/** When each row last changed, and how often. */
async function changesOf(rows: readonly RecordRow[]): Promise<Map<string, { at: Date; times: number }>> {
  if (rows.length === 0) return new Map();
  const found = await database().$queryRaw<{ table: string; key: string; at: Date; times: number }[]>`
    SELECT entry.table_name AS "table", entry.row_key AS key, max(entry.at) AS at, count(*)::int AS times
    FROM unnest(${rows.map(({ table }) => table)}::text[], ${rows.map(({ key }) => key)}::text[]) AS asked (of_table, of_key)
    JOIN audit_entry entry ON entry.table_name = asked.of_table AND entry.row_key = asked.of_key
    GROUP BY 1, 2`;
  return new Map(found.map(({ table, key, at, times }) => [`${table} ${key}`, { at, times }]));
}

const dayOf = ({ when }: FeedEvent): DateText => ("day" in when ? when.day : when.at.slice(0, 10));
/** In the order of their days. */
export async function listCalendarEvents(viewer: Viewer): Promise<DatedEvent[]> {
  const day = today();
  const [from, until] = [addDays(day, -daysBack), addDays(day, daysAhead)];
  const loans = await loansInFeed(viewer, day);
  const events = [...loans.flatMap(eventsOfLoan), ...(await papersThatEnd(viewer, from, until))]
    .filter((event) => dayOf(event) >= from && dayOf(event) <= until)
    .sort((one, other) => dayOf(one).localeCompare(dayOf(other)) || one.key.localeCompare(other.key));
  const rows = new Map(events.flatMap((event) => event.rows).map((row) => [`${row.table} ${row.key}`, row]));
  const changes = await changesOf([...rows.values()]);
  return events.map((event) => {
    const own = event.rows.flatMap(({ table, key }) => changes.get(`${table} ${key}`) ?? []);
    const changedAt = new Date(Math.max(0, ...own.map(({ at }) => at.getTime()))).toISOString();
    const times = own.reduce((sum, one) => sum + one.times, 0);
    return { ...event, changedAt, sequence: Math.max(0, times - 1) };
  });
}
