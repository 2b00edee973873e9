"use server";
/** Putting a stand-in in the place of a specimen; the way leads back to the loan. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { runAction } from "#app/_server/action.ts";
import { substituteSpecimen } from "#lib/loans/commands/substitute.ts";

export async function substitute(
  loanId: string,
  specimenId: string,
  standInId: string,
  _before: FormState,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    await substituteSpecimen(viewer, { loanId, specimenId, standInId });
    revalidatePath(`/loans/${loanId}`);
    revalidatePath("/slip");
    return { goTo: `/loans/${loanId}#specimens` };
  });
}
