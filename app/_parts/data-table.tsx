/** A table with a caption and headers; figures stand right, the first column names the row. */
import type { ReactNode } from "react";

export type Column<Row> = {
  key: string;
  label: string;
  right?: boolean;
  cell: (row: Row) => ReactNode;
};

export function DataTable<Row>({
  caption,
  captionHidden = false,
  columns,
  rows,
  rowKey,
  empty,
}: {
  caption: string;
  captionHidden?: boolean;
  columns: readonly Column<Row>[];
  rows: readonly Row[];
  rowKey: (row: Row) => string;
  /** what to say, and to offer, when there are no rows */
  empty?: ReactNode;
}) {
  if (rows.length === 0 && empty) return <>{empty}</>;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the page is scrolled with the keyboard
    <section className="scroll-x" tabIndex={0} aria-label={caption}>
      <table>
        <caption className={captionHidden ? "visually-hidden" : undefined}>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.key} scope="col" className={column.right ? "right" : undefined}>
                {column.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={rowKey(row)}>
              {columns.map((column, position) =>
                position === 0 ? (
                  <th key={column.key} scope="row" className={column.right ? "right" : undefined}>
                    {column.cell(row)}
                  </th>
                ) : (
                  <td key={column.key} className={column.right ? "right" : undefined}>
                    {column.cell(row)}
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
    <div style={{ border: "1px dashed var(--rule)", padding: "1rem 1.2rem", marginBottom: "0.8rem" }}>
      <p style={{ margin: action ? undefined : 0 }}>{children}</p>
      {action}
    </div>
  );
}
