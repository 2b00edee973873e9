/** Every scope of the consent with its answer, what was granted first, in as many columns as there is room for. */
import { StateMark } from "#app/_parts/state-mark.tsx";
import styles from "#app/(signed-in)/specimens/[id]/sections.module.css";
import { type Answer, answers, type Scope, scopes } from "#lib/provenance/schema.ts";

const toneOf = { granted: "clear", refused: "bar", "not asked": "attend", unknown: "attend" } as const;

export function ScopeList({ label, answerOf }: { label: string; answerOf: (scope: Scope) => Answer }) {
  const ordered = answers.flatMap((answer) => scopes.filter((scope) => answerOf(scope) === answer));
  return (
    <ul className={styles.scopes} aria-label={label}>
      {ordered.map((scope) => (
        <li key={scope}>
          <span>{scope}</span>
          <StateMark outcome={toneOf[answerOf(scope)]}>{answerOf(scope)}</StateMark>
        </li>
      ))}
    </ul>
  );
}
