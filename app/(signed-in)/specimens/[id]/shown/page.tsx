/** Editing what a specimen shows. */
import type { Metadata } from "next";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { ShownForm } from "#app/(signed-in)/specimens/[id]/shown/shown-form.tsx";
import { saveShown } from "#app/(signed-in)/specimens/actions.ts";
import { authorise } from "#lib/people/permission.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";

export const metadata: Metadata = { title: words.editShown };

export default async function EditShownPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/specimens/${id}/shown`);
  const specimen = await orNotFound(async () => {
    authorise(viewer, "recordShown");
    return await getSpecimen(viewer, id);
  });
  return (
    <PlainPage>
      <Masthead number={specimen.accessionNumber} title={specimen.title} latin={words.editShown} />
      <ShownForm
        start={{ shown: specimen.shown.map(({ english: _english, latin: _latin, ...row }) => row) }}
        names={Object.fromEntries(specimen.shown.map((row) => [row.structureId, row.english]))}
        save={saveShown.bind(null, id)}
        back={`/specimens/${id}#shows`}
      />
    </PlainPage>
  );
}
