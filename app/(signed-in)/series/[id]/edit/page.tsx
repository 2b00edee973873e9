/** Putting a series right: the cut, its name and its known levels; its sheets keep their records. */
import type { Metadata } from "next";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { seriesWords as words } from "#app/_words/en/catalogue.ts";
import { saveSeries } from "#app/(signed-in)/series/new/actions.ts";
import { SeriesForm } from "#app/(signed-in)/series/new/series-form.tsx";
import { authorise } from "#lib/people/permission.ts";
import { getSeries } from "#lib/specimens/queries/series.ts";

export const metadata: Metadata = { title: words.edit };

export default async function EditSeriesPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/series/${id}/edit`);
  const series = await orNotFound(async () => {
    authorise(viewer, "recordSeries");
    return await getSeries(viewer, id);
  });
  const { geometry: _geometry, sheets: _sheets, ...facts } = series;
  return (
    <PlainPage>
      <Masthead number={series.code} title={series.title} latin={words.edit} />
      <SeriesForm start={{ ...facts, sheets: null }} save={saveSeries} back={`/series/${id}`} />
    </PlainPage>
  );
}
