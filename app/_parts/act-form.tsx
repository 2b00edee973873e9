/**
 * One act with its button: the fields are given, the button waits while it is
 * sent, the answer stands below. For forms whose fields are drawn on the server.
 */
"use client";

import type { ReactNode } from "react";
import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { FormActions } from "#app/_parts/fields.tsx";

export function ActForm({
  action,
  label,
  button,
  look,
  children,
}: {
  action: FormAction;
  /** What the form is for, for who does not see it. */
  label: string;
  button: string;
  look?: "outline" | "plain" | undefined;
  children?: ReactNode;
}) {
  return (
    <ActionForm action={action} label={label}>
      {(_state, pending) => (
        <>
          {children}
          <FormActions>
            <button type="submit" className={look} disabled={pending} aria-label={label}>
              {button}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
