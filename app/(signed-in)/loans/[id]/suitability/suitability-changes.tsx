/** Which answers of the rules changed since they were last kept, and to what. Nothing where none did. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { setAsideWords as words } from "#app/_words/en/set-aside.ts";
import { findingSentence } from "#app/_words/finding-sentence.ts";
import { type NamedLine, withheld } from "#app/(signed-in)/loans/[id]/suitability/suitability-notes.ts";
import type { LoanSheet } from "#lib/loans/queries.ts";
import type { PaperLanguage } from "#lib/papers/languages.ts";
import { type RunChange, runDifference } from "#lib/suitability/run-difference.ts";
import type { Finding } from "#lib/suitability/schema.ts";

function Answer({ finding, language }: { finding: Finding | null; language: PaperLanguage }) {
  if (finding === null) return <span className="quiet">{words.noAnswer}</span>;
  return (
    <>
      <StateMark outcome={finding.outcome} />{" "}
      {finding.fact !== withheld && (
        <span className="small" lang={language}>
          {findingSentence(finding, language)}
        </span>
      )}
    </>
  );
}

/** A row for each changed answer: the specimen, the rule, what it said before and what after. */
export function ChangedAnswers({
  changes,
  caption,
  after,
  numbers,
  language,
}: {
  changes: readonly RunChange[];
  caption: string;
  /** The heading of the later answer. */
  after: string;
  /** Accession numbers by specimen. */
  numbers: ReadonlyMap<string, string>;
  language: PaperLanguage;
}) {
  return (
    <DataTable<RunChange>
      caption={caption}
      captionHidden
      dense
      rows={changes}
      rowKey={({ specimenId, rule }) => `${specimenId} ${rule}`}
      columns={[
        {
          key: "specimen",
          label: words.specimen,
          cell: ({ specimenId }) => <span className="mono">{numbers.get(specimenId)}</span>,
        },
        { key: "rule", label: words.rule, cell: ({ rule }) => rule },
        {
          key: "before",
          label: words.before,
          cell: ({ before }) => <Answer finding={before} language={language} />,
        },
        {
          key: "after",
          label: after,
          cell: ({ after }) => <Answer finding={after} language={language} />,
        },
      ]}
    />
  );
}

export function SuitabilityChanges({
  run,
  findings,
  lines,
  language,
}: {
  run: NonNullable<LoanSheet["latestRun"]>;
  findings: readonly Finding[];
  lines: readonly NamedLine[];
  language: PaperLanguage;
}) {
  const changes = runDifference(run.findings, findings);
  if (changes.length === 0) return null;
  const numbers = new Map(lines.map((line) => [line.specimenId, line.accessionNumber]));
  return (
    <details open>
      <summary>
        {words.changes} ({changes.length})
      </summary>
      <ChangedAnswers
        changes={changes}
        caption={words.changesCaption}
        after={words.after}
        numbers={numbers}
        language={language}
      />
    </details>
  );
}
