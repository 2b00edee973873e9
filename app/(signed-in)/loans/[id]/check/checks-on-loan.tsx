/** The checks of the loan's specimens on this loan: when each was looked at, by whom, and what differs from before. */
import { DataTable } from "#app/_parts/data-table.tsx";
import { DateText } from "#app/_parts/figures.tsx";
import { StateMark } from "#app/_parts/state-mark.tsx";
import { conditionLabels } from "#app/_words/en/condition-labels.ts";
import { loanWords as words } from "#app/_words/en/loan-pages.ts";
import { formatDate } from "#app/_words/format.ts";
import { occasionNames } from "#lib/condition/schema.ts";
import type { LineChecks, LoanSheet } from "#lib/loans/queries.ts";

type Line = LoanSheet["lines"][number];
type OfLine = LineChecks["all"][number] & { accessionNumber: string };

/** More rows than this are folded. */
const readAtAGlance = 8;

function checksOn(lines: readonly Line[]): OfLine[] {
  return lines.flatMap(({ accessionNumber, checks }) =>
    (checks?.all ?? []).map((one) => ({ ...one, accessionNumber })),
  );
}

function Differences({ totals, needsReview }: Pick<OfLine, "totals" | "needsReview">) {
  if (totals === null) return <span className="quiet">{words.firstCheck}</span>;
  const graver = totals.new + totals.worse > 0 || needsReview;
  return <StateMark outcome={graver ? "attend" : "clear"}>{conditionLabels.totals(totals)}</StateMark>;
}

export function ChecksOnLoan({ lines }: { lines: readonly Line[] }) {
  const checks = checksOn(lines);
  if (checks.length === 0) return null;
  const table = (
    <DataTable<OfLine>
      caption={words.checksOnLoan}
      rows={checks}
      rowKey={({ check }) => check.id}
      dense={checks.length > readAtAGlance}
      columns={[
        {
          key: "number",
          label: words.number,
          cell: ({ accessionNumber }) => <span className="mono">{accessionNumber}</span>,
        },
        {
          key: "occasion",
          label: conditionLabels.occasion,
          cell: ({ check }) => occasionNames[check.occasion],
        },
        { key: "day", label: words.checkedOn, cell: ({ check }) => <DateText date={check.checkedOn} /> },
        { key: "by", label: words.checkedBy, cell: ({ check }) => check.checkedBy },
        { key: "grade", label: words.gradeField, cell: ({ check }) => check.grade },
        { key: "differences", label: words.differences, cell: (one) => <Differences {...one} /> },
      ]}
    />
  );
  return checks.length <= readAtAGlance ? (
    table
  ) : (
    <details>
      <summary>{words.checksCount(checks.length)}</summary>
      {table}
    </details>
  );
}

/** That a check was signed, once, where the reader comes back to. Nothing for what an address names that is no check here. */
export function CheckSigned({
  lines,
  checkId,
  isHome,
}: {
  lines: readonly Line[];
  checkId: string | undefined;
  /** A check at home is told where the specimen is checked in, every other beside the line. */
  isHome: boolean;
}) {
  const signed = checksOn(lines).find(
    ({ check }) => check.id === checkId && (check.occasion === "home") === isHome,
  );
  if (!signed) return null;
  const { accessionNumber, check } = signed;
  return (
    <p role="status" className="form-done">
      {words.checkSigned(
        accessionNumber,
        occasionNames[check.occasion],
        formatDate(check.checkedOn),
        check.grade,
      )}
    </p>
  );
}
