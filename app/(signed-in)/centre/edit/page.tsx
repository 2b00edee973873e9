/** Changing the settings of the centre, or stating them for the first time. */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { centreWords as words } from "#app/_words/en/centre.ts";
import { CentreForm } from "#app/(signed-in)/centre/centre-form.tsx";
import { mayDo } from "#lib/people/permission.ts";
import { getCentre } from "#lib/people/queries.ts";
import type { CentreInput } from "#lib/people/schema.ts";

export const metadata: Metadata = { title: words.editTitle };

const nothing: CentreInput = {
  name: "",
  address: "",
  city: "",
  countryCode: "",
  languages: [],
  email: "",
  phone: "",
  accessionPattern: "",
  accessionExample: "",
  currency: "",
  publicCatalogue: false,
};

export default async function EditCentrePage() {
  const viewer = await requireViewer("/centre/edit");
  if (!mayDo(viewer, "configureCentre")) notFound();
  const centre = await orNotFound(() => getCentre(viewer));
  return (
    <PlainPage>
      <Masthead title={centre ? words.editTitle : words.state} />
      <CentreForm start={{ ...nothing, ...centre?.settings }} />
    </PlainPage>
  );
}
