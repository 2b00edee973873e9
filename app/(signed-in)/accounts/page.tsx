/** Who signs in, by name. */
import type { Metadata } from "next";
import Link from "next/link";
import { DataTable, EmptyState } from "#app/_parts/data-table.tsx";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { accountsWords as words } from "#app/_words/en/accounts.ts";
import { mayDo } from "#lib/people/permission.ts";
import { listAccounts, listInstitutions } from "#lib/people/queries.ts";

export const metadata: Metadata = { title: words.title };

export default async function AccountsPage() {
  const viewer = await requireViewer("/accounts");
  const [accounts, institutions] = await orNotFound(() =>
    Promise.all([listAccounts(viewer), listInstitutions(viewer)]),
  );
  const nameOf = new Map(institutions.map(({ id, name }) => [id, name]));
  return (
    <PlainPage>
      <Masthead
        title={words.title}
        standing={
          mayDo(viewer, "keepAccount") && (
            <Link className="act no-print" href="/accounts/new">
              {words.newAccount}
            </Link>
          )
        }
      />
      <p>{words.about}</p>
      <DataTable
        caption={words.caption}
        rows={accounts}
        rowKey={({ id }) => id}
        empty={<EmptyState>{words.none}</EmptyState>}
        columns={[
          {
            key: "name",
            label: words.name,
            cell: ({ id, name }) => <Link href={`/accounts/${id}`}>{name}</Link>,
          },
          { key: "roles", label: words.roles, cell: ({ roles }) => roles.join(", ") },
          {
            key: "institution",
            label: words.institution,
            cell: ({ institutionId }) =>
              institutionId === null ? (
                <span className="quiet">{words.theHouse}</span>
              ) : (
                nameOf.get(institutionId)
              ),
          },
          {
            key: "state",
            label: words.state,
            cell: ({ active }) => (
              <StateMark outcome={active ? "clear" : "neutral"}>
                {active ? words.open : words.closed}
              </StateMark>
            ),
          },
          { key: "email", label: words.email, cell: ({ email }) => email },
        ]}
      />
    </PlainPage>
  );
}
