/** A place's record as one form, for a new one and for a change. */
"use client";

import Link from "next/link";
import { FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { useRecordForm } from "#app/_parts/use-record-form.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import { placePageWords as words } from "#app/_words/en/whereabouts.ts";
import { savePlace } from "#app/(signed-in)/places/actions.ts";
import { homeKinds, PlaceInput } from "#lib/whereabouts/schema.ts";

const orNull = { setValueAs: (chosen: unknown) => (chosen === "" || chosen === undefined ? null : chosen) };

export function PlaceForm({
  start,
  around,
  back,
}: {
  start: PlaceInput;
  /** The places that it may lie in. */
  around: readonly (readonly [value: string, word: string])[];
  back: string;
}) {
  const { form, state, pending, submit, errorOf } = useRecordForm<PlaceInput>(PlaceInput, start, savePlace);
  const { register } = form;
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <FieldGrid>
        <TextField label={words.name} hint={words.nameHint} {...register("name")} error={errorOf("name")} />
        <TextField
          label={words.code}
          hint={words.codeHint}
          className="mono"
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          {...register("code")}
          error={errorOf("code")}
        />
        <SelectField
          label={words.kind}
          options={homeKinds.map((kind) => [kind, words.kinds[kind]] as const)}
          {...register("kind")}
          error={errorOf("kind")}
        />
        <SelectField
          label={words.parent}
          hint={words.parentHint}
          options={around}
          empty={words.outermost}
          {...register("parentId", orNull)}
          error={errorOf("parentId")}
        />
      </FieldGrid>
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
