/** Crates that arrive: each is looked at, the air is measured; later one is opened and what is in it counted. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { ChoiceField } from "#app/_parts/choice-field.tsx";
import { FieldGrid, FormActions, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { roadWords as words } from "#app/_words/en/loan-road.ts";
import type { Direction } from "#lib/shipments/schema.ts";

const yesOrNo = [
  ["yes", words.yes],
  ["no", words.no],
] as const;
const sealAnswers = [...yesOrNo, ["", words.notLooked]] as const;

export type CrateAtDoor = { id: string; code: string; holds: string; sealNumber: string | null };

export function ReceiveForm({
  action,
  direction,
  crates,
}: {
  action: FormAction;
  direction: Direction;
  crates: readonly CrateAtDoor[];
}) {
  const label = direction === "out" ? words.receiveTitle : words.receiveHomeTitle;
  return (
    <ActionForm action={action} label={label}>
      {(state, pending) => (
        <>
          <h3>{label}</h3>
          <p>{words.lookAt}</p>
          {crates.map(({ id, code, holds, sealNumber }, index) => (
            <fieldset key={id}>
              <legend>
                <span className="mono">{code}</span>
              </legend>
              <p className="quiet small">
                {holds}
                {sealNumber && `; ${words.seal.toLowerCase()} ${sealNumber}`}
              </p>
              <input type="hidden" name="crate" value={id} />
              <ChoiceField
                name={`crates.${index}.arrived`}
                label={words.arrived}
                choices={yesOrNo}
                error={issueOf(state, `crates.${index}.arrived`)}
              />
              <ChoiceField
                name={`crates.${index}.sealIntact`}
                label={words.sealIntact}
                choices={sealAnswers}
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
          <fieldset>
            <legend>{words.air}</legend>
            <p className="quiet small">{words.airHint}</p>
            <FieldGrid>
              {(["outsideC", "roomC", "roomHumidity"] as const).map((name) => (
                <TextField
                  key={name}
                  label={words[name]}
                  name={name}
                  inputMode="decimal"
                  error={issueOf(state, name)}
                />
              ))}
            </FieldGrid>
          </fieldset>
          <p className="quiet small">{words.receivedFixed}</p>
          <FormActions>
            <button type="submit" disabled={pending}>
              {words.receive}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}

export type Counted = {
  specimenId: string;
  accessionNumber: string;
  title: string;
  components: readonly { name: string; count: number }[];
};

/** @param withComponents whether what went out with it is asked for piece by piece */
export function CountFields({
  specimens,
  withComponents,
  error,
}: {
  specimens: readonly Counted[];
  withComponents: boolean;
  error: (path: string) => string | undefined;
}) {
  return (
    <>
      {specimens.map(({ specimenId, accessionNumber, title, components }, index) => (
        <fieldset key={specimenId}>
          <legend>
            <span className="mono">{accessionNumber}</span> {title}
          </legend>
          <input type="hidden" name="counted" value={specimenId} />
          <ChoiceField
            name={`counts.${index}.present`}
            label={words.present}
            choices={yesOrNo}
            error={error(`counts.${index}.present`)}
          />
          {withComponents && components.length > 0 && (
            <fieldset>
              <legend>{words.components}</legend>
              <FieldGrid>
                {components.map(({ name, count }, place) => (
                  <div key={name}>
                    <input type="hidden" name={`counts.${index}.component`} value={name} />
                    <TextField
                      label={words.componentsOf(name, count)}
                      name={`counts.${index}.missingComponents.${place}`}
                      inputMode="numeric"
                      error={error(`counts.${index}.missingComponents.${place}.missing`)}
                    />
                  </div>
                ))}
              </FieldGrid>
            </fieldset>
          )}
          <TextField
            label={words.remark}
            name={`counts.${index}.remark`}
            error={error(`counts.${index}.remark`)}
          />
        </fieldset>
      ))}
    </>
  );
}

export function OpenCrateForm({
  action,
  crate,
  specimens,
}: {
  action: FormAction;
  crate: { code: string };
  specimens: readonly Counted[];
}) {
  const label = words.open(crate.code);
  return (
    <ActionForm action={action} label={label}>
      {(state, pending) => (
        <>
          <h3>{label}</h3>
          <CountFields specimens={specimens} withComponents={false} error={(path) => issueOf(state, path)} />
          <FormActions>
            <button type="submit" disabled={pending}>
              {words.openButton}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
