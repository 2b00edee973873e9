import { expect, test } from "vitest";
import { type ClauseFacts, clausesFor, clauseTexts } from "#lib/loans/clauses.ts";

const plain: ClauseFacts = {
  hasHuman: false,
  hasAnimal: true,
  hasJars: false,
  isPublic: false,
  isExport: false,
  isTeaching: true,
  isShown: true,
  hasDisposition: false,
  allowsActivities: false,
  allowsSampling: false,
};
const words = Object.fromEntries(
  clauseTexts.flatMap(({ text }) => [...text.matchAll(/\{(\w+)\}/g)].map((match) => [match[1] ?? "", "…"])),
);
const ids = (facts: Partial<ClauseFacts>) =>
  clausesFor({ ...plain, ...facts }, words).map((clause) => clause.id);

test("clauses of human material stand only where there is some", () => {
  const humanOnly = [
    "human-material",
    "consent",
    "withdrawal",
    "anonymity",
    "no-price",
    "total-loss",
    "sampling",
    "promotion",
    "objections",
  ];
  expect(ids({}).filter((id) => humanOnly.includes(id))).toEqual([]);
  expect(ids({ hasHuman: true }).filter((id) => humanOnly.includes(id))).toEqual(humanOnly);
});

test.each([
  ["jars", { hasJars: true }, {}],
  ["border", { isExport: true }, {}],
  ["licences", { hasHuman: true, isPublic: true }, { hasHuman: true }],
  ["teaching", {}, { isTeaching: false }],
  ["disposition", { hasDisposition: true }, {}],
  ["animals", {}, { hasAnimal: false }],
  ["activities", { allowsActivities: true }, {}],
  ["sampling", { hasHuman: true }, { hasHuman: true, allowsSampling: true }],
  ["genetic-analysis", { hasHuman: true, allowsSampling: true }, { hasHuman: true }],
] as const)("the clause of %s stands where it applies and nowhere else", (id, applies, not) => {
  expect(ids(applies)).toContain(id);
  expect(ids(not)).not.toContain(id);
});

test("clauses are numbered without a gap, and every word is filled", () => {
  const clauses = clausesFor({ ...plain, hasHuman: true, hasJars: true, isExport: true }, words);
  expect(clauses.map((clause) => clause.number)).toEqual(clauses.map((_, index) => index + 1));
  for (const clause of clauses) expect(clause.text).not.toMatch(/[{}]/);
});

test("a word that nothing fills is refused", () => {
  expect(() => clausesFor(plain, {})).toThrow(RangeError);
});

test("ids are unique and the words are the trade's", () => {
  expect(new Set(clauseTexts.map(({ id }) => id)).size).toBe(clauseTexts.length);
  for (const { text } of clauseTexts) expect(text).not.toMatch(/\b(piece|object|value|lawful|leg)s?\b/i);
});
