/**
 * The strokes on a page, read from its operators (PDF 32000-1:2008, annex A, from
 * memory): only those from one point to another outside of any figure, which are the
 * rules and the lines to write on.
 */
import { decodePDFRawStream, PDFArray, type PDFPageLeaf, PDFRawStream } from "pdf-lib";

export type Stroke = { fromX: number; fromY: number; toX: number; toY: number; widthPt: number };

function operatorsOf(page: PDFPageLeaf): string {
  const contents = page.Contents();
  const streams =
    contents instanceof PDFArray
      ? contents.asArray().map((reference) => page.context.lookup(reference))
      : [contents];
  return streams
    .filter((stream) => stream instanceof PDFRawStream)
    .map((stream) => Buffer.from(decodePDFRawStream(stream).decode()).toString("latin1"))
    .join("\n");
}

/** @returns points from the lower left corner */
export function strokesOf(page: PDFPageLeaf): Stroke[] {
  const strokes: Stroke[] = [];
  let depth = 0;
  let widthPt = 1;
  let path: [number, number][] = [];
  for (const line of operatorsOf(page).split("\n")) {
    const words = line.trim().split(/\s+/);
    const operator = words.at(-1);
    const [first = 0, second = 0] = words.slice(0, -1).map(Number);
    if (operator === "q") depth += 1;
    else if (operator === "Q") depth -= 1;
    else if (depth > 0) continue;
    else if (operator === "w") widthPt = first;
    else if (operator === "m") path = [[first, second]];
    else if (operator === "l") path.push([first, second]);
    else if (operator === "S") {
      const [from, to, ...more] = path;
      if (from !== undefined && to !== undefined && more.length === 0)
        strokes.push({ fromX: from[0], fromY: from[1], toX: to[0], toY: to[1], widthPt });
      path = [];
    }
  }
  return strokes;
}
