/**
 * What stands in the margin of a check: what the severities mean, which words are
 * asked and where they come from, and what a measurement calls for at the least.
 * It tells and never chooses.
 */
import { MarginNote } from "#app/_parts/record-page.tsx";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import { formatNumber, formatShare } from "#app/_words/format.ts";
import { type MeasuredSeverity, measuredSeverities } from "#lib/condition/measured-severities.ts";
import { severities, severityMeanings } from "#lib/condition/schema.ts";
import { type FindingGroup, findingSources } from "#lib/condition/terms.ts";

const isShare = ({ measure }: MeasuredSeverity) => measure.endsWith("-a-year");

/** What the severities mean. */
export function SeverityNote() {
  return (
    <MarginNote title={labels.severityNote}>
      {severities
        .filter((severity) => severity !== "none")
        .map((severity) => `${severity}, ${severityMeanings[severity]}`)
        .join("; ")}
      .
    </MarginNote>
  );
}

/** What is asked of a preparation, and by what a severity may be found; where both come from, folded. */
export function WordsNote({ groups }: { groups: readonly FindingGroup[] }) {
  const measured = measuredSeverities(groups);
  const sources = [...measured.map(({ source }) => source), ...findingSources];
  return (
    <>
      <MarginNote title={labels.measuredNote}>
        {measured
          .map((row) =>
            labels.measured(
              row.measure,
              isShare(row) ? formatShare(row.above) : formatNumber(row.above),
              row.severity,
            ),
          )
          .join("; ")}
        .
      </MarginNote>
      <MarginNote title={labels.wordsNote}>{labels.wordsAbout}</MarginNote>
      <details>
        <summary>{labels.whereFrom}</summary>
        <ul>
          {[...new Set(sources)].map(({ id, title, where, standing }) => (
            <li key={`${id} ${where}`}>
              {title}
              {where && `, ${where}`} ({standing})
            </li>
          ))}
        </ul>
      </details>
    </>
  );
}
