/** A new place of the house, in the larger one that the address may name. */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { parameterOf, type Search, sameAddress } from "#app/_parts/page-links.ts";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { placePageWords as words } from "#app/_words/en/whereabouts.ts";
import { PlaceForm } from "#app/(signed-in)/places/place-form.tsx";
import { placeChoice } from "#app/(signed-in)/places/place-name.tsx";
import { mayDo } from "#lib/people/permission.ts";
import { listPlaces } from "#lib/whereabouts/queries/places.ts";
import { isHomeKind, type PlaceKind } from "#lib/whereabouts/schema.ts";

export const metadata: Metadata = { title: words.newPlace };

/** What lies in a place is most often the next smaller kind. */
const kindInside: Partial<Record<PlaceKind, PlaceKind>> = {
  room: "store",
  store: "shelf",
  cabinet: "shelf",
  shelf: "shelf",
  workshop: "shelf",
};

export default async function NewPlacePage({ searchParams }: { searchParams: Promise<Search> }) {
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress("/places/new", search));
  if (!mayDo(viewer, "keepPlace")) notFound();
  const places = (await orNotFound(() => listPlaces(viewer))).filter(({ kind }) => isHomeKind(kind));
  const around = places.find(({ id }) => id === parameterOf(search, "in")) ?? null;
  return (
    <PlainPage>
      <Masthead title={around ? words.newInsideOf(around.name) : words.newPlace} />
      <PlaceForm
        back={around ? `/places/${around.id}` : "/places"}
        around={places.map(placeChoice)}
        start={{
          id: null,
          code: around ? `${around.code}.` : "",
          name: "",
          kind: (around && kindInside[around.kind]) ?? "room",
          parentId: around?.id ?? null,
          venueId: null,
        }}
      />
    </PlainPage>
  );
}
