"use server";
/** The carrier's word, by its link; an unknown link and one that ran out answer alike. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { allIn, answerIn, textIn } from "#app/_parts/sent-fields.ts";
import { formStateOf } from "#app/_server/refusals.ts";
import { carryWords as words } from "#app/_words/en/carry.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { confirmByCarrier } from "#lib/shipments/commands.ts";
import type { carrierWords } from "#lib/shipments/schema.ts";

export async function giveCarrierWord(
  token: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  try {
    await confirmByCarrier(token, {
      word: textIn(fields, "word") as (typeof carrierWords)[number],
      driver: textIn(fields, "driver"),
      crates: allIn(fields, "crate").map((crateId, index) => ({
        crateId,
        sealIntact: answerIn(fields, `crates.${index}.sealIntact`) as boolean,
        outsideDamage: textIn(fields, `crates.${index}.outsideDamage`),
      })),
    });
  } catch (error) {
    if (error instanceof Refusal) return formStateOf(error);
    throw error;
  }
  revalidatePath(`/carry/${token}`);
  return { state: "done", message: words.recorded };
}
