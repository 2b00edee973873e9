/** The rows of a cost statement: every line of the quotation that was accepted, with what it came to so far. */
import type { LineRow } from "#app/(signed-in)/loans/[id]/money/rows.ts";
import { statedRow } from "#app/(signed-in)/loans/[id]/money/sent-lines.ts";
import type { CostLine } from "#lib/costing/schema.ts";
import type { MoneySheet } from "#lib/loans/queries/costings.ts";

const isSame = (one: CostLine, other: CostLine) => one.code === other.code && one.note === other.note;

export function statementRows({ accepted, statements }: MoneySheet): LineRow[] {
  if (!accepted) return [];
  const { lines, currency } = accepted.content;
  const before = statements[0]?.content.lines;
  return lines.map((line, index) => {
    const stated = before?.find((one) => isSame(one, line));
    const minor = before ? (stated?.netMinor ?? 0) : line.netMinor;
    return statedRow(stated ?? line, index, minor, currency);
  });
}

/** What came in beside the quotation, on the statement before. */
export function beyondQuoted({ accepted, statements }: MoneySheet): CostLine[] {
  const quoted = accepted?.content.lines ?? [];
  return (statements[0]?.content.lines ?? []).filter((line) => !quoted.some((one) => isSame(one, line)));
}
