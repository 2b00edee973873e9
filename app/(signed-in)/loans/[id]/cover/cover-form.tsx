/** A certificate of cover as it stands on the paper: how much, from when to when, where, on the road or not. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { CheckField, FieldGrid, FormActions, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { coverWords as words } from "#app/_words/en/loan-acts.ts";

export function CoverForm({ action, currency }: { action: FormAction; currency: string }) {
  return (
    <details>
      <summary>{words.record}</summary>
      <ActionForm action={action} label={words.record}>
        {(state, pending) => (
          <>
            <FieldGrid>
              <TextField label={words.insurer} name="insurer" error={issueOf(state, "insurer")} />
              <TextField label={words.policy} name="policyNumber" error={issueOf(state, "policyNumber")} />
              <TextField
                label={words.amount}
                name="minor"
                inputMode="decimal"
                error={issueOf(state, "minor")}
              />
              <TextField
                label={words.currency}
                name="currency"
                defaultValue={currency}
                error={issueOf(state, "currency")}
              />
              <TextField
                label={words.firstDay}
                name="firstDay"
                type="date"
                error={issueOf(state, "startsAt")}
              />
              <TextField label={words.lastDay} name="lastDay" type="date" error={issueOf(state, "endsAt")} />
              <TextField
                label={words.territories}
                hint={`${fieldWords.codesHint} ${words.needsTerritories}`}
                name="territories"
                error={issueOf(state, "territories") ?? issueOf(state, "territories.0")}
              />
            </FieldGrid>
            <CheckField label={words.transitField} name="coversTransit" />
            <CheckField label={words.stayField} name="coversStay" defaultChecked />
            <FormActions>
              <button type="submit" disabled={pending}>
                {words.record}
              </button>
            </FormActions>
          </>
        )}
      </ActionForm>
    </details>
  );
}
