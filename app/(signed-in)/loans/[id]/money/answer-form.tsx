/** The borrower's word on a quotation, given once. Nothing is chosen beforehand. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { ChoiceField } from "#app/_parts/choice-field.tsx";
import { FormActions, TextAreaField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { moneyWords as words } from "#app/_words/en/money.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";

export function AnswerForm({ action, version }: { action: FormAction; version: number }) {
  const title = words.answerTitle(version);
  return (
    <ActionForm action={action} label={title} className={styles.form}>
      {(state, pending) => (
        <>
          <h3>{title}</h3>
          <ChoiceField
            name="outcome"
            label={words.outcome}
            choices={[
              ["accepted", words.outcomes.accepted],
              ["refused", words.outcomes.refused],
            ]}
            error={issueOf(state, "outcome")}
          />
          <TextAreaField
            label={words.remark}
            hint={words.remarkHint}
            name="remark"
            error={issueOf(state, "remark")}
          />
          <p className="quiet small">{words.fixed}</p>
          <FormActions>
            <button type="submit" disabled={pending}>
              {words.send}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
