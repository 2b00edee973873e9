/** A new institution. */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { requireViewer } from "#app/_server/viewer.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import { InstitutionForm } from "#app/(signed-in)/institutions/institution-form.tsx";
import { mayDo } from "#lib/people/permission.ts";

export const metadata: Metadata = { title: words.newInstitution };

export default async function NewInstitutionPage() {
  const viewer = await requireViewer("/institutions/new");
  if (!mayDo(viewer, "keepInstitution")) notFound();
  return (
    <PlainPage>
      <Masthead title={words.newInstitution} />
      <InstitutionForm
        back="/institutions"
        start={{
          id: null,
          name: "",
          kind: "medical school",
          countryCode: "",
          city: "",
          address: "",
          languages: ["en"],
          email: "",
          phone: "",
          standing: "good",
          verifiedOn: null,
          note: "",
        }}
      />
    </PlainPage>
  );
}
