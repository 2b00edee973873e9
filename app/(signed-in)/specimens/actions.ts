"use server";
/** Writes of the catalogue's pages. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { runAction } from "#app/_server/action.ts";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { addPicture } from "#lib/specimens/commands/add-picture.ts";
import { recordPreparationStep } from "#lib/specimens/commands/record-preparation-step.ts";
import { recordShown } from "#lib/specimens/commands/record-shown.ts";
import { recordSpecimen, reviseSpecimen } from "#lib/specimens/commands/record-specimen.ts";
import type { PreparationStepInput, Shown, SpecimenInput } from "#lib/specimens/schema.ts";

export async function saveNewSpecimen(values: SpecimenInput): Promise<FormState> {
  return await runAction(async (viewer) => ({
    goTo: `/specimens/${(await recordSpecimen(viewer, values)).id}`,
  }));
}

export async function saveSpecimen(id: string, version: number, values: SpecimenInput): Promise<FormState> {
  return await runAction(async (viewer) => {
    await reviseSpecimen(viewer, { id, version, ...values });
    revalidatePath(`/specimens/${id}`);
    return { goTo: `/specimens/${id}` };
  });
}

export async function saveShown(id: string, values: { shown: Shown[] }): Promise<FormState> {
  return await runAction(async (viewer) => {
    await recordShown(viewer, { specimenId: id, shown: values.shown });
    revalidatePath(`/specimens/${id}`);
    return { goTo: `/specimens/${id}#shows` };
  });
}

export async function savePicture(id: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const file = fields.get("picture");
    if (!(file instanceof File) || file.size === 0) throw new Refusal("invalid", "picture.unreadable");
    await addPicture(viewer, { specimenId: id, content: new Uint8Array(await file.arrayBuffer()) });
    revalidatePath(`/specimens/${id}`);
    return { message: words.saved };
  });
}

export async function saveStep(id: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const text = (name: string) => String(fields.get(name) ?? "");
    await recordPreparationStep(viewer, {
      specimenId: id,
      step: text("step") as PreparationStepInput["step"],
      startedOn: text("startedOn") || null,
      endedOn: text("endedOn") || null,
      note: text("note"),
    });
    revalidatePath(`/specimens/${id}`);
    return { message: words.saved };
  });
}
