/** Days of loans beyond the request: an opening that was stated, a longer loan that is asked for, what is asked back. */
import { askExtension } from "#lib/loans/commands/extension.ts";
import { movePlanStep } from "#lib/loans/commands/plan.ts";
import { recallLoan } from "#lib/loans/commands/recall.ts";
import type { LoanTale } from "#seed/loading/loan-tale.ts";
import { extensionsAsked, openings, recalls } from "#seed/scenario/loan-times.ts";

export function planTimes(tale: LoanTale): void {
  const { key, lecturer } = tale.loan;
  const opening = openings[key];
  if (opening)
    tale.at(opening.stated, () =>
      movePlanStep(tale.as("registrar"), {
        loanId: tale.id,
        step: "opening",
        to: tale.timeline.on(opening.day),
      }),
    );
  const asked = extensionsAsked[key];
  if (asked)
    tale.at(asked.day, () =>
      askExtension(tale.as(lecturer), {
        loanId: tale.id,
        endsOn: tale.timeline.on(asked.until),
        grounds: asked.grounds,
      }),
    );
  const recalled = recalls[key];
  if (recalled)
    tale.at(recalled.day, () =>
      recallLoan(tale.as("registrar"), {
        loanId: tale.id,
        specimenIds: recalled.specimens.map(tale.world.specimen),
        ground: recalled.ground,
        text: recalled.text,
        stopUse: false,
        returnBy: tale.timeline.on(recalled.returnBy),
      }),
    );
}
