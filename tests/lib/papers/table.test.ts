import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Cell, TableColumn } from "#lib/papers/blocks.ts";
import { figureOf } from "#lib/papers/drawing.ts";
import { sheet } from "#lib/papers/sheet.ts";
import { paginate } from "#lib/papers/strips.ts";
import { documentNode } from "#lib/papers/structure.ts";
import { columnEdges, tableStrips } from "#lib/papers/table.ts";
import { fixedWidth, linesOf, strays, textsOf } from "#tests/lib/papers/fixed-width.ts";
import { coveredFigures } from "#tests/lib/papers/paper-checks.ts";

const columns: TableColumn[] = [
  { header: "Number", align: "left", width: "fit" },
  { header: "Specimen", align: "left", width: { share: 1 } },
  { header: "kg", align: "decimal", width: "fit" },
];
const row = (index: number): Cell[] => [`AN ${index}`, `Heart ${index}`, String(index)];
const rows = (count: number) => Array.from({ length: count }, (_none, index) => row(index + 1));
const pagesOf = (table: Parameters<typeof tableStrips>[0], bodyPt: number) =>
  paginate(tableStrips(table, fixedWidth), bodyPt).map((page, index) => ({
    number: index + 1,
    sheet,
    items: page.flatMap(({ strip, topPt }) =>
      strip.items.map((item) => ({ ...item, yPt: item.yPt + topPt + 40 })),
    ),
  }));

describe("columns", () => {
  test("reach from margin to margin without touching", () => {
    const edges = columnEdges({ columns, rows: rows(3) }, fixedWidth);
    expect(edges[0]?.leftPt).toBe(sheet.leftPt);
    expect(edges[2]?.rightPt).toBeCloseTo(sheet.rightPt, 6);
    edges.slice(1).forEach(({ leftPt }, index) => {
      expect(leftPt).toBeGreaterThan(edges[index]?.rightPt ?? Number.POSITIVE_INFINITY);
    });
  });

  test("that fit are as wide as their widest cell", () => {
    const [number] = columnEdges({ columns, rows: [["AN 2004.0100", "Heart", "1"]] }, fixedWidth);
    expect((number?.rightPt ?? 0) - (number?.leftPt ?? 0)).toBeCloseTo(12 * 7.8 * 0.5, 6);
  });

  test("give way when there is too much, and still lie within the margins", () => {
    const wide = "x".repeat(300);
    const edges = columnEdges({ columns, rows: [[wide, wide, wide]] }, fixedWidth);
    expect(edges[2]?.rightPt).toBeCloseTo(sheet.rightPt, 6);
    for (const { leftPt, rightPt } of edges) expect(rightPt - leftPt).toBeGreaterThan(8);
  });
});

test("figures stand with their decimal marks below each other", () => {
  const strips = tableStrips(
    {
      columns,
      rows: [
        ["a", "b", "0.412"],
        ["a", "b", "12"],
        ["a", "b", "1,234.5"],
        ["a", "b", "–"],
      ],
    },
    fixedWidth,
  );
  const figures = strips.flatMap(({ items }) => textsOf(items)).filter(({ text }) => /^[\d,.]+$/.test(text));
  const marks = figures.map(
    ({ xPt, text, style }) => xPt + fixedWidth(text.split(".")[0] ?? "", style.face, style.sizePt),
  );
  expect(figures).toHaveLength(3);
  for (const mark of marks) expect(mark).toBeCloseTo(marks[0] ?? 0, 6);
});

test("in a language with a decimal comma they stand with their commas below each other", () => {
  const strips = tableStrips(
    { columns, rows: ["0,412", "12", "1.234,5", "1\u00A0234"].map((figure) => ["a", "b", figure]) },
    fixedWidth,
    0,
    { sheet, node: documentNode(), decimalMark: "," },
  );
  const figures = strips
    .flatMap(({ items }) => textsOf(items))
    .filter(({ text }) => /^[\d,.\u00A0]+$/.test(text));
  const marks = figures.map(
    ({ xPt, text, style }) => xPt + fixedWidth(text.split(",")[0] ?? "", style.face, style.sizePt),
  );
  expect(figures).toHaveLength(4);
  for (const mark of marks) expect(mark).toBeCloseTo(marks[0] ?? 0, 6);
});

test("the header stands above the rows of each page", () => {
  const pages = pagesOf({ columns, rows: rows(40) }, 200);
  expect(pages.length).toBeGreaterThan(3);
  for (const page of pages) expect(linesOf(page)[0]).toBe("Number Specimen kg");
  expect(pages.flatMap((page) => linesOf(page).slice(1))).toEqual(rows(40).map((cells) => cells.join(" ")));
});

test("a row is not divided, and the last one is never alone", () => {
  const tall = (index: number): Cell[] => [`AN ${index}`, { paragraphs: ["a", "b", "c"] }, "1"];
  for (const bodyPt of [120, 130, 140, 150, 160]) {
    const pages = pagesOf(
      { columns, rows: Array.from({ length: 9 }, (_none, index) => tall(index)) },
      bodyPt,
    );
    for (const page of pages) expect((linesOf(page).length - 1) % 3).toBe(0);
    expect(linesOf(pages.at(-1) ?? { items: [] }).length).toBeGreaterThan(4);
  }
});

test("a total stays with the last row", () => {
  const total = ["", "All", "99"];
  for (let bodyPt = 80; bodyPt < 140; bodyPt += 3) {
    const last = pagesOf({ columns, rows: rows(12), total }, bodyPt).at(-1);
    expect(linesOf(last ?? { items: [] }).slice(-2)).toEqual(["AN 12 Heart 12 12", "All 99"]);
  }
});

test("a row that is taller than a page goes on over the next ones", () => {
  const paragraphs = Array.from({ length: 60 }, (_none, index) => `component ${index}`);
  const pages = pagesOf({ columns, rows: [["AN 1", { paragraphs }, "1"]] }, 200);
  const printed = pages.flatMap((page) => linesOf(page).slice(1)).join(" ");
  for (const paragraph of paragraphs) expect(printed).toContain(paragraph);
});

test("a table without rows is its header, and a row without words keeps its place", () => {
  expect(tableStrips({ columns, rows: [] }, fixedWidth)).toHaveLength(1);
  expect(tableStrips({ columns, rows: [["", "", ""]] }, fixedWidth)).toHaveLength(2);
});

test("whatever stands in the cells, nothing leaves its column", () => {
  const anyCell = fc.oneof(
    fc.string({ unit: "grapheme", maxLength: 120 }),
    fc.double({ noNaN: true, min: 0, max: 1e9 }).map((value) => value.toFixed(2)),
    fc.array(fc.string({ maxLength: 40 }), { maxLength: 4 }).map((paragraphs) => ({ paragraphs })),
  );
  const anyTable = fc.record({
    rows: fc.array(fc.tuple(anyCell, anyCell, anyCell), { minLength: 1, maxLength: 6 }),
    total: fc.tuple(anyCell, anyCell, anyCell),
  });
  fc.assert(
    fc.property(anyTable, (table) => {
      expect(strays(pagesOf({ columns, ...table }, 600))).toEqual([]);
    }),
    { numRuns: 60 },
  );
});

test("a figure stands below the words of its cell, inside its column, and the row is as high as both", () => {
  const figure = figureOf({ width: 4, height: 3, paths: [] }, 36, "A heart");
  const withFigure: Cell = { paragraphs: ["AN 1"], figure };
  for (const beside of ["short", "a long text ".repeat(40)]) {
    const pages = pagesOf(
      {
        columns,
        rows: [
          [withFigure, beside, "1"],
          ["AN 2", "after", "2"],
        ],
      },
      600,
    );
    expect(coveredFigures(pages)).toEqual([]);
    const items = pages.flatMap((page) => page.items);
    const placed = items.find(({ kind }) => kind === "figure");
    const words = items.find((item) => item.kind === "text" && item.text === "AN 1");
    const next = items.find((item) => item.kind === "text" && item.text === "AN 2");
    if (placed?.kind !== "figure") throw new RangeError("A figure stands there.");
    expect(placed.xPt).toBeGreaterThanOrEqual(placed.column.leftPt);
    expect(placed.xPt + placed.figure.widthPt).toBeLessThanOrEqual(placed.column.rightPt + 0.01);
    expect(placed.yPt).toBeGreaterThan(words?.yPt ?? 0);
    expect(next?.yPt).toBeGreaterThan(placed.yPt + 36);
  }
});
