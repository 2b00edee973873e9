/** Signing one version: what will be fixed stands above the button, the hash included. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { CheckField, FormActions, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { agreementWords as words } from "#app/_words/en/loan-acts.ts";
import { signingWords } from "#app/_words/en/mandates.ts";
import { DrawnName } from "#app/(signed-in)/loans/[id]/agreement/drawn-name.tsx";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";

export function SignForm({
  action,
  agreement,
  party,
  who,
}: {
  action: FormAction;
  agreement: { version: number; sha256: string };
  party: string;
  who: string;
}) {
  return (
    <ActionForm action={action} label={words.sign(agreement.version)} className={styles.form}>
      {(state, pending) => (
        <>
          <h3>{words.sign(agreement.version)}</h3>
          <p>{words.readFirst}</p>
          <Facts
            facts={[
              [words.signFor, `${party}, ${who}`],
              [
                words.hash,
                <span
                  key="hash"
                  className="mono small"
                  style={{ overflowWrap: "anywhere", whiteSpace: "normal" }}
                >
                  {agreement.sha256}
                </span>,
              ],
            ]}
          />
          <TextField label={words.role} name="signerRole" error={issueOf(state, "signerRole")} />
          <DrawnName />
          <CheckField
            label={signingWords.electronic}
            hint={signingWords.electronicHint}
            name="electronic"
            error={issueOf(state, "electronic")}
          />
          <p className="quiet small">{words.fixed}</p>
          <FormActions>
            <button type="submit" disabled={pending}>
              {words.sign(agreement.version)}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
