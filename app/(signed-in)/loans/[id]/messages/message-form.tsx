/** A message to the other side of the loan. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { FormActions, TextAreaField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { messageWords as words } from "#app/_words/en/letters.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";

export function MessageForm({ action }: { action: FormAction }) {
  return (
    <ActionForm action={action} label={words.write} className={`no-print ${styles.form}`}>
      {(state, pending) => (
        <>
          <TextAreaField
            label={words.text}
            hint={words.hint}
            name="text"
            rows={4}
            maxLength={4_000}
            required
            error={issueOf(state, "text")}
          />
          <FormActions>
            <button type="submit" className="outline" disabled={pending}>
              {words.send}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
