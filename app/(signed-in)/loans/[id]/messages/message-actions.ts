"use server";
/** Messages on a loan, and the hold that the last reminder proposes. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { messageWords as words } from "#app/_words/en/letters.ts";
import { troubleWords as trouble } from "#app/_words/en/trouble.ts";
import { readMessages, writeMessage } from "#lib/loans/commands/messages.ts";
import { holdNewLoans } from "#lib/loans/commands/reminders.ts";

export async function sendMessage(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    await writeMessage(viewer, { loanId, text: textIn(fields, "text") });
    revalidatePath(`/loans/${loanId}`);
    return { message: words.sent };
  });
}

/** What is wrong, told the centre as a message that begins with what it is and of which specimen. */
export async function tellTrouble(loanId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const kind = trouble.kinds.find((one) => one === textIn(fields, "kind")) ?? trouble.kinds[5];
    const about = textIn(fields, "about") || trouble.wholeLoan;
    const text = textIn(fields, "text").trim();
    await writeMessage(viewer, { loanId, text: text === "" ? "" : trouble.message(kind, about, text) });
    revalidatePath(`/loans/${loanId}`);
    return { message: trouble.sent };
  });
}

export async function markRead(loanId: string, _before: FormState): Promise<FormState> {
  return await runAction(async (viewer) => {
    await readMessages(viewer, { loanId });
    revalidatePath(`/loans/${loanId}`);
    return { message: words.readDone };
  });
}

export async function holdBorrower(loanId: string, _before: FormState): Promise<FormState> {
  return await runAction(async (viewer) => {
    await holdNewLoans(viewer, { loanId });
    revalidatePath(`/loans/${loanId}`);
    return { message: words.holdDone };
  });
}
