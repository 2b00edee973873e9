/** One account: who it is, its password, closing it, and what happened to it. */
import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { ActionForm } from "#app/_parts/action-form.tsx";
import { FieldGrid, FormActions, TextField } from "#app/_parts/fields.tsx";
import { Happened } from "#app/_parts/happened.tsx";
import { Masthead, RecordPage, Section } from "#app/_parts/record-page.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { orNotFound } from "#app/_server/refusals.ts";
import { requireViewer } from "#app/_server/viewer.ts";
import { accountsWords as words } from "#app/_words/en/accounts.ts";
import { AccountForm } from "#app/(signed-in)/accounts/account-form.tsx";
import { closeAccount, reopenAccount, setPassword } from "#app/(signed-in)/accounts/actions.ts";
import { happenedTo } from "#lib/desk/queries/happened.ts";
import { maySee } from "#lib/people/permission.ts";
import { listAccounts, listInstitutions } from "#lib/people/queries.ts";

type Props = { params: Promise<{ id: string }> };

export const metadata: Metadata = { title: words.title };

export default async function AccountPage({ params }: Props) {
  const { id } = await params;
  const viewer = await requireViewer(`/accounts/${id}`);
  const [accounts, institutions] = await orNotFound(() =>
    Promise.all([listAccounts(viewer), listInstitutions(viewer)]),
  );
  const account = accounts.find((each) => each.id === id);
  if (!account) notFound();
  const happened = maySee(viewer, "audit") ? await happenedTo(viewer, [{ table: "account", key: id }]) : null;
  const changeActive = account.active ? closeAccount.bind(null, id) : reopenAccount.bind(null, id);
  return (
    <RecordPage
      masthead={
        <Masthead
          title={account.name}
          standing={
            <StateMark outcome={account.active ? "clear" : "neutral"}>
              {account.active ? words.open : words.closed}
            </StateMark>
          }
        />
      }
      index={[
        { id: "who", label: words.who },
        { id: "password", label: words.password },
        { id: "closing", label: words.closing },
        ...(happened ? [{ id: "happened", label: words.happened }] : []),
      ]}
    >
      <Section id="who" title={words.who}>
        <AccountForm
          key={String(account.active)}
          start={account}
          institutions={institutions.map((institution) => ({ id: institution.id, name: institution.name }))}
        />
      </Section>
      <Section id="password" title={words.password}>
        <p>{words.passwordAbout}</p>
        <ActionForm action={setPassword.bind(null, id)} label={words.setPassword}>
          <FieldGrid>
            <TextField
              label={words.password}
              hint={words.passwordHint}
              type="password"
              name="password"
              minLength={12}
              maxLength={128}
              autoComplete="new-password"
              required
            />
          </FieldGrid>
          <FormActions>
            <button type="submit">{words.setPassword}</button>
          </FormActions>
        </ActionForm>
      </Section>
      <Section id="closing" title={words.closing}>
        <p>{words.closingAbout}</p>
        {id === viewer.accountId ? (
          <p className="quiet">{words.yourOwn}</p>
        ) : (
          <ActionForm action={changeActive} label={account.active ? words.close : words.reopen}>
            <button type="submit" className={account.active ? "outline" : undefined}>
              {account.active ? words.close : words.reopen}
            </button>
          </ActionForm>
        )}
      </Section>
      {happened && (
        <Section id="happened" title={words.happened}>
          <Happened entries={happened} />
        </Section>
      )}
    </RecordPage>
  );
}
