/** The hand-overs of the loan's specimens; alike ones of one moment are one row. */
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { Numbers } from "#app/_parts/numbers.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import type { LoanHandover } from "#lib/loans/queries/loan-handovers.ts";

type Row = Omit<LoanHandover, "id" | "specimenId" | "accessionNumber"> & { key: string; numbers: string[] };

function rowsOf(handovers: readonly LoanHandover[]): Row[] {
  const rows = new Map<string, Row>();
  for (const { id: _id, specimenId: _specimen, accessionNumber, ...handover } of handovers) {
    const key = Object.values(handover).join("\n");
    const row = rows.get(key) ?? { ...handover, key, numbers: [] };
    row.numbers.push(accessionNumber);
    rows.set(key, row);
  }
  return [...rows.values()];
}

export function CustodySection({ handovers }: { handovers: readonly LoanHandover[] }) {
  return (
    <Section
      id="custody"
      title={words.sections.custody}
      margin={
        handovers.length > 0 && <MarginNote title={words.sections.custody}>{words.custodyAbout}</MarginNote>
      }
    >
      <DataTable
        caption={words.tables.custody}
        captionHidden
        rows={rowsOf(handovers)}
        rowKey={(row) => row.key}
        empty={<EmptyState>{words.noCustody}</EmptyState>}
        columns={[
          { key: "at", label: words.when, cell: (row) => <Moment at={row.handedOverAt} /> },
          { key: "to", label: words.to, cell: (row) => row.toParty },
          {
            key: "hands",
            label: words.hands,
            cell: (row) => `${row.releasedBy || words.notKnown}; ${row.receivedBy || words.notKnown}`,
          },
          {
            key: "what",
            label: words.specimens,
            cell: (row) => <Numbers numbers={row.numbers} most={4} />,
          },
          { key: "reason", label: words.reason, cell: (row) => row.reason },
        ]}
      />
    </Section>
  );
}
