"use server";
/** Writes of places. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { runAction } from "#app/_server/action.ts";
import { keepPlace } from "#lib/whereabouts/commands.ts";
import type { PlaceInput } from "#lib/whereabouts/schema.ts";

export async function savePlace(values: PlaceInput): Promise<FormState> {
  return await runAction(async (viewer) => {
    const id = await keepPlace(viewer, values);
    revalidatePath("/places", "layout");
    return { goTo: `/places/${id}` };
  });
}
