/**
 * One check of one specimen: each earlier finding answered, new ones added and put
 * on the picture, a verdict with its grounds. Nothing is chosen beforehand, so that
 * what stands in the record was looked at.
 */
"use client";

import Link from "next/link";
import { type MouseEvent, type ReactNode, useState, useTransition } from "react";
import { draftOf, emptyDraft, recordOf, unanswered } from "#app/_parts/check-draft.ts";
import styles from "#app/_parts/check-form.module.css";
import { CheckFindingFields, Choices, type DraftFinding } from "#app/_parts/check-form-finding.tsx";
import type { EarlierFinding } from "#app/_parts/check-material.tsx";
import { FieldGrid, FormActions, SelectField, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { FormAnswer } from "#app/_parts/form-answer.tsx";
import { type FormState, idle } from "#app/_parts/form-state.ts";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import { sentenceForIssue } from "#app/_words/sentences.ts";
import { CheckRecord } from "#lib/condition/recording.ts";
import { type Occasion, occasionNames } from "#lib/condition/schema.ts";

const verdicts = [
  ["fitToShow", labels.fitToShow],
  ["fitToHandle", labels.fitToHandle],
  ["fitToTravel", labels.fitToTravel],
] as const;

export function CheckForm(props: {
  specimenId: string;
  loanId: string | null;
  occasions: readonly Occasion[];
  earlier: readonly EarlierFinding[];
  before: ReactNode;
  now: ReactNode;
  beforeCaption: string;
  terms: readonly (readonly [string, string])[];
  today: string;
  who: string;
  save: (back: string, values: CheckRecord) => Promise<FormState>;
  back: string;
}) {
  const { earlier, terms, back } = props;
  const [old, setOld] = useState<DraftFinding[]>(() => earlier.map(draftOf));
  const [fresh, setFresh] = useState<DraftFinding[]>([]);
  const [state, setState] = useState<FormState>(idle);
  const [pending, startSaving] = useTransition();

  const change =
    (list: DraftFinding[], set: (list: DraftFinding[]) => void) =>
    (index: number, part: Partial<DraftFinding>) =>
      set(list.map((finding, at) => (at === index ? { ...finding, ...part } : finding)));

  const mark = (event: MouseEvent<HTMLButtonElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    // A press of the keyboard has no place on the picture.
    const point =
      event.detail === 0
        ? null
        : {
            x: Math.min(1, Math.max(0, (event.clientX - box.left) / box.width)),
            y: Math.min(1, Math.max(0, (event.clientY - box.top) / box.height)),
          };
    setFresh([...fresh, { ...emptyDraft(), point }]);
  };

  const refuse = (message: string, issues: { path: string; message: string }[] = []) =>
    setState({ state: "refused", kind: "invalid", message, issues });

  const submit = (form: HTMLFormElement) => {
    const fields = new FormData(form);
    const open = unanswered(old, fresh, fields);
    if (open) return refuse(labels.nothingChosen);
    const read = CheckRecord.safeParse(recordOf(props, old, fresh, fields));
    if (!read.success)
      return refuse(
        labels.lookAgain,
        read.error.issues.map((issue) => ({
          path: issue.path.join("."),
          message: sentenceForIssue(issue.message),
        })),
      );
    startSaving(async () => setState(await props.save(back, read.data)));
  };

  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        submit(event.currentTarget);
      }}
      noValidate
      aria-label={labels.title}
    >
      <div className="side-by-side">
        <figure className="plate">
          {props.before}
          <figcaption>
            {labels.before}. {props.beforeCaption}
          </figcaption>
        </figure>
        <figure className="plate">
          <button type="button" className={styles.now} onClick={mark} aria-label={labels.touchToMark}>
            {props.now}
            {fresh.map(
              (finding, index) =>
                finding.point && (
                  <span
                    key={finding.markId}
                    className={styles.spot}
                    style={{ left: `${finding.point.x * 100}%`, top: `${finding.point.y * 100}%` }}
                  >
                    {earlier.length + index + 1}
                  </span>
                ),
            )}
          </button>
          <figcaption>
            {labels.now}. {labels.touchToMark}
          </figcaption>
        </figure>
      </div>
      {earlier.length > 0 && <h2>{labels.earlierFindings}</h2>}
      {earlier.map((known, index) => (
        <CheckFindingFields
          key={known.finding.markId}
          number={known.number}
          known={known.words}
          draft={old[index] ?? draftOf(known)}
          change={(part) => change(old, setOld)(index, part)}
          terms={terms}
        />
      ))}
      <h2>{labels.newFindings}</h2>
      {fresh.map((finding, index) => (
        <CheckFindingFields
          key={finding.markId}
          number={earlier.length + index + 1}
          draft={finding}
          change={(part) => change(fresh, setFresh)(index, part)}
          remove={() => setFresh(fresh.filter((_, at) => at !== index))}
          terms={terms}
        />
      ))}
      <button type="button" className="outline" onClick={() => setFresh([...fresh, emptyDraft()])}>
        {labels.addFinding}
      </button>
      <h2 style={{ marginTop: "1.2rem" }}>{labels.verdict}</h2>
      {verdicts.map(([name, label]) => (
        <Choices
          key={name}
          name={name}
          question={label}
          choices={[
            ["yes", labels.yes],
            ["no", labels.no],
          ]}
        />
      ))}
      <TextAreaField label={labels.grounds} name="grounds" required />
      <FieldGrid>
        <TextField label={labels.checkedBy} name="checkedBy" defaultValue={props.who} required />
        <TextField label={labels.witnessField} hint={labels.witnessHint} name="witness" />
        <TextField
          label={labels.checkedOn}
          name="checkedOn"
          type="date"
          defaultValue={props.today}
          required
        />
        <SelectField
          label={labels.occasion}
          name="occasion"
          options={props.occasions.map((occasion) => [occasion, occasionNames[occasion]] as const)}
        />
      </FieldGrid>
      <p className="quiet small">{labels.fixed}</p>
      <FormAnswer state={state} />
      <FormActions>
        <button type="submit" disabled={pending}>
          {labels.sign}
        </button>
        <Link href={back}>{labels.cancel}</Link>
      </FormActions>
    </form>
  );
}
