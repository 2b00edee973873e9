/** The whole record of an institution as one form, for a new one and for a change. */
"use client";

import Link from "next/link";
import { FieldGrid, FormActions, SelectField, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { CodesField, DayField } from "#app/_parts/record-fields.tsx";
import { useRecordForm } from "#app/_parts/use-record-form.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { institutionsWords as words } from "#app/_words/en/institutions.ts";
import { saveInstitution } from "#app/(signed-in)/institutions/actions.ts";
import { InstitutionInput, institutionKinds, standings } from "#lib/people/schema.ts";

export function InstitutionForm({ start, back }: { start: InstitutionInput; back: string }) {
  const { form, state, pending, submit, errorOf } = useRecordForm<InstitutionInput>(
    InstitutionInput,
    start,
    saveInstitution,
    `institution ${start.id ?? "new"}`,
  );
  const { register, control } = form;
  const languages = form.watch("languages");
  const languageError =
    errorOf("languages") ??
    languages.map((_language, index) => errorOf(`languages.${index}`)).find((error) => error !== undefined);
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <p className="quiet small">{fieldWords.keptDraft}</p>
      <FieldGrid>
        <TextField label={words.name} {...register("name")} error={errorOf("name")} />
        <SelectField
          label={words.kind}
          options={institutionKinds.map((kind) => [kind, words.kinds[kind]] as const)}
          {...register("kind")}
          error={errorOf("kind")}
        />
        <SelectField
          label={words.standing}
          options={standings.map((standing) => [standing, words.standings[standing]] as const)}
          {...register("standing")}
          error={errorOf("standing")}
        />
      </FieldGrid>
      <FieldGrid>
        <TextField label={words.address} {...register("address")} error={errorOf("address")} />
        <TextField label={words.city} {...register("city")} error={errorOf("city")} />
        <TextField
          label={words.country}
          hint={words.countryHint}
          {...register("countryCode")}
          error={errorOf("countryCode")}
        />
        <TextField label={words.email} type="email" {...register("email")} error={errorOf("email")} />
        <TextField label={words.phone} type="tel" {...register("phone")} error={errorOf("phone")} />
        <CodesField
          control={control}
          name="languages"
          label={words.languages}
          hint={words.languagesHint}
          error={languageError}
        />
        <DayField
          control={control}
          name="verifiedOn"
          label={words.verifiedOn}
          hint={words.verifiedOnHint}
          error={errorOf("verifiedOn")}
        />
      </FieldGrid>
      <TextAreaField label={words.note} {...register("note")} error={errorOf("note")} />
      <FormAnswer state={state} />
      <FormActions>
        <button type="submit" disabled={pending}>
          {words.save}
        </button>
        <Link href={back}>{fieldWords.cancel}</Link>
      </FormActions>
    </form>
  );
}
