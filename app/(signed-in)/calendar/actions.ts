"use server";
/** The address of one's own calendar: made, and revoked. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { runAction } from "#app/_server/action.ts";
import { formStateOf } from "#app/_server/refusals.ts";
import { currentViewer } from "#app/_server/viewer.ts";
import { calendarWords as words } from "#app/_words/en/calendar.ts";
import { makeCalendarFeed, revokeCalendarFeed } from "#lib/people/commands/calendar-feed.ts";
import { readConfig } from "#lib/platform/config.ts";
import { Refusal } from "#lib/platform/refusal.ts";

export type FeedState = { form: FormState; address: string | null };

/** The address is told once, in the answer, and stands nowhere else. */
export async function makeAddress(_before: FeedState): Promise<FeedState> {
  try {
    const viewer = await currentViewer();
    if (!viewer) throw new Refusal("unauthenticated", "permission.sign-in");
    const { token } = await makeCalendarFeed(viewer, {});
    revalidatePath("/calendar");
    return { form: { state: "idle" }, address: new URL(`/calendar/${token}.ics`, readConfig().url).href };
  } catch (error) {
    if (error instanceof Refusal) return { form: formStateOf(error), address: null };
    throw error;
  }
}

export async function revokeAddress(_before: FormState): Promise<FormState> {
  return await runAction(async (viewer) => {
    await revokeCalendarFeed(viewer, {});
    revalidatePath("/calendar");
    return { message: words.revoked };
  });
}
