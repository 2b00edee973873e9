/**
 * Rows that say the same are printed once, with the numbers of all that say it. Rows
 * are numbered from 1 in their order; every row is in one group, and groups stand in
 * the order of their first row.
 */

/** Numbers as ranges: 1, 2, 3, 5 as "1–3, 5". @param numbers rising */
export function rangesOf(numbers: readonly number[]): string {
  const ranges: { first: number; last: number }[] = [];
  for (const number of numbers) {
    const open = ranges.at(-1);
    if (open !== undefined && open.last === number - 1) open.last = number;
    else ranges.push({ first: number, last: number });
  }
  return ranges
    .map(({ first, last }) =>
      first === last ? `${first}` : `${first}${last === first + 1 ? ", " : "–"}${last}`,
    )
    .join(", ");
}

export type RowGroup<Row> = { first: Row; rows: Row[]; numbers: number[] };

/** @param keyOf what rows of one group share */
export function groupBy<Row>(rows: readonly Row[], keyOf: (row: Row) => string): RowGroup<Row>[] {
  const groups = new Map<string, RowGroup<Row>>();
  rows.forEach((row, index) => {
    const key = keyOf(row);
    const group = groups.get(key) ?? { first: row, rows: [], numbers: [] };
    group.rows.push(row);
    group.numbers.push(index + 1);
    groups.set(key, group);
  });
  return [...groups.values()];
}
