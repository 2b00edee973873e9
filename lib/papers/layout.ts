/**
 * A paper into pages. Blocks are measured into strips, strips are put on pages,
 * and every page gets its head and its foot, which know how many pages there are.
 * All that is needed of a font is how wide some words are in it, so layout is read
 * as text in tests; paint only puts ink where this file says.
 */
import type { Block, PaperDocument, SignaturePlace, Text } from "#lib/papers/blocks.ts";
import { alignRight, columnOf, stripsOf } from "#lib/papers/lines.ts";
import {
  bodyHeightPt,
  bodyWidthPt,
  type Measure,
  marginColumnPt,
  marginGapPt,
  sheet,
  styles,
} from "#lib/papers/sheet.ts";
import {
  keptTogether,
  type Placed,
  type PlacedStrip,
  paginate,
  type Strip,
  withoutWidows,
} from "#lib/papers/strips.ts";
import { tableStrips } from "#lib/papers/table.ts";

/** A page as it is printed: everything with its place from the sheet's upper left corner. */
export type PaperPage = { number: number; items: readonly Placed[] };

const full = { leftPt: sheet.leftPt, rightPt: sheet.rightPt };
const marginColumn = { leftPt: sheet.leftPt, rightPt: sheet.leftPt + marginColumnPt };
const textColumn = { leftPt: sheet.leftPt + marginColumnPt + marginGapPt, rightPt: sheet.rightPt };

const gaps = {
  title: 18,
  heading: 20,
  subheading: 10,
  paragraph: 6,
  clause: 5.5,
  definition: 3.5,
  table: 9,
  columns: 12,
  signatures: 16,
} as const;

function ruleStrip(weightPt: number, ink: "ink" | "rule" | "accent", heightPt: number, gapPt = 0): Strip {
  return {
    heightPt,
    gapPt,
    keepWithNext: true,
    items: [{ kind: "rule", xPt: sheet.leftPt, toXPt: sheet.rightPt, yPt: 0, weightPt, ink }],
  };
}

/** Columns of one width across the sheet. */
function evenColumns(count: number, gapPt = 24): { leftPt: number; rightPt: number }[] {
  const widthPt = (bodyWidthPt - gapPt * (count - 1)) / count;
  return Array.from({ length: count }, (_none, index) => ({
    leftPt: sheet.leftPt + index * (widthPt + gapPt),
    rightPt: sheet.leftPt + index * (widthPt + gapPt) + widthPt,
  }));
}

function titleStrips(block: Extract<Block, { kind: "title" }>, measure: Measure): Strip[] {
  return keptTogether(
    [
      ...stripsOf([columnOf([block.overline], styles.overline, { ...full, measure })]),
      ...stripsOf([columnOf([block.title], styles.title, { ...full, measure })], 2),
      ...stripsOf([columnOf(block.lines, styles.body, { ...full, measure })], 6),
      ruleStrip(1.1, "ink", 2.4, 12),
      { ...ruleStrip(0.4, "ink", 2), keepWithNext: true },
    ],
    true,
  );
}

function headingStrips(mark: string, text: string, measure: Measure): Strip[] {
  const markColumn = columnOf([mark], styles.mark, {
    leftPt: sheet.leftPt,
    rightPt: sheet.leftPt + 24,
    measure,
  });
  const textBeside = columnOf([text], styles.heading, {
    leftPt: sheet.leftPt + (mark === "" ? 0 : 24),
    rightPt: sheet.rightPt,
    measure,
  });
  return keptTogether(
    [...stripsOf([markColumn, textBeside], gaps.heading), ruleStrip(0.4, "rule", 3, 2.5)],
    true,
  );
}

function clauseStrips(block: Extract<Block, { kind: "clause" }>, measure: Measure): Strip[] {
  const indentPt = 20;
  const mark = columnOf([block.mark], styles.clauseMark, {
    leftPt: sheet.leftPt,
    rightPt: sheet.leftPt + indentPt - 2,
    measure,
  });
  const heading = columnOf([block.heading], styles.clauseHeading, {
    leftPt: sheet.leftPt + indentPt,
    rightPt: marginColumn.rightPt,
    measure,
  });
  const text = columnOf([block.text], styles.body, { ...textColumn, measure });
  const strips = stripsOf([mark, heading, text], gaps.clause);
  // the heading is not left on one page with its text on the next
  const headingLines = Math.max(mark.lines.length, heading.lines.length);
  return withoutWidows(
    strips.map((strip, index) => ({
      ...strip,
      keepWithNext: index < headingLines && index < strips.length - 1,
    })),
  );
}

/** Meanings up to so many lines are not divided, so that each stands beside its term. */
const linesOfOneGlance = 8;

function definitionStrips(block: Extract<Block, { kind: "definitions" }>, measure: Measure): Strip[] {
  return block.rows.flatMap(({ term, paragraphs }, index) => {
    const strips = stripsOf(
      [
        columnOf([term], styles.term, { ...marginColumn, measure }),
        columnOf(paragraphs, styles.body, { ...textColumn, measure }),
      ],
      index === 0 ? gaps.paragraph : gaps.definition,
    );
    return strips.length <= linesOfOneGlance ? keptTogether(strips) : withoutWidows(strips);
  });
}

function columnsStrips(block: Extract<Block, { kind: "columns" }>, measure: Measure): Strip[] {
  const edges = evenColumns(block.columns.length);
  const side = (texts: (column: (typeof block.columns)[number]) => readonly Text[], style: "term" | "body") =>
    block.columns.map((column, index) =>
      columnOf(texts(column), styles[style], { ...(edges[index] ?? full), measure }),
    );
  return keptTogether([
    ...stripsOf(
      side(({ heading }) => [heading], "term"),
      gaps.columns,
    ),
    ...stripsOf(
      side(({ lines }) => lines, "body"),
      1,
    ),
  ]);
}

/** A line to sign on, its label below it, and what is known of the signature below that. */
function signatureStrips(places: readonly SignaturePlace[], measure: Measure): Strip[] {
  const edges = evenColumns(places.length, 30);
  const edgesOf = (index: number) => edges[index] ?? full;
  const labelPt = 46;
  const across = (
    style: keyof typeof styles,
    texts: (place: SignaturePlace) => readonly Text[],
    gapPt: number,
  ): Strip[] =>
    stripsOf(
      places.map((place, index) => columnOf(texts(place), styles[style], { ...edgesOf(index), measure })),
      gapPt,
    );
  const lines: Strip = {
    heightPt: 4,
    gapPt: 2,
    keepWithNext: true,
    items: places.map((_place, index) => ({
      kind: "rule",
      xPt: edgesOf(index).leftPt,
      toXPt: edgesOf(index).rightPt,
      yPt: 0,
      weightPt: 0.6,
      ink: "ink",
    })),
  };
  const signed = across("signedName", ({ signedBy }) => (signedBy === null ? [] : [signedBy]), 20);
  const blank: Strip = { heightPt: styles.signedName.leadingPt, gapPt: 30, keepWithNext: true, items: [] };
  const factCount = Math.max(0, ...places.map(({ facts }) => facts.length));
  const facts = Array.from({ length: factCount }, (_none, row) => {
    const strips = stripsOf(
      places.flatMap(({ facts: known }, index) => {
        const { leftPt, rightPt } = edgesOf(index);
        const fact = known[row];
        return [
          columnOf([fact?.label ?? ""], styles.note, { leftPt, rightPt: leftPt + labelPt - 4, measure }),
          columnOf([fact?.value ?? ""], styles.body, { leftPt: leftPt + labelPt, rightPt, measure }),
        ];
      }),
      3,
    );
    return strips.map((strip, line) => {
      if (line > 0) return strip;
      const blanks = places.flatMap(({ facts: known }, index): Placed[] => {
        if (known[row] === undefined || known[row].value !== null) return [];
        const { leftPt, rightPt } = edgesOf(index);
        const yPt = strip.heightPt;
        return [{ kind: "rule", xPt: leftPt + labelPt, toXPt: rightPt, yPt, weightPt: 0.35, ink: "rule" }];
      });
      return blanks.length === 0
        ? strip
        : { ...strip, gapPt: strip.gapPt + 4, items: [...strip.items, ...blanks] };
    });
  }).flat();
  return keptTogether([
    ...across("clauseHeading", ({ party }) => [party], gaps.signatures),
    ...across("body", ({ organisation }) => [organisation], 0),
    ...(signed.length === 0 ? [blank] : signed),
    lines,
    ...across("note", ({ lineLabel }) => [lineLabel], 0),
    ...facts,
  ]);
}

/** The strips of one block, in order. */
export function blockStrips(block: Block, measure: Measure): Strip[] {
  switch (block.kind) {
    case "title":
      return titleStrips(block, measure);
    case "heading":
      return headingStrips(block.mark, block.text, measure);
    case "subheading":
      return keptTogether(
        stripsOf([columnOf([block.text], styles.subheading, { ...full, measure })], gaps.subheading),
        true,
      );
    case "paragraph": {
      const strips = stripsOf([columnOf([block.text], styles.body, { ...full, measure })], gaps.paragraph);
      return block.isLead ? keptTogether(strips, true) : withoutWidows(strips);
    }
    case "note":
      return withoutWidows(
        stripsOf([columnOf([block.text], styles.note, { ...full, measure })], gaps.paragraph),
      );
    case "clause":
      return clauseStrips(block, measure);
    case "definitions":
      return definitionStrips(block, measure);
    case "columns":
      return columnsStrips(block, measure);
    case "table":
      return tableStrips(block, measure, gaps.table);
    case "signatures":
      return signatureStrips(block.places, measure);
    case "page-break":
      return [{ heightPt: 0, gapPt: 0, items: [], keepWithNext: true, startsPage: true }];
    case "together":
      return keptTogether(block.blocks.flatMap((inner) => blockStrips(inner, measure)));
  }
}

/** Head and foot of one page: what it belongs to, and which of how many it is. */
function runningItems(
  { head, foot }: PaperDocument,
  { page, pages }: { page: number; pages: number },
  measure: Measure,
) {
  const half = (side: "left" | "right") => {
    const middlePt = (sheet.leftPt + sheet.rightPt) / 2;
    return side === "left"
      ? { leftPt: sheet.leftPt, rightPt: middlePt + 90 }
      : { leftPt: middlePt + 100, rightPt: sheet.rightPt };
  };
  const atBaseline = (text: Text, side: "left" | "right", yPt: number): Placed[] => {
    const column = columnOf([text], styles.running, { ...half(side), measure });
    const [strip] = stripsOf([side === "left" ? column : alignRight(column)]);
    return (strip?.items ?? []).map((item) => ({ ...item, yPt }));
  };
  const ruleAt = (yPt: number): Placed => ({
    kind: "rule",
    xPt: sheet.leftPt,
    toXPt: sheet.rightPt,
    yPt,
    weightPt: 0.4,
    ink: "rule",
  });
  const pageOf = foot.pageOf.replace("{page}", String(page)).replace("{pages}", String(pages));
  return {
    above: [
      ...atBaseline(head.left, "left", sheet.headBaselinePt),
      ...atBaseline(head.right, "right", sheet.headBaselinePt),
      ruleAt(sheet.headRulePt),
    ],
    below: [
      ruleAt(sheet.footRulePt),
      ...atBaseline(foot.left, "left", sheet.footBaselinePt),
      ...atBaseline(pageOf, "right", sheet.footBaselinePt),
    ],
  };
}

/**
 * What stands on a page, in the order in which it is read: of lines that stand
 * beside each other, first all of the left column, so that a sentence that is
 * copied or searched for is whole.
 */
function inReadingOrder(placed: readonly PlacedStrip[]): Placed[] {
  const rows: Placed[][] = [];
  for (const { strip, topPt } of placed) {
    const items = strip.items.map((item) => ({ ...item, yPt: sheet.topPt + topPt + item.yPt }));
    if (strip.continues) rows.at(-1)?.push(...items);
    if (!strip.continues || rows.length === 0) rows.push(items);
  }
  const columnOfItem = (item: Placed) => (item.kind === "text" ? item.column.leftPt : 0);
  return rows.flatMap((items) => items.sort((first, second) => columnOfItem(first) - columnOfItem(second)));
}

/** The whole paper, page by page; what stands on a page is in reading order. */
export function layOut(document: PaperDocument, measure: Measure): PaperPage[] {
  const strips = document.blocks.flatMap((block) => blockStrips(block, measure));
  const pages = paginate(strips, bodyHeightPt);
  return pages.map((placed, index) => {
    const { above, below } = runningItems(document, { page: index + 1, pages: pages.length }, measure);
    const body = inReadingOrder(placed);
    return { number: index + 1, items: [...above, ...body, ...below] };
  });
}
