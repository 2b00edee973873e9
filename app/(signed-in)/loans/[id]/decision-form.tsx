/** One office's word on the request: accept or decline, with its grounds. Nothing is chosen beforehand. */
"use client";

import { ActionForm } from "#app/_parts/action-form.tsx";
import { ChoiceField } from "#app/_parts/choice-field.tsx";
import { FormActions, SelectField, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { decisionWords as words } from "#app/_words/en/loan-acts.ts";
import { giveWord } from "#app/(signed-in)/loans/[id]/actions.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import type { Office } from "#lib/loans/suitability.ts";

export function DecisionForm({ loanId, offices }: { loanId: string; offices: readonly Office[] }) {
  return (
    <ActionForm action={giveWord.bind(null, loanId)} label={words.giveWord} className={styles.form}>
      {(state, pending) => (
        <>
          <h3>{words.giveWord}</h3>
          <SelectField
            label={words.speakAs}
            name="office"
            options={offices.map((office) => [office, words.offices[office]] as const)}
            error={issueOf(state, "office")}
          />
          <ChoiceField
            name="outcome"
            label={words.outcome}
            choices={[
              ["accept", words.accept],
              ["decline", words.decline],
            ]}
            error={issueOf(state, "outcome")}
          />
          <TextAreaField
            label={words.grounds}
            hint={words.groundsHint}
            name="grounds"
            error={issueOf(state, "grounds")}
          />
          <TextAreaField
            label={words.conditions}
            hint={words.conditionsHint}
            name="conditions"
            error={issueOf(state, "conditions")}
          />
          {offices.includes("oversight body") && (
            <TextField
              label={words.reference}
              hint={words.referenceHint}
              name="reference"
              error={issueOf(state, "reference")}
            />
          )}
          <p className="quiet small">{words.fixed}</p>
          <FormActions>
            <button type="submit" disabled={pending}>
              {words.record}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
