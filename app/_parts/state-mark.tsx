/** A state is a word and a shape; colour only repeats it. */
import type { Outcome } from "#lib/workings/outcome.ts";

const shapes = { clear: "●", attend: "▲", bar: "■", neutral: "○" } as const;
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
    <span className={`outcome-${outcome}`} style={{ whiteSpace: "nowrap", fontWeight: 600 }}>
      <span aria-hidden="true" style={{ fontSize: "0.8em" }}>
        {shapes[outcome]}
      </span>{" "}
      {children ?? outcome}
    </span>
  );
}
