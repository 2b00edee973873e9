"use server";
/** Writes of the enquiry slip: noting, taking off, saving the request and submitting it. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { allIn, textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { slipWords as words } from "#app/_words/en/slip.ts";
import { formatRange } from "#app/_words/format.ts";
import { sentence } from "#app/_words/sentences.ts";
import { askAgain } from "#lib/loans/commands/ask-again.ts";
import { noteSpecimen, removeSpecimen } from "#lib/loans/commands/note-specimen.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { stateRequest } from "#lib/loans/commands/state-request.ts";
import { submitRequest } from "#lib/loans/commands/submit-request.ts";
import type { RequestDraft } from "#lib/loans/inputs.ts";
import { findSlip } from "#lib/loans/queries/list-loans.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { isBorrower, type Viewer } from "#lib/people/viewer.ts";
import { DateText } from "#lib/platform/dates.ts";
import { audiences, purposes } from "#lib/suitability/schema.ts";

type Days = { startsOn: string; endsOn: string };

/** The days that were looked for in the catalogue, where both stand in the form and can be read. */
function lookedFor(fields: FormData): Days | null {
  const [startsOn, endsOn] = [textIn(fields, "freeFrom"), textIn(fields, "freeUntil")];
  const areDays = [startsOn, endsOn].every((day) => DateText.safeParse(day).success);
  return areDays && startsOn < endsOn ? { startsOn, endsOn } : null;
}

/** Notes specimens on the slip that is being gathered, or begins one for the days that were looked for. */
async function note(
  viewer: Viewer,
  specimenIds: string[],
  seriesId: string | null,
  days: Days | null,
): Promise<{ added: number; days: Days }> {
  const slip = await findSlip(viewer);
  if (slip) return await noteSpecimen(viewer, { loanId: slip.id, specimenIds, seriesId, days });
  const opened = await openLoan(viewer, { borrowerId: null, request: null, specimenIds, days });
  if (seriesId === null) return { added: specimenIds.length, days: opened.days };
  const noted = await noteSpecimen(viewer, { loanId: opened.id, specimenIds: [], seriesId, days });
  return { ...noted, added: noted.added + specimenIds.length };
}

export async function noteOnSlip(_before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const specimenId = textIn(fields, "specimenId");
    const seriesId = textIn(fields, "seriesId");
    const { added, days } = await note(
      viewer,
      specimenId === "" ? [] : [specimenId],
      seriesId === "" ? null : seriesId,
      lookedFor(fields),
    );
    revalidatePath("/slip");
    if (added === 0) return { message: words.notedAlready };
    return { message: words.noted(added, formatRange(days.startsOn, days.endsOn)) };
  });
}

/** What the set was sought for, taken over by a slip of which nothing is stated yet, so that it is not asked twice. */
async function takeOverWishes(viewer: Viewer, fields: FormData): Promise<void> {
  const slip = await findSlip(viewer);
  if (!slip) return;
  const { request } = await getLoan(viewer, slip.id);
  const purpose = purposes.find((one) => one === textIn(fields, "purpose"));
  const audience = audiences.find((one) => one === textIn(fields, "audience"));
  if (request.purpose !== "" || !purpose || !audience) return;
  await stateRequest(viewer, {
    loanId: slip.id,
    request: {
      ...request,
      purpose,
      audience,
      paidAdmission: textIn(fields, "paid") !== "",
      teachingUse: textIn(fields, "use") === "handling" ? "handling" : "viewing",
      venueId: textIn(fields, "venue") || request.venueId,
    },
  });
}

/** Puts a whole set on the slip, and goes on there unless the slip is for other days. */
export async function noteSetOnSlip(_before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const asked = lookedFor(fields);
    const { added, days } = await note(viewer, allIn(fields, "specimenId"), null, asked);
    await takeOverWishes(viewer, fields);
    revalidatePath("/slip");
    if (asked && asked.startsOn === days.startsOn && asked.endsOn === days.endsOn) return { goTo: "/slip" };
    // A slip that has its own days keeps them, and the set was sought for others.
    return { message: `${words.noted(added, formatRange(days.startsOn, days.endsOn))} ${words.keptItsDays}` };
  });
}

/** Opens a slip like an earlier loan; what is not free then is named there. */
export async function askLikeLastTime(
  loanId: string,
  _before: FormState,
  fields: FormData,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    const { id } = await askAgain(viewer, { loanId, startsOn: textIn(fields, "startsOn") || null });
    revalidatePath("/slip");
    return { goTo: isBorrower(viewer) ? `/slip?like=${loanId}` : `/loans/${id}` };
  });
}

export async function takeOffSlip(
  loanId: string,
  specimenId: string,
  _before: FormState,
): Promise<FormState> {
  return await runAction(async (viewer) => {
    await removeSpecimen(viewer, { loanId, specimenId });
    revalidatePath("/slip");
    revalidatePath(`/loans/${loanId}`);
    return { goTo: `/slip?off=${specimenId}` };
  });
}

/** The fields of a request stand under `request` for the command, and by themselves in the form. */
function atTheirFields(state: FormState): FormState {
  if (state.state !== "refused") return state;
  const issues = state.issues.map((issue) => ({ ...issue, path: issue.path.replace(/^request\./, "") }));
  return { ...state, issues };
}

export async function saveRequest(loanId: string, request: RequestDraft): Promise<FormState> {
  const state = await runAction(async (viewer) => {
    await stateRequest(viewer, { loanId, request });
    revalidatePath("/slip");
    revalidatePath(`/loans/${loanId}`);
    return { message: words.saved };
  });
  return atTheirFields(state);
}

/** Saves what is stated, then submits it; what is missing is told at its field. */
export async function saveAndSubmit(loanId: string, request: RequestDraft): Promise<FormState> {
  const saved = await saveRequest(loanId, request);
  if (saved.state !== "done") return saved;
  const sent = await runAction(async (viewer) => {
    await submitRequest(viewer, { loanId });
    revalidatePath("/slip");
    revalidatePath(`/loans/${loanId}`);
    return { goTo: `/loans/${loanId}` };
  });
  // It was saved before it was refused, and the sentence of a refused form says that nothing was.
  return sent.state === "refused" && sent.message === sentence("input.invalid", {})
    ? { ...sent, message: words.savedNotSubmitted }
    : sent;
}
