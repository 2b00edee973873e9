"use server";
/** Recording a check on a loan. The file of the loan then says that it was signed. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { runAction } from "#app/_server/action.ts";
import type { CheckRecord } from "#lib/condition/recording.ts";
import { recordCheck } from "#lib/loans/commands/record-check.ts";

/** @param back the loan's file and the place in it */
export async function saveCheckOnLoan(back: string, values: CheckRecord): Promise<FormState> {
  return await runAction(async (viewer) => {
    const { id } = await recordCheck(viewer, values);
    const [file = back, place] = back.split("#");
    revalidatePath(file);
    return { goTo: `${file}?checked=${id}${place === undefined ? "" : `#${place}`}` };
  });
}
