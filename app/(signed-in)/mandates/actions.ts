"use server";
/** Writes of mandates. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { allIn, minorIn, textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { mandateWords as words } from "#app/_words/en/mandates.ts";
import { giveMandate, revokeMandate } from "#lib/people/commands/mandates.ts";
import type { MandateAct } from "#lib/people/mandates.ts";

export async function give(_before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const currency = textIn(fields, "limit.currency").toUpperCase();
    const minor = minorIn(fields, "limit.minor", currency);
    await giveMandate(viewer, {
      accountId: textIn(fields, "accountId"),
      acts: allIn(fields, "acts") as MandateAct[],
      limit: minor === null ? null : { minor, currency },
      validFrom: textIn(fields, "validFrom"),
      validUntil: textIn(fields, "validUntil") || null,
      reference: textIn(fields, "reference"),
    });
    revalidatePath("/mandates");
    return { message: words.given };
  });
}

export async function revoke(mandateId: string, _before: FormState): Promise<FormState> {
  return await runAction(async (viewer) => {
    await revokeMandate(viewer, { mandateId });
    revalidatePath("/mandates");
    return { message: words.revokeDone };
  });
}
