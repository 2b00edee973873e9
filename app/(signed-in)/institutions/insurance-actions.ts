"use server";
/** Keeping an institution's insurance. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { allIn, isTicked, minorIn, textIn } from "#app/_parts/sent-fields.ts";
import { readCodes } from "#app/_parts/typed-codes.ts";
import { runAction } from "#app/_server/action.ts";
import { facilityWords as words } from "#app/_words/en/facility.ts";
import { keepInsurance } from "#lib/people/commands/insurance.ts";
import { addDays, DateText } from "#lib/platform/dates.ts";

export async function saveInsurance(
  institutionId: string,
  id: string | null,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    const currency = textIn(fields, "currency").toUpperCase();
    const lastDay = textIn(fields, "lastDay");
    await keepInsurance(viewer, {
      id,
      institutionId,
      insurer: textIn(fields, "insurer"),
      policyNumber: textIn(fields, "policyNumber"),
      minor: minorIn(fields, "minor", currency) ?? Number.NaN,
      currency,
      validFrom: textIn(fields, "firstDay"),
      validUntil: DateText.safeParse(lastDay).success ? addDays(lastDay, 1) : "",
      coversTransit: isTicked(fields, "coversTransit"),
      territories: allIn(fields, "territories").flatMap((typed) => readCodes(typed.toUpperCase())),
    });
    revalidatePath("/institutions", "layout");
    return { message: words.insuranceKept };
  });
}
