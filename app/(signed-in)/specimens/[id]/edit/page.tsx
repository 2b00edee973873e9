/** A revision of the record; what somebody else changed meanwhile is never overwritten. */
import type { Metadata } from "next";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { saveSpecimen } from "#app/(signed-in)/specimens/actions.ts";
import { emptySpecimen } from "#app/(signed-in)/specimens/empty-specimen.ts";
import { SpecimenForm } from "#app/(signed-in)/specimens/specimen-form.tsx";
import { authorise, maySee } from "#lib/people/permission.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";

export const metadata: Metadata = { title: words.edit };

export default async function EditSpecimenPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/specimens/${id}/edit`);
  const { specimen, settings } = await orNotFound(async () => {
    authorise(viewer, "reviseSpecimen");
    return { specimen: await getSpecimen(viewer, id), settings: await centreSettings() };
  });
  const empty = emptySpecimen();
  const start = Object.fromEntries(
    Object.keys(empty).map((name) => [
      name,
      specimen[name as keyof SpecimenInput] ?? empty[name as keyof SpecimenInput],
    ]),
  ) as SpecimenInput;
  return (
    <PlainPage>
      <Masthead number={specimen.accessionNumber} title={specimen.title} latin={specimen.latinTitle} />
      <SpecimenForm
        start={start}
        save={saveSpecimen.bind(null, id, specimen.version)}
        draftKey={`specimen ${id} ${specimen.version}`}
        back={`/specimens/${id}`}
        numberHint={settings.accessionExample}
        seesCost={maySee(viewer, "replacementCost")}
      />
    </PlainPage>
  );
}
