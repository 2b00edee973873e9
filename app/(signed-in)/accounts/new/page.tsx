/** A new account. */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Masthead, PlainPage } from "#app/_parts/record-page.tsx";
import { requireViewer } from "#app/_server/viewer.ts";
import { accountsWords as words } from "#app/_words/en/accounts.ts";
import { AccountForm } from "#app/(signed-in)/accounts/account-form.tsx";
import { mayDo } from "#lib/people/permission.ts";
import { listInstitutions } from "#lib/people/queries.ts";

export const metadata: Metadata = { title: words.newAccount };

export default async function NewAccountPage() {
  const viewer = await requireViewer("/accounts/new");
  if (!mayDo(viewer, "keepAccount")) notFound();
  const institutions = await listInstitutions(viewer);
  return (
    <PlainPage>
      <Masthead title={words.newAccount} />
      <AccountForm
        start={{ id: null, email: "", name: "", roles: [], institutionId: null, active: true }}
        institutions={institutions.map(({ id, name }) => ({ id, name }))}
      />
    </PlainPage>
  );
}
