/** The end of a check: the verdict with its grounds, who looked, when, and on what occasion. */
"use client";

import type { ReactNode } from "react";
import { type OfferedOccasion, verdictNames } from "#app/_parts/check-draft.ts";
import styles from "#app/_parts/check-form.module.css";
import { Choices } from "#app/_parts/check-form-finding.tsx";
import fieldStyles from "#app/_parts/fields.module.css";
import { FieldGrid, TextAreaField, TextField } from "#app/_parts/fields.tsx";
import { MarginNote, Section } from "#app/_parts/record-page.tsx";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import { occasionNames } from "#lib/condition/schema.ts";

type ErrorOf = (name: string) => string | undefined;

/** Chosen where there is a choice; where only one fits, it is stated. */
function OccasionField({ occasions, errorOf }: { occasions: readonly OfferedOccasion[]; errorOf: ErrorOf }) {
  const [first, ...others] = occasions;
  if (first && others.length === 0)
    return (
      <p className={fieldStyles.field}>
        <span className={fieldStyles.label}>{labels.occasion}</span>
        {occasionNames[first.occasion]}
        <input type="hidden" name="occasion" value={first.occasion} />
      </p>
    );
  return (
    <Choices
      name="occasion"
      question={labels.occasion}
      choices={occasions.map(({ occasion }) => [occasion, occasionNames[occasion]] as const)}
      error={errorOf("occasion")}
    />
  );
}

export function CheckVerdict({ errorOf }: { errorOf: ErrorOf }) {
  return (
    <Section
      id="verdict"
      title={labels.verdict}
      margin={<MarginNote title={labels.gradeNote} source={labels.gradeSource} />}
    >
      <div className={styles.verdicts}>
        {verdictNames.map((name) => (
          <Choices
            key={name}
            name={name}
            question={labels[name]}
            choices={[
              ["yes", labels.yes],
              ["no", labels.no],
            ]}
            error={errorOf(name)}
          />
        ))}
      </div>
      <TextAreaField label={labels.grounds} name="grounds" required error={errorOf("grounds")} />
    </Section>
  );
}

export function CheckSigning({
  occasions,
  occasionNote,
  today,
  who,
  errorOf,
  children,
}: {
  occasions: readonly OfferedOccasion[];
  occasionNote: ReactNode;
  today: string;
  who: string;
  errorOf: ErrorOf;
  children: ReactNode;
}) {
  const floors = occasions.map(({ from }) => from ?? "").sort();
  return (
    <Section id="signing" title={labels.signing}>
      <OccasionField occasions={occasions} errorOf={errorOf} />
      {occasionNote && <p className="quiet">{occasionNote}</p>}
      <FieldGrid>
        <TextField
          label={labels.checkedOn}
          name="checkedOn"
          type="date"
          min={floors[0] || undefined}
          max={today}
          defaultValue={today}
          required
          error={errorOf("checkedOn")}
        />
        <TextField
          label={labels.checkedBy}
          name="checkedBy"
          defaultValue={who}
          required
          error={errorOf("checkedBy")}
        />
        <TextField
          label={labels.witness}
          hint={labels.witnessHint}
          name="witness"
          error={errorOf("witness")}
        />
      </FieldGrid>
      {children}
    </Section>
  );
}
