/**
 * Everything that the rules answered, the clear ones as well, so that a verdict can
 * be read back rule by rule. Folded: what stands in the way stands in the margin.
 */
import { DataTable } from "#app/_parts/data-table.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { everyAnswerWords as words } from "#app/_words/en/every-answer.ts";
import {
  type Answered,
  answersOf,
  type NamedLine,
} from "#app/(signed-in)/loans/[id]/suitability/suitability-notes.ts";
import type { PaperLanguage } from "#lib/papers/languages.ts";
import type { Finding } from "#lib/suitability/schema.ts";

export function EveryAnswer({
  findings,
  lines,
  language,
}: {
  findings: readonly Finding[];
  lines: readonly NamedLine[];
  language: PaperLanguage;
}) {
  const answers = answersOf(findings, lines, language);
  if (answers.length === 0) return null;
  return (
    <details>
      <summary>{words.title(answers.length)}</summary>
      <DataTable<Answered>
        caption={words.caption}
        captionHidden
        rows={answers}
        rowKey={({ key }) => key}
        dense
        columns={[
          { key: "rule", label: words.rule, cell: ({ rule }) => <span className="mono">{rule}</span> },
          { key: "outcome", label: words.outcome, cell: ({ outcome }) => <StateMark outcome={outcome} /> },
          { key: "fact", label: words.fact, cell: ({ fact }) => <span lang={language}>{fact}</span> },
          {
            key: "specimens",
            label: words.specimens,
            cell: ({ numbers, all }) => (all ? words.all : numbers.join(", ")),
          },
        ]}
      />
    </details>
  );
}
