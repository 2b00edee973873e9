/** The rule book as data: complete, well formed, and counting only on its days. */
import fs from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";
import { english } from "#app/_words/en.ts";
import { countsOn, ruleBook, rulebookVersion, ruleEntry, sourceOfRule } from "#lib/suitability/rules/book.ts";
import { standingsOfRules } from "#lib/suitability/rules/book-entry.ts";
import { judgeSuitability } from "#lib/suitability/suitability.ts";
import { caseOf, requestOf } from "#tests/support/rule-rows.ts";

const root = path.resolve(import.meta.dirname, "../../../..");
const lines = fs.readFileSync(path.join(root, "tests/golden/job-rules.tsv"), "utf8").trim().split("\n");
const asked = lines.slice(2).map((line) => line.split("\t")[0] ?? "");

test("every rule of the table is in the book, no more and no fewer of its kinds", () => {
  expect(lines[0]).toContain("job rules table");
  expect(asked).toHaveLength(49);
  const kinds = /^(G|UK|SC|IE|DE|FR|US|EU|CI|NG|DG|CU)\d+$/;
  expect(
    ruleBook
      .map(({ id }) => id as string)
      .filter((id) => kinds.test(id))
      .sort(),
  ).toEqual([...asked].sort());
});

test("no number stands twice, and every entry says what it looks at, gives, rests on and since when", () => {
  const ids = ruleBook.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const one of ruleBook) {
    expect(
      one.inputs.every((input) => input.length > 2),
      one.id,
    ).toBe(true);
    expect(one.outcomes.length, one.id).toBeGreaterThan(0);
    expect(
      one.outcomes.every((outcome) => outcome !== undefined),
      one.id,
    ).toBe(true);
    expect(one.citation.length, one.id).toBeGreaterThan(10);
    expect(standingsOfRules, one.id).toContain(one.standing);
    expect(one.checkedOn, one.id).toMatch(/^\d{4}-\d{2}-\d{2}$/);
    if (one.validFrom !== null && one.validTo !== null) expect(one.validFrom < one.validTo).toBe(true);
    expect(sourceOfRule(one.id)).toContain(one.standing);
  }
  expect(rulebookVersion).toMatch(/^\d{4}-\d{2}-\d{2}/);
});

test("nobody goes against a withdrawal or a debt to the family but the donor officer, with evidence", () => {
  for (const id of ["G3", "G12"])
    expect(ruleEntry(id)).toMatchObject({ overriddenBy: ["donor officer"], needsEvidence: true });
});

test("every rule of the book has a function that gives its findings", () => {
  const folder = path.join(root, "lib/suitability/rules");
  const sources = fs
    .readdirSync(folder)
    .filter((name) => !/^book[-.]/.test(name))
    .map((name) => fs.readFileSync(path.join(folder, name), "utf8"))
    .join("\n");
  const unused = ruleBook.filter(({ id }) => !sources.includes(`"${id}"`)).map(({ id }) => id);
  expect(unused).toEqual([]);
});

test("a rule counts only on days of the loan that meet its own", () => {
  const book = ruleBook.map((one) =>
    one.id === "FR1" ? { ...one, validFrom: "2027-01-01", validTo: "2027-03-01" } : one,
  );
  const counts = (startsOn: string, endsOn: string) => countsOn("FR1", { startsOn, endsOn }, book);
  expect(counts("2026-06-01", "2027-01-01")).toBe(false);
  expect(counts("2026-06-01", "2027-01-02")).toBe(true);
  expect(counts("2027-02-28", "2027-09-01")).toBe(true);
  expect(counts("2027-03-01", "2027-09-01")).toBe(false);
});

test("a rule that does not count on the days of the loan gives no finding", () => {
  const said = { request: { startsOn: "2027-03-01", endsOn: "2027-07-01" } };
  const rulesOf = (validTo: string | null) => {
    const book = ruleBook.map((one) => (one.id === "FR2" ? { ...one, validTo } : one));
    return judgeSuitability(requestOf(said, "FR"), [caseOf({})], book).map(({ rule }) => rule);
  };
  expect(rulesOf(null)).toContain("FR2");
  expect(rulesOf("2027-03-01")).not.toContain("FR2");
});

test("every sentence of law and every way out of it sends the reader to the local authority", () => {
  const folder = path.join(root, "lib/suitability/rules");
  const files = [
    "united-kingdom",
    "scotland",
    "ireland",
    "germany",
    "france",
    "united-states",
    "european-union",
    "goods",
    "elsewhere",
    "papers",
  ];
  const codes = files
    .flatMap((name) => [
      ...fs
        .readFileSync(path.join(folder, `${name}.ts`), "utf8")
        .matchAll(/"((?:law|permits|way)\.[a-z-]+)"/g),
    ])
    .map((match) => match[1] ?? "");
  expect(new Set(codes).size).toBeGreaterThan(90);
  const silent = codes.filter((code) => !/check with the local authority\.$/i.test(english[code] ?? ""));
  expect([...new Set(silent)]).toEqual([]);
});

test("a number that is not in the book is refused", () => {
  expect(() => ruleEntry("ZZ9")).toThrow(RangeError);
});
