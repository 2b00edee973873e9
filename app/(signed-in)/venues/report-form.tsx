/**
 * A facility report as one long form of plain fields. It begins with the last
 * answers and works without a script; what was typed comes back after a refusal
 * either way, and with a script it is kept in this tab until it is filed.
 */
"use client";

import Link from "next/link";
import { startTransition, useActionState, useEffect, useRef, useState } from "react";
import { FieldGrid, FormActions, SelectField, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { issueOf } from "#app/_parts/form-state.ts";
import { facilityWords as words } from "#app/_words/en/facility.ts";
import {
  facilityChoiceWords,
  facilityQuestionWords,
  facilitySectionWords,
} from "#app/_words/en/facility-questions.ts";
import { fieldWords } from "#app/_words/en/fields.ts";
import type { FieldReader } from "#app/(signed-in)/venues/field-reader.ts";
import { freshReport, type ReportFormState } from "#app/(signed-in)/venues/report-form-state.ts";
import { LicenceLines, PassageLines } from "#app/(signed-in)/venues/report-lines.tsx";
import { type ReportList, type Typed, typedIn } from "#app/(signed-in)/venues/report-sent.ts";
import {
  type ChoiceWord,
  facilityQuestions,
  facilitySections,
  type Question,
} from "#lib/people/facility-questions.ts";

/** Texts longer than this get several lines. */
const longText = 250;

function QuestionField({
  name,
  label,
  question,
  reader: { typedOf, errorOf },
}: {
  name: string;
  label: string;
  question: Question;
  reader: FieldReader;
}) {
  const common = { name, label, defaultValue: typedOf(name), error: errorOf(name) };
  switch (question.kind) {
    case "yes or no":
      return (
        <SelectField
          {...common}
          empty={words.notKnown}
          options={[
            ["yes", fieldWords.yes],
            ["no", fieldWords.no],
          ]}
        />
      );
    case "choice":
      return (
        <SelectField
          {...common}
          empty={words.notKnown}
          options={question.of.map((word) => [word, facilityChoiceWords[word as ChoiceWord]] as const)}
        />
      );
    case "text":
      return question.most > longText ? <TextAreaField {...common} rows={2} /> : <TextField {...common} />;
    default:
      return <TextField {...common} inputMode="decimal" autoComplete="off" />;
  }
}

function linesOf(typed: Typed, list: ReportList): number {
  const numbers = Object.keys(typed).flatMap((name) => {
    const [of, at] = name.split(".");
    return of === list ? [Number(at)] : [];
  });
  return numbers.length === 0 ? 0 : Math.max(...numbers) + 1;
}

type Props = {
  action: (before: ReportFormState, fields: FormData) => Promise<ReportFormState>;
  start: Typed;
  back: string;
  label: string;
  draftKey: string;
};

function readDraft(key: string): Typed | null {
  const kept = sessionStorage.getItem(key);
  return kept === null ? null : (JSON.parse(kept) as Typed);
}

export function ReportForm({ action, start, back, label, draftKey }: Props) {
  const [state, send, pending] = useActionState(action, freshReport);
  const [draft, setDraft] = useState<Typed | null>(null);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => setDraft(readDraft(draftKey)), [draftKey]);
  const shown = state.typed ?? draft ?? start;
  // Lines that the form came back with are counted already.
  const count = (list: ReportList) =>
    Math.max(linesOf(start, list) + state.extra[list], linesOf(shown, list));
  const reader: FieldReader = {
    typedOf: (name) => shown[name] ?? "",
    errorOf: (name) => issueOf(state.answer, name),
  };
  return (
    <form
      ref={form}
      key={draft === null ? "start" : "draft"}
      action={send}
      aria-label={label}
      noValidate
      onInput={(event) =>
        sessionStorage.setItem(draftKey, JSON.stringify(typedIn(new FormData(event.currentTarget))))
      }
      onSubmit={(event) => {
        // The form is sent by hand, so that the browser does not empty it after a refusal.
        event.preventDefault();
        const fields = new FormData(event.currentTarget, (event.nativeEvent as SubmitEvent).submitter);
        sessionStorage.removeItem(draftKey);
        startTransition(() => send(fields));
      }}
    >
      <p className="quiet small">{words.keepFirst}</p>
      <FieldGrid>
        <TextField
          label={words.reportedOn}
          name="reportedOn"
          type="date"
          defaultValue={reader.typedOf("reportedOn")}
          error={reader.errorOf("reportedOn")}
        />
        <TextField
          label={words.reportedBy}
          name="reportedBy"
          defaultValue={reader.typedOf("reportedBy")}
          error={reader.errorOf("reportedBy")}
        />
      </FieldGrid>
      {facilitySections.map((section) => (
        <fieldset key={section}>
          <legend>{facilitySectionWords[section]}</legend>
          <FieldGrid>
            {(Object.entries(facilityQuestions[section]) as [string, Question][]).map(([name, question]) => (
              <QuestionField
                key={name}
                name={`${section}.${name}`}
                label={(facilityQuestionWords[section] as Record<string, string>)[name] ?? name}
                question={question}
                reader={reader}
              />
            ))}
          </FieldGrid>
        </fieldset>
      ))}
      <PassageLines count={count("passages")} reader={reader} />
      <LicenceLines count={count("licences")} reader={reader} />
      <FormAnswer state={state.answer} />
      <FormActions>
        <button type="submit" disabled={pending}>
          {words.fileIt}
        </button>
        <Link href={back}>{fieldWords.cancel}</Link>
      </FormActions>
    </form>
  );
}
