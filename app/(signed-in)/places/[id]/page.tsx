/** One place: where it lies, what lies in it, what stands there, and what happened to it. */
import type { Metadata } from "next";
import Link from "next/link";
import { Fragment } from "react";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Happened } from "#app/_parts/happened.tsx";
import { type Search, sameAddress } from "#app/_parts/page-links.ts";
import { Pager } from "#app/_parts/pager.tsx";
import { MarginNote, Masthead, RecordPage, Section } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { placePageWords as words } from "#app/_words/en/whereabouts.ts";
import { pageKeyOf, pagesOf } from "#app/(signed-in)/places/pages-of.ts";
import { PlaceLink } from "#app/(signed-in)/places/place-name.tsx";
import { PlaceTable } from "#app/(signed-in)/places/place-tables.tsx";
import { happenedTo } from "#lib/desk/queries/happened.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { toDateText } from "#lib/platform/dates.ts";
import { getPlace, getPlaceName, listSpecimensAt } from "#lib/whereabouts/queries/places.ts";
import { isHomeKind } from "#lib/whereabouts/schema.ts";

type Props = { params: Promise<{ id: string }>; searchParams: Promise<Search> };

export async function generateMetadata({ params, searchParams }: Props): Promise<Metadata> {
  const { id } = await params;
  const viewer = await requireViewer(sameAddress(`/places/${id}`, await searchParams));
  const { code, name } = await orNotFound(() => getPlaceName(viewer, id));
  return { title: `${code} ${name}` };
}

export default async function PlacePage({ params, searchParams }: Props) {
  const { id } = await params;
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress(`/places/${id}`, search));
  const place = await orNotFound(() => getPlace(viewer, id));
  const [standing, happened] = await Promise.all([
    orNotFound(() => listSpecimensAt(viewer, id, pageKeyOf(search))),
    maySee(viewer, "audit") ? happenedTo(viewer, [{ table: "place", key: id }]) : null,
  ]);
  const { around, inside, venue } = place;
  const home = isHomeKind(place.kind);
  const mayKeep = home && mayDo(viewer, "keepPlace");
  return (
    <RecordPage
      masthead={
        <Masthead
          number={place.code}
          title={place.name}
          standing={
            <>
              <p>{words.count(place.total)}</p>
              {mayKeep && (
                <p className="no-print">
                  <Link href={`/places/${id}/edit`}>{words.edit}</Link>
                </p>
              )}
            </>
          }
        />
      }
      index={[
        { id: "record", label: words.record },
        ...(home ? [{ id: "inside", label: words.inside, count: inside.length }] : []),
        { id: "standing", label: words.standing, count: place.total },
        ...(happened ? [{ id: "happened", label: words.happened }] : []),
      ]}
    >
      <Section id="record" title={words.record} margin={!home && <MarginNote title={words.keptByProgram} />}>
        <Facts
          facts={[
            [
              words.code,
              <span key="code" className="mono">
                {place.code}
              </span>,
            ],
            [words.kind, words.kinds[place.kind]],
            home && [
              words.parent,
              around.length === 0
                ? words.outermost
                : around.map((larger, position) => (
                    <Fragment key={larger.id}>
                      {position > 0 && ", "}
                      <Link href={`/places/${larger.id}`}>{larger.name}</Link>
                    </Fragment>
                  )),
            ],
            venue && [
              words.venueOf,
              <Link key="venue" href={`/institutions/${venue.institution.id}`}>
                {venue.institution.name}, {venue.name}
              </Link>,
            ],
          ]}
        />
      </Section>
      {home && (
        <Section id="inside" title={words.inside}>
          {inside.length > 0 && (
            <PlaceTable
              caption={words.insideCaption(place.name)}
              captionHidden
              places={inside}
              from={place.depth + 1}
            />
          )}
          {mayKeep && (
            <Link className="act outline no-print" href={`/places/new?in=${id}`}>
              {words.newInside}
            </Link>
          )}
          {inside.length === 0 && !mayKeep && <p className="quiet">{words.nothingInside}</p>}
        </Section>
      )}
      <Section id="standing" title={words.standing}>
        <DataTable
          caption={words.standingCaption(place.name)}
          captionHidden
          rows={standing.rows}
          rowKey={(row) => row.id}
          empty={<EmptyState>{home ? words.nothingStands : words.nothingStandsOutside}</EmptyState>}
          columns={[
            {
              key: "number",
              label: words.number,
              cell: (row) => (
                <Link className="mono" href={`/specimens/${row.id}`}>
                  {row.accessionNumber}
                </Link>
              ),
            },
            { key: "title", label: words.specimen, cell: (row) => row.title },
            ...(inside.length > 0
              ? [
                  {
                    key: "place",
                    label: words.place,
                    cell: (row: (typeof standing.rows)[number]) =>
                      row.place.id === id ? row.place.name : <PlaceLink place={row.place} />,
                  },
                ]
              : []),
            { key: "since", label: words.since, cell: (row) => <DateText date={toDateText(row.since)} /> },
          ]}
        />
        <Pager {...pagesOf(`/places/${id}`, standing, "#standing")} />
      </Section>
      {happened && (
        <Section id="happened" title={words.happened}>
          <Happened entries={happened} />
        </Section>
      )}
    </RecordPage>
  );
}
