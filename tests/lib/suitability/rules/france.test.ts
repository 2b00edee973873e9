import { expect, test } from "vitest";
import { judgeFrance } from "#lib/suitability/rules/france.ts";
import { animal, answerOf, caseOf, forMoney, type RuleRow, requestOf } from "#tests/support/rule-rows.ts";

const rows: RuleRow[] = [
  ["a paid exhibition", "FR1", { request: forMoney }, "bar", "law.france-commercial"],
  ["a promotional one", "FR1", { request: { displayStyle: "promotional" } }, "bar"],
  ["teaching without charge", "FR1", {}, "clear"],
  ["teaching without charge", "FR2", {}, "attend", "law.france-proof"],
  ["a paid exhibition", "FR2", { request: forMoney }, "absent"],
];

test.each(rows)("%s, %s", (_what, rule, said, answer, fact) => {
  const found = answerOf(judgeFrance(caseOf(said), requestOf(said, "FR")), rule);
  expect(found.answer).toBe(answer);
  if (fact !== undefined) expect(found.facts).toContain(fact);
});

test("elsewhere, and for animals, the French rules say nothing", () => {
  expect(judgeFrance(caseOf({}), requestOf({}, "NO"))).toEqual([]);
  expect(judgeFrance(caseOf({ specimen: animal }), requestOf({}, "FR"))).toEqual([]);
});
