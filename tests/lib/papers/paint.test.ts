import { decodePDFRawStream, PDFDocument, PDFName, PDFRawStream } from "pdf-lib";
import sharp from "sharp";
import { extractText, getDocumentProxy, getMeta } from "unpdf";
import { expect, test } from "vitest";
import type { PaperDocument } from "#lib/papers/blocks.ts";
import { figureOf } from "#lib/papers/drawing.ts";
import { measureText } from "#lib/papers/fonts.ts";
import { layOut } from "#lib/papers/layout.ts";
import { paintPages } from "#lib/papers/paint.ts";
import { drawHandlingMark } from "#lib/papers/pictograms.ts";
import { sheet } from "#lib/papers/sheet.ts";
import { manyLetters } from "#tests/lib/papers/agreement-cases.ts";

const document: PaperDocument = {
  head: { left: "Paper 7", right: "Version 2" },
  foot: { left: "Mark", pageOf: "Page {page} of {pages}" },
  blocks: [
    { kind: "title", overline: "Paper 7", title: manyLetters, lines: [] },
    {
      kind: "paragraph",
      text: [
        { text: "Plexus brachialis", emphasis: "latin" },
        { text: " of AN " },
        { text: "2004.0100", emphasis: "code" },
        { text: ", ffi fl, 王, \u05D0" },
      ],
    },
    { kind: "page-break" },
    { kind: "paragraph", text: "The second page." },
  ],
};
const facts = {
  title: "Paper 7, version 2",
  author: "Lending office",
  subject: "A test",
  keywords: ["abc"],
  language: "en",
  madeAt: "2026-11-25T10:00:00Z",
};
const paint = (said: Partial<typeof facts> = {}) =>
  paintPages(layOut(document, measureText), { ...facts, ...said });

test("the text reads back as it was written, page by page", async () => {
  const { totalPages, text } = await extractText(await getDocumentProxy(await paint()));
  const [first = "", second = ""] = text.map((page) => page.normalize("NFKC").replace(/\s+/g, " "));
  expect(totalPages).toBe(2);
  expect(first).toContain(manyLetters.normalize("NFKC"));
  expect(first).toContain("Plexus brachialis of AN 2004.0100, ffi fl, [U+738B], \u05D0");
  expect(first).toContain("Page 1 of 2");
  expect(second).toContain("The second page.");
  expect(second).not.toContain("Plexus");
});

test("the file says what it is, in which language and when it was made", async () => {
  const bytes = await paint();
  const read = await PDFDocument.load(bytes, { updateMetadata: false });
  expect(read.getTitle()).toBe(facts.title);
  expect(read.getAuthor()).toBe(facts.author);
  expect(read.getKeywords()).toBe("abc");
  expect(read.getCreationDate()?.toISOString()).toBe("2026-11-25T10:00:00.000Z");
  expect(read.getPages().map((page) => page.getSize())).toEqual([
    { width: sheet.widthPt, height: sheet.heightPt },
    { width: sheet.widthPt, height: sheet.heightPt },
  ]);
  expect((await getMeta(await getDocumentProxy(bytes))).info).toMatchObject({ Language: "en" });
});

test("the same pages give the same bytes, another day others", async () => {
  const [first, second, other] = await Promise.all([
    paint(),
    paint(),
    paint({ madeAt: "2026-11-26T10:00:00Z" }),
  ]);
  expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  expect(Buffer.from(first).equals(Buffer.from(other))).toBe(false);
});

test("fonts are embedded as far as their letters are used", async () => {
  expect((await paint()).byteLength).toBeLessThan(80_000);
});

test("pictures and drawings are painted, each picture embedded once", async () => {
  const bytes = new Uint8Array(
    await sharp({ create: { width: 40, height: 20, channels: 3, background: "#808080" } })
      .jpeg()
      .toBuffer(),
  );
  const image = { mime: "image/jpeg" as const, bytes };
  const picture = { image, widthPt: 40, heightPt: 20, alternative: "A picture" };
  const pages = layOut(
    {
      ...document,
      blocks: [
        {
          kind: "figures",
          cellPt: 60,
          figures: [
            { figure: picture, caption: "one" },
            { figure: picture, caption: "two" },
            { figure: figureOf(drawHandlingMark("fragile"), 50, "Fragile"), caption: "three" },
          ],
        },
      ],
    },
    measureText,
  );
  const file = await PDFDocument.load(await paintPages(pages, facts));
  const streams = file.context
    .enumerateIndirectObjects()
    .flatMap(([, object]) => (object instanceof PDFRawStream ? [object] : []));
  const isImage = ({ dict }: PDFRawStream) => dict.get(PDFName.of("Subtype")) === PDFName.of("Image");
  expect(streams.filter(isImage)).toHaveLength(1);
  const written = streams
    .filter((stream) => !isImage(stream) && stream.dict.get(PDFName.of("Length1")) === undefined)
    .map((stream) => Buffer.from(decodePDFRawStream(stream).decode()).toString("latin1"))
    .find((text) => text.includes(" Tf"));
  expect(written?.match(/^\/Picture\S* Do$/gm)).toHaveLength(2);
  expect(written?.match(/^\/Figure <<\/MCID \d+>> BDC$/gm)).toHaveLength(3);
  expect(written?.match(/ [cl]$/gm)?.length).toBeGreaterThan(8);
  expect(written?.match(/BDC$/gm)?.length).toBe(written?.match(/^EMC$/gm)?.length);
});
