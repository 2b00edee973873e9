/** What is due, as rows: how grave, what, by when. */
import Link from "next/link";
import type { ReactNode } from "react";
import { DataTable } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { LocalTime } from "#app/_parts/moment.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { deskWords as words } from "#app/_words/en/desk.ts";
import { formatDate, formatMoment } from "#app/_words/format.ts";
import { sentence } from "#app/_words/sentences.ts";
import type { DueItem } from "#lib/desk/due.ts";

const addresses = {
  loan: "/loans",
  specimen: "/specimens",
  donor: "/donors",
  letter: "/letters",
  venue: "/venues",
  institution: "/institutions",
} as const;

function sentenceOf(item: DueItem): string {
  const { date, moment, ...plain } = item.parameters;
  return sentence(item.code, {
    ...plain,
    ...(typeof date === "string" && date ? { date: formatDate(date) } : {}),
    ...(typeof moment === "string" ? { moment: formatMoment(moment) } : {}),
  });
}

/** What it is, leading to where it is seen to. */
export function DueLink({ item }: { item: DueItem }) {
  const { moment } = item.parameters;
  return (
    <>
      <Link href={`${addresses[item.about.kind]}/${item.about.id}`}>{sentenceOf(item)}</Link>
      {typeof moment === "string" && <LocalTime at={moment} />}
    </>
  );
}

export function DueTable({
  caption = words.due,
  due,
  empty,
}: {
  caption?: string;
  due: readonly DueItem[];
  empty: ReactNode;
}) {
  return (
    <DataTable<DueItem>
      caption={caption}
      dense
      rows={due}
      rowKey={(item) => item.key}
      empty={empty}
      columns={[
        { key: "outcome", label: words.outcome, cell: (item) => <StateMark outcome={item.outcome} /> },
        {
          key: "what",
          label: words.what,
          cell: (item) => <DueLink item={item} />,
        },
        { key: "by", label: words.dueOn, cell: (item) => <DateText date={item.dueOn} short /> },
      ]}
    />
  );
}
