/** A new record. */
import type { Metadata } from "next";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { saveNewSpecimen } from "#app/(signed-in)/specimens/actions.ts";
import { emptySpecimen } from "#app/(signed-in)/specimens/empty-specimen.ts";
import { SpecimenForm } from "#app/(signed-in)/specimens/specimen-form.tsx";
import { authorise } from "#lib/people/permission.ts";
import { centreSettings } from "#lib/people/queries.ts";

export const metadata: Metadata = { title: words.newSpecimen };

export default async function NewSpecimenPage() {
  const viewer = await requireViewer("/specimens/new");
  const settings = await orNotFound(async () => {
    authorise(viewer, "recordSpecimen");
    return await centreSettings();
  });
  return (
    <PlainPage>
      <Masthead title={words.newSpecimen} />
      <SpecimenForm
        start={emptySpecimen()}
        save={saveNewSpecimen}
        draftKey="specimen new"
        back="/specimens"
        numberHint={settings.accessionExample}
      />
    </PlainPage>
  );
}
