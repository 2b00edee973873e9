/** The venues that a request may name: those of the borrower. With several, one is chosen and never taken for granted. */
import type { RequestDraft } from "#lib/loans/inputs.ts";
import { listVenueNames } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";

type NamedVenue = { id: string; name: string };

export async function requestVenues(viewer: Viewer, borrowerId: string): Promise<NamedVenue[]> {
  const venues = await listVenueNames(viewer);
  return venues
    .filter((venue) => venue.institutionId === borrowerId)
    .map(({ id, name, countryCode }) => ({ id, name: `${name}, ${countryCode}` }));
}

/** A slip without a purpose may stand at the first venue only because it has to stand somewhere. */
export function isVenueChosen(
  { purpose, venueId }: Pick<RequestDraft, "purpose" | "venueId">,
  venues: readonly NamedVenue[],
): boolean {
  return venues.length < 2 || purpose !== "" || venueId !== venues[0]?.id;
}

/** The request as its form begins: of several venues none is chosen beforehand. */
export function startOfRequest(request: RequestDraft, venues: readonly NamedVenue[]): RequestDraft {
  return isVenueChosen(request, venues) ? request : { ...request, venueId: "" };
}
