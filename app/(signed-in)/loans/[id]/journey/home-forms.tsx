/** The way home and the return: sending, counting with components, checking one specimen in. */
"use client";

import { useState } from "react";
import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { ChoiceField } from "#app/_parts/choice-field.tsx";
import fieldStyles from "#app/_parts/fields.module.css";
import { CheckField, FieldGrid, FormActions, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { roadWords as words } from "#app/_words/en/loan-road.ts";
import { type Counted, CountFields } from "#app/(signed-in)/loans/[id]/journey/arrival-forms.tsx";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";
import { checkInVerdicts } from "#lib/loans/inputs.ts";

export function SendHomeForm({
  action,
  away,
  crates,
  carrier,
}: {
  action: FormAction;
  away: readonly { specimenId: string; accessionNumber: string; title: string }[];
  /** Crates that were opened: those that go are closed with a new seal. */
  crates: readonly { id: string; code: string }[];
  /** Who is planned to take them; null where no way home is planned. */
  carrier: string | null;
}) {
  const [everything, setEverything] = useState(true);
  return (
    <ActionForm action={action} label={words.sendHome}>
      {(state, pending) => {
        const ticks = issueOf(state, "specimenIds");
        return (
          <>
            <h3>{words.sendHome}</h3>
            <p>{words.sendHomeAbout}</p>
            <CheckField
              label={words.sendAll}
              name="everything"
              checked={everything}
              onChange={(event) => setEverything(event.target.checked)}
            />
            {!everything && (
              <fieldset aria-describedby={ticks === undefined ? undefined : "going-error"}>
                <legend>{words.chooseSome}</legend>
                {away.map(({ specimenId, accessionNumber, title }) => (
                  <CheckField
                    key={specimenId}
                    name="going"
                    value={specimenId}
                    label={`${accessionNumber} ${title}`}
                  />
                ))}
                {ticks && (
                  <p id="going-error" className={fieldStyles.error}>
                    {ticks}
                  </p>
                )}
              </fieldset>
            )}
            <FieldGrid>
              {crates.map(({ id, code }, index) => (
                <div key={id}>
                  <input type="hidden" name="crate" value={id} />
                  <TextField
                    label={words.sealOf(code)}
                    hint={words.sealHint}
                    name={`seal ${id}`}
                    autoComplete="off"
                    error={issueOf(state, `seals.${index}.sealNumber`)}
                  />
                </div>
              ))}
              {carrier === null && (
                <TextField
                  label={words.carrierHome}
                  hint={words.carrierHomeHint}
                  name="carrier"
                  error={issueOf(state, "carrier")}
                />
              )}
            </FieldGrid>
            {carrier !== null && (
              <p>
                {words.carrierHome}: {carrier}
              </p>
            )}
            <p className="quiet small">{words.receivedFixed}</p>
            <FormActions>
              <button type="submit" disabled={pending}>
                {words.send}
              </button>
            </FormActions>
          </>
        );
      }}
    </ActionForm>
  );
}

export function CountReturnForm({
  action,
  specimens,
}: {
  action: FormAction;
  specimens: readonly Counted[];
}) {
  return (
    <ActionForm action={action} label={words.count}>
      {(state, pending) => (
        <>
          <h3>{words.count}</h3>
          <p>{words.countAbout}</p>
          <CountFields specimens={specimens} withComponents error={(path) => issueOf(state, path)} />
          <FormActions>
            <button type="submit" disabled={pending}>
              {words.recordCount}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}

export function CheckInForm({
  action,
  specimen,
}: {
  action: FormAction;
  specimen: { accessionNumber: string };
}) {
  const label = `${words.checkIn}: ${specimen.accessionNumber}`;
  return (
    <ActionForm action={action} label={label} className={styles.form}>
      {(state, pending) => (
        <>
          <ChoiceField
            name="verdict"
            label={words.verdict}
            choices={checkInVerdicts.map((verdict) => [verdict, words.verdicts[verdict]] as const)}
            error={issueOf(state, "verdict")}
          />
          <TextField label={words.remark} name="remark" error={issueOf(state, "remark")} />
          <p className="quiet small">{words.checkInFixed}</p>
          <FormActions>
            <button type="submit" disabled={pending} aria-label={label}>
              {words.checkIn}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
