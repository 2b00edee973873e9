import { expect, test } from "vitest";
import { dispatchNoteContent } from "#lib/papers/dispatch-note/content.ts";
import { dispatchNoteDocument } from "#lib/papers/dispatch-note/document.ts";
import { englishPaper } from "#lib/papers/english.ts";
import { onlyTable, textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { someCase, someHead, stageIds } from "#tests/lib/papers/paper-cases.ts";

const { blocks } = dispatchNoteDocument(
  {
    content: dispatchNoteContent(someCase({ specimens: 5, crates: 3 }), stageIds.out, someHead()),
    sha256: "ab".repeat(32),
    checkAddress: "https://x",
  },
  englishPaper,
);

test("every crate has a row with its seal, and room for how it looked at hand-over", () => {
  const { rows, columns } = onlyTable(blocks);
  expect(rows).toHaveLength(3);
  expect(columns.at(-1)?.header).toBe("Outside at hand-over");
  expect(rows.map((row) => row.at(-1))).toEqual(["", "", ""]);
});

test("the driver writes name, plate and times; two changes of hands are signed by four", () => {
  const text = textOfBlocks(blocks);
  for (const label of ["Driver", "Number plate", "Left at (day, time)", "Arrived at (day, time)"])
    expect(text).toContain(label);
  expect(text.match(/^Name $/gm)).toHaveLength(4);
});
