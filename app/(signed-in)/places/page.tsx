/** The places of the house as a tree with what stands at each, what is outside, and what has no place yet. */
import type { Metadata } from "next";
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { type Search, sameAddress } from "#app/_parts/page-links.ts";
import { Pager } from "#app/_parts/pager.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { placePageWords as words } from "#app/_words/en/whereabouts.ts";
import { pageKeyOf, pagesOf } from "#app/(signed-in)/places/pages-of.ts";
import { PlaceTable } from "#app/(signed-in)/places/place-tables.tsx";
import { mayDo } from "#lib/people/permission.ts";
import { listPlacesWithCounts, listUnplaced } from "#lib/whereabouts/queries/places.ts";
import { isHomeKind } from "#lib/whereabouts/schema.ts";

export const metadata: Metadata = { title: words.title };

/** A list keeps its distance from the one above it. */
const below = { margin: "1.8rem 0 0.4rem" } as const;

export default async function PlacesPage({ searchParams }: { searchParams: Promise<Search> }) {
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress("/places", search));
  const [places, unplaced] = await orNotFound(() =>
    Promise.all([listPlacesWithCounts(viewer), listUnplaced(viewer, pageKeyOf(search))]),
  );
  const home = places.filter(({ kind }) => isHomeKind(kind));
  const outside = places.filter(({ kind }) => !isHomeKind(kind));
  const newPlace = mayDo(viewer, "keepPlace") && (
    <Link className="act no-print" href="/places/new">
      {words.newPlace}
    </Link>
  );
  return (
    <PlainPage>
      <Masthead title={words.title} standing={home.length > 0 && newPlace} />
      <p>{words.about}</p>
      {unplaced.rows.length > 0 && home.length > 0 && (
        <p>
          <StateMark outcome="attend" />: <a href="#unplaced">{words.someUnplaced}</a>
        </p>
      )}
      {home.length === 0 ? (
        <EmptyState action={newPlace}>{words.none}</EmptyState>
      ) : (
        <PlaceTable caption={words.caption} places={home} />
      )}
      {unplaced.rows.length > 0 && (
        <>
          <h2 id="unplaced" style={below}>
            {words.unplaced}
          </h2>
          <p>{words.unplacedAbout}</p>
          <DataTable
            caption={words.unplacedCaption}
            captionHidden
            rows={unplaced.rows}
            rowKey={({ id }) => id}
            columns={[
              {
                key: "number",
                label: words.number,
                cell: ({ id, accessionNumber }) => (
                  <Link className="mono" href={`/specimens/${id}#whereabouts`}>
                    {accessionNumber}
                  </Link>
                ),
              },
              { key: "title", label: words.specimen, cell: ({ title }) => title },
            ]}
          />
          <Pager {...pagesOf("/places", unplaced, "#unplaced")} />
        </>
      )}
      {outside.length > 0 && (
        <>
          <h2 style={below}>{words.outside}</h2>
          <p>{words.outsideAbout}</p>
          <PlaceTable caption={words.outside} captionHidden places={outside} counts="plain" />
        </>
      )}
    </PlainPage>
  );
}
