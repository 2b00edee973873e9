/** A body or region cut into sheets, recorded with all its sheets in one go. */
import type { Metadata } from "next";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { seriesWords as words } from "#app/_words/en/catalogue.ts";
import { saveSeries } from "#app/(signed-in)/series/new/actions.ts";
import { SeriesForm } from "#app/(signed-in)/series/new/series-form.tsx";
import { authorise } from "#lib/people/permission.ts";

export const metadata: Metadata = { title: words.newSeries };

export default async function NewSeriesPage() {
  const viewer = await requireViewer("/series/new");
  await orNotFound(async () => authorise(viewer, "recordSeries"));
  return (
    <PlainPage>
      <Masthead title={words.newSeries} />
      <SeriesForm save={saveSeries} />
    </PlainPage>
  );
}
