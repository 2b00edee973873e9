/** Writing down a customs discharge. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { FieldGrid, FormActions, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { closingWords as words } from "#app/_words/en/closing.ts";

export function DischargeForm({ action, isAgain }: { action: FormAction; isAgain: boolean }) {
  const title = isAgain ? words.again : words.record;
  return (
    <details open={!isAgain}>
      <summary>{title}</summary>
      <ActionForm action={action} label={title}>
        {(state, pending) => (
          <>
            <FieldGrid>
              <TextField
                label={words.dischargedOn}
                type="date"
                name="dischargedOn"
                error={issueOf(state, "dischargedOn")}
              />
              <TextField
                label={words.office}
                name="office"
                maxLength={200}
                error={issueOf(state, "office")}
              />
              <TextField
                label={words.reference}
                hint={words.referenceHint}
                name="reference"
                maxLength={200}
                error={issueOf(state, "reference")}
              />
            </FieldGrid>
            <TextAreaField label={words.note} name="note" error={issueOf(state, "note")} />
            <FormActions>
              <button type="submit" className={isAgain ? "outline" : undefined} disabled={pending}>
                {title}
              </button>
            </FormActions>
          </>
        )}
      </ActionForm>
    </details>
  );
}
