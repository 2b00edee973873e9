import { expect, test } from "vitest";
import { alignRight, columnOf, stripsOf } from "#lib/papers/lines.ts";
import { styles } from "#lib/papers/sheet.ts";
import { fixedWidth, textsOf } from "#tests/lib/papers/fixed-width.ts";

const style = { ...styles.body, sizePt: 10, leadingPt: 14 };
const at = (leftPt: number, rightPt: number) => ({ leftPt, rightPt, measure: fixedWidth });

test("columns stand beside each other, line by line and on one baseline", () => {
  const left = columnOf(["one two"], style, at(100, 120));
  const right = columnOf(["three", "four"], { ...style, sizePt: 8 }, at(200, 300));
  const strips = stripsOf([left, right], 6);
  expect(strips.map(({ items }) => textsOf(items).map(({ text }) => text))).toEqual([
    ["one", "three"],
    ["two", "four"],
  ]);
  expect(strips.map(({ gapPt, heightPt }) => [gapPt, heightPt])).toEqual([
    [6, 14],
    [0, 14],
  ]);
  for (const { items } of strips) expect(new Set(items.map(({ yPt }) => yPt)).size).toBe(1);
});

test("the shorter column ends, the longer goes on", () => {
  const strips = stripsOf([columnOf(["a"], style, at(0, 50)), columnOf(["b", "c"], style, at(60, 90))]);
  expect(strips.map(({ items }) => items.length)).toEqual([2, 1]);
});

test("lines that are aligned right end at the right edge", () => {
  const [strip] = stripsOf([alignRight(columnOf(["12"], style, at(100, 150)))]);
  expect(textsOf(strip?.items ?? []).map(({ xPt, widthPt }) => xPt + widthPt)).toEqual([150]);
});

test("no column is no strip", () => {
  expect(stripsOf([])).toEqual([]);
  expect(stripsOf([columnOf([""], style, at(0, 50))])).toEqual([]);
});
