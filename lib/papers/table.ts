/**
 * A table into strips. Columns that fit their content take what it needs, the
 * others share the rest; where all of it is too much, the fitting columns give way
 * down to their widest word. Figures in a decimal column stand with their marks
 * below each other. A row is never divided unless it is taller than a page, the
 * header is repeated on each page, and the last two rows stay together.
 */
import { type Cell, figureIn, paragraphsOf, type TableColumn, toSpans } from "#lib/papers/blocks.ts";
import { alignRight, type ColumnOfLines, columnOf, stripsOf } from "#lib/papers/lines.ts";
import { type Measure, type Sheet, sheet, styles } from "#lib/papers/sheet.ts";
import { keptTogether, type Placed, type Strip } from "#lib/papers/strips.ts";
import { documentNode, nodesUnder, nodeUnder, type StructureNode } from "#lib/papers/structure.ts";
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

const figureWithPoint = /^(?<whole>[-\u2212]?[\d\u202F\u00A0,]*\d)(?<fraction>\.\d+)?$/;
const figureWithComma = /^(?<whole>[-\u2212]?[\d\u202F\u00A0.]*\d)(?<fraction>,\d+)?$/;

/** What is measured with, and what stands before the decimals. */
type Figures = { measure: Measure; decimalMark: string };

/** The two sides of a figure's decimal mark, the mark on the right; null for words. */
function figureWidths(
  cell: Cell,
  { measure, decimalMark }: Figures,
): { whole: number; fraction: number } | null {
  const match = (decimalMark === "," ? figureWithComma : figureWithPoint).exec(textOf(cell));
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
function needsOf(column: TableColumn, cells: readonly Cell[], by: Figures) {
  const { measure } = by;
  if (column.width !== "fit") return { least: LEAST_SHARED_PT, most: LEAST_SHARED_PT };
  const header = naturalWidths(column.header, styles.columnHeader, measure).word;
  const texts = cells.flatMap(paragraphsOf).map((text) => naturalWidths(text, styles.cell, measure));
  const figures = column.align === "decimal" ? cells.map((cell) => figureWidths(cell, by)) : [];
  const aligned =
    widest(figures.map((figure) => figure?.whole ?? 0)) +
    widest(figures.map((figure) => figure?.fraction ?? 0));
  const pictures = cells.map((cell) => figureIn(cell)?.widthPt ?? 0);
  return {
    least: Math.max(header, aligned, ...pictures, ...texts.map(({ word }) => word)),
    most: Math.max(header, aligned, ...pictures, ...texts.map(({ line }) => line)),
  };
}

/** @returns the edges of each column on the sheet, from margin to margin */
export function columnEdges(
  { columns, rows, total }: Table,
  measure: Measure,
  { leftPt: firstPt, rightPt: lastPt }: Pick<Sheet, "leftPt" | "rightPt"> = sheet,
  decimalMark = ".",
): ColumnEdges[] {
  const allRows = total === undefined ? rows : [...rows, total];
  const needs = columns.map((column, index) =>
    needsOf(
      column,
      allRows.map((row) => row[index] ?? ""),
      { measure, decimalMark },
    ),
  );
  const shares = columns.map(({ width }) => (width === "fit" ? 0 : width.share));
  const availablePt = lastPt - firstPt - COLUMN_GAP_PT * (columns.length - 1);
  const leastPt = sum(needs.map(({ least }) => least));
  const mostPt = sum(needs.map(({ most }) => most));
  const allShares = sum(shares);

  const widths = needs.map(({ least, most }, index) => {
    if (availablePt < leastPt) return (least * availablePt) / leastPt;
    if (availablePt < mostPt) return least + ((most - least) * (availablePt - leastPt)) / (mostPt - leastPt);
    return allShares === 0 ? most : most + ((shares[index] ?? 0) / allShares) * (availablePt - mostPt);
  });
  let leftPt = firstPt;
  return widths.map((widthPt) => {
    const edges = { leftPt, rightPt: leftPt + widthPt };
    leftPt += widthPt + COLUMN_GAP_PT;
    return edges;
  });
}

function cellColumn(
  cell: Cell,
  align: TableColumn["align"],
  {
    edges,
    fractionPt,
    by,
    node,
  }: { edges: ColumnEdges; fractionPt: number; by: Figures; node: StructureNode },
): ColumnOfLines {
  const { measure } = by;
  const texts = paragraphsOf(cell);
  const column = columnOf(texts, styles.cell, { ...edges, measure, node: nodesUnder(node, "P", texts) });
  if (align === "left") return column;
  const right = alignRight(column);
  const figure = align === "decimal" ? figureWidths(cell, by) : null;
  const [line] = right.lines;
  if (figure === null || line === undefined || right.lines.length > 1) return right;
  const shiftPt = (line.shiftPt ?? 0) - (fractionPt - figure.fraction);
  return shiftPt < 0 ? right : { ...right, lines: [{ ...line, shiftPt }] };
}

type RowEdges = { above: Placed | null; below: Placed | null };

const ruleAcross = (on: Sheet, weightPt: number, ink: "ink" | "rule"): Placed => ({
  kind: "rule",
  xPt: on.leftPt,
  toXPt: on.rightPt,
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

type RowColumns = {
  edges: readonly ColumnEdges[];
  nodes: readonly StructureNode[];
  /** Lines of words of each cell. */
  lineCounts: readonly number[];
};

const blankStrip: Strip = { heightPt: styles.cell.leadingPt, gapPt: 0, items: [], keepWithNext: false };

/** The figures of a row begin with its first line, or below the words of their cell; the row is as high as the highest. */
function withFigures(
  strips: readonly Strip[],
  cells: readonly Cell[],
  { edges, nodes, lineCounts }: RowColumns,
): Strip[] {
  const topOf = (index: number) => {
    const count = lineCounts[index] ?? 0;
    return count === 0 ? 1 : sum(strips.slice(0, count).map(({ heightPt }) => heightPt)) + 2;
  };
  const items = cells.flatMap((cell, index): Placed[] => {
    const figure = figureIn(cell);
    const column = edges[index];
    const node = nodes[index];
    if (figure === null || column === undefined || node === undefined) return [];
    const own = nodeUnder(node, "Figure", figure.alternative);
    return [{ kind: "figure", xPt: column.leftPt, yPt: topOf(index), figure, column, node: own }];
  });
  const [first, ...others] = strips;
  if (items.length === 0 || first === undefined) return [...strips];
  const bottomOf = (cell: Cell, index: number) => {
    const figure = figureIn(cell);
    return figure === null ? 0 : topOf(index) + figure.heightPt;
  };
  const neededPt = Math.max(0, ...cells.map(bottomOf)) + 1;
  const missingPt = neededPt - sum(strips.map(({ heightPt }) => heightPt));
  const below: Strip[] =
    missingPt > 0 ? [{ heightPt: missingPt, gapPt: 0, items: [], keepWithNext: false, continues: true }] : [];
  return [{ ...first, items: [...items, ...first.items] }, ...others, ...below];
}

/** @param ground the sheet that it stands on, and what it is a part of */
export function tableStrips(
  table: Table,
  measure: Measure,
  gapPt = 0,
  ground: { sheet: Sheet; node: StructureNode; decimalMark?: string } = { sheet, node: documentNode() },
): Strip[] {
  const { columns, rows, total } = table;
  const { decimalMark = "." } = ground;
  const by = { measure, decimalMark };
  const edges = columnEdges(table, measure, ground.sheet, decimalMark);
  const noEdges: ColumnEdges = { leftPt: ground.sheet.leftPt, rightPt: ground.sheet.rightPt };
  const rule = (weightPt: number, ink: "ink" | "rule") => ruleAcross(ground.sheet, weightPt, ink);
  const node = nodeUnder(ground.node, "Table");

  const allRows = total === undefined ? rows : [...rows, total];
  const fractions = columns.map((_column, index) =>
    widest(allRows.map((row) => figureWidths(row[index] ?? "", by)?.fraction ?? 0)),
  );
  const headerNodes = nodesUnder(nodeUnder(nodeUnder(node, "THead"), "TR"), "TH", columns);
  const bodyNode = allRows.length === 0 ? null : nodeUnder(node, "TBody");
  const rowStrips = (cells: readonly Cell[]) => {
    const nodes = nodesUnder(nodeUnder(bodyNode ?? node, "TR"), "TD", columns);
    const columnsOfLines = columns.map(({ align }, index) =>
      cellColumn(cells[index] ?? "", align, {
        edges: edges[index] ?? noEdges,
        fractionPt: fractions[index] ?? 0,
        by,
        node: nodes[index] ?? node,
      }),
    );
    const strips = stripsOf(columnsOfLines);
    const lineCounts = columnsOfLines.map(({ lines }) => lines.length);
    return withFigures(strips.length === 0 ? [blankStrip] : strips, cells, { edges, nodes, lineCounts });
  };

  const headerColumns = columns.map(({ header, align }, index) => {
    const column = columnOf([header], styles.columnHeader, {
      ...(edges[index] ?? noEdges),
      measure,
      node: headerNodes[index],
    });
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
