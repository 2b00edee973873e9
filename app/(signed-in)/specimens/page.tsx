/** The catalogue: search by number, title or structure, narrowed by what it is and when it is free. */
import type { Metadata } from "next";
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { type Search, sameAddress } from "#app/_parts/page-links.ts";
import { Pager } from "#app/_parts/pager.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { Strip } from "#app/_parts/strip.tsx";
import { orRefused } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { pageAddress, readFields, readFilter, readPage } from "#app/(signed-in)/specimens/search-fields.ts";
import { SlipButton } from "#app/(signed-in)/specimens/slip-button.tsx";
import { SpecimenSearch } from "#app/(signed-in)/specimens/specimen-search.tsx";
import { mayDo } from "#lib/people/permission.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { today } from "#lib/platform/clock.ts";
import { addDays } from "#lib/platform/dates.ts";
import { listSpecimens, type SpecimenList, type SpecimenListRow } from "#lib/specimens/queries.ts";
import { freePeriodsOf } from "#lib/whereabouts/queries.ts";

export const metadata: Metadata = { title: words.specimens };

const nothing: SpecimenList = { rows: [], next: null, previous: null, meant: [] };

export default async function SpecimensPage({ searchParams }: { searchParams: Promise<Search> }) {
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress("/specimens", search));
  const fields = readFields(search);
  const { found, refused } = await orRefused(() =>
    listSpecimens(viewer, readFilter(fields), readPage(fields)),
  );
  const list = found ?? nothing;
  const from = today();
  const until = addDays(from, 365);
  const free = await freePeriodsOf(
    viewer,
    list.rows.map((row) => row.id),
    from,
    until,
  );
  const borrower = isBorrower(viewer);
  const searched = Object.entries(fields).some(
    ([name, value]) => value && !["after", "before"].includes(name),
  );

  return (
    <PlainPage>
      <Masthead
        title={words.specimens}
        standing={
          mayDo(viewer, "recordSpecimen") && (
            <Link className="act no-print" href="/specimens/new">
              {words.newSpecimen}
            </Link>
          )
        }
      />
      <SpecimenSearch fields={fields} />
      {refused && (
        <p role="alert" className="form-refused">
          {refused.join(" ")}
        </p>
      )}
      {list.meant.length > 0 && (
        <p>
          {words.takenToMean}:{" "}
          {list.meant.map((structure, position) => (
            <span key={structure.id}>
              {position > 0 && "; "}
              {structure.english} <i>{structure.latin}</i>
            </span>
          ))}
        </p>
      )}
      <DataTable<SpecimenListRow>
        caption={words.specimens}
        captionHidden
        rowKey={(row) => row.id}
        rows={list.rows}
        empty={
          <EmptyState
            action={
              searched || refused ? (
                <Link href="/specimens">{words.clear}</Link>
              ) : (
                mayDo(viewer, "recordSpecimen") && (
                  <Link className="act" href="/specimens/new">
                    {words.newSpecimen}
                  </Link>
                )
              )
            }
          >
            {refused ? words.notSearched : searched ? words.noneFound : words.noneYet}
          </EmptyState>
        }
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
          {
            key: "title",
            label: words.title,
            cell: (row) => (
              <>
                {row.title}
                {!row.human && (
                  <>
                    {" "}
                    <i className="quiet">{row.scientificName}</i>
                  </>
                )}
                {row.shows.length > 0 && (
                  <span className="quiet small" style={{ display: "block" }}>
                    {words.shows.toLowerCase()}{" "}
                    {row.shows
                      .slice(0, 4)
                      .map((shown) => `${shown.english} (${shown.side}, ${shown.seen})`)
                      .join("; ")}
                    {row.shows.length > 4 && ` +${row.shows.length - 4}`}
                  </span>
                )}
              </>
            ),
          },
          { key: "kind", label: words.kind, cell: (row) => row.kind },
          { key: "preparation", label: words.preparation, cell: (row) => row.preparation },
          { key: "use", label: words.use, cell: (row) => words.useWords[row.use] },
          {
            key: "free",
            label: words.free,
            cell: (row) => (
              <Strip label={row.accessionNumber} from={from} until={until} free={free.get(row.id) ?? []} />
            ),
          },
          ...(borrower
            ? [
                {
                  key: "slip",
                  label: words.addToSlip,
                  cell: (row: SpecimenListRow) => (
                    <SlipButton specimenId={row.id} number={row.accessionNumber} />
                  ),
                },
              ]
            : []),
        ]}
      />
      <Pager
        previous={list.previous && pageAddress(fields, { before: list.previous })}
        next={list.next && pageAddress(fields, { after: list.next })}
      />
    </PlainPage>
  );
}
