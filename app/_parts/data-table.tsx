/**
 * A table with a caption and headers; figures stand right, the first column names
 * the row. A column of figures may be aligned on the decimal, and a long list may
 * be set densely.
 */
import type { ReactNode } from "react";
import styles from "#app/_parts/data-table.module.css";
import { alignOnDecimal } from "#app/_parts/decimal.ts";

export type Column<Row> = {
  key: string;
  label: string;
  right?: boolean;
  cell: (row: Row) => ReactNode;
  /** The figure as text ("12.5", "1 200 mm"); its column is then aligned on the decimal, and `cell` is not asked. */
  figure?: (row: Row) => string | null;
};

export function DataTable<Row>({
  caption,
  captionHidden = false,
  columns,
  rows,
  rowKey,
  empty,
  dense = false,
}: {
  caption: string;
  captionHidden?: boolean;
  columns: readonly Column<Row>[];
  rows: readonly Row[];
  rowKey: (row: Row) => string;
  /** what to say, and to offer, when there are no rows */
  empty?: ReactNode;
  /** forty rows on a laptop */
  dense?: boolean;
}) {
  if (rows.length === 0 && empty) return <>{empty}</>;
  const set = columns.map((column) => {
    if (column.figure === undefined) return { ...column, show: column.cell };
    const aligned = alignOnDecimal(rows.map(column.figure));
    return {
      ...column,
      right: true,
      show: (_row: Row, line: number) => {
        const figure = aligned[line];
        return figure ? <span data-open={figure.open || undefined}>{figure.text}</span> : null;
      },
    };
  });
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the page is scrolled with the keyboard
    <section className="scroll-x" tabIndex={0} aria-label={caption}>
      <table className={dense ? "dense" : undefined}>
        <caption className={captionHidden ? "visually-hidden" : undefined}>{caption}</caption>
        <thead>
          <tr>
            {set.map((column) => (
              <th key={column.key} scope="col" className={column.right ? "right" : undefined}>
                {column.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, line) => (
            <tr key={rowKey(row)}>
              {set.map((column, position) =>
                position === 0 ? (
                  <th key={column.key} scope="row" className={column.right ? "right" : undefined}>
                    {column.show(row, line)}
                  </th>
                ) : (
                  <td key={column.key} className={column.right ? "right" : undefined}>
                    {column.show(row, line)}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** An empty state teaches: what belongs here, and the one action that starts it. */
export function EmptyState({ children, action }: { children: ReactNode; action?: ReactNode }) {
  return (
    <div className={styles.empty}>
      <p>{children}</p>
      {action}
    </div>
  );
}
