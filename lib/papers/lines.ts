/**
 * Lines side by side become strips: the first line of each column on the first
 * strip, on one baseline, the second on the second. This is how a clause stands
 * beside its heading, a term beside its meaning, and cells beside each other.
 */
import type { Text } from "#lib/papers/blocks.ts";
import { baselineOf, type Measure, type TextStyle } from "#lib/papers/sheet.ts";
import type { Placed, Strip } from "#lib/papers/strips.ts";
import type { StructureNode } from "#lib/papers/structure.ts";
import { type Line, wrapText } from "#lib/papers/wrap.ts";

/** Lines in their column; `shiftPt` moves one line to the right, for figures that align. */
export type ColumnOfLines = {
  leftPt: number;
  rightPt: number;
  style: TextStyle;
  lines: readonly (Line & { shiftPt?: number; node?: StructureNode })[];
};

export type ColumnPlace = {
  leftPt: number;
  rightPt: number;
  measure: Measure;
  /** What the texts are a part of: all of one, or each of its own. */
  node?: StructureNode | readonly StructureNode[] | undefined;
};

/** @param leftPt @param rightPt edges of the column on the sheet */
export function columnOf(
  texts: readonly Text[],
  style: TextStyle,
  { leftPt, rightPt, measure, node }: ColumnPlace,
): ColumnOfLines {
  const nodeOf = (index: number) => (node === undefined || "tag" in node ? node : node[index]);
  return {
    leftPt,
    rightPt,
    style,
    lines: texts.flatMap((text, index) => {
      const own = nodeOf(index);
      const lines = wrapText(text, style, rightPt - leftPt, measure);
      return own === undefined ? lines : lines.map((line) => ({ ...line, node: own }));
    }),
  };
}

/** Moves each line to the right edge of its column. */
export function alignRight(column: ColumnOfLines): ColumnOfLines {
  const widthPt = column.rightPt - column.leftPt;
  return {
    ...column,
    lines: column.lines.map((line) => ({ ...line, shiftPt: Math.max(0, widthPt - line.widthPt) })),
  };
}

export function stripsOf(columns: readonly ColumnOfLines[], gapPt = 0): Strip[] {
  const count = Math.max(0, ...columns.map(({ lines }) => lines.length));
  const heightPt = Math.max(0, ...columns.map(({ style }) => style.leadingPt));
  const baselinePt = Math.max(
    0,
    ...columns.map(({ style }) => baselineOf({ leadingPt: heightPt, sizePt: style.sizePt })),
  );
  return Array.from({ length: count }, (_none, index) => ({
    heightPt,
    gapPt: index === 0 ? gapPt : 0,
    keepWithNext: false,
    continues: index > 0,
    items: columns.flatMap(({ leftPt, rightPt, lines }): Placed[] => {
      const line = lines[index];
      if (line === undefined) return [];
      return line.segments.map(({ xPt, widthPt, text, style }) => ({
        kind: "text",
        xPt: leftPt + (line.shiftPt ?? 0) + xPt,
        yPt: baselinePt,
        text,
        style,
        widthPt,
        column: { leftPt, rightPt },
        ...(line.node === undefined ? {} : { node: line.node }),
      }));
    }),
  }));
}
