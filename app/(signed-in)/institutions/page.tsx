/** Institutions by name; a borrower is led to the own one. */
import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import { mayDo, maySee } from "#lib/people/permission.ts";
import { listInstitutions } from "#lib/people/queries.ts";
import { isBorrower } from "#lib/people/viewer.ts";

export const metadata: Metadata = { title: words.title };

export default async function InstitutionsPage() {
  const viewer = await requireViewer("/institutions");
  if (isBorrower(viewer) && viewer.institutionId) redirect(`/institutions/${viewer.institutionId}`);
  const rows = await orNotFound(() => listInstitutions(viewer));
  const opens = maySee(viewer, "facilityFacts");
  const start = mayDo(viewer, "keepInstitution") && (
    <Link className="act no-print" href="/institutions/new">
      {words.newInstitution}
    </Link>
  );
  return (
    <PlainPage>
      <Masthead title={words.title} standing={start} />
      <p>{words.about}</p>
      <DataTable
        caption={words.caption}
        rows={rows}
        rowKey={({ id }) => id}
        empty={<EmptyState>{words.none}</EmptyState>}
        columns={[
          {
            key: "name",
            label: words.name,
            cell: ({ id, name }) => (opens ? <Link href={`/institutions/${id}`}>{name}</Link> : name),
          },
          {
            key: "kind",
            label: words.kind,
            cell: ({ kind }) => words.kinds[kind as keyof typeof words.kinds],
          },
          { key: "city", label: words.city, cell: ({ city, countryCode }) => `${city}, ${countryCode}` },
          {
            key: "standing",
            label: words.standing,
            cell: ({ standing }) => (
              <StateMark outcome={standing === "good" ? "clear" : "bar"}>
                {words.standings[standing as keyof typeof words.standings]}
              </StateMark>
            ),
          },
          { key: "venues", label: words.venueCount, right: true, cell: ({ venues }) => venues },
          ...(maySee(viewer, "allLoans")
            ? [
                {
                  key: "loans",
                  label: words.loans,
                  right: true,
                  cell: ({ loans }: { loans: number }) => loans,
                },
              ]
            : []),
        ]}
      />
    </PlainPage>
  );
}
