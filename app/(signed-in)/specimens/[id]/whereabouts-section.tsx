/** Where it stands, who has it and how it came there; the days that are promised. */
import Link from "next/link";
import { ActForm } from "#app/_parts/act-form.tsx";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText, Period } from "#app/_parts/figures.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { type Period as Days, Strip } from "#app/_parts/strip.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { bookingWords, moveWords } from "#app/_words/en/whereabouts.ts";
import { formatDate, formatRange } from "#app/_words/format.ts";
import { sentence } from "#app/_words/sentences.ts";
import { PlaceLink, placeChoice } from "#app/(signed-in)/places/place-name.tsx";
import {
  bookAgain,
  bookDays,
  giveBack,
  moveByHand,
} from "#app/(signed-in)/specimens/[id]/whereabouts-actions.ts";
import { BookForm, MoveForm } from "#app/(signed-in)/specimens/[id]/whereabouts-forms.tsx";
import { mayDo } from "#lib/people/permission.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { toDateText } from "#lib/platform/dates.ts";
import { listPlaces } from "#lib/whereabouts/queries/places.ts";
import type { BookingRow, MoveRow, Whereabouts } from "#lib/whereabouts/queries.ts";
import { type HouseBookingInput, isHomeKind } from "#lib/whereabouts/schema.ts";

/** What is folded keeps its distance from the tables around it. */
const folded = { margin: "0.2rem 0 0.9rem" } as const;

/** More moves than these are folded until asked for. */
const movesAtAGlance = 5;

function Moves({ moves, caption }: { moves: readonly MoveRow[]; caption: string }) {
  return (
    <DataTable
      caption={caption}
      rows={moves}
      rowKey={({ sequence }) => sequence}
      columns={[
        { key: "at", label: moveWords.when, cell: (row) => <Moment at={row.movedAt.toISOString()} /> },
        {
          key: "place",
          label: moveWords.place,
          cell: (row) => <PlaceLink place={{ id: row.placeId, code: row.placeCode, name: row.placeName }} />,
        },
        { key: "why", label: moveWords.why, cell: (row) => row.reason },
        { key: "by", label: moveWords.by, cell: (row) => row.movedBy },
      ]}
    />
  );
}

async function MoveByHand({ viewer, whereabouts }: { viewer: Viewer; whereabouts: Whereabouts }) {
  const places = (await listPlaces(viewer)).filter(
    ({ id, kind }) => isHomeKind(kind) && id !== whereabouts.place?.id,
  );
  const label = whereabouts.place ? moveWords.move : moveWords.placeFirst;
  return (
    <details className="no-print" style={folded}>
      <summary>{label}</summary>
      {places.length === 0 ? (
        <EmptyState
          action={mayDo(viewer, "keepPlace") && <Link href="/places/new">{moveWords.makePlace}</Link>}
        >
          {moveWords.noPlaces}
        </EmptyState>
      ) : (
        <MoveForm
          action={moveByHand.bind(null, whereabouts.specimenId)}
          places={places.map(placeChoice)}
          label={label}
        />
      )}
    </details>
  );
}

/** A hand-over of which the day alone is known stands at its midnight. */
function HandedOver({ at }: { at: Date }) {
  const day = toDateText(at);
  return at.toISOString().endsWith("T00:00:00.000Z") ? (
    <DateText date={day} />
  ) : (
    <Moment at={at.toISOString()} />
  );
}

export function WhereaboutsSection({ viewer, whereabouts }: { viewer: Viewer; whereabouts: Whereabouts }) {
  const { place, custody, inTheHouse, moves } = whereabouts;
  const mayMove = moves !== null && mayDo(viewer, "moveSpecimen");
  return (
    <Section
      id="whereabouts"
      title={words.whereabouts}
      margin={
        mayMove &&
        inTheHouse === false && (
          <MarginNote title={sentence("move.not-in-the-house", { holder: custody?.holder ?? "" })} />
        )
      }
    >
      <Facts
        facts={[
          moves !== null && [
            words.placeNow,
            place ? <PlaceLink key="place" place={place} within={place.within} /> : words.neverMoved,
          ],
          [words.hasNow, custody ? (custody.holder ?? moveWords.nobodyYet) : words.notForYou],
        ]}
      />
      {mayMove && inTheHouse !== false && <MoveByHand viewer={viewer} whereabouts={whereabouts} />}
      {moves && moves.length > 0 && (
        <Moves moves={moves.slice(0, movesAtAGlance)} caption={moveWords.moves} />
      )}
      {moves && moves.length > movesAtAGlance && (
        <details>
          <summary>{moveWords.earlierMoves(moves.length - movesAtAGlance)}</summary>
          <Moves
            moves={moves.slice(movesAtAGlance)}
            caption={moveWords.earlierMoves(moves.length - movesAtAGlance)}
          />
        </details>
      )}
      {custody && custody.chain.length > 0 && (
        <DataTable
          caption={words.custodyChain}
          rows={[...custody.chain].reverse()}
          rowKey={(row) => String(row.sequence)}
          columns={[
            { key: "at", label: words.when, cell: (row) => <HandedOver at={row.handedOverAt} /> },
            { key: "to", label: words.hasNow, cell: (row) => row.toParty },
            {
              key: "by",
              label: words.handedBy,
              cell: (row) => [row.releasedBy, row.receivedBy].filter((name) => name !== "").join(" → "),
            },
            { key: "why", label: words.why, cell: (row) => row.reason },
          ]}
        />
      )}
    </Section>
  );
}

const daysOf = ({ startsOn, endsOn }: Days) => formatRange(startsOn, endsOn);

function Purpose({ booking }: { booking: BookingRow }) {
  return (
    <>
      {bookingWords.purposes[booking.purpose]}{" "}
      {booking.loan && (
        <Link className="mono" href={`/loans/${booking.loan.id}`}>
          {booking.loan.number}
        </Link>
      )}
    </>
  );
}

/** How a booking that no longer counts came to its end. */
function endOf({ released, releasedAt, expiresAt }: BookingRow): string {
  if (releasedAt) return bookingWords.givenBack(formatDate(toDateText(releasedAt)));
  return released && expiresAt ? bookingWords.ranOut(formatDate(toDateText(expiresAt))) : bookingWords.over;
}

function EarlierBookings({
  specimenId,
  bookings,
  today,
  mayBook,
}: {
  specimenId: string;
  bookings: readonly BookingRow[];
  today: string;
  mayBook: boolean;
}) {
  const comesBack = (row: BookingRow) =>
    mayBook && row.loan === null && row.releasedAt !== null && row.endsOn > today;
  return (
    <details>
      <summary>{bookingWords.earlier(bookings.length)}</summary>
      <DataTable
        caption={bookingWords.earlierCaption}
        captionHidden
        rows={bookings}
        rowKey={(row) => row.bookingId}
        columns={[
          {
            key: "days",
            label: bookingWords.days,
            cell: (row) => <Period startsOn={row.startsOn} endsOn={row.endsOn} />,
          },
          {
            key: "purpose",
            label: bookingWords.purpose,
            cell: (row) => <Purpose booking={row} />,
          },
          { key: "standing", label: bookingWords.standing, cell: endOf },
          { key: "by", label: bookingWords.by, cell: (row) => row.bookedBy },
          ...(bookings.some(comesBack)
            ? [
                {
                  key: "again",
                  label: bookingWords.next,
                  cell: (row: BookingRow) =>
                    comesBack(row) && (
                      <ActForm
                        action={bookAgain.bind(null, specimenId, {
                          purpose: row.purpose as HouseBookingInput["purpose"],
                          startsOn: row.startsOn,
                          endsOn: row.endsOn,
                        })}
                        label={bookingWords.againOf(daysOf(row))}
                        button={bookingWords.again}
                        look="plain"
                      />
                    ),
                },
              ]
            : []),
        ]}
      />
    </details>
  );
}

export function BookingsSection({
  viewer,
  whereabouts,
  free,
  from,
  until,
  number,
}: {
  viewer: Viewer;
  whereabouts: Whereabouts;
  free: readonly Days[];
  from: string;
  until: string;
  number: string;
}) {
  const { specimenId, bookings } = whereabouts;
  const counts = ({ released, endsOn }: BookingRow) => !released && endsOn > from;
  const live = (bookings ?? []).filter(counts).reverse();
  const earlier = (bookings ?? []).filter((booking) => !counts(booking));
  const [mayBook, mayRelease] = [mayDo(viewer, "bookSpecimen"), mayDo(viewer, "releaseBooking")];
  return (
    <Section id="bookings" title={words.bookings}>
      <p>
        {words.free}: <Strip label={number} from={from} until={until} free={free} />
      </p>
      {bookings && (
        <DataTable
          caption={words.bookings}
          captionHidden
          rows={live}
          rowKey={(row) => row.bookingId}
          empty={<EmptyState>{words.noBookings}</EmptyState>}
          columns={[
            {
              key: "days",
              label: bookingWords.days,
              cell: (row) => <Period startsOn={row.startsOn} endsOn={row.endsOn} />,
            },
            {
              key: "purpose",
              label: bookingWords.purpose,
              cell: (row) => <Purpose booking={row} />,
            },
            {
              key: "strength",
              label: bookingWords.strength,
              cell: (row) => words.strengths[row.strength],
            },
            { key: "by", label: bookingWords.by, cell: (row) => row.bookedBy },
            ...(mayRelease
              ? [
                  {
                    key: "next",
                    label: bookingWords.next,
                    cell: (row: BookingRow) =>
                      row.loan ? (
                        <span className="quiet">{bookingWords.withLoan}</span>
                      ) : (
                        <ActForm
                          action={giveBack.bind(null, specimenId, row.bookingId)}
                          label={bookingWords.releaseOf(daysOf(row))}
                          button={bookingWords.release}
                          look="plain"
                        />
                      ),
                  },
                ]
              : []),
          ]}
        />
      )}
      {bookings && mayBook && (
        <details className="no-print" style={folded}>
          <summary>{bookingWords.book}</summary>
          <BookForm action={bookDays.bind(null, specimenId)} today={from} />
        </details>
      )}
      {earlier.length > 0 && (
        <EarlierBookings specimenId={specimenId} bookings={earlier} today={from} mayBook={mayBook} />
      )}
    </Section>
  );
}
