/**
 * A form of a whole record: react-hook-form checks each field with the same zod
 * schema that the server decides with; the server's refusals come back to the
 * fields they are about. What was typed is kept in the tab until it was saved.
 */
"use client";

import { zodResolver } from "@hookform/resolvers/zod";
import { useEffect, useState, useTransition } from "react";
import {
  type DefaultValues,
  type FieldValues,
  type Path,
  type UseFormReturn,
  useForm,
} from "react-hook-form";
import { z } from "zod";
import { type FormState, idle } from "#app/_parts/form-state.ts";
import { sentenceForIssue } from "#app/_words/sentences.ts";

// Compiling checks at run time would need a script policy with eval.
z.config({ jitless: true });

export type RecordForm<Values extends FieldValues> = {
  form: UseFormReturn<Values>;
  state: FormState;
  pending: boolean;
  submit: () => void;
  /** The sentence under a field, whoever found it. */
  errorOf: (path: Path<Values>) => string | undefined;
};

/**
 * @param save the Server Action; its refusals are shown at their fields
 * @param draftKey where an unsaved draft is kept in this tab; omit to keep none
 * @param tidy what an empty group of fields means, before the schema reads it
 */
export function useRecordForm<Values extends FieldValues>(
  schema: z.ZodType<Values, Values>,
  start: Values,
  save: (values: Values) => Promise<FormState>,
  draftKey?: string,
  tidy: (values: Values) => Values = (values) => values,
): RecordForm<Values> {
  const [state, setState] = useState<FormState>(idle);
  const [pending, startSaving] = useTransition();
  const form = useForm<Values>({
    resolver: (values, context, options) => zodResolver(schema)(tidy(values), context, options),
    defaultValues: start as DefaultValues<Values>,
    mode: "onTouched",
    // A sentence that appears as a field is left would move what is being pressed at that moment.
    delayError: 300,
  });

  useEffect(() => {
    if (!draftKey) return;
    const draft = sessionStorage.getItem(draftKey);
    if (draft) form.reset(JSON.parse(draft) as Values, { keepDefaultValues: true });
    const watching = form.watch((values) => sessionStorage.setItem(draftKey, JSON.stringify(values)));
    return () => watching.unsubscribe();
  }, [draftKey, form]);

  const submit = () =>
    void form.handleSubmit((values) =>
      startSaving(async () => {
        // The draft goes before the save: a save that ends on another page does not come back here.
        const draft = draftKey ? sessionStorage.getItem(draftKey) : null;
        if (draftKey) sessionStorage.removeItem(draftKey);
        const answer = await save(values);
        setState(answer);
        if (answer?.state !== "refused") return;
        if (draftKey && draft) sessionStorage.setItem(draftKey, draft);
        for (const { path, message } of answer.issues)
          form.setError(path as Path<Values>, { type: "server", message });
      }),
    )();

  const errorOf = (path: Path<Values>) => {
    const message = form.getFieldState(path, form.formState).error?.message;
    return message === undefined ? undefined : sentenceForIssue(message);
  };
  return { form, state, pending, submit, errorOf };
}
