/** One office's word on the request: accept or decline, with its grounds. Nothing is chosen beforehand. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { ChoiceField } from "#app/_parts/choice-field.tsx";
import fieldStyles from "#app/_parts/fields.module.css";
import { CheckField, FormActions, SelectField, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { decisionWords as words } from "#app/_words/en/loan-acts.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import type { Office } from "#lib/suitability/suitability.ts";

/** @param maySayNo whether a no is still possible: a loan that was accepted can only be signed off */
export function DecisionForm({
  action,
  offices,
  maySayNo,
  asked,
}: {
  action: FormAction;
  offices: readonly Office[];
  maySayNo: boolean;
  asked: readonly { specimenId: string; accessionNumber: string; title: string }[];
}) {
  return (
    <ActionForm action={action} label={words.giveWord} className={styles.form}>
      {(state, pending) => (
        <>
          <h3>{words.giveWord}</h3>
          <SelectField
            label={words.speakAs}
            name="office"
            options={offices.map((office) => [office, words.offices[office]] as const)}
            error={issueOf(state, "office")}
          />
          {offices.includes("conservator") && <p className="quiet small">{words.signOff}</p>}
          <ChoiceField
            name="outcome"
            label={words.outcome}
            choices={[
              ["accept", words.accept] as const,
              ...(maySayNo ? [["decline", words.decline] as const] : []),
              ["recuse", words.recuse] as const,
            ]}
            error={issueOf(state, "outcome")}
          />
          <p className="quiet small">{words.recuseAbout}</p>
          {asked.length > 1 && offices.includes("curator") && (
            <fieldset className={fieldStyles.choice}>
              <legend className={fieldStyles.label}>{words.which}</legend>
              <span className={fieldStyles.hint}>{words.whichHint}</span>
              {asked.map(({ specimenId, accessionNumber, title }) => (
                <CheckField
                  key={specimenId}
                  label={`${accessionNumber}, ${title}`}
                  name="specimenIds"
                  value={specimenId}
                  defaultChecked
                />
              ))}
            </fieldset>
          )}
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
