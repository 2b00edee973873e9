import { expect, test } from "vitest";
import { acrossSheet, evenColumns, fullOf, type Ground, ruleStrip } from "#lib/papers/ground.ts";
import { sheets } from "#lib/papers/sheet.ts";
import { documentNode, nodeUnder } from "#lib/papers/structure.ts";
import { fixedWidth } from "#tests/lib/papers/fixed-width.ts";

const ground: Ground = { sheet: sheets.letter, measure: fixedWidth, node: documentNode() };

test("columns are of one width and reach from margin to margin", () => {
  const columns = evenColumns(ground, 3, 12);
  const widths = columns.map(({ leftPt, rightPt }) => rightPt - leftPt);
  expect(new Set(widths.map((width) => width.toFixed(6))).size).toBe(1);
  expect(columns[0]?.leftPt).toBe(ground.sheet.leftPt);
  expect(columns.at(-1)?.rightPt).toBeCloseTo(fullOf(ground).rightPt, 6);
});

test("a rule keeps to what follows it", () => {
  expect(ruleStrip(ground, 1, "ink", 3, 5)).toMatchObject({ heightPt: 3, gapPt: 5, keepWithNext: true });
});

test("texts across the sheet belong to their node", () => {
  const node = nodeUnder(ground.node, "P");
  const [strip] = acrossSheet(["Care"], "body", ground, { node, gapPt: 4 });
  expect(strip?.gapPt).toBe(4);
  expect(strip?.items).toMatchObject([{ kind: "text", text: "Care" }]);
  expect(strip?.items[0]).toHaveProperty("node", node);
});
