/**
 * A form of plain fields that sends itself to a Server Action and shows the
 * answer beside its button. It works without JavaScript; with it, what was typed
 * stays in the fields when the answer is a refusal, and what is still empty is
 * said in the same place as everything else, before it is sent.
 */
"use client";

import { type ReactNode, startTransition, useActionState, useEffect, useRef, useState } from "react";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { type FormState, idle } from "#app/_parts/form-state.ts";
import { answerToLacking, controlsOf, firstRefused, reachField } from "#app/_parts/lacking.ts";

export type FormAction = (before: FormState, fields: FormData) => Promise<FormState>;

/** @param children the fields, or a function that draws them with the form's state */
export function ActionForm({
  action,
  children,
  label,
  className,
}: {
  action: FormAction;
  children: ReactNode | ((state: FormState, pending: boolean) => ReactNode);
  label: string;
  className?: string | undefined;
}) {
  const [answer, send, pending] = useActionState(action, idle);
  const [lacking, setLacking] = useState<FormState | null>(null);
  const state = lacking ?? answer;
  const form = useRef<HTMLFormElement>(null);
  const sentBy = useRef<HTMLElement | null>(null);

  // A button that waits lets go of the focus: with the answer it goes to what is refused, or back.
  useEffect(() => {
    if (answer.state === "idle" || document.activeElement !== document.body) return;
    const refused = form.current && firstRefused(controlsOf(form.current), answer);
    if (refused) reachField(refused);
    else sentBy.current?.focus({ preventScroll: true });
  }, [answer]);

  return (
    <form
      ref={form}
      action={send}
      aria-label={label}
      className={className}
      noValidate
      onSubmit={(event) => {
        // The form is sent by hand, so that the browser does not empty it after a refusal.
        event.preventDefault();
        const refused = answerToLacking(event.currentTarget);
        setLacking(refused);
        if (refused) return;
        const { submitter } = event.nativeEvent as SubmitEvent;
        sentBy.current = submitter;
        const fields = new FormData(event.currentTarget, submitter);
        startTransition(() => send(fields));
      }}
    >
      {typeof children === "function" ? children(state, pending) : children}
      {!pending && <FormAnswer state={state} />}
    </form>
  );
}
