/** One press puts a specimen on the enquiry slip. */
"use client";

import { ActionForm } from "#app/_parts/action-form.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { noteOnSlip } from "#app/(signed-in)/slip/actions.ts";

export function SlipButton({ specimenId, number }: { specimenId: string; number: string }) {
  return (
    <ActionForm action={noteOnSlip} label={`${words.addToSlip}: ${number}`}>
      <input type="hidden" name="specimenId" value={specimenId} />
      <button type="submit" className="outline" aria-label={`${words.addToSlip}: ${number}`}>
        {words.addToSlip}
      </button>
    </ActionForm>
  );
}
