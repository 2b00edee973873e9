import { expect, test } from "vitest";
import { type Block, figureIn } from "#lib/papers/blocks.ts";
import { conditionFormContent } from "#lib/papers/condition-form/content.ts";
import { conditionFormDocument } from "#lib/papers/condition-form/document.ts";
import { englishPaper } from "#lib/papers/english.ts";
import { onlyTable, textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { someCase, someHead } from "#tests/lib/papers/paper-cases.ts";

const paperCase = someCase({ specimens: 4, crates: 2 });
const { blocks } = conditionFormDocument(
  {
    content: conditionFormContent(paperCase, "", someHead()),
    sha256: "ab".repeat(32),
    checkAddress: "https://x",
  },
  englishPaper,
);
const flat = (block: Block): Block[] => (block.kind === "together" ? block.blocks.flatMap(flat) : [block]);
const all = blocks.flatMap(flat);

test("every mark of a last check has five boxes, each with its mark and answer in words", () => {
  const boxes = onlyTable(all).rows.map((row) => row.flatMap((cell) => figureIn(cell)?.alternative ?? []));
  expect(boxes).toEqual([
    ["same", "better", "worse", "gone", "not visible"].map((answer) => `Box to tick, mark 1: ${answer}`),
  ]);
  expect(all.filter(({ kind }) => kind === "table")).toHaveLength(3);
});

test("a mark is said with its place, size, severity and activity", () => {
  expect(textOfBlocks(all)).toContain("hairline\nleft ventricle, near the apex\t12 mm, minor, stable");
});

test("a specimen that was never checked says so and has room for new marks all the same", () => {
  const text = textOfBlocks(blocks);
  expect(text).toContain("No check on record: every mark is a new one.");
  expect(text.match(/^New mark: what $/gm)).toHaveLength(8);
});

test("six occasions can be ticked and both sides sign", () => {
  const occasions = all.find((block) => block.kind === "figures");
  expect(occasions?.kind === "figures" ? occasions.figures : []).toHaveLength(6);
  const text = textOfBlocks(blocks);
  expect(text).toContain("For the lender\nLending Centre");
  expect(text).toContain("For the borrower\nPort Selwyn Faculty of Medicine");
});
