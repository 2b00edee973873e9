/** A new venue of an institution; nothing is known about it until somebody says so. */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import { VenueForm } from "#app/(signed-in)/institutions/venue-form.tsx";
import { mayDo } from "#lib/people/permission.ts";
import { getInstitution } from "#lib/people/queries.ts";

export const metadata: Metadata = { title: words.newVenue };

export default async function NewVenuePage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/institutions/${id}/venues/new`);
  if (!mayDo(viewer, "keepVenue", { institutionId: id })) notFound();
  const institution = await orNotFound(() => getInstitution(viewer, id));
  return (
    <PlainPage>
      <Masthead title={words.newVenueAt(institution.name)} />
      <VenueForm
        back={`/institutions/${id}`}
        start={{
          id: null,
          institutionId: institution.id,
          name: "",
          kind: "teaching room",
          address: institution.address,
          countryCode: institution.countryCode,
          subdivisionCode: null,
          town: "",
          floorLoadKgPerM2: null,
          temperatureLowC: null,
          temperatureHighC: null,
          temperatureSwing24hK: null,
          humidityLow: null,
          humidityHigh: null,
          humiditySwing24h: null,
          illuminanceLx: null,
          uvMicrowattPerLumen: null,
          hoursOpenPerDay: null,
          daysOpenPerWeek: null,
          supervisedRoom: null,
          restrictedView: null,
          spillProvision: null,
          fireDetection: null,
          nightGuard: null,
          reportedOn: null,
          passages: [],
          licences: [],
        }}
      />
    </PlainPage>
  );
}
