/** The registrar opens a loan for a borrower: one venue, then the file. */
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "#app/_parts/data-table.tsx";
import { parameterOf, type Search, sameAddress } from "#app/_parts/page-links.ts";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { slipWords as words } from "#app/_words/en/slip.ts";
import { OpenLoanForm } from "#app/(signed-in)/loans/new/open-loan-form.tsx";
import { authorise } from "#lib/people/permission.ts";
import { listVenueNames } from "#lib/people/queries.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { notFound } from "#lib/platform/refusal.ts";

export const metadata: Metadata = { title: words.openTitle };

export default async function NewLoanPage({ searchParams }: { searchParams: Promise<Search> }) {
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress("/loans/new", search));
  const venues = await orNotFound(async () => {
    authorise(viewer, "openLoan");
    // Who borrows begins with a specimen on the slip.
    if (isBorrower(viewer)) throw notFound("loan");
    return await listVenueNames(viewer);
  });
  const institution = parameterOf(search, "institution");
  const offered = venues.filter((venue) => institution === undefined || venue.institutionId === institution);
  return (
    <PlainPage>
      <Masthead title={words.openTitle} />
      {offered.length === 0 ? (
        <EmptyState action={<Link href="/institutions">{words.institutions}</Link>}>
          {words.noVenues}
        </EmptyState>
      ) : (
        <OpenLoanForm
          venues={offered.map(({ id, institution: name, name: venue, countryCode }) => ({
            id,
            name: `${name}: ${venue}, ${countryCode}`,
          }))}
        />
      )}
    </PlainPage>
  );
}
