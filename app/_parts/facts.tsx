/** Names and facts side by side; under each other where the page is narrow. */
import type { ReactNode } from "react";
import styles from "#app/_parts/facts.module.css";

export type Fact = [label: string, value: ReactNode];

export function Facts({ facts }: { facts: readonly (Fact | false | null | undefined)[] }) {
  return (
    <dl className={styles.facts}>
      {facts
        .filter((fact): fact is Fact => Boolean(fact))
        .map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
    </dl>
  );
}
