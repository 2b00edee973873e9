/**
 * A table with a caption and headers; figures stand right, the first column names
 * the row. A column of figures may be aligned on the decimal, and a long list may
 * be set densely. On a telephone a row of many columns is a card: its name, then
 * each cell behind the label of its column.
 */
import type { ReactNode } from "react";
import styles from "#app/_parts/data-table.module.css";
import { alignOnDecimal } from "#app/_parts/decimal.ts";

export type Column<Row> = {
  key: string;
  label: string;
  /** What stands at the head of the column instead of its bare label. */
  head?: ReactNode;
  right?: boolean;
  /** On a card: the cell by itself, or not at all. */
  onCard?: "bare" | "left out";
  cell: (row: Row) => ReactNode;
  /** The figure as text ("12.5", "1 200 mm"); its column is then aligned on the decimal, and `cell` is not asked. */
  figure?: (row: Row) => string | null;
};

/** Fewer columns than this stand side by side on a telephone too. */
const fewestForCards = 4;

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
  const isCards = columns.length >= fewestForCards;
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
    // A group and no landmark: the section around it is one already, often of the same name.
    // biome-ignore lint/a11y/useSemanticElements: no set of fields
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the page is scrolled with the keyboard
    <div className="scroll-x" role="group" tabIndex={0} aria-label={caption}>
      <table className={[dense && "dense", isCards && styles.cards].filter(Boolean).join(" ") || undefined}>
        <caption className={captionHidden ? "visually-hidden" : undefined}>{caption}</caption>
        <thead>
          <tr>
            {set.map((column) => (
              <th key={column.key} scope="col" className={column.right ? "right" : undefined}>
                {column.head ?? column.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, line) => (
            <tr key={rowKey(row)}>
              {set.map((column, position) => {
                const shown = column.show(row, line);
                if (position === 0)
                  return (
                    <th key={column.key} scope="row" className={column.right ? "right" : undefined}>
                      {shown}
                    </th>
                  );
                const isEmpty = shown === null || shown === undefined || shown === false || shown === "";
                return (
                  <td
                    key={column.key}
                    className={column.right ? "right" : undefined}
                    data-label={isCards ? column.label : undefined}
                    data-on-card={isCards ? (isEmpty ? "left out" : column.onCard) : undefined}
                  >
                    {isCards ? <div className={styles.cell}>{shown}</div> : shown}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Which keys a list answers to; said where there are keys. */
export function ListKeys({ children }: { children: ReactNode }) {
  return <p className={`quiet small no-print ${styles.keys}`}>{children}</p>;
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
