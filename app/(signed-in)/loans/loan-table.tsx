/** Loans as rows: who borrows what from when to when, and where it stands. */
import Link from "next/link";
import type { ReactNode } from "react";
import { DataTable } from "#app/_parts/data-table.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { formatRangeShort } from "#app/_words/format.ts";
import type { LoanListRow } from "#lib/loans/queries/list-loans.ts";

/** What is late or lost stands out; everything else is a plain word. */
export function LoanStateMark({ row }: { row: Pick<LoanListRow, "state" | "missing" | "isOverdue"> }) {
  const { state, missing, isOverdue } = row;
  const more = [missing > 0 && `${missing} ${words.lineStates.missing}`, isOverdue && words.overdue]
    .filter(Boolean)
    .join(", ");
  const tone = missing > 0 ? "bar" : isOverdue ? "attend" : "neutral";
  return <StateMark outcome={tone}>{[words.states[state], more].filter(Boolean).join("; ")}</StateMark>;
}

export function LoanTable({
  caption = words.loans,
  rows,
  showsBorrower,
  empty,
}: {
  caption?: string;
  rows: readonly LoanListRow[];
  showsBorrower: boolean;
  empty: ReactNode;
}) {
  return (
    <DataTable
      caption={caption}
      captionHidden
      dense
      rows={rows}
      rowKey={(row) => row.id}
      empty={empty}
      columns={[
        {
          key: "number",
          label: words.number,
          cell: (row) => (
            <Link className="mono" href={`/loans/${row.id}`}>
              {row.number}
            </Link>
          ),
        },
        {
          key: "title",
          label: words.title,
          cell: (row) => row.title || <span className="quiet">{words.noTitle}</span>,
        },
        ...(showsBorrower
          ? [{ key: "borrower", label: words.borrower, cell: (row: LoanListRow) => row.borrower }]
          : []),
        { key: "venue", label: words.venue, cell: (row) => `${row.venue}, ${row.countryCode}` },
        {
          key: "days",
          label: words.days,
          cell: (row) => (
            <span style={{ whiteSpace: "nowrap" }}>{formatRangeShort(row.startsOn, row.endsOn)}</span>
          ),
        },
        { key: "specimens", label: words.specimens, right: true, cell: (row) => row.specimens },
        { key: "state", label: words.state, cell: (row) => <LoanStateMark row={row} /> },
      ]}
    />
  );
}
