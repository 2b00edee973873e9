/** Due and at risk: what needs somebody now, and everything that is away. */
import type { Metadata } from "next";
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { requireViewer } from "#app/_server/viewer.ts";
import { deskWords as words } from "#app/_words/en/desk.ts";
import { BorrowerDesk } from "#app/(signed-in)/borrower-desk.tsx";
import { DueTable } from "#app/(signed-in)/due-table.tsx";
import { listAway, listDue } from "#lib/desk/queries/due.ts";
import { findSlip, listLoans } from "#lib/loans/queries/list-loans.ts";
import type { LoanState } from "#lib/loans/schema.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";

export const metadata: Metadata = { title: words.title };

const ended: readonly LoanState[] = ["closed", "declined", "withdrawn"];

async function readBorrowerDesk(viewer: Viewer) {
  const [due, { rows }, slip] = await Promise.all([
    listDue(viewer),
    listLoans(viewer),
    mayDo(viewer, "openLoan") ? findSlip(viewer) : null,
  ]);
  return {
    due,
    loans: rows.filter(({ state }) => !ended.includes(state)),
    slip: slip?.specimens.length ?? 0,
  };
}

export default async function DeskPage() {
  const viewer = await requireViewer("/");
  if (isBorrower(viewer)) return <BorrowerDesk {...(await readBorrowerDesk(viewer))} />;
  const [due, away] = [await listDue(viewer), maySee(viewer, "allLoans") ? await listAway(viewer) : null];
  return (
    <PlainPage>
      <Masthead title={words.title} />
      <DueTable due={due} empty={<EmptyState>{words.none}</EmptyState>} />
      {away && (
        <DataTable
          caption={words.away}
          dense
          rows={away}
          rowKey={(row) => row.loanId}
          empty={<EmptyState>{words.noneAway}</EmptyState>}
          columns={[
            {
              key: "loan",
              label: words.loan,
              cell: (row) => (
                <Link className="mono" href={`/loans/${row.loanId}`}>
                  {row.number}
                </Link>
              ),
            },
            { key: "borrower", label: words.borrower, cell: (row) => row.borrower },
            { key: "venue", label: words.venue, cell: (row) => `${row.venue}, ${row.countryCode}` },
            { key: "count", label: words.specimens, right: true, cell: (row) => row.specimens },
            { key: "ends", label: words.endsOn, cell: (row) => <DateText date={row.endsOn} /> },
          ]}
        />
      )}
    </PlainPage>
  );
}
