/** One's own calendar: the address that calendar programs read, and what is in it. */
import type { Metadata } from "next";
import Link from "next/link";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { requireViewer } from "#app/_server/viewer.ts";
import { calendarWords as words } from "#app/_words/en/calendar.ts";
import { sentence } from "#app/_words/sentences.ts";
import { makeAddress, revokeAddress } from "#app/(signed-in)/calendar/actions.ts";
import { FeedForm } from "#app/(signed-in)/calendar/feed-form.tsx";
import { type DatedEvent, listCalendarEvents } from "#lib/desk/queries/calendar.ts";
import { feedOf } from "#lib/people/queries/calendar-feed.ts";
import { today } from "#lib/platform/clock.ts";

export const metadata: Metadata = { title: words.title };

const mostShown = 60;

function When({ when }: Pick<DatedEvent, "when">) {
  return "day" in when ? (
    <span className="small">
      <DateText date={when.day} short />
    </span>
  ) : (
    <Moment at={when.at} />
  );
}

export default async function CalendarPage() {
  const viewer = await requireViewer("/calendar");
  const feed = await feedOf(viewer);
  const day = today();
  const events = (await listCalendarEvents(viewer)).filter(
    ({ when }) => ("day" in when ? when.day : when.at.slice(0, 10)) >= day,
  );
  return (
    <PlainPage>
      <Masthead title={words.title} />
      <p>{words.about}</p>
      <p>{words.secret}</p>
      <p className="quiet">
        {feed === null ? (
          words.none
        ) : (
          <>
            {words.since} <Moment at={feed.madeAt} long />. {words.toldOnce}
          </>
        )}
      </p>
      <FeedForm action={makeAddress} has={feed !== null} />
      {feed !== null && (
        <details className="no-print">
          <summary>{words.revoke}</summary>
          <ActForm action={revokeAddress} label={words.revoke} button={words.revoke} look="outline">
            <p>{words.revokeFollows}</p>
          </ActForm>
        </details>
      )}
      <DataTable<DatedEvent>
        caption={words.ahead}
        dense
        rows={events.slice(0, mostShown)}
        rowKey={(event) => event.key}
        empty={<EmptyState>{words.noEvents}</EmptyState>}
        columns={[
          { key: "on", label: words.on, cell: (event) => <When when={event.when} /> },
          {
            key: "what",
            label: words.what,
            cell: ({ code, parameters, address }) => <Link href={address}>{sentence(code, parameters)}</Link>,
          },
        ]}
      />
      {events.length > mostShown && <p className="quiet">{words.more(events.length - mostShown)}</p>}
    </PlainPage>
  );
}
