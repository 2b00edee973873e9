/** A specimen or a whole series is noted on a loan by its number. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { FormActions, TextField } from "#app/_parts/fields.tsx";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";

export function NoteForm({ action }: { action: FormAction }) {
  return (
    <ActionForm action={action} label={words.noteSpecimen} className={`no-print ${styles.narrow}`}>
      {(_state, pending) => (
        <>
          <TextField
            label={words.noteField}
            hint={words.noteHint}
            name="number"
            autoComplete="off"
            required
          />
          <FormActions>
            <button type="submit" className="outline" disabled={pending}>
              {words.noteButton}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
