/** The findings of one check, numbered as on the plate. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { conditionLabels as labels } from "#app/_words/en/condition-labels.ts";
import { formatNumber } from "#app/_words/format.ts";
import type { Finding } from "#lib/condition/schema.ts";
import { findingWord } from "#lib/condition/terms.ts";

export function extentWords(finding: Pick<Finding, "extentMm" | "extentPercent">): string {
  if (finding.extentMm !== undefined) return `${formatNumber(finding.extentMm)} mm`;
  return finding.extentPercent === undefined ? "" : `${formatNumber(finding.extentPercent)} %`;
}

export function FindingsTable({ findings }: { findings: readonly Finding[] }) {
  const numbered = findings.map((finding, index) => ({ ...finding, number: index + 1 }));
  return (
    <DataTable
      caption={labels.findings}
      rows={numbered}
      rowKey={(row) => row.markId}
      empty={<p>{labels.noFindings}</p>}
      columns={[
        { key: "number", label: labels.mark, cell: (row) => row.number },
        { key: "term", label: labels.term, cell: (row) => findingWord(row.term) },
        { key: "place", label: labels.place, cell: (row) => row.place },
        { key: "extent", label: labels.extent, right: true, cell: extentWords },
        { key: "severity", label: labels.severity, cell: (row) => row.severity },
        { key: "activity", label: labels.activity, cell: (row) => row.activity },
        { key: "note", label: labels.note, cell: (row) => row.note },
      ]}
    />
  );
}
