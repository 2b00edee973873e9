import { expect, test } from "vitest";
import { DispatchNoteContent, dispatchNoteContent, grossMassKg } from "#lib/papers/dispatch-note/content.ts";
import { someCase, someHead, stageIds } from "#tests/lib/papers/paper-cases.ts";

const content = dispatchNoteContent(someCase({ specimens: 5, crates: 3 }), stageIds.home, someHead());

test("a dispatch note reads back as it was written", () => {
  expect(DispatchNoteContent.parse(JSON.parse(JSON.stringify(content)))).toEqual(content);
});

test("it counts specimens and names none, nor the loan's title", () => {
  expect(content.specimenCount).toBe(5);
  expect(content.loan.title).toBe("");
  expect(JSON.stringify(content)).not.toMatch(/AN 2004|Heart|Liver|Winter course/);
});

test("the sum of the masses is that of the figures on the crates", () => {
  expect(grossMassKg(content.crates)).toBe(192.9);
  expect(grossMassKg([0.1, 0.2].map((mass) => ({ ...content.crates[0], grossMassKg: mass }) as never))).toBe(
    0.3,
  );
});
