import { expect, test } from "vitest";
import { judgeScotland } from "#lib/suitability/rules/scotland.ts";
import {
  aLicenceFact,
  animal,
  answerOf,
  caseOf,
  inPublic,
  type RuleRow,
  requestOf,
} from "#tests/support/rule-rows.ts";

const there = { subdivisionCode: "GB-SCT" };
const decided = { oversight: { reference: "OB 1", decidedOn: "2026-01-01" } };

const rows: RuleRow[] = [
  ["teaching", "SC1", { venue: there }, "clear", "permits.not-public"],
  [
    "a show with a licence",
    "SC1",
    { venue: { ...there, licences: [aLicenceFact("public display")] }, request: inPublic },
    "clear",
    "law.licence",
  ],
  ["a show without a licence", "SC1", { venue: there, request: inPublic }, "bar", "law.licence-missing"],
  [
    "a show of what was never examined",
    "SC1",
    { venue: there, request: inPublic, legal: { anatomicalExamination: false } },
    "attend",
  ],
  ["a show in a part that nobody named", "SC1", { request: inPublic }, "bar", "law.scotland-or-not"],
  ["the same after the oversight body's word", "SC1", { request: { ...inPublic, ...decided } }, "attend"],
  ["teaching in a part that nobody named", "SC1", {}, "absent"],
  ["a show in England", "SC1", { venue: { subdivisionCode: "GB-ENG" }, request: inPublic }, "absent"],
  ["an animal", "SC1", { venue: there, request: inPublic, specimen: animal }, "absent"],
];

test.each(rows)("%s, %s", (_what, rule, said, answer, fact) => {
  const found = answerOf(judgeScotland(caseOf(said), requestOf(said, "GB")), rule);
  expect(found.answer).toBe(answer);
  if (fact !== undefined) expect(found.facts).toContain(fact);
});
