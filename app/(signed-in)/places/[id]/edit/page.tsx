/** Changing a place of the house. */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { placePageWords as words } from "#app/_words/en/whereabouts.ts";
import { PlaceForm } from "#app/(signed-in)/places/place-form.tsx";
import { placeChoice } from "#app/(signed-in)/places/place-name.tsx";
import { mayDo } from "#lib/people/permission.ts";
import { idsInside } from "#lib/whereabouts/place-tree.ts";
import { listPlaces } from "#lib/whereabouts/queries/places.ts";
import { isHomeKind } from "#lib/whereabouts/schema.ts";

export const metadata: Metadata = { title: words.edit };

export default async function EditPlacePage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const viewer = await requireViewer(`/places/${id}/edit`);
  if (!mayDo(viewer, "keepPlace")) notFound();
  const places = (await orNotFound(() => listPlaces(viewer))).filter(({ kind }) => isHomeKind(kind));
  const place = places.find((each) => each.id === id);
  if (!place) notFound();
  const { code, name, kind, parentId, venueId } = place;
  const inside = idsInside(places, id);
  return (
    <PlainPage>
      <Masthead number={code} title={words.editTitle(name)} />
      <PlaceForm
        back={`/places/${id}`}
        around={places.filter((each) => !inside.has(each.id)).map(placeChoice)}
        start={{ id, code, name, kind, parentId, venueId }}
      />
    </PlainPage>
  );
}
