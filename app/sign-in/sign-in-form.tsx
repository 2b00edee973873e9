/** The two fields. */
"use client";

import { ActionForm } from "#app/_parts/action-form.tsx";
import { FormActions, TextField } from "#app/_parts/fields.tsx";
import { signInWords } from "#app/_words/en/sign-in.ts";
import { signIn } from "#app/sign-in/actions.ts";

export function SignInForm({ to }: { to: string }) {
  return (
    <ActionForm action={signIn} label={signInWords.title}>
      <input type="hidden" name="to" value={to} />
      <TextField label={signInWords.email} name="email" type="email" autoComplete="username" required />
      <TextField
        label={signInWords.password}
        name="password"
        type="password"
        autoComplete="current-password"
        required
      />
      <FormActions>
        <button type="submit">{signInWords.submit}</button>
      </FormActions>
    </ActionForm>
  );
}
