/** What judges painted papers finds each fault that is put into one, and none in a sound one. */
import { beforeAll, describe, expect, test } from "vitest";
import type { PaperDocument } from "#lib/papers/blocks.ts";
import { figureOf } from "#lib/papers/drawing.ts";
import { measureText } from "#lib/papers/fonts.ts";
import { layOut, type PaperPage } from "#lib/papers/layout.ts";
import { type PaperFacts, paintPages } from "#lib/papers/paint.ts";
import { drawHandlingMark } from "#lib/papers/pictograms.ts";
import { sheet } from "#lib/papers/sheet.ts";
import type { Placed } from "#lib/papers/strips.ts";
import type { PlacedText } from "#tests/lib/papers/fixed-width.ts";
import { faultsOfFile, faultsOfPages } from "#tests/lib/papers/painted-faults.ts";
import { lettersOf, type PaintedPaper, readPainted, timesIn } from "#tests/lib/papers/painted-paper.ts";

const document: PaperDocument = {
  head: { left: "Paper 7", right: "Version 2" },
  foot: { left: "Mark", pageOf: "Page {page} of {pages}" },
  blocks: [
    { kind: "title", overline: "Paper 7", title: "Winter course", lines: [] },
    { kind: "heading", mark: "A", text: "Specimens" },
    { kind: "paragraph", text: "Counted at every hand-over." },
    {
      kind: "table",
      columns: [
        { header: "Number", align: "left", width: "fit" },
        { header: "kg", align: "decimal", width: "fit" },
      ],
      rows: [
        ["AN 2004.0001", "0.5"],
        ["AN 2004.0002", "12.25"],
      ],
    },
    {
      kind: "figures",
      cellPt: 60,
      figures: [{ figure: figureOf(drawHandlingMark("fragile"), 50, "Fragile"), caption: "Fragile" }],
    },
    { kind: "page-break" },
    { kind: "heading", mark: "B", text: "Signatures" },
    { kind: "paragraph", text: "The last words." },
  ],
};
const facts: PaperFacts = {
  title: "Paper 7, version 2",
  author: "Office",
  subject: "A test",
  keywords: [],
  language: "en",
  madeAt: "2026-11-25T10:00:00Z",
};
const said = { title: "Paper 7", language: "en", pageOf: document.foot.pageOf };

type Change = (item: Placed) => Placed[];
const withText =
  (text: string, change: (item: PlacedText) => Placed[]): Change =>
  (item) =>
    item.kind === "text" && item.text.trim() === text ? change(item) : [item];

const sound = layOut(document, measureText);
const changedPages = (change: Change): PaperPage[] =>
  sound.map((page) => ({ ...page, items: page.items.flatMap(change) }));

const readChanged = async (change: Change = (item) => [item], said: Partial<PaperFacts> = {}) =>
  await readPainted(await paintPages(changedPages(change), { ...facts, ...said }));
test("a sound paper has no fault, and reads back", async () => {
  const paper = await readChanged();
  expect(faultsOfPages(paper, "a4")).toEqual([]);
  expect(faultsOfFile(paper, "a4", said)).toEqual([]);
  expect(timesIn(lettersOf(paper), "AN 2004.0002")).toBe(1);
  expect(paper.pages[0]?.lines.length).toBeGreaterThan(3);
});

const wrong: readonly (readonly [string, RegExp, Change])[] = [
  [
    "words beyond the margin",
    /margin: Counted/,
    withText("Counted at every hand-over.", (item) => [{ ...item, xPt: sheet.rightPt - 20 }]),
  ],
  [
    "words in the foot",
    /outside of head and foot: The last words/,
    withText("The last words.", (item) => [{ ...item, yPt: sheet.bottomPt + 4 }]),
  ],
  [
    "words beside the foot",
    /in the head or foot: The last words/,
    withText("The last words.", (item) => [{ ...item, yPt: sheet.footBaselinePt + 5 }]),
  ],
  [
    "words on words",
    /on each other: .*Counted/,
    withText("Counted at every hand-over.", (item) => [item, { ...item, xPt: item.xPt + 9, text: "Twice" }]),
  ],
  ["a heading alone", /alone at the foot: Signatures/, withText("The last words.", () => [])],
  [
    "a cell that is too wide",
    /wider than its cell: AN 2004.0001 of/,
    withText("AN 2004.0001", (item) => [
      {
        ...item,
        text: "AN 2004.0001 of the whole collection of the house and more than that, in which each specimen has",
      },
    ]),
  ],
  [
    "a line through words",
    /struck through: Counted/,
    withText("Counted at every hand-over.", (item) => [
      item,
      { kind: "rule", xPt: item.xPt, toXPt: item.xPt + 50, yPt: item.yPt - 2, weightPt: 0.5, ink: "ink" },
    ]),
  ],
  [
    "a line beyond the margin",
    /line outside/,
    (item) => [item.kind === "rule" ? { ...item, toXPt: sheet.rightPt + 9 } : item],
  ],
];

describe("of papers in one file, each with a fault of its own", () => {
  let paper: PaintedPaper;
  beforeAll(async () => {
    const pages = wrong.flatMap(([, , change]) => changedPages(change));
    paper = await readPainted(await paintPages(pages, facts));
  });

  test.each(wrong.map(([what, fault], index) => [what, fault, index] as const))(
    "%s: found",
    (_what, fault, index) => {
      const pages = paper.pages.slice(2 * index, 2 * index + 2);
      const faults = faultsOfPages({ ...paper, pages }, "a4");
      expect(faults.join("\n")).toMatch(fault);
    },
  );
});

test.each<readonly [string, RegExp, Change]>([
  [
    "a figure on words",
    /figure on words/,
    (item) => [item.kind === "figure" ? { ...item, yPt: item.yPt + 20 } : item],
  ],
  [
    "a figure beyond the margin",
    /figure outside: Fragile/,
    (item) => [item.kind === "figure" ? { ...item, xPt: 20 } : item],
  ],
])("%s is found", async (_what, fault, change) => {
  expect(faultsOfPages(await readChanged(change), "a4").join("\n")).toMatch(fault);
});

test("an empty page is found", async () => {
  const [first] = layOut(document, measureText);
  const empty = {
    number: 1,
    sheet,
    items: (first?.items ?? []).filter(({ yPt }) => yPt <= sheet.headRulePt),
  };
  expect(faultsOfPages(await readPainted(await paintPages([empty], facts)), "a4")).toEqual(["page 1: empty"]);
});

describe("what a file says of itself", () => {
  test("is held against what it is", async () => {
    const faults = faultsOfFile(
      await readChanged(undefined, { title: "Untitled", language: "de" }),
      "a4",
      said,
    );
    expect(faults).toEqual(["title: Untitled", "language: de"]);
  });

  test("a wrong number of a page is found", async () => {
    const change = withText("Page 2 of 2", (item) => [{ ...item, text: "Page 2 of 3" }]);
    expect(faultsOfFile(await readChanged(change), "a4", said).join("\n")).toMatch(/page 2 says .*Page2of3/);
  });

  test("another sheet is found", async () => {
    expect(faultsOfPages(await readChanged(), "letter")).toContain("page 1: another sheet");
  });
});
