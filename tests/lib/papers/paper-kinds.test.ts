/** Every paper with few specimens and with many of the longest names, on both sheets; one with 300 as it is painted. The others with 300 are in tests/long. */
import { describe, expect, test } from "vitest";
import { CrateLabelContent } from "#lib/papers/crate-label/content.ts";
import { measureText } from "#lib/papers/fonts.ts";
import { layOut } from "#lib/papers/layout.ts";
import type { PaperCase } from "#lib/papers/paper-case.ts";
import { isPaperKind, kindsOfPaper, paperKinds, readContent } from "#lib/papers/paper-kinds.ts";
import { paperSizes } from "#lib/papers/sheet.ts";
import { Refusal } from "#lib/platform/refusal.ts";
import { documentOf, frozen } from "#tests/lib/papers/issued-papers.ts";
import { longestPaper } from "#tests/lib/papers/longest-papers.ts";
import { someCase } from "#tests/lib/papers/paper-cases.ts";
import { faultsOf } from "#tests/lib/papers/paper-checks.ts";

const many = someCase({ specimens: 300, crates: 1 });
const long = someCase({ specimens: 24, crates: 12, long: true });
const nothing: PaperCase = { ...many, stages: [], costings: [], specimens: [] };
const few = someCase({ specimens: 1, crates: 1 });

describe.each(paperKinds)("%s", (kind) => {
  test.each(paperSizes)("is neither clipped nor orphaned on %s", (size) => {
    for (const paperCase of [few, long]) expect(faultsOf(documentOf(kind, paperCase), size)).toEqual([]);
  });

  test("is about what there is, and about nothing where nothing is planned", () => {
    expect(kindsOfPaper[kind].subjects(many).length).toBeGreaterThan(0);
    expect(kindsOfPaper[kind].subjects(nothing)).toEqual([]);
  });
});

test.each(paperSizes)("a label is one page on %s, however long the names", (size) => {
  for (const paperCase of [few, many, long])
    expect(layOut(documentOf("crate label", paperCase), measureText, size)).toHaveLength(1);
});

test("300 specimens stand on the packing list, each with its drawing", () => {
  const items = layOut(documentOf("packing list", many), measureText).flatMap((page) => page.items);
  expect(items.filter((item) => item.kind === "figure")).toHaveLength(301);
});

test("a receipt of 300 specimens with the longest names is painted whole, and nothing is clipped or alone", async () => {
  const { faults, lost, pages } = await longestPaper("outgoing receipt", "de", "a4");
  expect(faults).toEqual([]);
  expect(lost).toEqual([]);
  expect(pages).toBeGreaterThan(10);
});

test("a content of another form is refused, and never painted in part", () => {
  const { content } = frozen("crate label", few);
  expect(readContent(CrateLabelContent, content)).toMatchObject({ format: "crate-label-1" });
  for (const other of [
    "",
    "{",
    "{}",
    content.replace("crate-label-1", "crate-label-9"),
    content.replace("{", '{"x":1,'),
  ])
    expect(() => readContent(CrateLabelContent, other)).toThrow(Refusal);
});

test("what is no kind of paper is none", () => {
  expect(isPaperKind("dispatch note")).toBe(true);
  expect(isPaperKind("constructor")).toBe(false);
});
