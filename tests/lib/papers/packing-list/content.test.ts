import { expect, test } from "vitest";
import { PackingListContent, packingListContent } from "#lib/papers/packing-list/content.ts";
import { secondCrate, someCase, someHead } from "#tests/lib/papers/paper-cases.ts";

const content = packingListContent(someCase({ specimens: 5, crates: 2 }), secondCrate, someHead());

test("a packing list reads back as it was written", () => {
  expect(PackingListContent.parse(JSON.parse(JSON.stringify(content)))).toEqual(content);
});

test("it is of one crate, its contents by position", () => {
  expect(content.crate).toMatchObject({
    number: 2,
    of: 2,
    code: "L 2026-031/2",
    centreOfGravityHeightMm: 372,
  });
  expect(content.contents.map(({ position, accessionNumber }) => [position, accessionNumber])).toEqual([
    [1, "AN 2004.0004"],
    [2, "AN 2004.0005"],
  ]);
});

test("what is left over in a content is refused", () => {
  expect(PackingListContent.safeParse({ ...content, donor: "x" }).success).toBe(false);
});
