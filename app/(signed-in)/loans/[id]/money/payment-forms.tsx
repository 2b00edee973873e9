/** Writing down a payment, and putting one off with a reason. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { FieldGrid, FormActions, SelectField, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { paymentWords as words } from "#app/_words/en/payments.ts";

export function PaymentForm({
  action,
  currency,
  today,
}: {
  action: FormAction;
  currency: string;
  today: string;
}) {
  return (
    <details>
      <summary>{words.record}</summary>
      <ActionForm action={action} label={words.record}>
        {(state, pending) => (
          <>
            <FieldGrid>
              <SelectField
                label={words.kind}
                name="kind"
                options={[
                  ["received", words.kinds.received],
                  ["paid back", words.kinds["paid back"]],
                ]}
                error={issueOf(state, "kind")}
              />
              <TextField
                label={words.amount}
                hint={words.inCurrency(currency)}
                name="amountMinor"
                inputMode="decimal"
                error={issueOf(state, "amountMinor")}
              />
              <TextField
                label={words.paidOn}
                type="date"
                name="paidOn"
                defaultValue={today}
                error={issueOf(state, "paidOn")}
              />
              <TextField
                label={words.reference}
                hint={words.referenceHint}
                name="reference"
                maxLength={200}
                error={issueOf(state, "reference")}
              />
            </FieldGrid>
            <TextAreaField label={words.note} name="note" error={issueOf(state, "note")} />
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

export function PutOffForm({ action }: { action: FormAction }) {
  return (
    <details>
      <summary>{words.putOff}</summary>
      <ActionForm action={action} label={words.putOff}>
        {(state, pending) => (
          <>
            <p className="quiet small">{words.putOffAbout}</p>
            <TextField label={words.putOffDay} type="date" name="until" error={issueOf(state, "until")} />
            <TextAreaField
              label={words.reason}
              hint={words.reasonHint}
              name="reason"
              error={issueOf(state, "reason")}
            />
            <FormActions>
              <button type="submit" className="outline" disabled={pending}>
                {words.putOff}
              </button>
            </FormActions>
          </>
        )}
      </ActionForm>
    </details>
  );
}
