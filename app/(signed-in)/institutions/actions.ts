"use server";
/** Writes of institutions and venues. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { runAction } from "#app/_server/action.ts";
import { keepInstitution, keepVenue } from "#lib/people/commands.ts";
import type { InstitutionInput, VenueInput } from "#lib/people/schema.ts";

export async function saveInstitution(values: InstitutionInput): Promise<FormState> {
  return await runAction(async (viewer) => {
    const id = await keepInstitution(viewer, values);
    revalidatePath("/institutions", "layout");
    return { goTo: `/institutions/${id}` };
  });
}

export async function saveVenue(values: VenueInput): Promise<FormState> {
  return await runAction(async (viewer) => {
    const id = await keepVenue(viewer, values);
    revalidatePath("/institutions", "layout");
    return { goTo: `/institutions/${values.institutionId}#venue-${id}` };
  });
}
