/** Small acts beside the record: a picture, a step of the making. */
"use client";

import { ActionForm } from "#app/_parts/action-form.tsx";
import { FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import type { FormState } from "#app/_parts/form-state.ts";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { sentence } from "#app/_words/sentences.ts";
import { savePicture, saveStep } from "#app/(signed-in)/specimens/actions.ts";
import { mostPictureBytes, preparationStepNames } from "#lib/specimens/schema.ts";

/** A picture that would be refused for its size is not sent at all. */
async function sendPicture(specimenId: string, before: FormState, fields: FormData): Promise<FormState> {
  const file = fields.get("picture");
  if (!(file instanceof File) || file.size <= mostPictureBytes)
    return await savePicture(specimenId, before, fields);
  const message = sentence("picture.too-large");
  return { state: "refused", kind: "invalid", message, issues: [] };
}

export function PictureForm({ specimenId }: { specimenId: string }) {
  return (
    <details>
      <summary>{words.addPicture}</summary>
      <ActionForm action={sendPicture.bind(null, specimenId)} label={words.addPicture}>
        <TextField
          label={words.picture}
          hint={words.pictureHint}
          name="picture"
          type="file"
          accept="image/jpeg,image/png,image/webp"
          required
        />
        <FormActions>
          <button type="submit">{words.addPicture}</button>
        </FormActions>
      </ActionForm>
    </details>
  );
}

export function StepForm({ specimenId }: { specimenId: string }) {
  return (
    <details>
      <summary>{words.addStep}</summary>
      <ActionForm action={saveStep.bind(null, specimenId)} label={words.addStep}>
        <FieldGrid>
          <SelectField label={words.step} name="step" options={preparationStepNames} />
          <TextField label={words.from} name="startedOn" type="date" />
          <TextField label={words.to} name="endedOn" type="date" />
          <TextField label={words.note} name="note" />
        </FieldGrid>
        <FormActions>
          <button type="submit">{words.addStep}</button>
        </FormActions>
      </ActionForm>
    </details>
  );
}
