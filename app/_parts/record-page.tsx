/**
 * One record, one sheet: the masthead, the box of what stands between now and the
 * next step, the index of sections, and sections whose margin holds the notes of
 * the lines beside them. It prints as it reads.
 */
import { Children, type ReactNode } from "react";
import styles from "#app/_parts/record-page.module.css";
import { type IndexEntry, SectionIndex } from "#app/_parts/section-index.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { shellWords } from "#app/_words/en/shell.ts";
import type { Outcome } from "#lib/workings/outcome.ts";
import type { Explanation } from "#lib/workings/working.ts";

export function Masthead({
  number,
  title,
  latin,
  standing,
}: {
  number?: string | undefined;
  title: string;
  latin?: string | undefined;
  standing?: ReactNode;
}) {
  return (
    <div className={styles.masthead}>
      <div>
        {number && <p className={styles.number}>{number}</p>}
        <h1>{title}</h1>
        {latin && <p className={styles.latin}>{latin}</p>}
      </div>
      {standing && <div className={styles.standing}>{standing}</div>}
    </div>
  );
}

/** One thing between now and the next step, with the one action that clears it. */
export type NextThing = { key: string; outcome: Outcome; text: ReactNode; action?: ReactNode };

export function NextBox({
  things,
  title = shellWords.next,
}: {
  things: readonly NextThing[];
  title?: string;
}) {
  return (
    <section className={styles.next} aria-label={title}>
      <h2>{title}</h2>
      {things.length === 0 ? (
        <p className={styles.nothing}>{shellWords.nothingNext}</p>
      ) : (
        <ul>
          {things.map((thing) => (
            <li key={thing.key}>
              <span>
                {thing.outcome !== "clear" && (
                  <>
                    <StateMark outcome={thing.outcome} />:{" "}
                  </>
                )}
                {thing.text}
              </span>
              {thing.action}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

export function RecordPage({
  masthead,
  next,
  index,
  children,
}: {
  masthead: ReactNode;
  next?: ReactNode;
  index: readonly IndexEntry[];
  children: ReactNode;
}) {
  return (
    <div className={styles.page}>
      {masthead}
      {next}
      <SectionIndex entries={index} />
      <div className={styles.sections}>{children}</div>
    </div>
  );
}

/** A page that is not a record: a list, a form. */
export function PlainPage({ children }: { children: ReactNode }) {
  return <div className={styles.plain}>{children}</div>;
}

/** @param fold what is said beside the title of a section that is folded; without it the section is open */
export function Section({
  id,
  title,
  margin,
  fold,
  children,
}: {
  id: string;
  title: string;
  margin?: ReactNode;
  fold?: string | undefined;
  children: ReactNode;
}) {
  const heading = <h2 id={id}>{title}</h2>;
  const beside = Children.toArray(margin).length > 0 && <div className={styles.margin}>{margin}</div>;
  if (fold === undefined)
    return (
      <section className={styles.section} aria-labelledby={id}>
        <div className={styles.body}>
          {heading}
          {children}
        </div>
        {beside}
      </section>
    );
  return (
    <section aria-labelledby={id}>
      <details className={styles.fold}>
        <summary>
          {heading}
          <span className={styles.gist}>{fold}</span>
        </summary>
        <div className={styles.section}>
          <div className={styles.body}>{children}</div>
          {beside}
        </div>
      </details>
    </section>
  );
}

/** @param act a form that belongs to the note; the text of the note is one paragraph, which holds none */
export function MarginNote({
  outcome,
  title,
  source,
  act,
  children,
}: {
  outcome?: Outcome | undefined;
  title: ReactNode;
  source?: ReactNode;
  act?: ReactNode;
  children?: ReactNode;
}) {
  return (
    <div className={[styles.note, outcome ? styles[outcome] : ""].join(" ")}>
      <p>
        {outcome && (
          <>
            <StateMark outcome={outcome} />{" "}
          </>
        )}
        <b>{title}</b> {children}
      </p>
      {source && <span className={styles.source}>{source}</span>}
      {act}
    </div>
  );
}

/** How a figure was worked out: steps, sources and cautions, folded until asked for. */
export function WorkingNote({ title, working }: { title: string; working: Explanation<unknown> }) {
  return (
    <div className={styles.note}>
      <details>
        <summary>
          <b>{title}</b> {shellWords.workingAndSources(working.sources.length)}
        </summary>
        <table>
          <caption className="visually-hidden">{title}</caption>
          <tbody>
            {working.steps.map((step, position) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the steps of one working never move
              <tr key={position}>
                <th scope="row">
                  {step.label}
                  {step.formula && <span className={styles.source}>{step.formula}</span>}
                </th>
                <td className="right">
                  {typeof step.value === "number" ? roundForReading(step.value) : String(step.value)}{" "}
                  {step.unit}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        {working.cautions.length > 0 && (
          <ul>
            {working.cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        )}
        {working.sources.map((source) => (
          <span key={`${source.id} ${source.where}`} className={styles.source}>
            {source.title}
            {source.where && `, ${source.where}`} ({source.standing})
          </span>
        ))}
      </details>
    </div>
  );
}

/** Four significant figures, never in powers of ten. */
export function roundForReading(value: number): string {
  if (!Number.isFinite(value)) return "–";
  return new Intl.NumberFormat("en-GB", { maximumSignificantDigits: 4, useGrouping: "min2" })
    .format(value)
    .replaceAll(",", "\u202f")
    .replace("-", "−");
}
