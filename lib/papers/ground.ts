/**
 * What every block stands on: the sheet, the widths of letters, the node of the
 * structure tree that it grows, the space before it. Columns reach from margin to
 * margin; a rule keeps to what follows it.
 */
import type { Text } from "#lib/papers/blocks.ts";
import { columnOf, stripsOf } from "#lib/papers/lines.ts";
import { bodyWidthOf, type Measure, type Sheet, styles } from "#lib/papers/sheet.ts";
import type { Strip } from "#lib/papers/strips.ts";
import type { StructureNode } from "#lib/papers/structure.ts";

/** Where blocks are set: the sheet, the widths of letters, and the node that they are a part of. */
export type Ground = {
  sheet: Sheet;
  measure: Measure;
  node: StructureNode;
  /** A point where nothing is said. */
  decimalMark?: string;
};

export type Edges = { leftPt: number; rightPt: number };
export const fullOf = ({ sheet }: Ground): Edges => ({ leftPt: sheet.leftPt, rightPt: sheet.rightPt });
export const gaps = {
  title: 18,
  heading: 20,
  subheading: 10,
  paragraph: 6,
  clause: 5.5,
  definition: 3.5,
  table: 9,
  columns: 12,
  signatures: 16,
  display: 4,
  notice: 14,
  figures: 12,
  fields: 14,
} as const;

export function ruleStrip(
  { sheet }: Ground,
  weightPt: number,
  ink: "ink" | "rule" | "accent" | "black",
  heightPt: number,
  gapPt = 0,
): Strip {
  return {
    heightPt,
    gapPt,
    keepWithNext: true,
    items: [{ kind: "rule", xPt: sheet.leftPt, toXPt: sheet.rightPt, yPt: 0, weightPt, ink }],
  };
}

/** Columns of one width across the sheet. */
export function evenColumns({ sheet }: Ground, count: number, gapPt = 24): Edges[] {
  const widthPt = (bodyWidthOf(sheet) - gapPt * (count - 1)) / count;
  return Array.from({ length: count }, (_none, index) => ({
    leftPt: sheet.leftPt + index * (widthPt + gapPt),
    rightPt: sheet.leftPt + index * (widthPt + gapPt) + widthPt,
  }));
}

/** Texts across the whole sheet, each a part of the node. */
export function acrossSheet(
  texts: readonly Text[],
  style: keyof typeof styles,
  ground: Ground,
  { node, gapPt = 0 }: { node: StructureNode; gapPt?: number },
): Strip[] {
  const { measure } = ground;
  return stripsOf([columnOf(texts, styles[style], { ...fullOf(ground), measure, node })], gapPt);
}
