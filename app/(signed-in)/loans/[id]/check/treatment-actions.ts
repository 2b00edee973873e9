"use server";
/** Keeping the hours of treatment from a loan's file. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { treatmentWords as words } from "#app/_words/en/treatment.ts";
import { estimateTreatment } from "#lib/loans/commands/treatment.ts";
import { treatmentOf } from "#lib/loans/queries/treatment.ts";

/** A decimal in the one way in which it is kept: "1.50" and "1,5" are meant as 1.5. */
function asDecimal(typed: string): string {
  const text = typed.replace(",", ".");
  return /^\d+\.\d*$/.test(text) ? text.replace(/\.?0*$/, "") : text;
}

export async function keepTreatment(
  loanId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    const specimenId = textIn(fields, "specimenId");
    const typed = textIn(fields, "hours").trim();
    const hours = typed === "" ? null : asDecimal(typed);
    await estimateTreatment(viewer, { loanId, specimenId, hours, work: textIn(fields, "work") });
    const rows = (await treatmentOf(viewer, loanId))?.rows ?? [];
    const number = rows.find((row) => row.specimenId === specimenId)?.accessionNumber ?? "";
    revalidatePath(`/loans/${loanId}`);
    return { message: hours === null ? words.takenBack(number) : words.done(number) };
  });
}
