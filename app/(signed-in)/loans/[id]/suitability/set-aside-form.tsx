/** Setting one bar aside: in which office, on what grounds, with what paper. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { FormActions, SelectField, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { decisionWords } from "#app/_words/en/loan-acts.ts";
import { setAsideWords as words } from "#app/_words/en/set-aside.ts";
import type { Office } from "#lib/suitability/suitability.ts";

export function SetAsideForm({
  action,
  offices,
  rule,
  needsEvidence,
}: {
  action: FormAction;
  offices: readonly Office[];
  rule: string;
  needsEvidence: boolean;
}) {
  return (
    <details className="no-print">
      <summary>{words.open}</summary>
      <ActionForm action={action} label={words.record(rule)}>
        {(state, pending) => (
          <>
            <p>{words.about}</p>
            <SelectField
              label={words.office}
              name="office"
              options={offices.map((office) => [office, decisionWords.offices[office]] as const)}
              error={issueOf(state, "office")}
            />
            <TextAreaField label={words.grounds} name="grounds" error={issueOf(state, "grounds")} />
            <TextField
              label={words.evidence}
              hint={needsEvidence ? words.evidenceNeeded : undefined}
              name="evidence"
              error={issueOf(state, "evidence")}
            />
            <FormActions>
              <button type="submit" className="outline" disabled={pending}>
                {words.record(rule)}
              </button>
            </FormActions>
          </>
        )}
      </ActionForm>
    </details>
  );
}
