/**
 * Drawing up a version: the languages, and what the clauses of this loan leave open.
 * All of it is folded away, because most agreements keep the standard; what differs
 * is marked, and a clause with a difference stands open.
 */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { type FormState, issueOf } from "#app/_parts/form-state.ts";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { agreementTermsWords as words } from "#app/_words/en/agreement-terms.ts";
import type { TermsField, TermsGroup } from "#app/(signed-in)/loans/[id]/agreement/terms-choices.ts";
import styles from "#app/(signed-in)/loans/[id]/loan-file.module.css";

function Field({ field, state }: { field: TermsField; state: FormState }) {
  const shared = {
    label: field.label,
    name: field.name,
    defaultValue: field.value,
    error: issueOf(state, field.name),
    hint: field.isOwn ? (
      <>
        <StateMark outcome="attend">{words.own}</StateMark> {field.hint}
      </>
    ) : (
      field.hint
    ),
  };
  if (field.options !== null) return <SelectField {...shared} options={field.options} />;
  return <TextField {...shared} inputMode={field.isNumber ? "numeric" : undefined} />;
}

export function DrawUpForm({
  action,
  button,
  versions,
  languages,
  chosen,
  groups,
}: {
  action: FormAction;
  button: string;
  /** How many there are; with a new one what was set for it is folded again. */
  versions: number;
  /** Which language may rule, and which may stand beside it. */
  languages: { ruling: readonly string[]; second: readonly string[] };
  chosen: readonly string[];
  groups: readonly TermsGroup[];
}) {
  const named = (codes: readonly string[]) =>
    codes.map((code) => [code, words.languages[code as "en"]] as const);
  return (
    <ActionForm action={action} label={button}>
      {(state, pending) => (
        <>
          <details key={versions} className={styles.block}>
            <summary>{words.set}</summary>
            <p className="quiet small">{words.setHint}</p>
            <FieldGrid>
              <SelectField
                label={words.ruling}
                name="ruling"
                options={named(languages.ruling)}
                defaultValue={chosen[0] ?? "en"}
                error={issueOf(state, "languages")}
              />
              <SelectField
                label={words.second}
                name="second"
                options={named(languages.second)}
                empty={words.noSecond}
                defaultValue={chosen[1] ?? ""}
              />
            </FieldGrid>
            {groups
              .filter(({ fields }) => fields.length > 0)
              .map((group) => (
                <details key={group.number} open={!group.isStandard}>
                  <summary>
                    {words.clause(group.number, group.heading)}{" "}
                    {!group.isStandard && <StateMark outcome="attend">{words.own}</StateMark>}
                  </summary>
                  <FieldGrid>
                    {group.fields.map((field) => (
                      <Field key={field.name} field={field} state={state} />
                    ))}
                  </FieldGrid>
                </details>
              ))}
          </details>
          <FormActions>
            <button type="submit" className={versions > 0 ? "outline" : undefined} disabled={pending}>
              {button}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
