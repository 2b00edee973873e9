/** Giving a mandate. Nothing is ticked beforehand. */
"use client";

import { ActionForm } from "#app/_parts/action-form.tsx";
import styles from "#app/_parts/fields.module.css";
import { CheckField, FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { mandateWords as words } from "#app/_words/en/mandates.ts";
import { give } from "#app/(signed-in)/mandates/actions.ts";
import { mandateActs } from "#lib/people/mandates.ts";
import type { Signatory } from "#lib/people/queries/mandates.ts";

export function MandateForm({
  signatories,
  currency,
  today,
}: {
  signatories: readonly Signatory[];
  currency: string;
  today: string;
}) {
  return (
    <ActionForm action={give} label={words.give}>
      {(state, pending) => (
        <>
          <SelectField
            label={words.who}
            name="accountId"
            empty={words.choose}
            required
            options={signatories.map(
              ({ id, name, institution }) => [id, `${name}, ${institution ?? words.theHouse}`] as const,
            )}
            error={issueOf(state, "accountId")}
          />
          <fieldset className={styles.choice}>
            <legend className={styles.label}>{words.acts}</legend>
            {mandateActs.map((act) => (
              <CheckField key={act} label={words.actWords[act]} name="acts" value={act} />
            ))}
            {issueOf(state, "acts") && <span className={styles.error}>{issueOf(state, "acts")}</span>}
          </fieldset>
          <FieldGrid>
            <TextField
              label={words.limit}
              hint={words.limitHint}
              name="limit.minor"
              inputMode="decimal"
              error={issueOf(state, "limit.minor")}
            />
            <TextField
              label={words.currency}
              name="limit.currency"
              defaultValue={currency}
              maxLength={3}
              error={issueOf(state, "limit.currency")}
            />
            <TextField
              label={words.validFrom}
              name="validFrom"
              type="date"
              defaultValue={today}
              required
              error={issueOf(state, "validFrom")}
            />
            <TextField
              label={words.validUntil}
              name="validUntil"
              type="date"
              error={issueOf(state, "validUntil")}
            />
          </FieldGrid>
          <TextField
            label={words.reference}
            hint={words.referenceHint}
            name="reference"
            required
            error={issueOf(state, "reference")}
          />
          <FormActions>
            <button type="submit" disabled={pending}>
              {words.give}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
