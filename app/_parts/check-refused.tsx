/** Why a check was not recorded: each field by its name, with its sentence and the way to it. */
"use client";

import { useEffect, useRef } from "react";
import type { Fault } from "#app/_parts/check-draft.ts";
import styles from "#app/_parts/check-form.module.css";

export type Refused = { message: string; faults: readonly Fault[] };

/** The field itself, or the first choice of its group. */
function goTo(name: string): void {
  const field = document.getElementById(`field-${name}`);
  const control = field?.matches("input, select, textarea") ? field : field?.querySelector("input");
  control?.focus();
  field?.scrollIntoView({ block: "center" });
}

export function CheckRefused({ refused }: { refused: Refused }) {
  const box = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each refusal is read anew
  useEffect(() => box.current?.focus(), [refused]);
  return (
    <div ref={box} role="alert" tabIndex={-1} className={`form-refused ${styles.refused}`}>
      <p>{refused.message}</p>
      {refused.faults.length > 0 && (
        <ul>
          {refused.faults.map(({ name, label, message }) => (
            <li key={name}>
              <a
                href={`#field-${name}`}
                onClick={(event) => {
                  event.preventDefault();
                  goTo(name);
                }}
              >
                {label}
              </a>
              <span>{message}</span>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
