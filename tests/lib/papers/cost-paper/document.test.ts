import { expect, test } from "vitest";
import type { CostingContent, CostingKind } from "#lib/costing/schema.ts";
import { costPaperContent } from "#lib/papers/cost-paper/content.ts";
import { costPaperDocument } from "#lib/papers/cost-paper/document.ts";
import { englishPaper } from "#lib/papers/english.ts";
import { onlyTable, textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { someCase, someHead } from "#tests/lib/papers/paper-cases.ts";

const paperCase = someCase({ specimens: 2, crates: 1 });

function blocksOf(kind: CostingKind, said: Partial<CostingContent> = {}) {
  const content = costPaperContent(paperCase, kind, someHead());
  return costPaperDocument(
    {
      content: { ...content, costing: { ...content.costing, ...said } },
      sha256: "ab".repeat(32),
      checkAddress: "https://x",
    },
    englishPaper,
  ).blocks;
}

test("every line of the costing has a row, and the net of all stands below", () => {
  const { rows, total } = onlyTable(blocksOf("quotation"));
  expect(rows).toHaveLength(5);
  expect(total?.at(-1)).toBe("868.43");
});

test("cost recovery is said of human specimens and of nothing else", () => {
  expect(textOfBlocks(blocksOf("quotation"))).toContain("no payment is made for human remains");
  expect(textOfBlocks(blocksOf("quotation", { costRecovery: false }))).not.toContain("human");
});

test("a quotation says until when it is valid and what calling off costs; a statement neither", () => {
  const quotation = textOfBlocks(blocksOf("quotation"));
  expect(quotation).toContain("Valid until\n21 December 2026");
  expect(quotation).toContain("If the loan is called off");
  const statement = textOfBlocks(blocksOf("cost statement"));
  expect(statement).not.toContain("Valid until");
  expect(statement).not.toContain("called off");
});

test("what was never quoted has a dash there, and what it came to beside", () => {
  const statement = textOfBlocks(
    blocksOf("cost statement", {
      against: {
        version: 3,
        sha256: "cd".repeat(32),
        totalMinor: 100,
        differenceMinor: 50,
        lines: [{ code: "other", note: "Ferry", quotedMinor: null, actualMinor: 50, differenceMinor: 50 }],
      },
    }),
  );
  expect(statement).toContain("Ferry\t–\t0.50\t0.50");
});

test("one of something is said as one, a part of it as several", () => {
  const [line] = paperCase.costings[0]?.content.lines ?? [];
  if (!line) throw new RangeError("There is a line.");
  const days = (quantity: string) =>
    textOfBlocks(
      blocksOf("quotation", {
        lines: [{ ...line, price: { kind: "counted", quantity, unit: "day", rateMinor: 18_000 } }],
      }),
    );
  expect(days("1")).toContain("1 day at 180.00 EUR");
  expect(days("0.5")).toContain("0.5 days at 180.00 EUR");
});
