"use server";
/** Moves and bookings of the house, from a specimen's sheet. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { bookingWords, moveWords } from "#app/_words/en/whereabouts.ts";
import { formatRange } from "#app/_words/format.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { addDays, DateText } from "#lib/platform/dates.ts";
import { bookSpecimen, moveSpecimen, releaseBooking } from "#lib/whereabouts/commands.ts";
import type { HouseBookingInput } from "#lib/whereabouts/schema.ts";

/** Runs one act on a specimen and has its sheet drawn anew. */
async function actOnSpecimen(
  specimenId: string,
  act: (viewer: Viewer) => Promise<string>,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    const message = await act(viewer);
    revalidatePath(`/specimens/${specimenId}`);
    revalidatePath("/places", "layout");
    return { message };
  });
}

/** What a field of day and time holds, in universal time; null where it was left empty. */
function momentIn(fields: FormData, name: string): string | null {
  const typed = textIn(fields, name);
  if (typed === "") return null;
  return /T\d{2}:\d{2}$/.test(typed) ? `${typed}:00Z` : `${typed}Z`;
}

export async function moveByHand(
  specimenId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await actOnSpecimen(specimenId, async (viewer) => {
    const placeId = textIn(fields, "placeId");
    const reason = textIn(fields, "reason");
    const movedAt = momentIn(fields, "movedAt");
    return moveWords.moved((await moveSpecimen(viewer, { specimenId, placeId, reason, movedAt })).place);
  });
}

/** People say the last day; the calendar keeps the first that is free again. */
function dayAfter(lastDay: string): string {
  return DateText.safeParse(lastDay).success ? addDays(lastDay, 1) : lastDay;
}

type Days = Omit<HouseBookingInput, "specimenId">;

async function book(specimenId: string, days: Days): Promise<FormState> {
  return await actOnSpecimen(specimenId, async (viewer) => {
    await bookSpecimen(viewer, { specimenId, ...days });
    return bookingWords.booked(formatRange(days.startsOn, days.endsOn));
  });
}

export async function bookDays(specimenId: string, _before: FormState, fields: FormData): Promise<FormState> {
  return await book(specimenId, {
    purpose: textIn(fields, "purpose") as Days["purpose"],
    startsOn: textIn(fields, "startsOn"),
    endsOn: dayAfter(textIn(fields, "lastDay")),
  });
}

export async function bookAgain(specimenId: string, days: Days): Promise<FormState> {
  return await book(specimenId, days);
}

export async function giveBack(specimenId: string, bookingId: string): Promise<FormState> {
  return await actOnSpecimen(specimenId, async (viewer) => {
    await releaseBooking(viewer, { bookingId });
    return bookingWords.released;
  });
}
