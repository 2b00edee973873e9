/** Which venue the loan is for; its institution is the borrower. */
"use client";

import { ActionForm } from "#app/_parts/action-form.tsx";
import { FormActions, SelectField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { slipWords as words } from "#app/_words/en/slip.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { openFor } from "#app/(signed-in)/loans/new/actions.ts";

export function OpenLoanForm({ venues }: { venues: readonly { id: string; name: string }[] }) {
  // Where there is one venue only, there is nothing to choose.
  const [first, ...others] = venues;
  const only = others.length === 0 ? first : undefined;
  return (
    <ActionForm action={openFor} label={words.openTitle} className={styles.narrow}>
      {(state, pending) => (
        <>
          <p>{words.openAbout}</p>
          <SelectField
            label={words.borrower}
            name="venueId"
            empty={words.chooseVenue}
            defaultValue={only?.id}
            options={venues.map(({ id, name }) => [id, name] as const)}
            required
            error={issueOf(state, "request.venueId") ?? issueOf(state, "borrowerId")}
          />
          <FormActions>
            <button type="submit" disabled={pending}>
              {words.open}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
