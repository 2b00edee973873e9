import { expect, test } from "vitest";
import { englishPaper } from "#lib/papers/english.ts";
import { loanClosureContent } from "#lib/papers/loan-closure/content.ts";
import { loanClosureDocument } from "#lib/papers/loan-closure/document.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { someCase, someHead } from "#tests/lib/papers/paper-cases.ts";

const content = loanClosureContent(someCase({ specimens: 3, crates: 1 }), "", someHead());
const textOf = (specimens = content.specimens) =>
  textOfBlocks(
    loanClosureDocument(
      { content: { ...content, specimens }, sha256: "ab".repeat(32), checkAddress: "https://x" },
      englishPaper,
    ).blocks,
  );

test("verdicts are counted in the order of gravity, those of none left out", () => {
  const [first, second, third] = content.specimens;
  if (!first || !second || !third) throw new RangeError("There are three.");
  const text = textOf([
    { ...first, verdict: "damage", remark: "Apex chipped." },
    second,
    { ...third, out: null },
  ]);
  expect(text).toContain("No change: 2.\nDamage: 1.");
  expect(text).toContain("damage\nApex chipped.");
  expect(text).toContain("Going out: no check on record");
  expect(text).not.toContain("Needs treatment");
});

test("it settles the return and neither costs nor claims", () => {
  expect(textOf()).toContain("The duty to return the specimens named here is met.");
  expect(textOf()).toContain("Costs and claims\nNeither is settled by this paper.");
});
