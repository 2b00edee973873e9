/** One press puts a specimen on the enquiry slip, with the days that were looked for. */
"use client";

import { ActionForm } from "#app/_parts/action-form.tsx";
import { catalogueWords as words } from "#app/_words/en/catalogue.ts";
import { noteOnSlip } from "#app/(signed-in)/slip/actions.ts";

export function SlipButton({
  specimenId,
  number,
  days = null,
}: {
  specimenId: string;
  number: string;
  /** The days that were looked for. */
  days?: { startsOn: string; endsOn: string } | null;
}) {
  return (
    <ActionForm action={noteOnSlip} label={`${words.addToSlip}: ${number}`}>
      <input type="hidden" name="specimenId" value={specimenId} />
      {days && (
        <>
          <input type="hidden" name="freeFrom" value={days.startsOn} />
          <input type="hidden" name="freeUntil" value={days.endsOn} />
        </>
      )}
      <button type="submit" className="outline" aria-label={`${words.addToSlip}: ${number}`}>
        {words.addToSlip}
      </button>
    </ActionForm>
  );
}
