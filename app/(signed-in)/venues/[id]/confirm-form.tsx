/** One tick that nothing has changed makes a new version with today's date. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { CheckField, FormActions } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { facilityWords as words } from "#app/_words/en/facility.ts";

export function ConfirmForm({ action, version }: { action: FormAction; version: number }) {
  return (
    <ActionForm action={action} label={words.confirm} className="no-print">
      {(state, pending) => (
        <>
          <input type="hidden" name="follows" value={version} />
          <CheckField
            label={words.unchangedTick(version)}
            hint={words.confirmAbout}
            name="unchanged"
            value="yes"
            error={issueOf(state, "unchanged")}
          />
          <FormActions>
            <button type="submit" className="outline" disabled={pending}>
              {words.confirm}
            </button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}
