/**
 * From strips to pages. A strip is one line across the sheet with everything that
 * stands on it; strips that are kept with the next form a group that no page end
 * divides, unless the group is taller than a page. A strip of a table carries the
 * table's header, which is repeated where a page begins with it. No strip is left
 * out, and none stands below the end of its page.
 */
import type { Figure } from "#lib/papers/drawing.ts";
import type { Ink, TextStyle } from "#lib/papers/sheet.ts";
import type { StructureNode } from "#lib/papers/structure.ts";

/** x from the left edge of the sheet; y from the top of the strip, or of the page. */
export type Placed =
  | {
      kind: "text";
      xPt: number;
      yPt: number;
      text: string;
      style: TextStyle;
      widthPt: number;
      /** The column that it has to stay within. */
      column: { leftPt: number; rightPt: number };
      /** What it is a part of; nothing of what is only decoration or said already. */
      node?: StructureNode;
    }
  /** Its upper left corner. */
  | {
      kind: "figure";
      xPt: number;
      yPt: number;
      figure: Figure;
      column: { leftPt: number; rightPt: number };
      node?: StructureNode;
    }
  | { kind: "rule"; xPt: number; toXPt: number; yPt: number; weightPt: number; ink: Ink };

export type Strip = {
  heightPt: number;
  /** Space before it, unless it begins a page. */
  gapPt: number;
  items: readonly Placed[];
  keepWithNext: boolean;
  /** What stands above it when it begins a page. */
  header?: readonly Strip[];
  startsPage?: boolean;
  /** The columns of the strip above go on: they are read column by column, not line by line. */
  continues?: boolean;
};

export type PlacedStrip = { strip: Strip; topPt: number };

/** All but the last strip are kept with the next; the last as it was. */
export function keptTogether(strips: readonly Strip[], last = false): Strip[] {
  return strips.map((strip, index) => ({
    ...strip,
    keepWithNext: index < strips.length - 1 || last || strip.keepWithNext,
  }));
}

/** A paragraph's lines: never its first or its last one alone on a page. */
export function withoutWidows(strips: readonly Strip[]): Strip[] {
  const last = strips.length - 1;
  return strips.map((strip, index) => ({
    ...strip,
    keepWithNext: strip.keepWithNext || (index < last && (index === 0 || index === last - 1)),
  }));
}

function groupsOf(strips: readonly Strip[]): Strip[][] {
  const groups: Strip[][] = [];
  let open = false;
  for (const strip of strips) {
    if (open && !strip.startsPage) groups.at(-1)?.push(strip);
    else groups.push([strip]);
    open = strip.keepWithNext;
  }
  return groups;
}

/** What is said once more, for the eye alone. */
function withoutNodes(strip: Strip): Strip {
  return {
    ...strip,
    items: strip.items.map((item) => {
      if (item.kind === "rule" || item.node === undefined) return item;
      const { node: _node, ...shown } = item;
      return shown;
    }),
  };
}

const heightOf = (strips: readonly Strip[]) =>
  strips.reduce((sum, { heightPt, gapPt }, index) => sum + heightPt + (index === 0 ? 0 : gapPt), 0);

/**
 * @param bodyPt height of the text on one page
 * @returns strips by page, with their distance from the top of the text; at least one page
 * @throws {RangeError} for a strip that is taller than a page
 */
export function paginate(strips: readonly Strip[], bodyPt: number): PlacedStrip[][] {
  const pages: PlacedStrip[][] = [[]];
  let usedPt = 0;

  const put = (strip: Strip) => {
    const topPt = usedPt === 0 ? 0 : usedPt + strip.gapPt;
    if (topPt + strip.heightPt > bodyPt) throw new RangeError("A line is taller than the page.");
    pages.at(-1)?.push({ strip, topPt });
    usedPt = topPt + strip.heightPt;
  };
  const startPage = (first: Strip) => {
    if (usedPt > 0) pages.push([]);
    usedPt = 0;
    for (const strip of first.header ?? []) put(withoutNodes(strip));
  };
  const fits = (group: readonly Strip[], first: Strip) =>
    usedPt + (usedPt === 0 ? 0 : first.gapPt) + heightOf(group) <= bodyPt;

  for (const group of groupsOf(strips)) {
    const [first] = group;
    if (first === undefined) continue;
    if (first.startsPage || !fits(group, first)) startPage(first);
    const isWhole = fits(group, first);
    for (const strip of group) {
      if (!isWhole && !fits([strip], strip)) startPage(strip);
      put(strip);
    }
  }
  return pages;
}
