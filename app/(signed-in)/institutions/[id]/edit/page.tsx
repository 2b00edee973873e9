/** Changing an institution's record. */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import { InstitutionForm } from "#app/(signed-in)/institutions/institution-form.tsx";
import { mayDo } from "#lib/people/permission.ts";
import { getInstitution } from "#lib/people/queries.ts";

export const metadata: Metadata = { title: words.edit };

export default async function EditInstitutionPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/institutions/${id}/edit`);
  if (!mayDo(viewer, "keepInstitution")) notFound();
  const { venues: _venues, ...institution } = await orNotFound(() => getInstitution(viewer, id));
  return (
    <PlainPage>
      <Masthead title={words.editTitle(institution.name)} />
      <InstitutionForm back={`/institutions/${id}`} start={institution} />
    </PlainPage>
  );
}
