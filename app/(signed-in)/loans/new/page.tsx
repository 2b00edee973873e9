/**
 * The registrar opens a loan for a borrower: one venue, then the file. With an
 * institution in the address, its venues alone are offered.
 */
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "#app/_parts/data-table.tsx";
import { parameterOf, type Search, sameAddress } from "#app/_parts/page-links.ts";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { institutionsWords } from "#app/_words/en/institutions.ts";
import { slipWords as words } from "#app/_words/en/slip.ts";
import { OpenLoanForm } from "#app/(signed-in)/loans/new/open-loan-form.tsx";
import { authorise } from "#lib/people/permission.ts";
import { getInstitution, type InstitutionSheet, listVenueNames } from "#lib/people/queries.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { notFound } from "#lib/platform/refusal.ts";

export const metadata: Metadata = { title: words.openTitle };

async function findBorrower(viewer: Viewer, id: string | undefined): Promise<InstitutionSheet | null> {
  if (id === undefined) return null;
  const institution = await getInstitution(viewer, id);
  if (institution.kind === "centre") throw notFound("institution");
  return institution;
}

function NoVenue({ borrower }: { borrower: InstitutionSheet | null }) {
  if (borrower === null)
    return (
      <EmptyState action={<Link href="/institutions">{words.institutions}</Link>}>
        {words.noVenues}
      </EmptyState>
    );
  return (
    <EmptyState
      action={<Link href={`/institutions/${borrower.id}/venues/new`}>{institutionsWords.newVenue}</Link>}
    >
      {institutionsWords.noVenue}
    </EmptyState>
  );
}

export default async function NewLoanPage({ searchParams }: { searchParams: Promise<Search> }) {
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress("/loans/new", search));
  const { borrower, venues } = await orNotFound(async () => {
    authorise(viewer, "openLoan");
    // Who borrows begins with a specimen on the slip.
    if (isBorrower(viewer)) throw notFound("loan");
    return {
      borrower: await findBorrower(viewer, parameterOf(search, "institution")),
      venues: await listVenueNames(viewer),
    };
  });
  const offered = venues.filter(({ institutionId }) => borrower === null || institutionId === borrower.id);
  return (
    <PlainPage>
      <Masthead
        title={words.openTitle}
        standing={borrower && <Link href={`/institutions/${borrower.id}`}>{borrower.name}</Link>}
      />
      {borrower?.standing === "on hold" && (
        <p>
          <StateMark outcome="bar">{institutionsWords.onHold}</StateMark>
        </p>
      )}
      {offered.length === 0 ? (
        <NoVenue borrower={borrower} />
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
