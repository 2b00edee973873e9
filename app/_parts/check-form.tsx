/**
 * One check of one specimen: each earlier finding answered, new ones added and put
 * on the picture, a verdict with its grounds. Nothing is chosen beforehand, so that
 * what stands in the record was looked at. What is wrong is told at its field, and
 * once more by name beside the button.
 */
"use client";

import Link from "next/link";
import { type FormEvent, type MouseEvent, type ReactNode, useState, useTransition } from "react";
import {
  type CheckForms,
  type DraftFinding,
  draftOf,
  type EarlierFinding,
  emptyDraft,
  faultsOfIssues,
  nameOf,
  type OfferedOccasion,
  readCheck,
} from "#app/_parts/check-draft.ts";
import styles from "#app/_parts/check-form.module.css";
import { NewFindingFields, OldFindingFields } from "#app/_parts/check-form-finding.tsx";
import type { TermGroup } from "#app/_parts/check-material.tsx";
import { CheckRefused, type Refused } from "#app/_parts/check-refused.tsx";
import { CheckSigning, CheckVerdict } from "#app/_parts/check-signing.tsx";
import { FormActions } from "#app/_parts/fields.tsx";
import type { FormState } from "#app/_parts/form-state.ts";
import { Section } from "#app/_parts/record-page.tsx";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import type { CheckRecord } from "#lib/condition/recording.ts";

type Plates = { before: ReactNode; now: ReactNode; photograph: ReactNode; beforeCaption: string };

/** Where a press lies on what was pressed; a press of the keyboard has no place on the picture. */
function pointOf(event: MouseEvent<HTMLButtonElement>): DraftFinding["point"] {
  if (event.detail === 0) return null;
  const box = event.currentTarget.getBoundingClientRect();
  const within = (share: number) => Math.min(1, Math.max(0, share));
  return {
    x: within((event.clientX - box.left) / box.width),
    y: within((event.clientY - box.top) / box.height),
  };
}

function CheckPlates({
  before,
  now,
  photograph,
  beforeCaption,
  spots,
  mark,
}: Plates & {
  spots: readonly { markId: string; number: number; point: DraftFinding["point"] }[];
  mark: (event: MouseEvent<HTMLButtonElement>) => void;
}) {
  return (
    <div className={`side-by-side ${styles.plates}`}>
      <figure className="plate">
        {before}
        <figcaption>
          {labels.before}. {beforeCaption}
        </figcaption>
      </figure>
      <figure className="plate">
        <button type="button" className={styles.now} onClick={mark} aria-label={labels.touchToMark}>
          {now}
          {spots.map(
            ({ markId, number, point }) =>
              point && (
                <span
                  key={markId}
                  className={styles.spot}
                  style={{ left: `${point.x * 100}%`, top: `${point.y * 100}%` }}
                >
                  {number}
                </span>
              ),
          )}
        </button>
        <figcaption>
          {labels.now}. {labels.touchToMark}
        </figcaption>
      </figure>
      {photograph && (
        <figure className="plate">
          {photograph}
          <figcaption>{labels.photograph}</figcaption>
        </figure>
      )}
    </div>
  );
}

export function CheckForm(
  props: Plates & {
    specimenId: string;
    loanId: string | null;
    occasions: readonly OfferedOccasion[];
    occasionNote?: ReactNode;
    earlier: readonly EarlierFinding[];
    firstNew: number;
    terms: readonly TermGroup[];
    severityNote: ReactNode;
    wordsNote: ReactNode;
    today: string;
    who: string;
    save: (back: string, values: CheckRecord) => Promise<FormState>;
    back: string;
  },
) {
  const { earlier, firstNew, terms, back, before, now, photograph, beforeCaption } = props;
  const [old, setOld] = useState<DraftFinding[]>(() => earlier.map(draftOf));
  const [fresh, setFresh] = useState<DraftFinding[]>([]);
  const [refused, setRefused] = useState<Refused | null>(null);
  /** Fields that were told and have been changed since. */
  const [mended, setMended] = useState<ReadonlySet<string>>(new Set());
  const [pending, startSaving] = useTransition();

  const errorOf = (name: string) =>
    mended.has(name) ? undefined : refused?.faults.find((fault) => fault.name === name)?.message;
  const refuse = (message: string, faults: Refused["faults"] = []) => {
    setRefused({ message, faults });
    setMended(new Set());
  };
  const change =
    (list: DraftFinding[], set: (list: DraftFinding[]) => void, index: number) =>
    (part: Partial<DraftFinding>) =>
      set(list.map((finding, at) => (at === index ? { ...finding, ...part } : finding)));
  const add = (point: DraftFinding["point"]) => setFresh([...fresh, emptyDraft(crypto.randomUUID(), point)]);
  const remove = (index: number) => {
    setFresh(fresh.filter((_, at) => at !== index));
    // The findings behind it move up by a number.
    setRefused(
      refused && {
        ...refused,
        faults: refused.faults.filter(
          ({ name }) => !fresh.some((_, at) => name.startsWith(nameOf(firstNew + at, ""))),
        ),
      },
    );
  };
  const noteChange = (event: FormEvent<HTMLFormElement>) => {
    const { name } = event.target as HTMLInputElement;
    if (refused && name) setMended(new Set([...mended, name]));
  };

  const submit = (form: HTMLFormElement) => {
    const forms: CheckForms = { about: props, earlier, old, fresh, firstNew };
    const read = readCheck(forms, new FormData(form));
    if ("faults" in read) return refuse(labels.lookAgain, read.faults);
    startSaving(async () => {
      const answer = await props.save(back, read.record);
      if (answer?.state !== "refused") return;
      const faults = faultsOfIssues(
        forms,
        // The day's refusal has one field, and says more than its field does.
        answer.issues.map(({ path, message }) =>
          path === "checkedOn" && answer.kind === "conflict"
            ? { path, message: answer.message }
            : { path, message },
        ),
      );
      refuse(faults.length > 0 ? labels.lookAgain : answer.message, faults);
    });
  };

  const spots = fresh.map(({ markId, point }, index) => ({ markId, point, number: firstNew + index }));
  return (
    <form
      className={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        submit(event.currentTarget);
      }}
      onChange={noteChange}
      noValidate
      aria-label={labels.title}
    >
      <CheckPlates
        {...{ before, now, photograph, beforeCaption, spots }}
        mark={(event) => add(pointOf(event))}
      />
      {earlier.length > 0 && (
        <Section id="earlier" title={labels.earlierFindings} margin={props.severityNote}>
          <p className="quiet">{labels.earlierAbout}</p>
          {earlier.map((known, index) => (
            <OldFindingFields
              key={known.finding.markId}
              number={known.number}
              known={known}
              draft={old[index] ?? draftOf(known)}
              change={change(old, setOld, index)}
              errorOf={errorOf}
            />
          ))}
        </Section>
      )}
      <Section
        id="new"
        title={labels.newFindings}
        margin={
          <>
            {earlier.length === 0 && props.severityNote}
            {props.wordsNote}
          </>
        }
      >
        <p className="quiet">{labels.newAbout}</p>
        {fresh.map((finding, index) => (
          <NewFindingFields
            key={finding.markId}
            number={firstNew + index}
            draft={finding}
            change={change(fresh, setFresh, index)}
            remove={() => remove(index)}
            terms={terms}
            errorOf={errorOf}
          />
        ))}
        <button type="button" className="outline" onClick={() => add(null)}>
          {labels.addFinding}
        </button>
      </Section>
      <CheckVerdict errorOf={errorOf} />
      <CheckSigning
        occasions={props.occasions}
        occasionNote={props.occasionNote ?? null}
        today={props.today}
        who={props.who}
        errorOf={errorOf}
      >
        <p className="quiet small">{labels.fixed}</p>
        {refused && <CheckRefused refused={refused} />}
        <FormActions>
          <button type="submit" disabled={pending}>
            {labels.sign}
          </button>
          <Link className="act plain" href={back}>
            {labels.cancel}
          </Link>
        </FormActions>
      </CheckSigning>
    </form>
  );
}
