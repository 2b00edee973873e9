/**
 * A form of a whole record: react-hook-form checks each field with the same zod
 * schema that the server decides with; the server's refusals come back to the
 * fields they are about. What was typed is kept in the tab until it was saved.
 * What was typed before the page's script ran is taken over, and the form cannot
 * be sent until that is done.
 */
"use client";

import { zodResolver } from "@hookform/resolvers/zod";
import {
  useInsertionEffect,
  useLayoutEffect,
  useRef,
  useState,
  useSyncExternalStore,
  useTransition,
} from "react";
import {
  type DefaultValues,
  type FieldValues,
  get,
  type Path,
  type UseFormReturn,
  useForm,
} from "react-hook-form";
import { z } from "zod";
import { type FormState, idle } from "#app/_parts/form-state.ts";
import { noteTyped, type Typed, typeAgain } from "#app/_parts/form-typed.ts";
import { sentenceForIssue } from "#app/_words/sentences.ts";

// Compiling checks at run time would need a script policy with eval.
z.config({ jitless: true });

export type RecordForm<Values extends FieldValues> = {
  form: UseFormReturn<Values>;
  state: FormState;
  /** Whether it cannot be sent now: it is being saved, or the page is still waking up. */
  pending: boolean;
  submit: () => void;
  /** The sentence under a field, whoever found it. */
  errorOf: (path: Path<Values>) => string | undefined;
};

const never = () => () => {};

/**
 * How far the page has woken up. As it was served, fields hold what the server
 * sent and what was typed since; once it runs, the draft comes back; then what was
 * typed. All of it happens before the next key can be pressed.
 */
function useWaking(restoreDraft: () => void): "served" | "running" | "ready" {
  const [stage, setStage] = useState<"served" | "running" | "ready">("served");
  const isServed = !useSyncExternalStore(
    never,
    () => true,
    () => false,
  );
  // The framework puts a text of several lines back while it takes the page over, so a note is made before that;
  // and another before any field is handed to the form's library, which fills it.
  const [early] = useState(() => (isServed ? noteTyped(globalThis.document) : []));
  const typed = useRef<Typed[]>([]);
  useInsertionEffect(() => {
    if (isServed) typed.current = noteTyped(document, early);
  }, [isServed, early]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a draft is restored once
  useLayoutEffect(() => {
    if (stage === "served") setStage("running");
    if (stage === "running") {
      restoreDraft();
      setStage("ready");
    }
    // Each change is to be drawn before the next is made, and nothing is drawn during an effect.
    if (stage === "ready") queueMicrotask(() => typeAgain(typed.current));
  }, [stage]);
  return stage;
}

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

  const stage = useWaking(() => {
    const draft = draftKey ? sessionStorage.getItem(draftKey) : null;
    if (draft) form.reset(JSON.parse(draft) as Values, { keepDefaultValues: true });
  });
  useLayoutEffect(() => {
    if (!draftKey) return;
    const watching = form.watch((values) => sessionStorage.setItem(draftKey, JSON.stringify(values)));
    return () => watching.unsubscribe();
  }, [draftKey, form]);

  /** The page as it is served shows what the record holds; afterwards the form's library fills the fields. */
  const register: typeof form.register = (name, options) => {
    const field = form.register(name, options);
    const value: unknown = stage === "served" ? get(start, name) : null;
    return typeof value === "string" || Number.isFinite(value)
      ? Object.assign(field, { defaultValue: value })
      : field;
  };

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
        answer.issues.forEach(({ path, message }, index) => {
          form.setError(path as Path<Values>, { type: "server", message }, { shouldFocus: index === 0 });
        });
      }),
    )();

  const errorOf = (path: Path<Values>) => {
    const message = form.getFieldState(path, form.formState).error?.message;
    return message === undefined ? undefined : sentenceForIssue(message);
  };
  return {
    form: { ...form, register },
    state,
    pending: pending || stage !== "ready",
    submit,
    errorOf,
  };
}
