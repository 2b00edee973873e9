import { expect, test } from "vitest";
import { judgeIreland, lackingInRegister } from "#lib/suitability/rules/ireland.ts";
import {
  aLicenceFact,
  animal,
  answerOf,
  caseOf,
  inPublic,
  type RuleRow,
  requestOf,
} from "#tests/support/rule-rows.ts";

const complete = { originCountry: "NO", deathPapers: true };

const rows: RuleRow[] = [
  ["teaching", "IE1", {}, "clear", "permits.not-public"],
  [
    "a show with a licence",
    "IE1",
    { request: inPublic, venue: { licences: [aLicenceFact("public display")] } },
    "clear",
  ],
  [
    "a show with a licence without an end",
    "IE1",
    { request: inPublic, venue: { licences: [aLicenceFact("public display", { validUntil: null })] } },
    "attend",
  ],
  ["a show without a licence", "IE1", { request: inPublic }, "bar"],
  ["teaching with an authorisation", "IE2", { permits: [{}] }, "clear", "law.import-paper"],
  [
    "teaching with one that names no country",
    "IE2",
    { permits: [{ territories: [] }] },
    "attend",
    "law.import-paper-vague",
  ],
  [
    "teaching with one for other days",
    "IE2",
    { permits: [{ validUntil: "2027-05-01" }] },
    "bar",
    "law.import-paper-days",
  ],
  [
    "teaching with one for elsewhere",
    "IE2",
    { permits: [{ territories: ["SE"] }] },
    "bar",
    "law.import-paper-country",
  ],
  ["teaching without one", "IE2", {}, "bar", "law.ireland-no-authorisation"],
  ["a lender in Ireland", "IE2", { request: { lenderCountry: "IE" } }, "absent"],
  ["a show, which examines nothing", "IE2", { request: inPublic }, "absent"],
  ["origin, consent and papers", "IE3", { legal: complete }, "clear", "law.ireland-register"],
  ["no origin", "IE3", { legal: { deathPapers: true } }, "attend", "law.ireland-register-lacks"],
  ["no consent", "IE3", { legal: complete, consents: [] }, "attend"],
];

test.each(rows)("%s, %s", (_what, rule, said, answer, fact) => {
  const found = answerOf(judgeIreland(caseOf(said), requestOf(said, "IE")), rule);
  expect(found.answer).toBe(answer);
  if (fact !== undefined) expect(found.facts).toContain(fact);
});

test("what the register lacks is named", () => {
  expect(lackingInRegister(caseOf({ consents: [] }))).toEqual(["origin", "consent", "death certificate"]);
  expect(lackingInRegister(caseOf({ legal: complete }))).toEqual([]);
});

test("elsewhere, and for animals, the Irish rules say nothing", () => {
  expect(judgeIreland(caseOf({}), requestOf({}, "GB"))).toEqual([]);
  expect(judgeIreland(caseOf({ specimen: animal }), requestOf({}, "IE"))).toEqual([]);
});
