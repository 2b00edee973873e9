/** Letters as rows: what each is about, to whom, when, and whether it went out. */
import Link from "next/link";
import type { ReactNode } from "react";
import { type Column, DataTable } from "#app/_parts/data-table.tsx";
import { Moment } from "#app/_parts/moment.tsx";
import { letterPages as words } from "#app/_words/en/letters.ts";
import { letterText } from "#app/_words/letter-text.ts";
import { LetterStateMark } from "#app/(signed-in)/letters/letter-state-mark.tsx";
import type { LetterSheet } from "#lib/desk/queries/letters.ts";

const columns: Column<LetterSheet>[] = [
  {
    key: "subject",
    label: words.subject,
    cell: ({ id, code, parameters }) => (
      <Link href={`/letters/${id}`}>{letterText(code, parameters, null).subject}</Link>
    ),
  },
  {
    key: "to",
    label: words.to,
    cell: ({ to, address }) => <span style={{ overflowWrap: "anywhere" }}>{to ?? address}</span>,
  },
  { key: "written", label: words.written, cell: ({ queuedAt }) => <Moment at={queuedAt} /> },
  { key: "state", label: words.state, cell: ({ state }) => <LetterStateMark state={state} /> },
];

export function LetterTable({ rows, empty }: { rows: readonly LetterSheet[]; empty?: ReactNode }) {
  return (
    <DataTable
      caption={words.caption}
      captionHidden
      dense
      rows={rows}
      rowKey={({ id }) => id}
      empty={empty}
      columns={columns}
    />
  );
}
