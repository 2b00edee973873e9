import { expect, test } from "vitest";
import { paragraphsOf, toSpans } from "#lib/papers/blocks.ts";

test("plain words are one span without emphasis", () => {
  expect(toSpans("cor")).toEqual([{ text: "cor" }]);
  expect(toSpans([{ text: "cor", emphasis: "latin" }])).toEqual([{ text: "cor", emphasis: "latin" }]);
});

test("a cell is one paragraph or several", () => {
  expect(paragraphsOf("cor")).toEqual(["cor"]);
  expect(paragraphsOf([{ text: "cor" }])).toEqual([[{ text: "cor" }]]);
  expect(paragraphsOf({ paragraphs: ["cor", "ren"] })).toEqual(["cor", "ren"]);
});
