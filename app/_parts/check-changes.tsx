/** What has changed between two checks, mark by mark; where the examiner and the figures differ, both. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { extentWords } from "#app/_parts/findings-table.tsx";
import { type MarkTone, SeverityMark, StateMark } from "#app/_parts/state-mark.tsx";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import type { CheckComparison, MarkChange } from "#lib/condition/comparison.ts";
import type { Finding } from "#lib/condition/schema.ts";
import { findingWord } from "#lib/condition/terms.ts";

const toneOfChange: Record<MarkChange, MarkTone> = {
  new: "bar",
  worse: "bar",
  same: "neutral",
  better: "clear",
  gone: "clear",
  "not-looked-at": "attend",
};

function SeenAs({ finding }: { finding: Finding | null }) {
  if (!finding) return <span className="quiet">–</span>;
  // A figure and its unit stay together.
  const extent = extentWords(finding).replace(" ", "\u00a0");
  return (
    <>
      <SeverityMark severity={finding.severity} />
      {extent && `, ${extent}`}
    </>
  );
}

/** @param caption since when */
export function CheckChanges({ comparison, caption }: { comparison: CheckComparison; caption: string }) {
  const changed = comparison.marks.filter(({ change, answerDiffers }) => change !== "same" || answerDiffers);
  if (changed.length === 0)
    return (
      <p className="quiet">
        {caption}: {labels.nothingChanged}
      </p>
    );
  return (
    <DataTable
      caption={caption}
      rows={changed}
      rowKey={(mark) => mark.markId}
      columns={[
        {
          key: "mark",
          label: labels.mark,
          cell: ({ before, after }) => {
            const finding = after ?? before;
            return finding && `${findingWord(finding.term)}, ${finding.place}`;
          },
        },
        {
          key: "change",
          label: labels.change,
          cell: (mark) => (
            <>
              <StateMark outcome={toneOfChange[mark.change]}>{labels.changes[mark.change]}</StateMark>
              <span className="quiet small"> {labels.bothSaid(mark)}</span>
            </>
          ),
        },
        { key: "before", label: labels.before, cell: ({ before }) => <SeenAs finding={before} /> },
        { key: "after", label: labels.now, cell: ({ after }) => <SeenAs finding={after} /> },
      ]}
    />
  );
}
