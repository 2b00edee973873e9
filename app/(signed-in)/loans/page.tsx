/** Loans, the newest first: all of them for the house, the own ones for who borrows. */
import type { Metadata } from "next";
import Link from "next/link";
import { EmptyState } from "#app/_parts/data-table.tsx";
import { pageLinks, parameterOf, type Search, sameAddress } from "#app/_parts/page-links.ts";
import { Pager } from "#app/_parts/pager.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { LoanFilterForm } from "#app/(signed-in)/loans/loan-filter.tsx";
import { LoanTable } from "#app/(signed-in)/loans/loan-table.tsx";
import { listLoans, loanPhases } from "#lib/loans/queries/list-loans.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { listInstitutions } from "#lib/people/queries.ts";
import { isBorrower } from "#lib/people/viewer.ts";

export const metadata: Metadata = { title: words.loans };

export default async function LoansPage({ searchParams }: { searchParams: Promise<Search> }) {
  const search = await searchParams;
  const viewer = await requireViewer(sameAddress("/loans", search));
  const borrower = isBorrower(viewer);
  const phase = loanPhases.find((one) => one === parameterOf(search, "phase")) ?? null;
  const borrowerId = parameterOf(search, "borrower") ?? null;
  const filter = {
    phase,
    borrowerId: borrower ? null : borrowerId,
    overdue: parameterOf(search, "overdue") !== undefined,
    text: (parameterOf(search, "q") ?? "").slice(0, 120),
  };
  const list = await orNotFound(() =>
    listLoans(viewer, filter, { after: parameterOf(search, "after") ?? null }),
  );
  const borrowers = maySee(viewer, "institutions")
    ? (await listInstitutions(viewer)).filter((row) => row.kind !== "centre")
    : [];
  const filtered = phase !== null || filter.borrowerId !== null || filter.overdue || filter.text !== "";
  const open = mayDo(viewer, "openLoan") && !borrower && (
    <Link className="act no-print" href="/loans/new">
      {words.openLoan}
    </Link>
  );
  const start = borrower ? (
    <Link className="act" href="/specimens">
      {words.findSpecimens}
    </Link>
  ) : (
    open
  );
  return (
    <PlainPage>
      <Masthead title={borrower ? words.yourLoans : words.loans} standing={open} />
      <LoanFilterForm search={search} borrowers={borrowers} />
      <LoanTable
        rows={list.rows}
        showsBorrower={!borrower}
        empty={
          <EmptyState action={filtered ? <Link href="/loans">{words.clear}</Link> : start}>
            {filtered ? words.noneFound : borrower ? words.noneYours : words.noneYet}
          </EmptyState>
        }
      />
      <Pager {...pageLinks("/loans", search, list.next)} />
    </PlainPage>
  );
}
