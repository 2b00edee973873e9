/** A state is a word and a shape; colour only repeats it. Severity is a word and as many filled bars. */
import type { ReactNode } from "react";
import styles from "#app/_parts/state-mark.module.css";
import type { Outcome } from "#lib/workings/outcome.ts";

const shapes = {
  clear: <circle cx="5" cy="5" r="4.2" fill="currentColor" />,
  attend: <path d="M5 .6 9.8 9.4H.2z" fill="currentColor" />,
  bar: <path d="M.9.9h8.2v8.2H.9z" fill="currentColor" />,
  neutral: <circle cx="5" cy="5" r="3.7" fill="none" stroke="currentColor" strokeWidth="1.6" />,
} as const satisfies Record<Outcome | "neutral", ReactNode>;
export type MarkTone = keyof typeof shapes;

/** @param children the word; without it, the outcome's own */
export function StateMark({
  outcome,
  children,
}: {
  outcome: MarkTone | Outcome;
  children?: string | undefined;
}) {
  return (
    <span className={`${styles.mark} outcome-${outcome}`}>
      <svg className={styles.shape} viewBox="0 0 10 10" aria-hidden="true">
        {shapes[outcome]}
      </svg>
      {children ?? outcome}
    </span>
  );
}

const severities = ["none", "trace", "minor", "moderate", "severe"] as const;

/** Four bars, as many of them filled as the finding is severe. */
export function SeverityMark({ severity }: { severity: (typeof severities)[number] }) {
  const filled = severities.indexOf(severity);
  return (
    <span className={styles.mark}>
      <svg className={styles.bars} viewBox="0 0 19 10" aria-hidden="true">
        {[0, 1, 2, 3].map((bar) => (
          <path
            key={bar}
            d={`M${bar * 5 + 0.6} ${7 - bar * 2.1}h2.8V9.4h-2.8z`}
            fill={bar < filled ? "currentColor" : "none"}
            stroke="currentColor"
            strokeWidth="0.8"
          />
        ))}
      </svg>
      {severity}
    </span>
  );
}
