/** An insurance as its policy states it: how much, from which day to which, where, on the road or not. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { CheckField, FieldGrid, FormActions, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { facilityWords } from "#app/_words/en/facility.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { coverWords as words } from "#app/_words/en/loan-acts.ts";

export type InsuranceStart = {
  insurer: string;
  policyNumber: string;
  amount: string;
  currency: string;
  firstDay: string;
  lastDay: string;
  territories: string;
  coversTransit: boolean;
};

export function InsuranceForm({
  action,
  start,
  title,
  of,
}: {
  action: FormAction;
  start: InsuranceStart;
  title: string;
  /** Sets the fields of one form apart from those of another on the page. */
  of: string;
}) {
  const label = start.policyNumber === "" ? title : `${title}: ${start.policyNumber}`;
  return (
    <details className="no-print">
      <summary>
        {title}
        {start.policyNumber !== "" && <span className="visually-hidden"> {start.policyNumber}</span>}
      </summary>
      <ActionForm action={action} label={label}>
        {(state, pending) => {
          const field = (name: string, path = name) => ({
            name,
            id: `insurance-${of}-${name}`,
            error: issueOf(state, path),
          });
          return (
            <>
              <FieldGrid>
                <TextField label={words.insurer} {...field("insurer")} defaultValue={start.insurer} />
                <TextField
                  label={words.policy}
                  {...field("policyNumber")}
                  defaultValue={start.policyNumber}
                />
                <TextField
                  label={words.amount}
                  inputMode="decimal"
                  {...field("minor")}
                  defaultValue={start.amount}
                />
                <TextField label={words.currency} {...field("currency")} defaultValue={start.currency} />
                <TextField
                  label={words.firstDay}
                  type="date"
                  {...field("firstDay", "validFrom")}
                  defaultValue={start.firstDay}
                />
                <TextField
                  label={words.lastDay}
                  type="date"
                  {...field("lastDay", "validUntil")}
                  defaultValue={start.lastDay}
                />
                <TextField
                  label={words.territories}
                  hint={fieldWords.codesHint}
                  {...field("territories")}
                  error={issueOf(state, "territories") ?? issueOf(state, "territories.0")}
                  defaultValue={start.territories}
                />
              </FieldGrid>
              <CheckField
                label={words.transitField}
                {...field("coversTransit")}
                defaultChecked={start.coversTransit}
              />
              <FormActions>
                <button type="submit" className="outline" disabled={pending} aria-label={label}>
                  {facilityWords.keepInsurance}
                </button>
              </FormActions>
            </>
          );
        }}
      </ActionForm>
    </details>
  );
}
