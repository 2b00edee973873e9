/** Recording one form of a donor, as it stands on paper. */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { donorsWords as words } from "#app/_words/en/donors.ts";
import { ConsentForm } from "#app/(signed-in)/donors/[code]/consent/new/consent-form.tsx";
import { mayDo } from "#lib/people/permission.ts";
import { getDonor } from "#lib/provenance/queries.ts";

export const metadata: Metadata = { title: words.recordForm };

export default async function NewConsentPage({ params }: { params: Promise<{ code: string }> }) {
  const { code } = await params;
  const viewer = await requireViewer(`/donors/${code}/consent/new`);
  if (!mayDo(viewer, "recordConsent")) notFound();
  const donor = await orNotFound(() => getDonor(viewer, code));
  return (
    <PlainPage>
      <Masthead number={donor.code} title={words.recordForm} />
      <p>{words.formAbout}</p>
      <ConsentForm code={donor.code} />
    </PlainPage>
  );
}
