/**
 * Fields with a label, a hint and the sentence of a refusal, tied together for
 * screen readers. They take the attributes of the plain element, so that they
 * serve native forms and react-hook-form alike; their id is their own, because
 * forms on one page have fields of the same names.
 */
import { type ComponentProps, type ReactNode, useId } from "react";
import styles from "#app/_parts/fields.module.css";

type Common = { label: string; hint?: ReactNode; error?: string | undefined };

type Plain<Element extends "input" | "textarea" | "select"> = Omit<ComponentProps<Element>, "id">;

function describing(id: string, hint: ReactNode, error: string | undefined) {
  const described = [hint ? `${id}-hint` : "", error ? `${id}-error` : ""].filter(Boolean).join(" ");
  return { "aria-describedby": described || undefined, "aria-invalid": error ? true : undefined };
}

function Around({ id, label, hint, error, children }: Common & { id: string; children: ReactNode }) {
  return (
    <div className={styles.field}>
      <label htmlFor={id}>{label}</label>
      {children}
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
    </div>
  );
}

export function TextField({ label, hint, error, ...input }: Common & Plain<"input">) {
  const id = useId();
  return (
    <Around id={id} label={label} hint={hint} error={error}>
      <input type="text" {...input} id={id} {...describing(id, hint, error)} />
    </Around>
  );
}

export function TextAreaField({ label, hint, error, ...input }: Common & Plain<"textarea">) {
  const id = useId();
  return (
    <Around id={id} label={label} hint={hint} error={error}>
      <textarea rows={3} {...input} id={id} {...describing(id, hint, error)} />
    </Around>
  );
}

/** @param options values with their words; the value is its own word where none is given */
export function SelectField({
  label,
  hint,
  error,
  options,
  empty,
  ...input
}: Common &
  Plain<"select"> & {
    options: readonly (string | readonly [value: string, word: string])[];
    empty?: string;
  }) {
  const id = useId();
  return (
    <Around id={id} label={label} hint={hint} error={error}>
      <select {...input} id={id} {...describing(id, hint, error)}>
        {empty !== undefined && <option value="">{empty}</option>}
        {options.map((option) => {
          const [value, word] = typeof option === "string" ? [option, option] : option;
          return (
            <option key={value} value={value}>
              {word}
            </option>
          );
        })}
      </select>
    </Around>
  );
}

export function CheckField({ label, hint, error, ...input }: Common & Plain<"input">) {
  const id = useId();
  return (
    <div className={styles.check}>
      <input type="checkbox" {...input} id={id} {...describing(id, hint, error)} />
      <span>
        <label htmlFor={id}>{label}</label>
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
      </span>
    </div>
  );
}

/** Fields side by side where there is room. */
export function FieldGrid({ children }: { children: ReactNode }) {
  return <div className={styles.grid}>{children}</div>;
}

export function FormActions({ children }: { children: ReactNode }) {
  return <div className={styles.actions}>{children}</div>;
}
