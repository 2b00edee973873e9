/** Reads what is kept of a borrower, for the form of a request. */
import type { KeptOfBorrower } from "#app/(signed-in)/slip/kept-facts.tsx";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { keptFactsOf } from "#lib/people/queries/kept-facts.ts";
import type { Viewer } from "#lib/people/viewer.ts";

export async function keptOfBorrower(viewer: Viewer, institutionId: string): Promise<KeptOfBorrower> {
  const subject = { institutionId };
  const mayCorrect = mayDo(viewer, "keepVenue", subject) && maySee(viewer, "facilityFacts", subject);
  return {
    venues: await keptFactsOf(viewer, institutionId),
    correct: mayCorrect ? { institutionId } : null,
  };
}
