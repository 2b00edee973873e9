/** One question with its answers as large targets; nothing is chosen beforehand. */
import { useId } from "react";
import checkStyles from "#app/_parts/check-form.module.css";
import styles from "#app/_parts/fields.module.css";

export function ChoiceField({
  name,
  label,
  choices,
  hint,
  error,
}: {
  name: string;
  label: string;
  choices: readonly (readonly [value: string, word: string])[];
  hint?: string | undefined;
  error?: string | undefined;
}) {
  const id = useId();
  const described = [hint ? `${id}-hint` : "", error ? `${id}-error` : ""].filter(Boolean).join(" ");
  return (
    <fieldset className={styles.choice} aria-describedby={described || undefined}>
      <legend className={styles.label}>{label}</legend>
      <div className={checkStyles.choices}>
        {choices.map(([value, word]) => (
          <label key={value} className={checkStyles.choice}>
            <input type="radio" name={name} value={value} aria-invalid={error ? true : undefined} />
            {word}
          </label>
        ))}
      </div>
      {hint && (
        <span className={styles.hint} id={`${id}-hint`}>
          {hint}
        </span>
      )}
      {error && (
        <span className={styles.error} id={`${id}-error`}>
          {error}
        </span>
      )}
    </fieldset>
  );
}
