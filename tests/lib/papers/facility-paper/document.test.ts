import { expect, test } from "vitest";
import { englishPaper } from "#lib/papers/english.ts";
import { facilityPaperDocument } from "#lib/papers/facility-paper/document.ts";
import { paperSizes } from "#lib/papers/sheet.ts";
import { facilityQuestions } from "#lib/people/facility-questions.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";
import { aPaper, emptyPaper, labels, longPaper } from "#tests/lib/papers/facility-paper/facility-cases.ts";
import { faultsOf } from "#tests/lib/papers/paper-checks.ts";

const documentOf = (paper = aPaper()) => facilityPaperDocument(paper, "ab".repeat(32), labels, englishPaper);
const textOf = (paper = aPaper()) => textOfBlocks(documentOf(paper).blocks);

test("each answer is written as what it is", () => {
  const text = textOf();
  expect(text).toContain("Built in\n1908");
  expect(text).toContain("Construction\nmasonry");
  expect(text).toContain("Load that the floor bears, kg/m²\n1,500".normalize("NFKC"));
  expect(text).toContain("Set point of relative humidity, %\n48.5");
  expect(text).toContain("It runs day and night, every day of the year\nyes");
  expect(text).toContain("Water pipes or wet rooms lie above the room\nno");
  expect(text).toContain("1,400, then 1,200");
});

test("every question is asked, and what nobody knows is said as such", () => {
  const asked = Object.values(facilityQuestions).flatMap((section) => Object.keys(section)).length;
  expect(textOf(emptyPaper).match(/^not known$/gm)).toHaveLength(asked);
  expect(textOf(emptyPaper)).toContain("None is stated.");
});

test("it says which version it is, whose word, and until when it counts", () => {
  expect(textOf()).toContain("Version 2, reported on 4 May 2026 by Bela Registrar; counts until 4 May 2028");
});

test.each(paperSizes)("is neither clipped nor orphaned on %s", (size) => {
  for (const paper of [aPaper(), emptyPaper, longPaper])
    expect(faultsOf(documentOf(paper), size)).toEqual([]);
});
