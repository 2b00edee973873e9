"use server";
/** Writes towards the close of a loan. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { closingWords as words } from "#app/_words/en/closing.ts";
import { recordCustomsDischarge } from "#lib/loans/commands/discharge.ts";

export async function discharge(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    await recordCustomsDischarge(viewer, {
      loanId,
      dischargedOn: textIn(fields, "dischargedOn"),
      office: textIn(fields, "office"),
      reference: textIn(fields, "reference"),
      note: textIn(fields, "note"),
    });
    revalidatePath(`/loans/${loanId}`);
    return { message: words.recorded };
  });
}
