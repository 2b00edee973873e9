/** The loans of one institution, the newest first, and the way to the next one. */
import Link from "next/link";
import { EmptyState } from "#app/_parts/data-table.tsx";
import { Section } from "#app/_parts/record-page.tsx";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import { LoanTable } from "#app/(signed-in)/loans/loan-table.tsx";
import type { LoanList } from "#lib/loans/queries/list-loans.ts";
import { mayDo } from "#lib/people/permission.ts";
import type { InstitutionSheet } from "#lib/people/queries.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";

/** Where the next loan begins: the house opens it for a venue, who borrows begins with a specimen. */
function NextLoan({ viewer, institution }: { viewer: Viewer; institution: InstitutionSheet }) {
  if (!mayDo(viewer, "openLoan", { institutionId: institution.id })) return null;
  if (isBorrower(viewer))
    return (
      <Link className="act outline no-print" href="/specimens">
        {words.findSpecimens}
      </Link>
    );
  if (institution.standing === "on hold") return <p className="quiet">{words.onHold}</p>;
  if (institution.venues.length === 0) return <p className="quiet">{words.needsVenue}</p>;
  return (
    <Link className="act outline no-print" href={`/loans/new?institution=${institution.id}`}>
      {words.openLoan}
    </Link>
  );
}

export function LoansSection({
  viewer,
  institution,
  loans,
}: {
  viewer: Viewer;
  institution: InstitutionSheet;
  loans: LoanList;
}) {
  const borrower = isBorrower(viewer);
  return (
    <Section id="loans" title={words.loans}>
      <LoanTable
        caption={words.loansCaption(institution.name)}
        rows={loans.rows}
        showsBorrower={false}
        empty={<EmptyState>{borrower ? words.noLoanYours : words.noLoan}</EmptyState>}
      />
      {loans.next !== null && (
        <p>
          <Link href={borrower ? "/loans" : `/loans?borrower=${institution.id}`}>{words.allLoans}</Link>
        </p>
      )}
      <NextLoan viewer={viewer} institution={institution} />
    </Section>
  );
}
