/** Filing a logger's file: the file, where the logger stood, and what the file may leave open. */
"use client";

import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { FieldGrid, FormActions, SelectField, TextField } from "#app/_parts/fields.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { facilityWords as words } from "#app/_words/en/facility.ts";
import { dateOrders } from "#lib/environment/logger-clock.ts";

/** Offsets from UTC that clocks on earth keep, in minutes; by hours, and the halves that some countries keep. */
const offsets = [
  -600, -540, -480, -420, -360, -300, -240, -210, -180, -120, -60, 0, 60, 120, 180, 210, 240, 270, 300, 330,
  345, 360, 390, 420, 480, 540, 570, 600, 660, 720, 780,
];

function offsetText(minutes: number): string {
  const size = Math.abs(minutes);
  const hours = String(Math.floor(size / 60)).padStart(2, "0");
  return `UTC${minutes < 0 ? "−" : "+"}${hours}:${String(size % 60).padStart(2, "0")}`;
}

export function RecordForm({ action }: { action: FormAction }) {
  return (
    <details className="no-print">
      <summary>{words.fileRecord}</summary>
      <ActionForm action={action} label={words.fileRecord}>
        {(state, pending) => (
          <>
            <p>{words.fileRecordAbout}</p>
            <FieldGrid>
              <TextField
                label={words.recordFile}
                name="content"
                type="file"
                accept=".csv,.txt,.tsv,text/csv,text/plain,text/tab-separated-values"
                required
                error={issueOf(state, "content")}
              />
              <TextField label={words.recordName} name="name" required error={issueOf(state, "name")} />
              <SelectField
                label={words.clock}
                hint={words.clockHint}
                name="clock"
                empty={words.clockAsFile}
                options={offsets.map((minutes) => [String(minutes), offsetText(minutes)] as const)}
                error={issueOf(state, "utcOffsetMinutes")}
              />
              <SelectField
                label={words.dateOrder}
                name="dateOrder"
                empty={words.orderAsFile}
                options={dateOrders
                  .filter((order) => order !== "year first")
                  .map((order) => [order, words.orders[order]] as const)}
                error={issueOf(state, "dateOrder")}
              />
            </FieldGrid>
            <FormActions>
              <button type="submit" disabled={pending}>
                {words.fileRecord}
              </button>
            </FormActions>
          </>
        )}
      </ActionForm>
    </details>
  );
}
