/** The days of reminders as one line of numbers. */
"use client";

import { ActionForm } from "#app/_parts/action-form.tsx";
import { FormActions, TextField } from "#app/_parts/fields.tsx";
import { reminderWords as words } from "#app/_words/en/letters.ts";
import { saveReminders } from "#app/(signed-in)/centre/reminders/actions.ts";

export function ReminderForm({ days }: { days: string }) {
  return (
    <ActionForm action={saveReminders} label={words.title}>
      {(state, pending) => (
        <>
          <TextField
            label={words.days}
            hint={words.daysHint}
            name="days"
            defaultValue={days}
            autoComplete="off"
            error={
              state.state === "refused"
                ? state.issues.find(({ path }) => path.startsWith("days"))?.message
                : undefined
            }
          />
          <FormActions>
            <button type="submit" disabled={pending}>
              {words.save}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
