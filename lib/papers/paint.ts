/**
 * Pages into the bytes of a PDF. Nothing is decided here: each word goes where
 * layout put it, in fonts that are embedded as subsets, so that the paper reads the
 * same everywhere and its text can be searched. The same pages with the same facts
 * give the same bytes: the day of making is passed in.
 */
import fontkit from "@pdf-lib/fontkit";
import {
  beginText,
  endText,
  lineTo,
  moveTo,
  PDFDocument,
  type PDFFont,
  type PDFName,
  type PDFPage,
  rgb,
  setFillingColor,
  setFontAndSize,
  setLineWidth,
  setStrokingColor,
  setTextMatrix,
  showText,
  stroke,
} from "pdf-lib";
import { type FontName, fontBytes, fontFeatures, runsOf } from "#lib/papers/fonts.ts";
import type { PaperPage } from "#lib/papers/layout.ts";
import { type Ink, inks, sheet } from "#lib/papers/sheet.ts";
import type { Placed } from "#lib/papers/strips.ts";

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
function textPainter(page: PDFPage, fonts: ReadonlyMap<FontName, PDFFont>) {
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

function paintRule(page: PDFPage, { xPt, toXPt, yPt, weightPt, ink }: Extract<Placed, { kind: "rule" }>) {
  const y = sheet.heightPt - yPt;
  page.pushOperators(
    setStrokingColor(colourOf(ink)),
    setLineWidth(weightPt),
    moveTo(xPt, y),
    lineTo(toXPt, y),
    stroke(),
  );
}

export async function paintPages(pages: readonly PaperPage[], facts: PaperFacts): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  document.registerFontkit(fontkit);
  document.setTitle(facts.title, { showInWindowTitleBar: true });
  document.setAuthor(facts.author);
  document.setSubject(facts.subject);
  document.setKeywords([...facts.keywords]);
  document.setLanguage(facts.language);
  document.setCreator("Anatheca");
  document.setProducer("Anatheca");
  document.setCreationDate(new Date(facts.madeAt));
  document.setModificationDate(new Date(facts.madeAt));

  const fonts = await embedFonts(document, pages);
  for (const { items } of pages) {
    const page = document.addPage([sheet.widthPt, sheet.heightPt]);
    const paintText = textPainter(page, fonts);
    for (const item of items) {
      if (item.kind === "rule") paintRule(page, item);
      else paintText(item);
    }
  }
  return document.save({ addDefaultPage: false, updateFieldAppearances: false });
}
