"use server";
/** Recording a check. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { runAction } from "#app/_server/action.ts";
import type { CheckRecord } from "#lib/condition/recording.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";

export async function saveCheck(back: string, values: CheckRecord): Promise<FormState> {
  return await runAction(async (viewer) => {
    await recordCheck(viewer, values);
    revalidatePath(back.split("#")[0] ?? back);
    return { goTo: back };
  });
}
