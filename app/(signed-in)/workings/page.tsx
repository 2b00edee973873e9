/** Every computation of the house, by name. */
import type { Metadata } from "next";
import Link from "next/link";
import { DataTable } from "#app/_parts/data-table.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { requireViewer } from "#app/_server/viewer.ts";
import { listWorkings } from "#app/_server/workings.ts";
import { rulesWords } from "#app/_words/en/rules.ts";
import { workingsWords as words } from "#app/_words/en/workings.ts";
import type { Citation } from "#lib/workings/sources.ts";

export const metadata: Metadata = { title: words.title };

function restsOn(sources: readonly Citation[]): string {
  if (sources.length === 0) return words.noSources;
  const standings = [...new Set(sources.map(({ standing }) => words.standings[standing]))];
  return `${words.sourceCount(sources.length)}: ${standings.join("; ")}`;
}

export default async function WorkingsPage() {
  await requireViewer("/workings");
  const workings = listWorkings().toSorted((first, second) => (first.title < second.title ? -1 : 1));
  return (
    <PlainPage>
      <Masthead title={words.title} />
      <p>{words.about}</p>
      <p>
        <Link href="/rules">{rulesWords.link}</Link>
      </p>
      <DataTable
        caption={words.caption}
        rows={workings}
        rowKey={({ id }) => id}
        columns={[
          {
            key: "title",
            label: words.working,
            cell: ({ id, title }) => <Link href={`/workings/${id}`}>{title}</Link>,
          },
          { key: "about", label: words.answers, cell: ({ about }) => about },
          { key: "sources", label: words.restsOn, cell: ({ sources }) => restsOn(sources) },
        ]}
      />
    </PlainPage>
  );
}
