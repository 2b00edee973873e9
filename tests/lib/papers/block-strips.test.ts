/** The tree that blocks grow: what a listener hears, and in which order. */
import { describe, expect, test } from "vitest";
import { blockStrips } from "#lib/papers/block-strips.ts";
import type { Block } from "#lib/papers/blocks.ts";
import { sheet } from "#lib/papers/sheet.ts";
import { documentNode, type StructureNode } from "#lib/papers/structure.ts";
import { fixedWidth } from "#tests/lib/papers/fixed-width.ts";

function treeOf(...blocks: Block[]): unknown[] {
  const node = documentNode();
  for (const block of blocks) blockStrips(block, { sheet, measure: fixedWidth, node });
  const shape = ({ tag, children }: StructureNode): unknown =>
    children.length === 0 ? tag : [tag, ...children.map(shape)];
  return node.children.map(shape);
}

describe("the tree of", () => {
  test("titles, headings and clauses goes down level by level", () => {
    expect(
      treeOf(
        { kind: "title", overline: "Loan 7", title: "Course", lines: ["a", "b"] },
        { kind: "heading", mark: "A", text: "Parties" },
        { kind: "subheading", text: "Both" },
        { kind: "clause", mark: "1", heading: "Care", text: "x" },
      ),
    ).toEqual(["P", "H1", "P", "P", "H2", "H3", "H3", "P"]);
  });

  test("definitions is a list of terms with their meanings", () => {
    expect(
      treeOf({ kind: "definitions", rows: [{ term: "Venue", paragraphs: ["Hall 2", "Quay 4"] }] }),
    ).toEqual([["L", ["LI", "Lbl", ["LBody", "P", "P"]]]]);
  });

  test("a table is a head and a body of rows with as many cells as columns", () => {
    expect(
      treeOf({
        kind: "table",
        columns: [
          { header: "No.", align: "left", width: "fit" },
          { header: "Name", align: "left", width: { share: 1 } },
        ],
        rows: [["1", ""]],
        total: ["All"],
      }),
    ).toEqual([
      [
        "Table",
        ["THead", ["TR", "TH", "TH"]],
        ["TBody", ["TR", ["TD", "P"], ["TD", "P"]], ["TR", ["TD", "P"], ["TD", "P"]]],
      ],
    ]);
  });

  test("columns says each heading before its lines", () => {
    expect(
      treeOf({
        kind: "columns",
        columns: [
          { heading: "From", lines: ["a", "b"] },
          { heading: "To", lines: ["c"] },
        ],
      }),
    ).toEqual([
      ["Div", "P", "P", "P"],
      ["Div", "P", "P"],
    ]);
  });

  test("what stands together is the same as alone, and a page break says nothing", () => {
    const one: Block = { kind: "paragraph", text: "x" };
    expect(treeOf({ kind: "together", blocks: [one, one] }, { kind: "page-break" })).toEqual(["P", "P"]);
  });
});
