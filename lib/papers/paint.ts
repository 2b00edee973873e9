/**
 * Pages into the bytes of a PDF. Nothing is decided here: each word goes where
 * layout put it, in fonts that are embedded as subsets, so that the paper reads the
 * same everywhere and its text can be searched; drawings are paths, and every piece is
 * tagged with the node that it belongs to. The same pages with the same facts
 * give the same bytes: the day of making is passed in.
 */
import fontkit from "@pdf-lib/fontkit";
import {
  appendBezierCurve,
  beginText,
  closePath,
  concatTransformationMatrix,
  drawObject,
  endText,
  fill,
  fillAndStroke,
  LineCapStyle,
  LineJoinStyle,
  lineTo,
  moveTo,
  PDFDocument,
  type PDFFont,
  type PDFImage,
  PDFName,
  PDFOperator,
  PDFOperatorNames,
  type PDFPage,
  type PDFRef,
  popGraphicsState,
  pushGraphicsState,
  rgb,
  setFillingColor,
  setFontAndSize,
  setLineCap,
  setLineJoin,
  setLineWidth,
  setStrokingColor,
  setTextMatrix,
  showText,
  stroke,
} from "pdf-lib";
import { type DrawnPath, isPicture, type Picture, type VectorDrawing } from "#lib/papers/drawing.ts";
import { type FontName, fontBytes, fontFeatures, runsOf } from "#lib/papers/fonts.ts";
import type { PaperPage } from "#lib/papers/layout.ts";
import { type Ink, inks, type Sheet } from "#lib/papers/sheet.ts";
import type { Placed } from "#lib/papers/strips.ts";
import { rootOf, type StructureNode } from "#lib/papers/structure.ts";
import { type OutlineEntry, Tags, writeOutline } from "#lib/papers/tags.ts";

/** What the file says of itself. */
export type PaperFacts = {
  title: string;
  author: string;
  subject: string;
  keywords: readonly string[];
  /** BCP 47, e.g. "en" */
  language: string;
  /** ISO 8601 */
  madeAt: string;
};

function colourOf(ink: Ink) {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map(
    (from) => Number.parseInt(inks[ink].slice(from, from + 2), 16) / 255,
  );
  return rgb(red, green, blue);
}

/** Fonts that occur, each embedded once. */
async function embedFonts(
  document: PDFDocument,
  pages: readonly PaperPage[],
): Promise<Map<FontName, PDFFont>> {
  const names = new Set(
    pages.flatMap(({ items }) =>
      items.flatMap((item) =>
        item.kind === "text" ? runsOf(item.text, item.style.face).map((run) => run.font) : [],
      ),
    ),
  );
  const fonts = new Map<FontName, PDFFont>();
  for (const name of names) {
    fonts.set(name, await document.embedFont(fontBytes(name), { subset: true, features: fontFeatures }));
  }
  return fonts;
}

/** Letters of one page; a font gets one name on it, however often it changes. */
function textPainter(page: PDFPage, sheet: Sheet, fonts: ReadonlyMap<FontName, PDFFont>) {
  const keys = new Map<FontName, PDFName>();
  const keyOf = (name: FontName, font: PDFFont) => {
    const known = keys.get(name) ?? page.node.newFontDictionary(font.name, font.ref);
    keys.set(name, known);
    return known;
  };
  return ({ text, style, xPt, yPt }: Extract<Placed, { kind: "text" }>) => {
    page.pushOperators(
      beginText(),
      setFillingColor(colourOf(style.ink)),
      setTextMatrix(1, 0, 0, 1, xPt, sheet.heightPt - yPt),
      ...runsOf(text, style.face).flatMap((run) => {
        const font = fonts.get(run.font);
        if (font === undefined) throw new RangeError(`The font ${run.font} was not embedded.`);
        return [setFontAndSize(keyOf(run.font, font), style.sizePt), showText(font.encodeText(run.text))];
      }),
      endText(),
    );
  };
}

function paintRule(
  page: PDFPage,
  sheet: Sheet,
  { xPt, toXPt, yPt, weightPt, ink }: Extract<Placed, { kind: "rule" }>,
) {
  const y = sheet.heightPt - yPt;
  page.pushOperators(
    setStrokingColor(colourOf(ink)),
    setLineWidth(weightPt),
    moveTo(xPt, y),
    lineTo(toXPt, y),
    stroke(),
  );
}

function pathOperators({ steps, fill: filling, stroke: line }: DrawnPath): PDFOperator[] {
  if (filling === undefined && line === undefined) return [];
  return [
    ...(filling === undefined ? [] : [setFillingColor(colourOf(filling))]),
    ...(line === undefined ? [] : [setStrokingColor(colourOf(line.ink)), setLineWidth(line.width)]),
    ...(line?.isRound === true ? [setLineCap(LineCapStyle.Round), setLineJoin(LineJoinStyle.Round)] : []),
    ...steps.map((step) => {
      if (step[0] === "Z") return closePath();
      if (step[0] === "C") return appendBezierCurve(step[1], step[2], step[3], step[4], step[5], step[6]);
      return step[0] === "M" ? moveTo(step[1], step[2]) : lineTo(step[1], step[2]);
    }),
    filling === undefined ? stroke() : line === undefined ? fill() : fillAndStroke(),
  ];
}

/** Pictures that occur, and drawings that occur more than once; each is in the file once. */
type Embedded = {
  pictures: ReadonlyMap<Picture, PDFImage>;
  drawings: ReadonlyMap<VectorDrawing, PDFRef>;
};

/** Drawings as paths, pictures as they are; both from their upper left corner. */
function figurePainter(page: PDFPage, sheet: Sheet, { pictures, drawings }: Embedded) {
  const keys = new Map<PDFRef, PDFName>();
  const keyOf = (tag: string, ref: PDFRef) => {
    const known = keys.get(ref) ?? page.node.newXObject(tag, ref);
    keys.set(ref, known);
    return known;
  };
  return ({ xPt, yPt, figure }: Extract<Placed, { kind: "figure" }>) => {
    const { image, widthPt, heightPt } = figure;
    const topPt = sheet.heightPt - yPt;
    if (!isPicture(image)) {
      const ref = drawings.get(image);
      page.pushOperators(
        pushGraphicsState(),
        // y downwards, from the upper left corner
        concatTransformationMatrix(widthPt / image.width, 0, 0, -heightPt / image.height, xPt, topPt),
        ...(ref === undefined ? image.paths.flatMap(pathOperators) : [drawObject(keyOf("Drawing", ref))]),
        popGraphicsState(),
      );
      return;
    }
    const embedded = pictures.get(image);
    if (embedded === undefined) throw new RangeError("A picture was not embedded.");
    page.pushOperators(
      pushGraphicsState(),
      concatTransformationMatrix(widthPt, 0, 0, heightPt, xPt, topPt - heightPt),
      drawObject(keyOf("Picture", embedded.ref)),
      popGraphicsState(),
    );
  };
}

/** Pictures that occur, each embedded once. */
async function embedPictures(
  document: PDFDocument,
  pages: readonly PaperPage[],
): Promise<Map<Picture, PDFImage>> {
  const pictures = new Map<Picture, PDFImage>();
  for (const { items } of pages)
    for (const item of items) {
      if (item.kind !== "figure" || !isPicture(item.figure.image)) continue;
      const { image } = item.figure;
      if (pictures.has(image)) continue;
      const { mime, bytes } = image;
      const embedded = mime === "image/png" ? await document.embedPng(bytes) : await document.embedJpg(bytes);
      pictures.set(image, embedded);
    }
  return pictures;
}

/** In units of the drawing: what a line at its edge reaches beyond it. */
const overhang = 8;

/** Drawings that are alike are one object of the file, however many specimens look so. */
function embedDrawings(document: PDFDocument, pages: readonly PaperPage[]): Map<VectorDrawing, PDFRef> {
  const alike = new Map<string, { operators: PDFOperator[]; drawings: VectorDrawing[] }>();
  for (const { items } of pages)
    for (const item of items) {
      if (item.kind !== "figure" || isPicture(item.figure.image)) continue;
      const { image } = item.figure;
      const operators = image.paths.flatMap(pathOperators);
      const key = [image.width, image.height, ...operators.map(String)].join("\n");
      const known = alike.get(key) ?? { operators, drawings: [] };
      known.drawings.push(image);
      alike.set(key, known);
    }
  const { context } = document;
  const refs = new Map<VectorDrawing, PDFRef>();
  for (const { operators, drawings } of alike.values()) {
    const [first] = drawings;
    if (first === undefined || drawings.length === 1) continue;
    const { width, height } = first;
    const BBox = [-overhang, -overhang, width + overhang, height + overhang];
    const ref = context.register(context.formXObject(operators, { BBox, Resources: {} }));
    for (const drawing of drawings) refs.set(drawing, ref);
  }
  return refs;
}

const beginMark = (tag: string, properties: string) =>
  PDFOperator.of(PDFOperatorNames.BeginMarkedContentSequence, [PDFName.of(tag), properties]);
const endMark = () => PDFOperator.of(PDFOperatorNames.EndMarkedContent);

/** What is in no tree is an artifact: the running head and foot by their name, the rest as layout. */
function artifactOf(item: Placed, sheet: Sheet): string {
  if (item.yPt <= sheet.headRulePt) return "<</Type /Pagination /Subtype /Header>>";
  if (item.yPt >= sheet.footRulePt) return "<</Type /Pagination /Subtype /Footer>>";
  return "<</Type /Layout>>";
}

const nodeOf = (item: Placed): StructureNode | null => (item.kind === "rule" ? null : (item.node ?? null));

/** Neighbours that one node holds, or that are artifacts of one kind, are one marked piece. */
function piecesOf({
  items,
  sheet,
}: PaperPage): { node: StructureNode | null; kind: string; items: Placed[] }[] {
  const pieces: { node: StructureNode | null; kind: string; items: Placed[] }[] = [];
  for (const item of items) {
    const node = nodeOf(item);
    const kind = node === null ? artifactOf(item, sheet) : "";
    const last = pieces.at(-1);
    if (last !== undefined && last.node === node && last.kind === kind) last.items.push(item);
    else pieces.push({ node, kind, items: [item] });
  }
  return pieces;
}

/** Headings in reading order, each where it begins. */
function outlineEntries(pages: readonly PaperPage[]): OutlineEntry[] {
  const entries = new Map<StructureNode, OutlineEntry>();
  pages.forEach(({ items, sheet }, page) => {
    for (const item of items) {
      if (item.kind !== "text" || item.node === undefined) continue;
      const level = /^H([1-6])$/.exec(item.node.tag)?.[1];
      if (level === undefined) continue;
      const entry = entries.get(item.node);
      const topPt = Math.round(sheet.heightPt - item.yPt + item.style.sizePt * 1.5);
      if (entry === undefined)
        entries.set(item.node, { level: Number(level), text: item.text.trim(), page, topPt });
      else entry.text = `${entry.text} ${item.text.trim()}`;
    }
  });
  return [...entries.values()];
}

function stateFacts(document: PDFDocument, facts: PaperFacts): void {
  document.setTitle(facts.title, { showInWindowTitleBar: true });
  document.setAuthor(facts.author);
  document.setSubject(facts.subject);
  document.setKeywords([...facts.keywords]);
  document.setLanguage(facts.language);
  document.setCreator("Anatheca");
  document.setProducer("Anatheca");
  document.setCreationDate(new Date(facts.madeAt));
  document.setModificationDate(new Date(facts.madeAt));
}

export async function paintPages(pages: readonly PaperPage[], facts: PaperFacts): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  document.registerFontkit(fontkit);
  stateFacts(document, facts);
  const fonts = await embedFonts(document, pages);
  const embedded = {
    pictures: await embedPictures(document, pages),
    drawings: embedDrawings(document, pages),
  };
  const tags = new Tags();
  for (const [index, paper] of pages.entries()) {
    const { sheet } = paper;
    const page = document.addPage([sheet.widthPt, sheet.heightPt]);
    const paintText = textPainter(page, sheet, fonts);
    const paintFigure = figurePainter(page, sheet, embedded);
    for (const { node, kind, items } of piecesOf(paper)) {
      page.pushOperators(
        node === null
          ? beginMark("Artifact", kind)
          : beginMark(node.tag, `<</MCID ${tags.mark(node, index)}>>`),
      );
      for (const item of items) {
        if (item.kind === "rule") paintRule(page, sheet, item);
        else if (item.kind === "text") paintText(item);
        else {
          const { xPt, yPt, figure } = item;
          const bottomPt = sheet.heightPt - yPt - figure.heightPt;
          if (node !== null)
            tags.frame(node, [xPt, bottomPt, xPt + figure.widthPt, bottomPt + figure.heightPt]);
          paintFigure(item);
        }
      }
      page.pushOperators(endMark());
    }
  }
  const said = pages.flatMap(({ items }) => items.map(nodeOf)).find((node) => node !== null);
  if (said) tags.write(document, rootOf(said));
  writeOutline(document, outlineEntries(pages));
  return document.save({ addDefaultPage: false, updateFieldAppearances: false });
}
