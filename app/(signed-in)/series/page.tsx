/** Bodies and regions cut into sheets. */
import type { Metadata } from "next";
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { requireViewer } from "#app/_server/viewer.ts";
import { seriesWords as words } from "#app/_words/en/catalogue.ts";
import { formatNumber } from "#app/_words/format.ts";
import { mayDo } from "#lib/people/permission.ts";
import { listSeries } from "#lib/specimens/queries/series.ts";

export const metadata: Metadata = { title: words.title };

export default async function SeriesListPage() {
  const viewer = await requireViewer("/series");
  const create = mayDo(viewer, "recordSeries") && (
    <Link className="act no-print" href="/series/new">
      {words.newSeries}
    </Link>
  );
  return (
    <PlainPage>
      <Masthead title={words.title} standing={create} />
      <DataTable
        caption={words.title}
        captionHidden
        rows={await listSeries(viewer)}
        rowKey={(row) => row.id}
        empty={<EmptyState action={create}>{words.none}</EmptyState>}
        columns={[
          {
            key: "code",
            label: words.code,
            cell: (row) => (
              <Link className="mono" href={`/series/${row.id}`}>
                {row.code}
              </Link>
            ),
          },
          { key: "title", label: words.sheets, cell: (row) => row.title },
          { key: "plane", label: words.plane, cell: (row) => row.plane },
          { key: "embedding", label: words.embedding, cell: (row) => row.embedding },
          {
            key: "thickness",
            label: words.thickness,
            right: true,
            cell: (row) => `${formatNumber(row.thicknessMm)} mm`,
          },
          {
            key: "recorded",
            label: words.recorded,
            right: true,
            cell: (row) => `${row.recorded} / ${row.sheetCount}`,
          },
          { key: "away", label: words.away, right: true, cell: (row) => row.away },
        ]}
      />
    </PlainPage>
  );
}
