"use server";
/** A letter goes back into the outbox. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { letterPages } from "#app/_words/en/letters.ts";
import { sendLetterAgain } from "#lib/desk/commands/send-letter-again.ts";

export async function sendAgain(letterId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    await sendLetterAgain(viewer, { letterId, address: textIn(fields, "address") });
    revalidatePath(`/letters/${letterId}`);
    return { message: letterPages.againDone };
  });
}
