/** Labels and forms as placed things: nothing parted from what it belongs to, nothing too large. */
import { describe, expect, test } from "vitest";
import type { Block } from "#lib/papers/blocks.ts";
import { figureOf } from "#lib/papers/drawing.ts";
import { layOut } from "#lib/papers/layout.ts";
import { bodyHeightPt, bodyWidthPt } from "#lib/papers/sheet.ts";
import { bodyOf, fixedWidth, linesOf, strays, textsOf } from "#tests/lib/papers/fixed-width.ts";
import { clippedFigures, coveredFigures } from "#tests/lib/papers/paper-checks.ts";

const figure = (heightPt: number, name = "A mark") =>
  figureOf({ width: 100, height: 100, paths: [] }, heightPt, name);
const pagesOf = (...blocks: Block[]) =>
  layOut({ head: { left: "", right: "" }, foot: { left: "", pageOf: "" }, blocks }, fixedWidth);
const filled = (lines: number): Block[] => Array.from({ length: lines }, () => ({ kind: "note", text: "x" }));

describe("figures", () => {
  const marks: Block = {
    kind: "figures",
    cellPt: 70,
    figures: Array.from({ length: 9 }, (_none, index) => ({
      figure: figure(70, `Mark ${index}`),
      caption: `Caption of mark ${index}`,
    })),
  };

  test("stand in rows, none parted from its caption by the end of a page", () => {
    for (let lines = 20; lines < 60; lines += 1) {
      const pages = pagesOf(...filled(lines), marks);
      expect(clippedFigures(pages)).toEqual([]);
      expect(coveredFigures(pages)).toEqual([]);
      for (const page of pages) {
        const count = page.items.filter((item) => item.kind === "figure").length;
        const captions = textsOf(bodyOf(page).items).filter(({ text }) => text.startsWith("Caption"));
        expect(captions.length).toBeGreaterThanOrEqual(count);
      }
    }
  });

  test("too large for the sheet are made smaller and keep their proportions", () => {
    const [page] = pagesOf({
      kind: "figures",
      cellPt: 5_000,
      figures: [{ figure: figure(5_000), caption: "x" }],
    });
    const [item] = page?.items.filter((one) => one.kind === "figure") ?? [];
    expect(item?.figure.widthPt).toBeCloseTo(item?.figure.heightPt ?? 0, 6);
    expect(item?.figure.heightPt).toBeLessThanOrEqual(bodyHeightPt / 2);
    expect(item?.figure.widthPt).toBeLessThanOrEqual(bodyWidthPt);
  });
});

test("lines stand beside their figure, and below each other where they need more room", () => {
  for (const count of [1, 4, 40]) {
    const lines = Array.from({ length: count }, (_none, index) => `Line ${index}`);
    const pages = pagesOf({ kind: "beside", figure: figure(90), lines });
    expect(pages.flatMap((page) => linesOf(bodyOf(page)))).toEqual(lines);
    expect(coveredFigures(pages)).toEqual([]);
    expect(strays(pages)).toEqual([]);
  }
});

test("a notice stands between two rules", () => {
  const [page] = pagesOf({ kind: "notice", text: "Open by authorised staff only" });
  const items = page ? bodyOf(page).items : [];
  expect(items.map(({ kind }) => kind).sort()).toEqual(["rule", "rule", "text"]);
});

test("a field that is not known yet has a line to write on, one that is known has none", () => {
  const [page] = pagesOf({
    kind: "fields",
    perRow: 2,
    fields: [
      { label: "Driver", value: null },
      { label: "Carrier", value: "Gentle Freight" },
      { label: "Remarks", value: null },
    ],
  });
  const items = page ? bodyOf(page).items : [];
  expect(items.filter(({ kind }) => kind === "rule")).toHaveLength(2);
  expect(page ? linesOf(bodyOf(page)) : []).toEqual(["Driver Carrier", "Gentle Freight", "Remarks"]);
});

test("a drawn name ends on its line, beside a typed one and alone", () => {
  const place = { organisation: "House", lineLabel: "Signed", facts: [{ label: "Name", value: "Ada" }] };
  const drawn = { ...place, party: "Lender", signedBy: null, drawn: figure(40, "Drawn name") };
  const typed = { ...place, party: "Borrower", signedBy: "Bela" };
  for (const places of [[drawn], [drawn, typed], [typed, drawn]]) {
    const pages = pagesOf({ kind: "signatures", places });
    expect(coveredFigures(pages)).toEqual([]);
    expect(clippedFigures(pages)).toEqual([]);
    const items = pages.flatMap((page) => bodyOf(page).items);
    const name = items.find(({ kind }) => kind === "figure");
    const line = items.find(({ kind }) => kind === "rule");
    if (name?.kind !== "figure" || line === undefined) throw new RangeError("Both stand there.");
    const endsAt = name.yPt + name.figure.heightPt;
    expect(line.yPt - endsAt).toBeGreaterThanOrEqual(0);
    expect(line.yPt - endsAt).toBeLessThan(6);
  }
});
