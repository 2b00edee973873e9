"use server";
/** The days on which the centre reminds. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { reminderWords } from "#app/_words/en/letters.ts";
import { configureReminders } from "#lib/loans/commands/reminders.ts";

/** A sign may be the typographer's; what is no number is none. */
const daysIn = (typed: string): number[] =>
  typed
    .replaceAll("\u2212", "-")
    .split(/[,;\s]+/)
    .filter((part) => part !== "")
    .map((part) => (/^[+-]?\d{1,4}$/.test(part) ? Number(part) : Number.NaN));

export async function saveReminders(_before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    await configureReminders(viewer, { days: daysIn(textIn(fields, "days")) });
    revalidatePath("/centre/reminders");
    return { message: reminderWords.saved };
  });
}
