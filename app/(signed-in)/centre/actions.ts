"use server";
/** What the centre says of itself. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { runAction } from "#app/_server/action.ts";
import { configureCentre } from "#lib/people/commands.ts";
import type { CentreInput } from "#lib/people/schema.ts";

export async function saveCentre(values: CentreInput): Promise<FormState> {
  return await runAction(async (viewer) => {
    await configureCentre(viewer, values);
    revalidatePath("/centre", "layout");
    return { goTo: "/centre" };
  });
}
