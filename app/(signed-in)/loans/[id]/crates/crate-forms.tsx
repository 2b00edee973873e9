/** Planning the crates for a carrier, and packing and sealing one: what is in it is ticked by hand. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { CheckField, FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { crateWords } from "#app/_words/en/crate.ts";
import { roadWords as words } from "#app/_words/en/loan-road.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { carrierClasses, fragilityClasses } from "#lib/transport/schema.ts";

type Named = { specimenId: string; accessionNumber: string; title: string };

export function PlanCratesForm({
  action,
  specimens,
  again,
}: {
  action: FormAction;
  specimens: readonly Named[];
  again: boolean;
}) {
  const label = again ? words.planAgain : words.plan;
  return (
    <ActionForm action={action} label={label} className={styles.form}>
      {(state, pending) => (
        <>
          <SelectField
            label={words.carrierClass}
            name="carrierClass"
            options={carrierClasses.map((one) => [one, crateWords.carriers[one]] as const)}
            error={issueOf(state, "carrierClass")}
          />
          <details>
            <summary>{words.ownFigures}</summary>
            <p className="quiet small">{words.ownFiguresHint}</p>
            {specimens.map(({ specimenId, accessionNumber, title }, index) => (
              <fieldset key={specimenId}>
                <legend>
                  <span className="mono">{accessionNumber}</span> {title}
                </legend>
                <input type="hidden" name="own" value={specimenId} />
                <FieldGrid>
                  <SelectField
                    label={words.fragilityClass}
                    name={`own.${index}.fragilityClass`}
                    options={fragilityClasses.map((one) => [one, one.replaceAll("-", " ")] as const)}
                    empty={words.byClass}
                  />
                  <TextField
                    label={words.peakG}
                    name={`own.${index}.peakG`}
                    inputMode="decimal"
                    error={issueOf(state, `own.${index}.peakG`)}
                  />
                </FieldGrid>
              </fieldset>
            ))}
          </details>
          <FormActions>
            <button type="submit" className={again ? "outline" : undefined} disabled={pending}>
              {label}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}

export function SealForm({
  action,
  crate,
}: {
  action: FormAction;
  crate: { id: string; code: string; contents: readonly Named[] };
}) {
  const label = words.sealTitle(crate.code);
  return (
    <ActionForm action={action} label={label} className={styles.form}>
      {(state, pending) => (
        <>
          <h4>{label}</h4>
          <p className="quiet small">{words.sealCaution}</p>
          {crate.contents.map(({ specimenId, accessionNumber, title }) => (
            <CheckField
              key={specimenId}
              name="packed"
              value={specimenId}
              label={`${accessionNumber} ${title}: ${words.inCrate}`}
            />
          ))}
          <TextField
            label={words.sealNumber}
            name="sealNumber"
            autoComplete="off"
            error={issueOf(state, "sealNumber")}
          />
          <FormActions>
            <button type="submit" disabled={pending}>
              {words.sealCrate}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
