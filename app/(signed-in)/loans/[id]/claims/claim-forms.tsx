/** Opening a claim, and the next step of one. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { FieldGrid, FormActions, SelectField, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { claimWords as words } from "#app/_words/en/claims.ts";
import type { ClaimEventKind } from "#lib/loans/claims.ts";

export function OpenClaimForm({
  action,
  specimens,
}: {
  action: FormAction;
  specimens: readonly { specimenId: string; accessionNumber: string; title: string }[];
}) {
  return (
    <details>
      <summary>{words.open}</summary>
      <ActionForm action={action} label={words.open}>
        {(state, pending) => (
          <>
            <SelectField
              label={words.specimen}
              name="specimenId"
              empty={words.choose}
              required
              options={specimens.map(
                ({ specimenId, accessionNumber, title }) =>
                  [specimenId, `${accessionNumber}, ${title}`] as const,
              )}
              error={issueOf(state, "specimenId")}
            />
            <TextAreaField
              label={words.note}
              hint={words.noteHint}
              name="note"
              error={issueOf(state, "note")}
            />
            <FormActions>
              <button type="submit" className="outline" disabled={pending}>
                {words.open}
              </button>
            </FormActions>
          </>
        )}
      </ActionForm>
    </details>
  );
}

export function ClaimStepForm({
  action,
  number,
  kinds,
  currency,
}: {
  action: FormAction;
  number: string;
  kinds: readonly ClaimEventKind[];
  currency: string;
}) {
  return (
    <details>
      <summary>{words.next(number)}</summary>
      <ActionForm action={action} label={words.next(number)}>
        {(state, pending) => (
          <>
            <FieldGrid>
              <SelectField
                label={words.step}
                name="kind"
                empty={words.choose}
                required
                options={kinds.map((kind) => [kind, words.kinds[kind]] as const)}
                error={issueOf(state, "kind")}
              />
              <TextField
                label={words.amount}
                name="amount.minor"
                inputMode="decimal"
                error={issueOf(state, "amount.minor")}
              />
              <TextField
                label={words.currency}
                name="amount.currency"
                defaultValue={currency}
                maxLength={3}
                error={issueOf(state, "amount.currency")}
              />
            </FieldGrid>
            <TextAreaField label={words.remark} name="note" error={issueOf(state, "note")} />
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
