/** An account's record as one form; a new one is given its first password with it. */
"use client";

import Link from "next/link";
import { CheckField, FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { useRecordForm } from "#app/_parts/use-record-form.ts";
import { accountsWords as words } from "#app/_words/en/accounts.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { saveAccount } from "#app/(signed-in)/accounts/actions.ts";
import type { AccountInput } from "#lib/people/schema.ts";
import { AccountWithPassword } from "#lib/people/schema.ts";
import { roles } from "#lib/people/viewer.ts";

const orNull = { setValueAs: (typed: unknown) => (typed === "" || typed === undefined ? null : typed) };

export function AccountForm({
  start,
  institutions,
}: {
  start: AccountInput;
  institutions: readonly { id: string; name: string }[];
}) {
  // No draft is kept: a password must not lie about in the tab.
  const { form, state, pending, submit, errorOf } = useRecordForm<AccountWithPassword>(
    AccountWithPassword,
    { account: start, password: null },
    saveAccount,
  );
  const { register } = form;
  const roleError = errorOf("account.roles");
  return (
    <form
      // Sent before the page answers, it must not put a password into an address.
      method="post"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <FieldGrid>
        <TextField
          label={words.name}
          autoComplete="off"
          {...register("account.name")}
          error={errorOf("account.name")}
        />
        <TextField
          label={words.email}
          hint={words.emailHint}
          type="email"
          autoComplete="off"
          {...register("account.email")}
          error={errorOf("account.email")}
        />
        <SelectField
          label={words.institution}
          hint={words.institutionHint}
          options={institutions.map(({ id, name }) => [id, name] as const)}
          empty={words.theHouse}
          {...register("account.institutionId", orNull)}
          error={errorOf("account.institutionId")}
        />
        {start.id === null && (
          <TextField
            label={words.password}
            hint={words.passwordHint}
            type="password"
            autoComplete="new-password"
            {...register("password", orNull)}
            error={errorOf("password")}
          />
        )}
      </FieldGrid>
      <fieldset>
        <legend>{words.roles}</legend>
        {roles.map((role) => (
          <CheckField key={role} label={words.roleWords[role]} value={role} {...register("account.roles")} />
        ))}
        {roleError && (
          <p className="outcome-bar" role="alert">
            {words.noRole}
          </p>
        )}
      </fieldset>
      <FormAnswer state={state} />
      <FormActions>
        <button type="submit" disabled={pending}>
          {words.save}
        </button>
        <Link href="/accounts">{fieldWords.cancel}</Link>
      </FormActions>
    </form>
  );
}
