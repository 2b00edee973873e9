import { expect, test } from "vitest";
import type { Block } from "#lib/papers/blocks.ts";
import { englishPaper } from "#lib/papers/english.ts";
import { layOut } from "#lib/papers/layout.ts";
import type { PaperWay } from "#lib/papers/paper-content.ts";
import {
  checkBlock,
  conditionText,
  endLines,
  endsBlock,
  frameOf,
  issuedDocument,
  massText,
  sidesText,
  specimenParagraphs,
  wayRows,
  withCheck,
} from "#lib/papers/travel-blocks.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { fixedWidth } from "#tests/lib/papers/fixed-width.ts";
import { someHead } from "#tests/lib/papers/paper-cases.ts";
import { paperCase as aCase, way } from "#tests/lib/papers/travel-cases.ts";

const plain = (text: string) => text.normalize("NFKC");
const issued = { sha256: "ab".repeat(32), checkAddress: "https://lending.example.org/paper/x" };

test("an end without a place or a telephone has no empty line", () => {
  const lines = endLines({ ...way.from, place: "", phone: "" }, englishPaper);
  expect(lines).toHaveLength(3);
  expect(textOfBlocks([endsBlock(way, englishPaper)])).toContain("From\nLending Centre");
});

test("a way without vehicle or countries between says neither", () => {
  const bare: PaperWay = { ...way, vehicle: "", through: [] };
  expect(wayRows(way, englishPaper)).toHaveLength(6);
  expect(wayRows(bare, englishPaper).map(({ term }) => term)).toEqual([
    "Way",
    "Carrier",
    "Departs",
    "Arrives",
  ]);
});

test("a specimen is named with what comes apart from it, and its last check", () => {
  const [heart, , , liver] = aCase.specimens;
  if (!heart || !liver) throw new RangeError("There are four specimens.");
  expect(specimenParagraphs(heart, englishPaper)).toHaveLength(3);
  expect(conditionText(heart, englishPaper)).toContain("fair (B)");
  expect(conditionText(liver, englishPaper)).toBe("No check on record.");
});

test("sizes and masses are held together at the end of a line", () => {
  expect(plain(sidesText({ lengthMm: 1_240, widthMm: 820, heightMm: 760 }, englishPaper))).toBe(
    "1,240 × 820 × 760 mm",
  );
  expect(massText(64.25, englishPaper)).toBe("64.3\u00A0kg");
});

test("the code says its address and the fingerprint in words as well", () => {
  const text = textOfBlocks([checkBlock(issued, englishPaper)]);
  expect(text).toContain(issued.checkAddress);
  expect(text).toContain(issued.sha256);
});

test("every issued paper has its name, its version and the code at its end", () => {
  const document = issuedDocument(
    { content: someHead(), ...issued },
    { name: "Dispatch note", lines: ["About it."], blocks: [] },
    englishPaper,
  );
  expect(plain(textOfBlocks(document.blocks))).toContain(
    "Version 2, issued on 25 November 2026, 10:00 UTC by Ada Keeper",
  );
  expect(textOfBlocks(document.blocks.slice(-1))).toContain(issued.checkAddress);
  expect(frameOf({ content: someHead(), ...issued }, "Dispatch note", englishPaper).head).toEqual({
    left: "Dispatch note L 2026-031",
    right: "Version 2",
  });
  expect(withCheck({ ...document, blocks: [] }, issued, englishPaper).blocks).toHaveLength(1);
});

test("the code does not stand alone on a page, unless what is before it may be long", () => {
  const frame = frameOf({ content: someHead(), ...issued }, "Dispatch note", englishPaper);
  const kindsAfter = (block: Block) =>
    withCheck({ ...frame, blocks: [block] }, issued, englishPaper).blocks.map(({ kind }) => kind);
  expect(kindsAfter({ kind: "note", text: "x" })).toEqual(["together"]);
  expect(kindsAfter({ kind: "table", columns: [], rows: [] })).toEqual(["table", "beside"]);
});

test("wherever a table ends, its last rows stay with the code", () => {
  const frame = frameOf({ content: someHead(), ...issued }, "Dispatch note", englishPaper);
  for (let count = 20; count < 50; count += 1) {
    const rows = Array.from({ length: count }, (_none, index) => [`row ${index}`]);
    const block: Block = {
      kind: "table",
      columns: [{ header: "Name", align: "left", width: { share: 1 } }],
      rows,
    };
    const last = layOut(withCheck({ ...frame, blocks: [block] }, issued, englishPaper), fixedWidth).at(-1);
    const said = last?.items.flatMap((item) => (item.kind === "text" ? [item.text] : [])).join(" ");
    expect(said).toContain(`row ${count - 1}`);
    expect(last?.items.some(({ kind }) => kind === "figure")).toBe(true);
  }
});
