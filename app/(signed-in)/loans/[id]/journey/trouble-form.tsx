/** For a borrower with whose specimens something is wrong: what to do and what not, and one form that tells the centre. */
"use client";

import Link from "next/link";
import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { FieldGrid, FormActions, SelectField, TextAreaField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { troubleWords as words } from "#app/_words/en/trouble.ts";

export function TroubleForm({
  action,
  specimens,
  phone,
  checks,
}: {
  action: FormAction;
  specimens: readonly { specimenId: string; accessionNumber: string; title: string }[];
  /** Where somebody of the centre is reached at once. */
  phone: string;
  /** Where a check is recorded, by specimen; empty for who records none. */
  checks: readonly { accessionNumber: string; address: string }[];
}) {
  return (
    <ActionForm action={action} label={words.title}>
      {(state, pending) => (
        <>
          <p>{words.about}</p>
          <h4>{words.doTitle}</h4>
          <ol>
            {words.todo.map((sentence, index) => (
              <li key={sentence}>
                {sentence}
                {index === words.todo.length - 1 && ` ${phone}.`}
              </li>
            ))}
          </ol>
          <h4>{words.dontTitle}</h4>
          <ul>
            {words.dont.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          <FieldGrid>
            <SelectField label={words.kind} name="kind" options={words.kinds} />
            <SelectField
              label={words.which}
              name="about"
              empty={words.wholeLoan}
              options={specimens.map(
                ({ accessionNumber, title }) => [accessionNumber, `${accessionNumber} ${title}`] as const,
              )}
            />
          </FieldGrid>
          <TextAreaField
            label={words.text}
            hint={words.textHint}
            name="text"
            rows={4}
            maxLength={3_500}
            required
            error={issueOf(state, "text")}
          />
          <FormActions>
            <button type="submit" disabled={pending}>
              {words.send}
            </button>
          </FormActions>
          {checks.map(({ accessionNumber, address }) => (
            <p key={address}>
              <Link href={address}>
                {words.check}: <span className="mono">{accessionNumber}</span>
              </Link>
            </p>
          ))}
        </>
      )}
    </ActionForm>
  );
}
