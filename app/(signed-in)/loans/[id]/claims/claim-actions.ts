"use server";
/** Writes of claims. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { minorIn, textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { claimWords as words } from "#app/_words/en/claims.ts";
import type { ClaimEventInput } from "#lib/loans/claims.ts";
import { openClaim, recordClaimEvent } from "#lib/loans/commands/claims.ts";

export async function open(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const { number } = await openClaim(viewer, {
      loanId,
      specimenId: textIn(fields, "specimenId"),
      note: textIn(fields, "note"),
    });
    revalidatePath(`/loans/${loanId}`);
    return { message: words.opened(number) };
  });
}

export async function recordStep(
  loanId: string,
  claimId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    const currency = textIn(fields, "amount.currency").toUpperCase();
    const minor = minorIn(fields, "amount.minor", currency);
    await recordClaimEvent(viewer, {
      claimId,
      kind: textIn(fields, "kind") as ClaimEventInput["kind"],
      amount: minor === null ? null : { minor, currency },
      note: textIn(fields, "note"),
    });
    revalidatePath(`/loans/${loanId}`);
    return { message: words.recorded };
  });
}
