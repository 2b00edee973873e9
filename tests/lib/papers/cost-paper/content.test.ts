import { expect, test } from "vitest";
import { CostPaperContent, costPaperContent, costSubjects } from "#lib/papers/cost-paper/content.ts";
import { someCase, someHead } from "#tests/lib/papers/paper-cases.ts";

const paperCase = someCase({ specimens: 2, crates: 1 });
const content = costPaperContent(paperCase, "quotation", someHead());

test("a quotation is the frozen costing word for word, with its own fingerprint", () => {
  expect(CostPaperContent.parse(JSON.parse(JSON.stringify(content)))).toEqual(content);
  expect(content.costing).toEqual(paperCase.costings[0]?.content);
  expect(content.costingSha256).toBe("cd".repeat(32));
});

test("a kind that was never drawn up is for nothing", () => {
  expect(costSubjects("quotation")(paperCase)).toEqual([""]);
  const bare = { ...paperCase, costings: paperCase.costings.slice(0, 1) };
  expect(costSubjects("cost statement")(bare)).toEqual([]);
  expect(() => costPaperContent(bare, "cost statement", someHead())).toThrow(RangeError);
});
