import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Block, type Cell, type PaperDocument, paragraphsOf, type Text } from "#lib/papers/blocks.ts";
import { layOut } from "#lib/papers/layout.ts";
import { bodyHeightPt, sheet } from "#lib/papers/sheet.ts";
import {
  bodyOf,
  collisions,
  fixedWidth,
  lettersByColumn,
  linesOf,
  strays,
  textsOf,
  withoutSpaces,
  wordsOf,
} from "#tests/lib/papers/fixed-width.ts";

const paper = (blocks: readonly Block[]): PaperDocument => ({
  head: { left: "Paper 7", right: "Version 2" },
  foot: { left: "Mark abc", pageOf: "Page {page} of {pages}" },
  blocks,
});
const layOutBlocks = (...blocks: Block[]) => layOut(paper(blocks), fixedWidth);
const bodyLines = (...blocks: Block[]) => layOutBlocks(...blocks).map((page) => linesOf(bodyOf(page)));

const sentence = "The specimen is counted at every hand-over and stands in its room. ";
const long = sentence.repeat(12).trim();

describe("blocks as text", () => {
  test("a title, its lines and a heading with its mark", () => {
    expect(
      bodyLines(
        {
          kind: "title",
          overline: "Agreement 7",
          title: "Winter course",
          lines: ["between A and B", "Version 2"],
        },
        { kind: "heading", mark: "A", text: "Parties" },
        { kind: "subheading", text: "Both" },
        { kind: "note", text: "Small words." },
      ),
    ).toEqual([
      ["Agreement 7", "Winter course", "between A and B", "Version 2", "A Parties", "Both", "Small words."],
    ]);
  });

  test("a clause stands beside its number and heading", () => {
    const [[first = "", second = ""] = []] = bodyLines({
      kind: "clause",
      mark: "12",
      heading: "Care",
      text: long,
    });
    expect(first).toMatch(/^12 Care The specimen/);
    expect(second).not.toContain("Care");
  });

  test("what stands beside each other is read column by column", () => {
    const [page] = layOutBlocks({
      kind: "clause",
      mark: "3",
      heading: "A heading that needs several lines of its narrow column",
      text: long,
    });
    const read = textsOf(page ? bodyOf(page).items : []).map(({ text }) => text.trim());
    expect(read.join(" ")).toBe(`3 A heading that needs several lines of its narrow column ${long}`);
  });

  test("definitions stand beside their terms, columns beside each other", () => {
    expect(
      bodyLines(
        {
          kind: "definitions",
          rows: [
            { term: "Venue", paragraphs: ["Hall 2", "Quay 4"] },
            { term: "Delivery", paragraphs: ["1 March"] },
          ],
        },
        {
          kind: "columns",
          columns: [
            { heading: "Lender", lines: ["Centre", "Norway"] },
            { heading: "Borrower", lines: ["Faculty"] },
          ],
        },
      ),
    ).toEqual([
      ["Venue Hall 2", "Quay 4", "Delivery 1 March", "Lender Borrower", "Centre Faculty", "Norway"],
    ]);
  });

  test("a table has its header and its cells", () => {
    expect(
      bodyLines({
        kind: "table",
        columns: [
          { header: "Number", align: "left", width: "fit" },
          { header: "kg", align: "decimal", width: "fit" },
        ],
        rows: [["AN 1", "0.5"]],
        total: ["All", "0.5"],
      }),
    ).toEqual([["Number kg", "AN 1 0.5", "All 0.5"]]);
  });

  test("places for signatures show who has signed and leave blank who has not", () => {
    const pages = layOutBlocks({
      kind: "signatures",
      places: [
        {
          party: "For the lender",
          organisation: "Centre",
          signedBy: "Ada Keeper",
          lineLabel: "Signed",
          facts: [{ label: "Role", value: "Registrar" }],
        },
        {
          party: "For the borrower",
          organisation: "Faculty",
          signedBy: null,
          lineLabel: "Signature",
          facts: [{ label: "Role", value: null }],
        },
      ],
    });
    expect(pages.map((page) => linesOf(bodyOf(page)))).toEqual([
      [
        "For the lender For the borrower",
        "Centre Faculty",
        "Ada Keeper",
        "Signed Signature",
        "Role Registrar Role",
      ],
    ]);
    const rules = pages.flatMap((page) => bodyOf(page).items).filter(({ kind }) => kind === "rule");
    expect(rules).toHaveLength(3);
  });

  test("a page break begins a page", () => {
    expect(
      bodyLines(
        { kind: "paragraph", text: "one" },
        { kind: "page-break" },
        { kind: "paragraph", text: "two" },
      ),
    ).toEqual([["one"], ["two"]]);
  });
});

describe("pages", () => {
  const pages = layOutBlocks(...Array.from({ length: 40 }, (): Block => ({ kind: "paragraph", text: long })));

  test("say what they belong to and which of how many they are", () => {
    expect(pages.length).toBeGreaterThan(3);
    for (const page of pages) {
      const lines = linesOf(page);
      expect(lines[0]).toBe("Paper 7 Version 2");
      expect(lines.at(-1)).toBe(`Mark abc Page ${page.number} of ${pages.length}`);
    }
    expect(pages.map(({ number }) => number)).toEqual(pages.map((_page, index) => index + 1));
  });

  test("keep their text between head and foot", () => {
    for (const { yPt } of pages.flatMap((page) => textsOf(bodyOf(page).items))) {
      expect(yPt).toBeGreaterThan(sheet.topPt);
      expect(yPt).toBeLessThan(sheet.topPt + bodyHeightPt);
    }
  });

  test("of an empty paper are one", () => {
    expect(layOutBlocks().map((page) => linesOf(page).length)).toEqual([2]);
  });
});

test("a heading is never the last line of a page", () => {
  for (let filled = 30; filled < 60; filled += 1) {
    const pages = bodyLines(
      ...Array.from({ length: filled }, (): Block => ({ kind: "note", text: "x" })),
      { kind: "heading", mark: "A", text: "Care" },
      { kind: "paragraph", text: "Lead", isLead: true },
      {
        kind: "clause",
        mark: "1",
        heading: "Heading of some words that fill several lines of the narrow column",
        text: long,
      },
    );
    for (const lines of pages) expect(lines.at(-1)).not.toMatch(/Care|Lead|Heading|words|several/);
  }
});

test("a short meaning is not divided, so that it stands beside its term", () => {
  for (let filled = 30; filled < 60; filled += 1) {
    const pages = bodyLines(...Array.from({ length: filled }, (): Block => ({ kind: "note", text: "x" })), {
      kind: "definitions",
      rows: [
        { term: "Venue", paragraphs: ["Hall 2", "Quay 4", "Port Selwyn", "Norway"] },
        { term: "Manner", paragraphs: [long] },
      ],
    });
    const ofVenue = pages.find((lines) => lines.includes("Venue Hall 2")) ?? [];
    expect(ofVenue).toEqual(expect.arrayContaining(["Quay 4", "Port Selwyn", "Norway"]));
  }
});

test("what is to stay together does", () => {
  for (let filled = 30; filled < 60; filled += 1) {
    const pages = bodyLines(...Array.from({ length: filled }, (): Block => ({ kind: "note", text: "x" })), {
      kind: "together",
      blocks: [
        { kind: "paragraph", text: "first" },
        { kind: "paragraph", text: "second" },
        { kind: "paragraph", text: "third" },
      ],
    });
    expect(pages.filter((lines) => lines.some((line) => /first|second|third/.test(line)))).toHaveLength(1);
  }
});

const anyWords = fc
  .array(
    fc.constantFrom("cor", "nervus", "12\u00A0mm", "č", "Ω", "a-long/word.of-the.trade@venue.example", "x"),
    {
      minLength: 1,
      maxLength: 60,
    },
  )
  .map((words) => words.join(" "));
const anyText: fc.Arbitrary<Text> = fc.oneof(
  anyWords,
  fc.string({ unit: "grapheme", maxLength: 300 }),
  fc.array(fc.record({ text: anyWords, emphasis: fc.constantFrom("strong" as const, "latin" as const) }), {
    maxLength: 4,
  }),
);
const anyCell: fc.Arbitrary<Cell> = fc.oneof(
  anyText,
  fc.array(anyText, { maxLength: 4 }).map((paragraphs) => ({ paragraphs })),
);
const anyBlock: fc.Arbitrary<Block> = fc.oneof(
  fc.record({ kind: fc.constant("heading" as const), mark: fc.constantFrom("A", "B"), text: anyWords }),
  fc.record({ kind: fc.constant("paragraph" as const), text: anyText, isLead: fc.boolean() }),
  fc.record({ kind: fc.constant("note" as const), text: anyText }),
  fc.record({
    kind: fc.constant("clause" as const),
    mark: fc.constantFrom("1", "22"),
    heading: anyWords,
    text: anyText,
  }),
  fc.record({
    kind: fc.constant("definitions" as const),
    rows: fc.array(fc.record({ term: anyWords, paragraphs: fc.array(anyText, { maxLength: 3 }) }), {
      maxLength: 4,
    }),
  }),
  fc.record({
    kind: fc.constant("table" as const),
    columns: fc.constant([
      { header: "Number", align: "left" as const, width: "fit" as const },
      { header: "Specimen", align: "left" as const, width: { share: 1 } },
      { header: "kg", align: "decimal" as const, width: "fit" as const },
    ]),
    rows: fc.array(fc.tuple(anyCell, anyCell, fc.constantFrom("1", "0.25", "not weighed")), {
      minLength: 1,
      maxLength: 6,
    }),
  }),
  fc.constant<Block>({ kind: "page-break" }),
);

test("whatever the blocks, nothing leaves its column and nothing stands on anything else", () => {
  fc.assert(
    fc.property(fc.array(anyBlock, { maxLength: 12 }), (blocks) => {
      const pages = layOutBlocks(...blocks);
      expect(strays(pages)).toEqual([]);
      expect(pages.flatMap(collisions)).toEqual([]);
    }),
    { numRuns: 60 },
  );
});

const wordsOfCell = (cell: Cell): string[] => paragraphsOf(cell).flatMap(wordsOf);

/** The texts of a block that stand below each other in one column. */
function columnsOf(block: Block): string[] {
  switch (block.kind) {
    case "heading":
      return [block.text];
    case "paragraph":
    case "note":
      return [wordsOf(block.text).join("")];
    case "clause":
      return [block.heading, wordsOf(block.text).join("")];
    case "definitions":
      return [
        block.rows.map(({ term }) => term).join(""),
        block.rows.flatMap(({ paragraphs }) => paragraphs.flatMap(wordsOf)).join(""),
      ];
    default:
      return [];
  }
}

test("whatever the block, every letter stands on the paper once and in order", () => {
  fc.assert(
    fc.property(anyBlock, (block) => {
      const printed = lettersByColumn(layOutBlocks(block));
      for (const text of columnsOf(block).map(withoutSpaces))
        if (text !== "") expect(printed.filter((column) => column === text)).toHaveLength(1);
    }),
  );
});

test("whatever stands in a table, every letter of its cells is printed once and in order", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(anyCell, anyCell), { minLength: 1, maxLength: 8 }), (rows) => {
      const pages = layOutBlocks({
        kind: "table",
        columns: [
          { header: "№", align: "left", width: { share: 1 } },
          { header: "§", align: "left", width: { share: 1 } },
        ],
        rows,
      });
      const printed = lettersByColumn(pages).map((letters) => letters.replaceAll(/[№§]/g, ""));
      for (const index of [0, 1] as const) {
        const letters = withoutSpaces(rows.flatMap((row) => wordsOfCell(row[index])).join("")).replaceAll(
          /[№§]/g,
          "",
        );
        if (letters !== "") expect(printed).toContain(letters);
      }
    }),
    { numRuns: 60 },
  );
});
