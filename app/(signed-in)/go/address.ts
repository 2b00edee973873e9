/**
 * Where a typed text leads: a frequent act to its page, a number to its record, an
 * institution to its sheet; everything else is looked for in the catalogue, which
 * says so where the text is that of an act or a loan that this person cannot open.
 */

import type { Sought } from "#app/_words/en/go.ts";
import { actCalled } from "#app/(signed-in)/go/acts.ts";
import { findLoanByNumber } from "#lib/loans/queries/find-loan.ts";
import { maySee } from "#lib/people/permission.ts";
import { getInstitution, listInstitutions } from "#lib/people/queries.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { listSeries } from "#lib/specimens/queries/series.ts";
import { findByNumber } from "#lib/specimens/queries.ts";

/** A part of a name that is shorter names too many. */
const shortestName = 3;

/** The institutions whose sheet this person may open. */
async function institutionsOf(viewer: Viewer): Promise<{ id: string; name: string }[]> {
  const { institutionId } = viewer;
  if (institutionId !== null)
    return maySee(viewer, "facilityFacts", { institutionId })
      ? [await getInstitution(viewer, institutionId)]
      : [];
  return maySee(viewer, "institutions") && maySee(viewer, "facilityFacts")
    ? await listInstitutions(viewer)
    : [];
}

/** Whether a text is written as the number of a loan is. */
const looksLikeLoan = (text: string) => /^l\s*\d{4}-\d+$/i.test(text);

/** What this text is called, where it is an act or a loan that this person cannot open. */
export async function outOfReach(viewer: Viewer, text: string): Promise<Sought | null> {
  const act = actCalled(viewer, text);
  if (act) return act.address === null ? "act" : null;
  return looksLikeLoan(text) && !(await findLoanByNumber(viewer, text)) ? "loan" : null;
}

export async function addressOf(viewer: Viewer, text: string): Promise<string> {
  if (text === "") return "/specimens";
  const inCatalogue = `/specimens?q=${encodeURIComponent(text)}`;
  const act = actCalled(viewer, text);
  if (act) return act.address ?? inCatalogue;
  const loan = await findLoanByNumber(viewer, text);
  if (loan) return `/loans/${loan.id}`;
  const [specimen, ...others] = await findByNumber(viewer, text);
  if (specimen) return others.length === 0 ? `/specimens/${specimen.id}` : inCatalogue;
  const plain = text.toLowerCase();
  const series = (await listSeries(viewer)).find((row) => row.code.toLowerCase() === plain);
  if (series) return `/series/${series.id}`;
  if (plain.length < shortestName) return inCatalogue;
  const institution = (await institutionsOf(viewer)).find(({ name }) => name.toLowerCase().includes(plain));
  return institution ? `/institutions/${institution.id}` : inCatalogue;
}
