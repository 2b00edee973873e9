/** Every evaluation of a loan that was kept, by occasion and time, and which answers changed between neighbours. */
import { Moment } from "#app/_parts/moment.tsx";
import { keptRunWords as words } from "#app/_words/en/kept-runs.ts";
import { ChangedAnswers } from "#app/(signed-in)/loans/[id]/suitability/suitability-changes.tsx";
import type { NamedLine } from "#app/(signed-in)/loans/[id]/suitability/suitability-notes.ts";
import type { KeptRun } from "#lib/loans/queries/kept-runs.ts";
import type { PaperLanguage } from "#lib/papers/languages.ts";

function Changes({
  changes,
  numbers,
  language,
}: {
  changes: KeptRun["changes"];
  numbers: ReadonlyMap<string, string>;
  language: PaperLanguage;
}) {
  if (changes === null) return <span className="quiet">{words.first}</span>;
  if (changes.length === 0) return <span className="quiet">{words.same}</span>;
  return (
    <details>
      <summary>{words.changed(changes.length)}</summary>
      <ChangedAnswers
        changes={changes}
        caption={words.caption}
        after={words.after}
        numbers={numbers}
        language={language}
      />
    </details>
  );
}

export function KeptRuns({
  runs,
  lines,
  language,
}: {
  runs: readonly KeptRun[];
  lines: readonly NamedLine[];
  language: PaperLanguage;
}) {
  if (runs.length === 0) return null;
  const numbers = new Map(lines.map((line) => [line.specimenId, line.accessionNumber]));
  return (
    <details>
      <summary>{words.title(runs.length)}</summary>
      <ol className="small">
        {runs.map(({ id, occasion, runAt, changes }) => (
          <li key={id}>
            <Moment at={runAt} long />, {words.occasions[occasion] ?? occasion}.{" "}
            <Changes changes={changes} numbers={numbers} language={language} />
          </li>
        ))}
      </ol>
    </details>
  );
}
