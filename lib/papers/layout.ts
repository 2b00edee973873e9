/**
 * A paper into pages. Blocks are measured into strips, strips are put on pages,
 * and every page gets its head and its foot, which know how many pages there are.
 * All that is needed of a font is how wide some words are in it, so layout is read
 * as text in tests; paint only puts ink where this file says.
 */
import { blockStrips } from "#lib/papers/block-strips.ts";
import type { Block, PaperDocument, Text } from "#lib/papers/blocks.ts";
import type { Ground } from "#lib/papers/ground.ts";
import { alignRight, columnOf, stripsOf } from "#lib/papers/lines.ts";
import { bodyHeightOf, type Measure, type PaperSize, type Sheet, sheets, styles } from "#lib/papers/sheet.ts";
import { type Placed, type PlacedStrip, paginate, type Strip } from "#lib/papers/strips.ts";
import { documentNode } from "#lib/papers/structure.ts";

/** A page as it is printed: everything with its place from the sheet's upper left corner. */
export type PaperPage = { number: number; sheet: Sheet; items: readonly Placed[] };

/** Room for the version or the number of the page. */
const RUNNING_RIGHT_PT = 100;

/** Head and foot of one page: what it belongs to, and which of how many it is. */
function runningItems(
  { head, foot }: PaperDocument,
  { page, pages }: { page: number; pages: number },
  { sheet, measure }: { sheet: Sheet; measure: Measure },
) {
  // what stands on the left is the longer: a name and a number, or a fingerprint with its label
  const half = (side: "left" | "right") =>
    side === "left"
      ? { leftPt: sheet.leftPt, rightPt: sheet.rightPt - RUNNING_RIGHT_PT - 10 }
      : { leftPt: sheet.rightPt - RUNNING_RIGHT_PT, rightPt: sheet.rightPt };
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
function inReadingOrder(placed: readonly PlacedStrip[], sheet: Sheet): Placed[] {
  const rows: Placed[][] = [];
  for (const { strip, topPt } of placed) {
    const items = strip.items.map((item) => ({ ...item, yPt: sheet.topPt + topPt + item.yPt }));
    if (strip.continues) rows.at(-1)?.push(...items);
    if (!strip.continues || rows.length === 0) rows.push(items);
  }
  const columnOfItem = (item: Placed) => (item.kind === "rule" ? 0 : item.column.leftPt);
  return rows.flatMap((items) => items.sort((first, second) => columnOfItem(first) - columnOfItem(second)));
}

/** The strips of all blocks; what stays with the block before it goes with that one's last strip. */
function stripsOfBlocks(blocks: readonly Block[], ground: Ground): Strip[] {
  const strips: Strip[] = [];
  for (const block of blocks) {
    const last = strips.at(-1);
    if (block.kind === "beside" && block.staysWithPrevious === true && last !== undefined)
      strips[strips.length - 1] = { ...last, keepWithNext: true };
    strips.push(...blockStrips(block, ground));
  }
  return strips;
}

/** The whole paper, page by page; what stands on a page is in reading order. */
export function layOut(document: PaperDocument, measure: Measure, size: PaperSize = "a4"): PaperPage[] {
  const sheet = sheets[size];
  const ground = { sheet, measure, node: documentNode(), decimalMark: document.decimalMark ?? "." };
  const strips = stripsOfBlocks(document.blocks, ground);
  const pages = paginate(strips, bodyHeightOf(sheet));
  if (pages.length > 1 && document.smaller !== undefined) return layOut(document.smaller, measure, size);
  return pages.map((placed, index) => {
    const { above, below } = runningItems(document, { page: index + 1, pages: pages.length }, ground);
    const body = inReadingOrder(placed, sheet);
    return { number: index + 1, sheet, items: [...above, ...body, ...below] };
  });
}
