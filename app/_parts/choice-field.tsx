/**
 * One answer out of a few, as buttons large enough for a gloved hand; nothing is
 * chosen beforehand. Plain radio buttons underneath, so that it works in any form
 * and without JavaScript.
 */
import type { ComponentProps, ReactNode } from "react";
import styles from "#app/_parts/choice-field.module.css";

export type Choice = { value: string; label: ReactNode; hint?: ReactNode };

export function ChoiceField({
  legend,
  name,
  choices,
  hint,
  error,
  ...input
}: {
  legend: ReactNode;
  name: string;
  choices: readonly Choice[];
  hint?: ReactNode;
  error?: string | undefined;
} & Omit<ComponentProps<"input">, "type" | "value" | "name" | "id">) {
  const id = `field-${name.replace(/[^\w-]/g, "-")}`;
  const described = [hint ? `${id}-hint` : "", error ? `${id}-error` : ""].filter(Boolean).join(" ");
  return (
    <fieldset className={styles.field} aria-describedby={described || undefined}>
      <legend>{legend}</legend>
      {hint && (
        <p className={styles.hint} id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div className={styles.choices}>
        {choices.map((choice) => (
          <label key={choice.value} className={styles.choice}>
            <input
              {...input}
              type="radio"
              name={name}
              value={choice.value}
              aria-invalid={error ? true : undefined}
            />
            <span>
              {choice.label}
              {choice.hint && <small>{choice.hint}</small>}
            </span>
          </label>
        ))}
      </div>
      {error && (
        <p className={styles.error} id={`${id}-error`}>
          {error}
        </p>
      )}
    </fieldset>
  );
}
