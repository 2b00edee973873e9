import { describe, expect, test } from "vitest";
import { clausesIn } from "#lib/agreements/clauses/languages.ts";
import { amendmentBlocks, differenceCells, differenceValue } from "#lib/papers/agreement-amendment.ts";
import { englishPaper as words } from "#lib/papers/english.ts";
import { someTerms } from "#tests/lib/papers/agreement-cases.ts";
import { textOfBlocks } from "#tests/lib/papers/block-text.ts";

const terms = someTerms(3);
const hash = "a".repeat(64);

test.each([
  ["nothing", null, "–"],
  ["yes", true, "yes"],
  ["a figure", 1234.5, "1,234.5"],
  ["a day", "2027-03-01", "1\u00A0March\u00A02027"],
  ["money", { minor: 120_000, currency: "EUR" }, "1,200.00\u00A0EUR"],
  ["a code", "general public", "the general public"],
  ["a name", "Hall 3", "Hall 3"],
  ["a list", ["AN 1", "AN 2"], "AN 1; AN 2"],
  ["an empty list", [], "–"],
  ["several fields", { name: "ethanol", percent: 70 }, "name: ethanol, percent: 70"],
] as const)("%s is said in words", (_what, value, said) => {
  expect(differenceValue(structuredClone(value) as Parameters<typeof differenceValue>[0], words)).toBe(said);
});

describe("a difference", () => {
  test.each([
    [["parameter", "recallDays"], 30, 45, ["Clause 14, Recall for own need, days", "30", "45"]],
    [
      ["parameter", "courier"],
      "none",
      "travels",
      ["Clause 32, Courier", "none is sent", "travels with the specimens"],
    ],
    [["clause", "border"], null, 1, ["Clause 33 Customs and permits", "–", "text 1 of the library"]],
    [["languages"], ["en"], ["en", "de"], ["Languages", "English", "English, German"]],
    [
      ["term", "returnBy"],
      "2027-06-01",
      "2027-07-01",
      ["Term, return by", "1\u00A0June\u00A02027", "1\u00A0July\u00A02027"],
    ],
    [["specimen", "AN 9"], null, "Heart", ["Specimen, AN 9", "–", "Heart"]],
    [
      ["stage", "out", "2027-02-26"],
      null,
      ["Careful carriers", "2027-03-01"],
      ["Stage, out, 26\u00A0February\u00A02027", "–", "Careful carriers; 1\u00A0March\u00A02027"],
    ],
    [
      ["certificate", "TG 7", "2026-12-05T00:00:00.000Z"],
      null,
      { minor: 2_000_000, currency: "EUR" },
      ["Certificate of cover, TG 7, 5\u00A0December\u00A02026", "–", "20,000.00\u00A0EUR"],
    ],
    [["something", "new"], 1, 2, ["something, new", "1", "2"]],
  ])("%j", (path, before, after, cells) => {
    expect(differenceCells({ path, before, after }, terms, words)).toEqual(cells);
  });

  test("names clauses in the language that is asked for", () => {
    const difference = { path: ["parameter", "recallDays"], before: 30, after: 45 };
    const [what] = differenceCells(difference, terms, words, clausesIn.de);
    expect(what).toBe("Clause 14, Rückruf aus eigenem Bedarf, Tage");
  });
});

describe("annex M", () => {
  const amends = {
    number: 2,
    version: 3,
    sha256: hash,
    differences: [],
    earlier: [
      { version: 1, sha256: hash },
      { version: 3, sha256: hash },
    ],
  };

  test("names the version that is amended and the versions that were signed", () => {
    const text = textOfBlocks(amendmentBlocks({ ...terms, amends }, words));
    expect(text).toContain(`amendment 2. It amends version 3 with the SHA-256 ${hash}`);
    expect(text).toContain(words.annexes.amendment.none);
    expect(text).toContain(`1\t${hash}\n3\t${hash}`);
  });

  test("is empty where nothing is amended", () => {
    expect(amendmentBlocks(terms, words)).toEqual([]);
  });
});
