/** Changing what is known of a venue. */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import { VenueForm } from "#app/(signed-in)/institutions/venue-form.tsx";
import { mayDo } from "#lib/people/permission.ts";
import { getVenue } from "#lib/people/queries.ts";

export const metadata: Metadata = { title: words.editVenue };

export default async function EditVenuePage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/venues/${id}/edit`);
  const venue = await orNotFound(() => getVenue(viewer, id));
  if (!mayDo(viewer, "keepVenue", { institutionId: venue.institutionId })) notFound();
  return (
    <PlainPage>
      <Masthead title={words.editVenueTitle(venue.name)} />
      <VenueForm back={`/venues/${venue.id}`} start={venue} reported={Boolean(venue.reportServesUntil)} />
    </PlainPage>
  );
}
