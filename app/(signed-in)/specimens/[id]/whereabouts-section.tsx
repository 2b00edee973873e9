/** Where it stands, who has it and how it came there; the days that are promised. */
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { Period, Unknown } from "#app/_parts/figures.tsx";
import { Section } from "#app/_parts/record-page.tsx";
import { type Period as Days, Strip } from "#app/_parts/strip.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { formatMoment } from "#app/_words/format.ts";
import type { Whereabouts } from "#lib/whereabouts/queries.ts";

export function WhereaboutsSection({ whereabouts }: { whereabouts: Whereabouts }) {
  const { place, custody, moves } = whereabouts;
  return (
    <Section id="whereabouts" title={words.whereabouts}>
      <Facts
        facts={[
          moves !== null && [
            words.placeNow,
            place ? [...place.within, place.name].join(", ") : words.neverMoved,
          ],
          [words.hasNow, custody ? (custody.holder ?? <Unknown key="holder" />) : words.notForYou],
        ]}
      />
      {custody && custody.chain.length > 0 && (
        <DataTable
          caption={words.custodyChain}
          rows={custody.chain}
          rowKey={(row) => String(row.sequence)}
          columns={[
            { key: "at", label: words.when, cell: (row) => formatMoment(row.handedOverAt) },
            { key: "to", label: words.hasNow, cell: (row) => row.toParty },
            { key: "by", label: words.handedBy, cell: (row) => `${row.releasedBy} → ${row.receivedBy}` },
            { key: "why", label: words.why, cell: (row) => row.reason },
          ]}
        />
      )}
    </Section>
  );
}

export function BookingsSection({
  whereabouts,
  free,
  from,
  until,
  number,
}: {
  whereabouts: Whereabouts;
  free: readonly Days[];
  from: string;
  until: string;
  number: string;
}) {
  const live = whereabouts.bookings?.filter((booking) => !booking.released) ?? [];
  return (
    <Section id="bookings" title={words.bookings}>
      <p>
        {words.free}: <Strip label={number} from={from} until={until} free={free} />
      </p>
      {whereabouts.bookings && (
        <DataTable
          caption={words.bookings}
          captionHidden
          rows={live}
          rowKey={(row) => `${row.startsOn} ${row.endsOn}`}
          empty={<EmptyState>{words.noBookings}</EmptyState>}
          columns={[
            {
              key: "days",
              label: words.days,
              cell: (row) => <Period startsOn={row.startsOn} endsOn={row.endsOn} />,
            },
            { key: "purpose", label: words.why, cell: (row) => row.purpose },
            { key: "strength", label: words.strength, cell: (row) => words.strengths[row.strength] },
            { key: "by", label: words.checkedBy, cell: (row) => row.bookedBy },
          ]}
        />
      )}
    </Section>
  );
}
