import { PDFDocument } from "pdf-lib";
import { expect, test } from "vitest";
import { documentNode, nodeUnder } from "#lib/papers/structure.ts";
import { outlineOf, Tags, writeOutline } from "#lib/papers/tags.ts";

const entry = (level: number, text: string) => ({ level, text, page: 0, topPt: 700 });

test("an outline puts what is of level 3 below the heading before it, and leaves the title out", () => {
  const shape = outlineOf([
    entry(1, "Title"),
    entry(3, "Before any heading"),
    entry(2, "A"),
    entry(3, "1"),
    entry(3, "2"),
    entry(2, "B"),
  ]).map((item) => [item.entry.text, item.children.map((child) => child.entry.text)]);
  expect(shape).toEqual([
    ["Before any heading", []],
    ["A", ["1", "2"]],
    ["B", []],
  ]);
});

test("pieces are numbered on each page from 0", () => {
  const tags = new Tags();
  const node = nodeUnder(documentNode(), "P");
  expect([tags.mark(node, 0), tags.mark(node, 0), tags.mark(node, 1)]).toEqual([0, 1, 0]);
});

test("a piece on a page that is not there is a fault of the program", async () => {
  const document = await PDFDocument.create();
  document.addPage();
  const root = documentNode();
  const tags = new Tags();
  tags.mark(nodeUnder(root, "P"), 3);
  expect(() => tags.write(document, root)).toThrow(RangeError);
});

test("a paper without headings has no outline", async () => {
  const document = await PDFDocument.create();
  document.addPage();
  writeOutline(document, [entry(1, "Title")]);
  expect(document.catalog.toString()).not.toContain("Outlines");
});
