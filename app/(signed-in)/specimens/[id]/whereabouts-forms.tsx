/** The two short forms of whereabouts: moving a specimen, and booking days for the house. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { bookingWords, moveWords } from "#app/_words/en/whereabouts.ts";
import { housePurposes } from "#lib/whereabouts/schema.ts";

/** The first labels stand a little below the line that unfolds them. */
const unfolded = { paddingTop: "0.5rem" } as const;

export function MoveForm({
  action,
  places,
  label,
}: {
  action: FormAction;
  places: readonly (readonly [value: string, word: string])[];
  label: string;
}) {
  return (
    <ActionForm action={action} label={label}>
      {(state, pending) => (
        <div style={unfolded}>
          <FieldGrid>
            <SelectField
              label={moveWords.to}
              hint={moveWords.partsGoAlong}
              name="placeId"
              options={places}
              empty={moveWords.choose}
              required
              error={issueOf(state, "placeId")}
            />
            <TextField
              label={moveWords.reason}
              hint={moveWords.reasonHint}
              name="reason"
              maxLength={300}
              required
              error={issueOf(state, "reason")}
            />
            <TextField
              label={moveWords.at}
              hint={moveWords.atHint}
              name="movedAt"
              type="datetime-local"
              error={issueOf(state, "movedAt")}
            />
          </FieldGrid>
          <FormActions>
            <button type="submit" disabled={pending}>
              {label}
            </button>
          </FormActions>
        </div>
      )}
    </ActionForm>
  );
}

export function BookForm({ action, today }: { action: FormAction; today: string }) {
  return (
    <ActionForm action={action} label={bookingWords.book}>
      {(state, pending) => (
        <div style={unfolded}>
          <FieldGrid>
            <SelectField
              label={bookingWords.purpose}
              hint={bookingWords.partsGoAlong}
              name="purpose"
              options={housePurposes.map((purpose) => [purpose, bookingWords.purposes[purpose]] as const)}
              error={issueOf(state, "purpose")}
            />
            <TextField
              label={bookingWords.firstDay}
              name="startsOn"
              type="date"
              min={today}
              required
              error={issueOf(state, "startsOn")}
            />
            <TextField
              label={bookingWords.lastDay}
              hint={bookingWords.lastDayHint}
              name="lastDay"
              type="date"
              min={today}
              required
              error={issueOf(state, "endsOn")}
            />
          </FieldGrid>
          <FormActions>
            <button type="submit" disabled={pending}>
              {bookingWords.book}
            </button>
          </FormActions>
        </div>
      )}
    </ActionForm>
  );
}
