/**
 * A painted paper read back from its bytes alone: every run of letters, every line and
 * every figure with its place in points from the upper left corner, and what the file
 * says of itself. Letters and tags come from an independent reader; lines from the
 * page's own operators. A run without a place in the tree of tags is an artifact, and
 * says so.
 */
import { PDFDict, PDFDocument, PDFName, type PDFPageLeaf, PDFRawStream } from "pdf-lib";
import { getDocumentProxy } from "unpdf";
import { strokesOf } from "#tests/lib/papers/page-operators.ts";

export type Box = { leftPt: number; rightPt: number; topPt: number; bottomPt: number };
/** Which table of the page, which of its rows, which cell of the row. */
export type CellPlace = { table: number; row: number; cell: number };
/** The roles from the document down to what holds it. */
export type TagPlace = { roles: readonly string[]; cell: CellPlace | null };

export type PaintedRun = {
  text: string;
  leftPt: number;
  rightPt: number;
  baselinePt: number;
  sizePt: number;
  /** null: outside of the tree. */
  place: TagPlace | null;
  isMarked: boolean;
};
export type PaintedFigure = { box: Box; alternative: string; place: TagPlace };
export type PaintedLine = { leftPt: number; rightPt: number; topPt: number; bottomPt: number };
export type PaintedPage = {
  number: number;
  widthPt: number;
  heightPt: number;
  runs: PaintedRun[];
  figures: PaintedFigure[];
  lines: PaintedLine[];
};
export type OutlineItem = { title: string; page: number; items: OutlineItem[] };
export type PaintedPaper = {
  pages: PaintedPage[];
  outline: OutlineItem[];
  title: string;
  language: string;
  isTagged: boolean;
  showsTitle: boolean;
  /** Fonts of which the file holds no letters. */
  fontsNotEmbedded: string[];
};

type Reader = Awaited<ReturnType<typeof getDocumentProxy>>;
type ReaderPage = Awaited<ReturnType<Reader["getPage"]>>;
type TreeNode = {
  role?: string;
  type?: string;
  id?: string;
  alt?: string;
  bbox?: [number, number, number, number];
  children?: TreeNode[];
};

/** What of a page belongs to which piece of the tree. */
function placesOf(tree: TreeNode | null, heightPt: number) {
  const places = new Map<string, TagPlace>();
  const figures: PaintedFigure[] = [];
  let tables = 0;
  const walk = (node: TreeNode, roles: readonly string[], cell: CellPlace | null) => {
    if (node.type === "content" && node.id !== undefined) {
      places.set(node.id, { roles, cell });
      return;
    }
    const below = node.role === undefined ? roles : [...roles, node.role];
    if (node.role === "Figure" && node.bbox !== undefined) {
      const [leftPt, bottom, rightPt, top] = node.bbox;
      const box = { leftPt, rightPt, topPt: heightPt - top, bottomPt: heightPt - bottom };
      figures.push({ box, alternative: node.alt ?? "", place: { roles: below, cell } });
    }
    const children = node.children ?? [];
    if (node.role === "Table") {
      const table = tables;
      tables += 1;
      rowsIn(node).forEach((row, rowIndex) => {
        (row.children ?? []).forEach((one, cellIndex) => {
          walk(one, [...below, "TR"], { table, row: rowIndex, cell: cellIndex });
        });
      });
    } else for (const child of children) walk(child, below, cell);
  };
  if (tree !== null) walk(tree, [], null);
  return { places, figures };
}

const rowsIn = (node: TreeNode): TreeNode[] =>
  (node.children ?? []).flatMap((child) => (child.role === "TR" ? [child] : rowsIn(child)));

type TextItem = { str: string; width: number; height: number; transform: number[] };
type MarkItem = { type: string; id?: string | null };
const isMark = (item: TextItem | MarkItem): item is MarkItem => "type" in item;

async function readPage(page: ReaderPage, number: number): Promise<Omit<PaintedPage, "lines">> {
  const [, , widthPt = 0, heightPt = 0] = page.view;
  const { places, figures } = placesOf((await page.getStructTree()) as TreeNode | null, heightPt);
  const content = await page.getTextContent({ includeMarkedContent: true });
  const open: (string | null)[] = [];
  const runs: PaintedRun[] = [];
  for (const item of content.items as (TextItem | MarkItem)[]) {
    if (isMark(item)) {
      if (item.type === "endMarkedContent") open.pop();
      else open.push(item.id ?? null);
      continue;
    }
    const [, , , sizePt = 0, leftPt = 0, baseline = 0] = item.transform;
    if (item.str.trim() === "" || item.height === 0) continue;
    const id = open.at(-1);
    runs.push({
      text: item.str,
      leftPt,
      rightPt: leftPt + item.width,
      baselinePt: heightPt - baseline,
      sizePt,
      place: id === undefined || id === null ? null : (places.get(id) ?? null),
      isMarked: open.length > 0,
    });
  }
  return { number, widthPt, heightPt, runs, figures };
}

type RawOutline = { title: string; dest: unknown; items: RawOutline[] };

async function readOutline(file: Reader): Promise<OutlineItem[]> {
  type Target = Parameters<Reader["getPageIndex"]>[0];
  const read = (items: readonly RawOutline[]): Promise<OutlineItem[]> =>
    Promise.all(
      items.map(async ({ title, dest, items: below }) => ({
        title,
        page: (await file.getPageIndex((dest as [Target])[0])) + 1,
        items: await read(below),
      })),
    );
  return await read(((await file.getOutline()) ?? []) as RawOutline[]);
}

/** Names of fonts whose descriptor holds no font file. */
function fontsNotEmbedded({ context }: PDFDocument): string[] {
  return context.enumerateIndirectObjects().flatMap(([, object]) => {
    if (!(object instanceof PDFDict) || object.get(PDFName.of("Type")) !== PDFName.of("FontDescriptor"))
      return [];
    const holds = ["FontFile", "FontFile2", "FontFile3"].some((key) => {
      const file = object.lookup(PDFName.of(key));
      return file instanceof PDFRawStream && file.contents.length > 0;
    });
    return holds ? [] : [String(object.get(PDFName.of("FontName")))];
  });
}

/** Fonts that are used and describe no letters at all. */
function fontsWithoutDescriptor({ context }: PDFDocument): string[] {
  return context.enumerateIndirectObjects().flatMap(([, object]) => {
    if (!(object instanceof PDFDict) || object.get(PDFName.of("Type")) !== PDFName.of("Font")) return [];
    const isComposed = object.get(PDFName.of("Subtype")) === PDFName.of("Type0");
    return isComposed || object.has(PDFName.of("FontDescriptor"))
      ? []
      : [String(object.get(PDFName.of("BaseFont")))];
  });
}

/** @param bytes a PDF; it may be read again afterwards */
export async function readPainted(bytes: Uint8Array): Promise<PaintedPaper> {
  // the reader takes the bytes that it is given
  const file = await getDocumentProxy(new Uint8Array(bytes));
  const inside = await PDFDocument.load(bytes, { updateMetadata: false });
  const pages: PaintedPage[] = [];
  for (const [index, { node }] of inside.getPages().entries()) {
    const page = await file.getPage(index + 1);
    const read = await readPage(page, index + 1);
    pages.push({ ...read, lines: linesOf(node, read.heightPt) });
    page.cleanup();
  }
  const { info } = await file.getMetadata();
  const facts = info as { Title?: string; Language?: string };
  const viewer = inside.catalog.lookupMaybe(PDFName.of("ViewerPreferences"), PDFDict);
  const painted = {
    pages,
    outline: await readOutline(file),
    title: facts.Title ?? "",
    language: facts.Language ?? "",
    isTagged: ((await file.getMarkInfo()) as { Marked?: boolean } | null)?.Marked === true,
    showsTitle: String(viewer?.get(PDFName.of("DisplayDocTitle"))) === "true",
    fontsNotEmbedded: [...fontsNotEmbedded(inside), ...fontsWithoutDescriptor(inside)],
  };
  await file.destroy();
  return painted;
}

/** Lines that stand on the page itself, and not inside a figure. */
function linesOf(page: PDFPageLeaf, heightPt: number): PaintedLine[] {
  return strokesOf(page).map(({ fromX, fromY, toX, toY, widthPt }) => ({
    leftPt: Math.min(fromX, toX),
    rightPt: Math.max(fromX, toX),
    topPt: heightPt - Math.max(fromY, toY) - widthPt / 2,
    bottomPt: heightPt - Math.min(fromY, toY) + widthPt / 2,
  }));
}

const readable = (text: string) => text.normalize("NFKC").replace(/\s/g, "");

/** The letters of what is in the tree, in reading order, without spaces: heads, feet and headers said again are left out. */
export const lettersOf = ({ pages }: Pick<PaintedPaper, "pages">): string =>
  readable(
    pages.flatMap(({ runs }) => runs.flatMap(({ text, place }) => (place === null ? [] : [text]))).join(""),
  );

export const timesIn = (letters: string, words: string): number => letters.split(readable(words)).length - 1;
