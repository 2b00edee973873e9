/**
 * The worked example of the rules.
 *
 * Source: the worked example under the table of rules in the specification of the job, section 3.6: an adult
 * donor; teaching, research, lending, export and internal pictures granted; public display refused. Table of two
 * requests, each with the outcome of the rules that it names. No tolerance: outcomes are words. G7 bars the use
 * of the pictures and lets the loan go on, which is told as attend with the pictures struck.
 */
import { expect, test } from "vitest";
import { judgeSuitability } from "#lib/suitability/suitability.ts";
import { strictestOutcome } from "#lib/workings/outcome.ts";
import { allScopes } from "#tests/support/consents.ts";
import { answerOf, caseOf, forMoney, requestOf } from "#tests/support/rule-rows.ts";

const donor = {
  answers: allScopes("not asked", {
    "professional teaching": "granted",
    research: "granted",
    "lending to others": "granted",
    export: "granted",
    "pictures, internal": "granted",
    "public display, free": "refused",
  }),
} as const;
/** A lender in the Union, so that Lyon lies within it. */
const lender = { lenderCountry: "DE", requestedOn: "2026-03-01" };

test.each([
  [
    "a paid exhibition in Lyon with press pictures",
    { ...lender, ...forMoney, pictures: ["press" as const] },
    { G1: "bar", G6: "bar", FR1: "bar", G7: "attend" },
    "bar",
  ],
  [
    "the medical faculty in Lyon, for enrolled students and without charge",
    lender,
    { G1: "clear", FR2: "attend", EU1: "absent", EU2: "absent" },
    "attend",
  ],
] as const)("%s", (_what, request, answers, overall) => {
  const said = { consents: [donor], request: { ...request } } as Parameters<typeof requestOf>[0];
  const findings = judgeSuitability(requestOf(said, "FR"), [caseOf(said)]);
  for (const [rule, answer] of Object.entries(answers))
    expect([rule, answerOf(findings, rule).answer]).toEqual([rule, answer]);
  expect(strictestOutcome(findings.map(({ outcome }) => outcome))).toBe(overall);
});

test("the press pictures are barred as a use", () => {
  const said = { consents: [donor], request: { ...lender, ...forMoney, pictures: ["press" as const] } };
  const found = judgeSuitability(requestOf(said, "FR"), [caseOf(said)]).find(({ rule }) => rule === "G7");
  expect(found).toMatchObject({ fact: "consent.pictures-not-known", wayOut: "way.without-these-pictures" });
});
