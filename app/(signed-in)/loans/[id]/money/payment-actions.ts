"use server";
/** Writes of payments. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { minorIn, textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { paymentWords as words } from "#app/_words/en/payments.ts";
import type { PaymentInput } from "#lib/costing/payments.ts";
import { putOffPayment, recordPayment } from "#lib/loans/commands/payments.ts";

export async function enterPayment(
  loanId: string,
  currency: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    await recordPayment(viewer, {
      loanId,
      kind: textIn(fields, "kind") as PaymentInput["kind"],
      // an empty amount is refused by the command, at its field
      amountMinor: minorIn(fields, "amountMinor", currency) ?? 0,
      paidOn: textIn(fields, "paidOn"),
      reference: textIn(fields, "reference"),
      note: textIn(fields, "note"),
    });
    revalidatePath(`/loans/${loanId}`);
    return { message: words.recorded };
  });
}

export async function putOff(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    await putOffPayment(viewer, {
      loanId,
      until: textIn(fields, "until"),
      reason: textIn(fields, "reason"),
    });
    revalidatePath(`/loans/${loanId}`);
    return { message: words.isPutOff };
  });
}
