/** The venues that a request may name: those of the borrower. */
import { listVenueNames } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";

export async function requestVenues(
  viewer: Viewer,
  borrowerId: string,
): Promise<{ id: string; name: string }[]> {
  const venues = await listVenueNames(viewer);
  return venues
    .filter((venue) => venue.institutionId === borrowerId)
    .map(({ id, name, countryCode }) => ({ id, name: `${name}, ${countryCode}` }));
}
