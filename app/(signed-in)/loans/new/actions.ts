"use server";
/** Opening a loan for the institution that a venue belongs to. */

import { revalidatePath } from "next/cache";
import type { FormState } from "#app/_parts/form-state.ts";
import { textIn } from "#app/_parts/sent-fields.ts";
import { runAction } from "#app/_server/action.ts";
import { openLoan } from "#lib/loans/commands/open-loan.ts";
import { stateRequest } from "#lib/loans/commands/state-request.ts";
import { getLoan } from "#lib/loans/queries.ts";
import { listVenueNames } from "#lib/people/queries.ts";
import { Refusal } from "#lib/platform/refusal.ts";

export async function openFor(_before: FormState, fields: FormData): Promise<FormState> {
  return await runAction(async (viewer) => {
    const venueId = textIn(fields, "venueId");
    const venue = (await listVenueNames(viewer)).find((one) => one.id === venueId);
    if (!venue)
      throw new Refusal("invalid", "input.invalid", {}, [
        { path: "borrowerId", message: "loan.borrower-missing" },
      ]);
    const { id } = await openLoan(viewer, {
      borrowerId: venue.institutionId,
      request: null,
      specimenIds: [],
    });
    const { request } = await getLoan(viewer, id);
    if (request.venueId !== venueId)
      await stateRequest(viewer, { loanId: id, request: { ...request, venueId } });
    revalidatePath("/loans");
    return { goTo: `/loans/${id}` };
  });
}
