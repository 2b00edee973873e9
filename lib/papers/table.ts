/**
 * A table into strips. Columns that fit their content take what it needs, the
 * others share the rest; where all of it is too much, the fitting columns give way
 * down to their widest word. Figures in a decimal column stand with their marks
 * below each other. A row is never divided unless it is taller than a page, the
 * header is repeated on each page, and the last two rows stay together.
 */
import { type Cell, paragraphsOf, type TableColumn, toSpans } from "#lib/papers/blocks.ts";
import { alignRight, type ColumnOfLines, columnOf, stripsOf } from "#lib/papers/lines.ts";
import { type Measure, sheet, styles } from "#lib/papers/sheet.ts";
import { keptTogether, type Placed, type Strip } from "#lib/papers/strips.ts";
import { naturalWidths } from "#lib/papers/wrap.ts";

type Table = {
  columns: readonly TableColumn[];
  rows: readonly (readonly Cell[])[];
  total?: readonly Cell[];
};

const COLUMN_GAP_PT = 9;
const PADDING_PT = 3;
/** A column that shares the rest is at least this wide. */
const LEAST_SHARED_PT = 60;

export type ColumnEdges = { leftPt: number; rightPt: number };

const textOf = (cell: Cell): string =>
  paragraphsOf(cell)
    .map((text) =>
      toSpans(text)
        .map((span) => span.text)
        .join(""),
    )
    .join("\n");

const figure = /^(?<whole>[-\u2212]?[\d\u202F\u00A0,]*\d)(?<fraction>\.\d+)?$/;

/** The two sides of a figure's decimal mark, the mark on the right; null for words. */
function figureWidths(cell: Cell, measure: Measure): { whole: number; fraction: number } | null {
  const match = figure.exec(textOf(cell));
  if (match === null) return null;
  const { face, sizePt } = styles.cell;
  return {
    whole: measure(match.groups?.whole ?? "", face, sizePt),
    fraction: measure(match.groups?.fraction ?? "", face, sizePt),
  };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const widest = (values: readonly number[]) => Math.max(0, ...values);

/** What a column needs at least, so that no word of it is broken, and at most, so that no cell is. */
function needsOf(column: TableColumn, cells: readonly Cell[], measure: Measure) {
  if (column.width !== "fit") return { least: LEAST_SHARED_PT, most: LEAST_SHARED_PT };
  const header = naturalWidths(column.header, styles.columnHeader, measure).word;
  const texts = cells.flatMap(paragraphsOf).map((text) => naturalWidths(text, styles.cell, measure));
  const figures = column.align === "decimal" ? cells.map((cell) => figureWidths(cell, measure)) : [];
  const aligned =
    widest(figures.map((figure) => figure?.whole ?? 0)) +
    widest(figures.map((figure) => figure?.fraction ?? 0));
  return {
    least: Math.max(header, aligned, ...texts.map(({ word }) => word)),
    most: Math.max(header, aligned, ...texts.map(({ line }) => line)),
  };
}

/** @returns the edges of each column on the sheet, from margin to margin */
export function columnEdges({ columns, rows, total }: Table, measure: Measure): ColumnEdges[] {
  const allRows = total === undefined ? rows : [...rows, total];
  const needs = columns.map((column, index) =>
    needsOf(
      column,
      allRows.map((row) => row[index] ?? ""),
      measure,
    ),
  );
  const shares = columns.map(({ width }) => (width === "fit" ? 0 : width.share));
  const availablePt = sheet.rightPt - sheet.leftPt - COLUMN_GAP_PT * (columns.length - 1);
  const leastPt = sum(needs.map(({ least }) => least));
  const mostPt = sum(needs.map(({ most }) => most));
  const allShares = sum(shares);

  const widths = needs.map(({ least, most }, index) => {
    if (availablePt < leastPt) return (least * availablePt) / leastPt;
    if (availablePt < mostPt) return least + ((most - least) * (availablePt - leastPt)) / (mostPt - leastPt);
    return allShares === 0 ? most : most + ((shares[index] ?? 0) / allShares) * (availablePt - mostPt);
  });
  let leftPt: number = sheet.leftPt;
  return widths.map((widthPt) => {
    const edges = { leftPt, rightPt: leftPt + widthPt };
    leftPt += widthPt + COLUMN_GAP_PT;
    return edges;
  });
}

function cellColumn(
  cell: Cell,
  align: TableColumn["align"],
  { edges, fractionPt, measure }: { edges: ColumnEdges; fractionPt: number; measure: Measure },
): ColumnOfLines {
  const column = columnOf(paragraphsOf(cell), styles.cell, { ...edges, measure });
  if (align === "left") return column;
  const right = alignRight(column);
  const figure = align === "decimal" ? figureWidths(cell, measure) : null;
  const [line] = right.lines;
  if (figure === null || line === undefined || right.lines.length > 1) return right;
  const shiftPt = (line.shiftPt ?? 0) - (fractionPt - figure.fraction);
  return shiftPt < 0 ? right : { ...right, lines: [{ ...line, shiftPt }] };
}

type RowEdges = { above: Placed | null; below: Placed | null };

const rule = (weightPt: number, ink: "ink" | "rule"): Placed => ({
  kind: "rule",
  xPt: sheet.leftPt,
  toXPt: sheet.rightPt,
  yPt: 0,
  weightPt,
  ink,
});

/** Space above and below the lines, rules at the edges; the row's lines stay together. */
function finishRow(strips: readonly Strip[], { above, below }: RowEdges, keepWithNext: boolean): Strip[] {
  const last = strips.length - 1;
  const padded = strips.map((strip, index): Strip => {
    const beforePt = index === 0 ? PADDING_PT : 0;
    const heightPt = strip.heightPt + beforePt + (index === last ? PADDING_PT : 0);
    const items = strip.items.map((item) => ({ ...item, yPt: item.yPt + beforePt }));
    if (index === 0 && above !== null) items.unshift(above);
    if (index === last && below !== null) items.push({ ...below, yPt: heightPt });
    return { ...strip, heightPt, items };
  });
  return keptTogether(padded, keepWithNext);
}

const blankStrip: Strip = { heightPt: styles.cell.leadingPt, gapPt: 0, items: [], keepWithNext: false };

export function tableStrips(table: Table, measure: Measure, gapPt = 0): Strip[] {
  const { columns, rows, total } = table;
  const edges = columnEdges(table, measure);
  const noEdges: ColumnEdges = { leftPt: sheet.leftPt, rightPt: sheet.rightPt };

  const allRows = total === undefined ? rows : [...rows, total];
  const fractions = columns.map((_column, index) =>
    widest(allRows.map((row) => figureWidths(row[index] ?? "", measure)?.fraction ?? 0)),
  );
  const rowStrips = (cells: readonly Cell[]) => {
    const strips = stripsOf(
      columns.map(({ align }, index) =>
        cellColumn(cells[index] ?? "", align, {
          edges: edges[index] ?? noEdges,
          fractionPt: fractions[index] ?? 0,
          measure,
        }),
      ),
    );
    return strips.length === 0 ? [blankStrip] : strips;
  };

  const headerColumns = columns.map(({ header, align }, index) => {
    const column = columnOf([header], styles.columnHeader, { ...(edges[index] ?? noEdges), measure });
    return align === "left" ? column : alignRight(column);
  });
  const header = finishRow(
    standOnLastLine(headerColumns),
    { above: null, below: rule(0.6, "ink") },
    true,
  ).map((strip, index) => (index === 0 ? { ...strip, gapPt } : strip));

  const body = rows.flatMap((cells, index) => {
    const isLast = index === rows.length - 1;
    return finishRow(
      rowStrips(cells),
      {
        above: index === 0 ? null : rule(0.35, "rule"),
        below: isLast ? rule(total === undefined ? 0.7 : 0.4, "ink") : null,
      },
      index === rows.length - 2 || (isLast && total !== undefined),
    );
  });
  const foot =
    total === undefined ? [] : finishRow(rowStrips(total), { above: null, below: rule(0.7, "ink") }, false);
  return [...header, ...[...body, ...foot].map((strip) => ({ ...strip, header }))];
}

/** Short headers stand on the last line, above their figures. */
function standOnLastLine(columns: readonly ColumnOfLines[]): Strip[] {
  const most = Math.max(0, ...columns.map(({ lines }) => lines.length));
  const blank = { segments: [], widthPt: 0 };
  return stripsOf(
    columns.map((column) => ({
      ...column,
      lines: [...Array.from({ length: most - column.lines.length }, () => blank), ...column.lines],
    })),
  );
}
