/** The fields of one finding, and choices as large targets. */
"use client";

import styles from "#app/_parts/check-form.module.css";
import { FieldGrid, SelectField, TextField } from "#app/_parts/fields.tsx";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import { activities, severities } from "#lib/condition/schema.ts";

export type DraftFinding = {
  markId: string;
  term: string;
  place: string;
  point: { x: number; y: number } | null;
  extentMm: string;
  extentPercent: string;
  severity: string;
  activity: string;
  answer: string;
  note: string;
};

export function Choices({
  name,
  question,
  choices,
  value,
  choose,
}: {
  name: string;
  question: string;
  choices: readonly (readonly [value: string, word: string])[];
  value?: string;
  choose?: (value: string) => void;
}) {
  return (
    <fieldset style={{ border: 0, padding: 0, marginBottom: 0 }}>
      <legend className={styles.question}>{question}</legend>
      <div className={styles.choices}>
        {choices.map(([choice, word]) => (
          <label key={choice} className={styles.choice}>
            <input
              type="radio"
              name={name}
              value={choice}
              {...(choose ? { checked: value === choice, onChange: () => choose(choice) } : {})}
            />
            {word}
          </label>
        ))}
      </div>
    </fieldset>
  );
}

const answers = (["same", "worse", "better", "gone", "not-visible"] as const).map(
  (answer) => [answer, labels.answers[answer]] as const,
);

export function CheckFindingFields({
  number,
  known,
  draft,
  change,
  remove,
  terms,
}: {
  number: number;
  /** What the earlier check says; without it, this is a new finding. */
  known?: string;
  draft: DraftFinding;
  change: (part: Partial<DraftFinding>) => void;
  remove?: () => void;
  terms: readonly (readonly [string, string])[];
}) {
  const field = (name: keyof DraftFinding) => ({
    name: `finding-${number}-${name}`,
    value: String(draft[name] ?? ""),
    onChange: (event: { target: { value: string } }) => change({ [name]: event.target.value }),
  });
  const changed = draft.answer === "worse" || draft.answer === "better";
  return (
    <div className={styles.finding}>
      {known !== undefined && (
        <Choices
          name={`answer-${number}`}
          question={`${number}. ${known}`}
          choices={answers}
          value={draft.answer}
          choose={(answer) => change({ answer })}
        />
      )}
      {(known === undefined || changed) && (
        <>
          {known === undefined && (
            <>
              <p className={styles.question}>
                {number}. {labels.answers.new}, {draft.point ? labels.marked : labels.notMarked}
              </p>
              <FieldGrid>
                <SelectField label={labels.term} options={terms} empty="–" {...field("term")} />
                <TextField label={labels.place} {...field("place")} />
              </FieldGrid>
            </>
          )}
          <FieldGrid>
            <TextField label={labels.extentMm} inputMode="decimal" {...field("extentMm")} />
            <TextField label={labels.extentPercent} inputMode="decimal" {...field("extentPercent")} />
            <SelectField label={labels.activity} options={activities} empty="–" {...field("activity")} />
            <TextField label={labels.note} {...field("note")} />
          </FieldGrid>
          <Choices
            name={`severity-${number}`}
            question={labels.severity}
            choices={severities
              .filter((severity) => severity !== "none")
              .map((severity) => [severity, severity] as const)}
            value={draft.severity}
            choose={(severity) => change({ severity })}
          />
          {remove && (
            <button type="button" className="plain" onClick={remove}>
              {labels.remove}
            </button>
          )}
        </>
      )}
    </div>
  );
}
