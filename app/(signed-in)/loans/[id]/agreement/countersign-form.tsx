/** A signature that was given elsewhere, recorded by the registrar with the file that shows it. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { ChoiceField } from "#app/_parts/choice-field.tsx";
import { FieldGrid, FormActions, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { agreementWords } from "#app/_words/en/loan-acts.ts";
import { signingWords as words } from "#app/_words/en/mandates.ts";
import type { signingParties } from "#lib/agreements/signing.ts";

export function CountersignForm({
  action,
  open,
}: {
  action: FormAction;
  /** Whose signature is still missing. */
  open: readonly (typeof signingParties)[number][];
}) {
  return (
    <details>
      <summary>{words.elsewhere}</summary>
      <ActionForm action={action} label={words.elsewhere}>
        {(state, pending) => (
          <>
            <p>{words.elsewhereAbout}</p>
            <ChoiceField
              name="party"
              label={words.party}
              choices={open.map((party) => [party, agreementWords.parties[party]] as const)}
              error={issueOf(state, "party")}
            />
            <FieldGrid>
              <TextField
                label={words.signerName}
                name="signerName"
                required
                error={issueOf(state, "signerName")}
              />
              <TextField
                label={words.signerRole}
                name="signerRole"
                required
                error={issueOf(state, "signerRole")}
              />
            </FieldGrid>
            <TextField
              label={words.file}
              hint={words.fileHint}
              name="content"
              type="file"
              accept="application/pdf,image/jpeg,image/png"
              required
              error={issueOf(state, "content")}
            />
            <FormActions>
              <button type="submit" className="outline" disabled={pending}>
                {words.record}
              </button>
            </FormActions>
          </>
        )}
      </ActionForm>
    </details>
  );
}
