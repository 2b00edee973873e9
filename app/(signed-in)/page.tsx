/** Due and at risk: what needs somebody now, and everything that is away. */
import type { Metadata } from "next";
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { requireViewer } from "#app/_server/viewer.ts";
import { deskWords as words } from "#app/_words/en/desk.ts";
import { formatDate, formatMoment } from "#app/_words/format.ts";
import { sentence } from "#app/_words/sentences.ts";
import type { DueItem } from "#lib/desk/due.ts";
import { listAway, listDue } from "#lib/desk/queries/due.ts";
import { maySee } from "#lib/people/permission.ts";
import { isBorrower } from "#lib/people/viewer.ts";

export const metadata: Metadata = { title: words.title };

const addresses = { loan: "/loans", specimen: "/specimens", donor: "/donors" } as const;

function sentenceOf(item: DueItem): string {
  const { date, moment, ...plain } = item.parameters;
  return sentence(item.code, {
    ...plain,
    ...(typeof date === "string" && date ? { date: formatDate(date) } : {}),
    ...(typeof moment === "string" ? { moment: formatMoment(moment) } : {}),
  });
}

export default async function DeskPage() {
  const viewer = await requireViewer("/");
  const [due, away] = [await listDue(viewer), maySee(viewer, "allLoans") ? await listAway(viewer) : null];
  return (
    <PlainPage>
      <Masthead title={words.title} />
      <DataTable<DueItem>
        caption={words.due}
        rows={due}
        rowKey={(item) => item.key}
        empty={
          <EmptyState action={isBorrower(viewer) && <Link href="/specimens">{words.find}</Link>}>
            {isBorrower(viewer) ? words.startLoan : words.none}
          </EmptyState>
        }
        columns={[
          { key: "outcome", label: words.outcome, cell: (item) => <StateMark outcome={item.outcome} /> },
          {
            key: "what",
            label: words.what,
            cell: (item) => (
              <Link href={`${addresses[item.about.kind]}/${item.about.id}`}>{sentenceOf(item)}</Link>
            ),
          },
          { key: "by", label: words.dueOn, cell: (item) => <DateText date={item.dueOn} /> },
        ]}
      />
      {away && (
        <DataTable
          caption={words.away}
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
