/** What the driver says of each crate, with one button for taking over and one for bringing. */
"use client";

import { ActionForm } from "#app/_parts/action-form.tsx";
import { ChoiceField } from "#app/_parts/choice-field.tsx";
import { FormActions, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { carryWords as words } from "#app/_words/en/carry.ts";
import { giveCarrierWord } from "#app/carry/[token]/actions.ts";

export function CarryForm({
  token,
  crates,
}: {
  token: string;
  crates: readonly { id: string; code: string }[];
}) {
  return (
    <ActionForm action={giveCarrierWord.bind(null, token)} label={words.yourWord}>
      {(state, pending) => (
        <>
          <TextField
            label={words.driver}
            name="driver"
            autoComplete="name"
            error={issueOf(state, "driver")}
          />
          {crates.map(({ id, code }, index) => (
            <fieldset key={id}>
              <legend>
                <span className="mono">{code}</span>
              </legend>
              <input type="hidden" name="crate" value={id} />
              <ChoiceField
                name={`crates.${index}.sealIntact`}
                label={words.sealIntact}
                choices={[
                  ["yes", words.yes],
                  ["no", words.no],
                ]}
                error={issueOf(state, `crates.${index}.sealIntact`)}
              />
              <TextAreaField
                label={words.outsideDamage}
                hint={words.outsideDamageHint}
                name={`crates.${index}.outsideDamage`}
                rows={2}
                error={issueOf(state, `crates.${index}.outsideDamage`)}
              />
            </fieldset>
          ))}
          <FormActions>
            <button type="submit" name="word" value="handed over" disabled={pending}>
              {words.handedOver}
            </button>
            <button type="submit" name="word" value="arrived" disabled={pending}>
              {words.arrived}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
