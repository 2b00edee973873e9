/**
 * The sealed record of one donor: opened with a stated reason and shown once, in
 * this place and only until the page is left. Who keeps sealed records corrects it
 * from what was opened, never blindly.
 */
"use client";

import { startTransition, useActionState, useState } from "react";
import { ActionForm, type FormAction } from "#app/_parts/action-form.tsx";
import { Facts } from "#app/_parts/facts.tsx";
import { FieldGrid, FormActions, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { DateText, Unknown } from "#app/_parts/figures.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { type FormState, idle, issueOf } from "#app/_parts/form-state.ts";
import { answerToLacking } from "#app/_parts/lacking.ts";
import { donorsWords as words } from "#app/_words/en/donors.ts";
import type { SealedState } from "#app/(signed-in)/donors/sealed-state.ts";
import type { SealedRecordInput } from "#lib/provenance/schema.ts";

/** Both acts come bound to the donor from the page: made here, they would be new ones at every drawing. */
type SealedActs = {
  open: (before: SealedState, fields: FormData) => Promise<SealedState>;
  keep: FormAction;
};

function KeepForm({ keep, start }: { keep: FormAction; start: SealedRecordInput | null }) {
  return (
    <ActionForm action={keep} label={start ? words.correct : words.keepTitle}>
      {(state) => (
        <>
          <FieldGrid>
            <TextField
              label={words.fullName}
              name="fullName"
              defaultValue={start?.fullName}
              autoComplete="off"
              required
              error={issueOf(state, "fullName")}
            />
            <TextField
              label={words.bornOn}
              type="date"
              name="bornOn"
              defaultValue={start?.bornOn ?? ""}
              error={issueOf(state, "bornOn")}
            />
            <TextField
              label={words.diedOn}
              type="date"
              name="diedOn"
              defaultValue={start?.diedOn ?? ""}
              error={issueOf(state, "diedOn")}
            />
            <TextField
              label={words.documentPlace}
              name="documentPlace"
              defaultValue={start?.documentPlace}
              autoComplete="off"
              error={issueOf(state, "documentPlace")}
            />
          </FieldGrid>
          <TextAreaField
            label={words.kin}
            hint={words.kinHint}
            name="kin"
            defaultValue={start?.kin}
            error={issueOf(state, "kin")}
          />
          <FormActions>
            <button type="submit">{start ? words.keepChanged : words.keep}</button>
          </FormActions>
        </>
      )}
    </ActionForm>
  );
}

function OpenRecord({
  record,
  onClose,
  keep,
}: {
  record: SealedRecordInput;
  onClose: () => void;
  keep: FormAction | null;
}) {
  return (
    <div className="no-print">
      <p role="status" className="form-done">
        {words.openedNote}
      </p>
      <Facts
        facts={[
          [words.fullName, record.fullName],
          [words.bornOn, <DateText key="born" date={record.bornOn} />],
          [words.diedOn, <DateText key="died" date={record.diedOn} />],
          [words.kin, record.kin || <Unknown key="kin" />],
          [words.documentPlace, record.documentPlace || <Unknown key="papers" />],
        ]}
      />
      <button type="button" className="outline" onClick={onClose}>
        {words.close}
      </button>
      {keep && (
        <details>
          <summary>{words.correct}</summary>
          <KeepForm keep={keep} start={record} />
        </details>
      )}
    </div>
  );
}

function Opening({ open, keep }: { open: SealedActs["open"]; keep: FormAction | null }) {
  const [state, send, pending] = useActionState<SealedState, FormData>(open, idle);
  const [closed, setClosed] = useState<SealedRecordInput | null>(null);
  const [lacking, setLacking] = useState<FormState | null>(null);
  if (state.state === "open" && state.record !== closed)
    return <OpenRecord record={state.record} onClose={() => setClosed(state.record)} keep={keep} />;
  return (
    <form
      action={send}
      aria-label={words.open}
      noValidate
      onSubmit={(event) => {
        // Sent by hand, so that a reason that was refused stays to be completed.
        event.preventDefault();
        const refused = answerToLacking(event.currentTarget);
        setLacking(refused);
        if (refused) return;
        const fields = new FormData(event.currentTarget);
        startTransition(() => send(fields));
      }}
    >
      <p>
        {words.sealedKept} {keep && words.openToCorrect}
      </p>
      <p>{words.openAbout}</p>
      <TextAreaField
        label={words.reason}
        hint={words.reasonHint}
        name="reason"
        rows={2}
        minLength={10}
        maxLength={500}
        required
      />
      {state.state !== "open" && <FormAnswer state={lacking ?? state} />}
      <FormActions>
        <button type="submit" disabled={pending}>
          {words.open}
        </button>
      </FormActions>
    </form>
  );
}

/**
 * @param kept whether there is a record to open
 * @param open opens it, with a reason; null for who may not
 * @param keep keeps it; null for who keeps no sealed records
 */
export function SealedRecordPanel({
  kept,
  open,
  keep,
}: {
  kept: boolean;
  open: SealedActs["open"] | null;
  keep: FormAction | null;
}) {
  if (kept) return open ? <Opening open={open} keep={keep} /> : <p>{words.sealedKept}</p>;
  return (
    <>
      <p>{words.sealedNone}</p>
      {keep ? <KeepForm keep={keep} start={null} /> : <p className="quiet">{words.sealedNoneToYou}</p>}
    </>
  );
}
