/**
 * What of the loans stands in somebody's calendar: when crates leave, arrive, rest
 * and come home, the opening, the return, the end of cover, of permits, of
 * insurance, of consents, and the steps of the plan that are still to do. Codes and
 * parameters; sentences are made at the edge. A key stays the same for as long as
 * it is the same event. Nothing here names a donor.
 */
import { addDays, type DateText } from "#lib/platform/dates.ts";

/** A row of the record that an event is made of. */
export type RecordRow = { table: string; key: string };

export type FeedEvent = {
  key: string;
  code: string;
  parameters: Record<string, string | number>;
  when: { day: DateText } | { at: string };
  /** Where in the program it is read. */
  address: string;
  /** A change of any of these changes the event. */
  rows: readonly RecordRow[];
};

export type LoanInFeed = {
  id: string;
  number: string;
  borrower: string;
  title: string;
  opensOn: DateText | null;
  endsOn: DateText;
  isHome: boolean;
  homeSince: DateText | null;
  stages: readonly {
    id: string;
    direction: string;
    departsOn: DateText;
    arrivesOn: DateText;
    carrier: string;
  }[];
  covers: readonly { id: string; insurer: string; endsAt: string }[];
  resting: readonly { id: string; code: string; notBefore: string }[];
  recalls: readonly { id: string; returnBy: DateText }[];
  /** Steps of the plan that are not done. */
  steps: readonly { step: string; lastDay: DateText }[];
};

/** Checks at home are made within this many days; common practice, no source. */
export const checkInDays = 14;

export function eventsOfLoan(loan: LoanInFeed): FeedEvent[] {
  const { id, number, borrower, title } = loan;
  const own: RecordRow = { table: "loan", key: id };
  const event = (
    code: string,
    when: FeedEvent["when"],
    parameters: FeedEvent["parameters"] = {},
    rows: readonly RecordRow[] = [],
    of = "",
  ): FeedEvent => ({
    key: `${id} ${code}${of === "" ? "" : ` ${of}`}`,
    code,
    parameters: { loan: number, borrower, title, ...parameters },
    when,
    address: `/loans/${id}`,
    rows: rows.length === 0 ? [own] : rows,
  });
  const events = loan.stages.flatMap(({ id: stageId, direction, departsOn, arrivesOn, carrier }) => {
    const rows = [{ table: "stage", key: stageId }];
    return [
      event(`calendar.departs-${direction}`, { day: departsOn }, { carrier }, rows),
      event(`calendar.arrives-${direction}`, { day: arrivesOn }, { carrier }, rows),
    ];
  });
  if (loan.opensOn !== null) events.push(event("calendar.opening", { day: loan.opensOn }));
  if (!loan.isHome) events.push(event("calendar.return-by", { day: loan.endsOn }));
  for (const cover of loan.covers)
    events.push(
      event(
        "calendar.cover-ends",
        { at: cover.endsAt },
        { insurer: cover.insurer },
        [{ table: "cover", key: cover.id }],
        cover.id,
      ),
    );
  for (const crate of loan.resting)
    events.push(
      event(
        "calendar.may-open",
        { at: crate.notBefore },
        { crate: crate.code },
        [{ table: "crate", key: crate.id }],
        crate.id,
      ),
    );
  for (const recall of loan.recalls)
    events.push(
      event(
        "calendar.recalled",
        { day: recall.returnBy },
        {},
        [{ table: "recall", key: recall.id }],
        recall.id,
      ),
    );
  if (loan.homeSince !== null)
    events.push(event("calendar.check-in", { day: addDays(loan.homeSince, checkInDays) }));
  for (const { step, lastDay } of loan.steps)
    events.push(
      event(
        "calendar.plan-step",
        { day: lastDay },
        { step },
        [own, { table: "plan_step", key: `${id}/${step}` }],
        step,
      ),
    );
  return events;
}
