/** Makes the address of one's own calendar, and tells it once. */
"use client";

import { startTransition, useActionState, useState } from "react";
import { FormActions } from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { idle } from "#app/_parts/form-state.ts";
import { calendarWords as words } from "#app/_words/en/calendar.ts";
import type { FeedState } from "#app/(signed-in)/calendar/actions.ts";

const none: FeedState = { form: idle, address: null };

export function FeedForm({
  action,
  has,
}: {
  action: (before: FeedState) => Promise<FeedState>;
  /** Whether there is an address already, which a new one takes the place of. */
  has: boolean;
}) {
  const [state, send, pending] = useActionState(action, none);
  const [copied, setCopied] = useState(false);
  const button = has || state.address !== null ? words.makeNew : words.make;
  return (
    <form
      aria-label={words.make}
      action={send}
      onSubmit={(event) => {
        event.preventDefault();
        setCopied(false);
        startTransition(() => send());
      }}
    >
      {state.address && (
        <div role="status" className="form-done">
          <p>{words.once}</p>
          <p className="mono" style={{ overflowWrap: "anywhere", whiteSpace: "normal" }}>
            {state.address}
          </p>
          <button
            type="button"
            className="outline"
            onClick={() =>
              void navigator.clipboard.writeText(state.address ?? "").then(() => setCopied(true))
            }
          >
            {copied ? words.copied : words.copy}
          </button>
        </div>
      )}
      <FormAnswer state={state.form} />
      <FormActions>
        <button type="submit" disabled={pending}>
          {button}
        </button>
      </FormActions>
    </form>
  );
}
