/**
 * The first page of a borrower: the question that starts a loan, what the own
 * people have to do, and where each of their requests stands. What waits for the
 * centre is said to wait for the centre.
 */
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { FormActions, TextField } from "#app/_parts/fields.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { Masthead, NextBox, PlainPage } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { borrowerDeskWords as words } from "#app/_words/en/desk.ts";
import { loanWords } from "#app/_words/en/loan-pages.ts";
import { formatRangeShort } from "#app/_words/format.ts";
import { DueLink } from "#app/(signed-in)/due-table.tsx";
import { LoanStateMark } from "#app/(signed-in)/loans/loan-table.tsx";
import type { DueItem } from "#lib/desk/due.ts";
import { type Turn, turnOn, waitsForBorrower } from "#lib/desk/waits-for.ts";
import type { LoanListRow } from "#lib/loans/queries/list-loans.ts";

function TurnMark({ turn, state }: { turn: Turn; state: LoanListRow["state"] }) {
  if (state === "enquiry") return <Link href="/slip">{words.finishSlip}</Link>;
  if (turn === "borrower") return <StateMark outcome="attend">{words.turns.borrower}</StateMark>;
  return <span className="quiet">{words.turns[turn]}</span>;
}

export function BorrowerDesk({
  due,
  loans,
  slip,
}: {
  due: readonly DueItem[];
  loans: readonly LoanListRow[];
  /** How many specimens are on the slip. */
  slip: number;
}) {
  const own = due.filter(waitsForBorrower);
  return (
    <PlainPage>
      <Masthead
        title={words.question}
        standing={slip > 0 && <Link href="/slip">{words.onSlip(slip)}</Link>}
      />
      {own.length > 0 && (
        <NextBox
          title={words.needsYou}
          things={own.map((item) => ({
            key: item.key,
            outcome: item.outcome,
            text: <DueLink item={item} />,
            action: item.dueOn && (
              <span className="quiet small">
                {words.by} <DateText date={item.dueOn} />
              </span>
            ),
          }))}
        />
      )}
      <search>
        <form action="/specimens" style={{ maxWidth: "42rem" }}>
          <TextField label={words.field} hint={words.hint} name="q" type="search" />
          <FormActions>
            <button type="submit">{words.find}</button>
            <Link href="/specimens">{words.browse}</Link>
            <Link href="/borrow">{words.set}</Link>
          </FormActions>
        </form>
      </search>
      <h2>{words.requests}</h2>
      <DataTable
        caption={words.requests}
        captionHidden
        rows={loans}
        rowKey={(row) => row.id}
        empty={<EmptyState>{words.noRequests}</EmptyState>}
        columns={[
          {
            key: "number",
            label: loanWords.number,
            cell: (row) => (
              <Link className="mono" href={`/loans/${row.id}`}>
                {row.number}
              </Link>
            ),
          },
          {
            key: "title",
            label: loanWords.title,
            cell: (row) => row.title || <span className="quiet">{loanWords.noTitle}</span>,
          },
          {
            key: "days",
            label: loanWords.days,
            cell: (row) => formatRangeShort(row.startsOn, row.endsOn),
          },
          { key: "specimens", label: loanWords.specimens, right: true, cell: (row) => row.specimens },
          { key: "state", label: loanWords.state, cell: (row) => <LoanStateMark row={row} /> },
          {
            key: "turn",
            label: words.turn,
            cell: (row) => <TurnMark turn={turnOn(row.id, due)} state={row.state} />,
          },
        ]}
      />
      <p>
        <Link href="/loans">{words.allLoans}</Link>
      </p>
    </PlainPage>
  );
}
