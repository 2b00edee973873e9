/** The fields of one finding, and choices as large targets. Nothing is chosen beforehand. */
"use client";

import { asksForMeasures, type DraftFinding, type EarlierFinding, nameOf } from "#app/_parts/check-draft.ts";
import styles from "#app/_parts/check-form.module.css";
import type { TermGroup } from "#app/_parts/check-material.tsx";
import fieldStyles from "#app/_parts/fields.module.css";
import { FieldGrid, TextField } from "#app/_parts/fields.tsx";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import { formatNumber } from "#app/_words/format.ts";
import { activities, type Finding, severities } from "#lib/condition/schema.ts";

type Choice = readonly [value: string, word: string];

export function Choices({
  name,
  question,
  choices,
  value,
  choose,
  hint,
  error,
}: {
  name: string;
  question: string;
  choices: readonly Choice[];
  value?: string;
  choose?: (value: string) => void;
  hint?: string | undefined;
  error?: string | undefined;
}) {
  const id = `field-${name}`;
  const described = [hint ? `${id}-hint` : "", error ? `${id}-error` : ""].filter(Boolean).join(" ");
  return (
    <fieldset id={id} className={styles.group} aria-describedby={described || undefined}>
      <legend className={styles.question}>{question}</legend>
      {hint && (
        <span className={fieldStyles.hint} id={`${id}-hint`}>
          {hint}
        </span>
      )}
      <div className={styles.choices}>
        {choices.map(([choice, word]) => (
          <label key={choice} className={styles.choice}>
            <input
              type="radio"
              name={name}
              value={choice}
              aria-invalid={error ? true : undefined}
              {...(choose ? { checked: value === choice, onChange: () => choose(choice) } : {})}
            />
            {word}
          </label>
        ))}
      </div>
      {error && (
        <span className={fieldStyles.error} id={`${id}-error`}>
          {error}
        </span>
      )}
    </fieldset>
  );
}

const answerChoices = (["same", "worse", "better", "gone", "not-visible"] as const).map(
  (answer): Choice => [answer, labels.answers[answer]],
);
const severityChoices = severities
  .filter((severity) => severity !== "none")
  .map((severity): Choice => [severity, severity]);
const activityChoices = activities.map((activity): Choice => [activity, activity]);

type Fields = {
  number: number;
  draft: DraftFinding;
  change: (part: Partial<DraftFinding>) => void;
  errorOf: (name: string) => string | undefined;
};

function TermField({
  name,
  value,
  choose,
  terms,
  error,
}: {
  name: string;
  value: string;
  choose: (term: string) => void;
  terms: readonly TermGroup[];
  error: string | undefined;
}) {
  const id = `field-${name}`;
  return (
    <div className={fieldStyles.field}>
      <label htmlFor={id}>{labels.term}</label>
      <select
        id={id}
        name={name}
        value={value}
        onChange={(event) => choose(event.target.value)}
        aria-invalid={error ? true : undefined}
        aria-describedby={error ? `${id}-error` : undefined}
      >
        <option value="">–</option>
        {terms.map(({ group, words }) => (
          <optgroup key={group} label={group}>
            {words.map(([term, word]) => (
              <option key={term} value={term}>
                {word}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
      {error && (
        <span className={fieldStyles.error} id={`${id}-error`}>
          {error}
        </span>
      )}
    </div>
  );
}

/** Severity, activity, extent and a note; beside each, what it was before. */
function Measures({ number, draft, change, errorOf, before }: Fields & { before?: Finding }) {
  const field = (name: "extentMm" | "extentPercent" | "note") => ({
    name: nameOf(number, name),
    label: labels.findingFields[name],
    value: draft[name],
    error: errorOf(nameOf(number, name)),
    onChange: (event: { target: { value: string } }) => change({ [name]: event.target.value }),
  });
  const was = (words: string | undefined) => (words === undefined ? undefined : labels.beforeIt(words));
  const figure = (value: number | undefined) => was(value === undefined ? undefined : formatNumber(value));
  return (
    <>
      <Choices
        name={nameOf(number, "severity")}
        question={labels.severity}
        choices={severityChoices}
        hint={was(before?.severity)}
        error={errorOf(nameOf(number, "severity"))}
        value={draft.severity}
        choose={(severity) => change({ severity })}
      />
      <Choices
        name={nameOf(number, "activity")}
        question={labels.activity}
        choices={activityChoices}
        hint={was(before?.activity)}
        error={errorOf(nameOf(number, "activity"))}
        value={draft.activity}
        choose={(activity) => change({ activity })}
      />
      <FieldGrid>
        <TextField inputMode="decimal" hint={figure(before?.extentMm)} {...field("extentMm")} />
        <TextField inputMode="decimal" hint={figure(before?.extentPercent)} {...field("extentPercent")} />
        <TextField hint={was(before?.note || undefined)} {...field("note")} />
      </FieldGrid>
    </>
  );
}

export function OldFindingFields({ known, ...fields }: Fields & { known: EarlierFinding }) {
  const { number, draft, change, errorOf } = fields;
  return (
    <div className={styles.finding}>
      <Choices
        name={nameOf(number, "answer")}
        question={`${number}. ${known.words}`}
        choices={answerChoices}
        error={errorOf(nameOf(number, "answer"))}
        value={draft.answer}
        choose={(answer) => change({ answer })}
      />
      {asksForMeasures(draft.answer) && (
        <>
          <p className="quiet small">{labels.measureAgain}</p>
          <Measures {...fields} before={known.finding} />
        </>
      )}
    </div>
  );
}

export function NewFindingFields({
  terms,
  remove,
  ...fields
}: Fields & { terms: readonly TermGroup[]; remove: () => void }) {
  const { number, draft, change, errorOf } = fields;
  const [term, place] = [nameOf(number, "term"), nameOf(number, "place")];
  return (
    <div className={styles.finding}>
      <p className={styles.question}>
        {number}. {labels.answers.new}, {draft.point ? labels.marked : labels.notMarked}
      </p>
      <FieldGrid>
        <TermField
          name={term}
          value={draft.term}
          choose={(chosen) => change({ term: chosen })}
          terms={terms}
          error={errorOf(term)}
        />
        <TextField
          name={place}
          label={labels.place}
          value={draft.place}
          error={errorOf(place)}
          onChange={(event) => change({ place: event.target.value })}
        />
      </FieldGrid>
      <Measures {...fields} />
      <button type="button" className="plain" onClick={remove}>
        {labels.remove}
      </button>
    </div>
  );
}
