import { expect, test } from "vitest";
import { englishPaper } from "#lib/papers/english.ts";
import { receiptContent } from "#lib/papers/receipt/content.ts";
import { receiptDocument } from "#lib/papers/receipt/document.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { someCase, someHandovers, someHead, stageIds } from "#tests/lib/papers/paper-cases.ts";

const plain = someCase({ specimens: 3, crates: 2 });
const textOf = (paperCase = plain) =>
  textOfBlocks(
    receiptDocument(
      {
        content: receiptContent(paperCase, stageIds.out, someHead()),
        sha256: "ab".repeat(32),
        checkAddress: "https://x",
      },
      englishPaper,
    ).blocks,
  );

test("a blank receipt has two names and two times to write for each change of hands", () => {
  const text = textOf();
  expect(text.match(/^Name $/gm)).toHaveLength(4);
  expect(text.match(/^Time $/gm)).toHaveLength(4);
});

test("both names of a hand-over on record are printed", () => {
  const text = textOf({ ...plain, handovers: someHandovers(plain) });
  expect(text).toContain("Name Ada Keeper");
  expect(text).toContain("Name Bela Registrar");
  expect(text).toContain("3 December 2026, 13:05 UTC");
  expect(text.match(/^Name $/gm)).toHaveLength(2);
});

test("without crates the parts are lettered without a gap", () => {
  expect(textOf({ ...plain, crates: [] })).toContain("C Changes of hands");
  expect(textOf()).toContain("D Changes of hands");
});
