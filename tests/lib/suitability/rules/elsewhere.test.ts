import { expect, test } from "vitest";
import { judgeElsewhere } from "#lib/suitability/rules/elsewhere.ts";
import {
  aLicenceFact,
  animal,
  answerOf,
  caseOf,
  inPublic,
  type RuleRow,
  requestOf,
} from "#tests/support/rule-rows.ts";

const display = (said = {}) => ({ licences: [aLicenceFact("public display", said)] });
const both = [{ kind: "export" }, { kind: "import", number: "P 2" }] as const;

/** Rows to a venue in Sweden. */
const rows: RuleRow[] = [
  ["teaching", "D1", {}, "clear", "permits.not-public"],
  ["a show with a licence", "D1", { request: inPublic, venue: display() }, "clear", "law.licence"],
  ["a show without one", "D1", { request: inPublic }, "attend", "law.licence-missing"],
  [
    "a show with a lapsed one",
    "D1",
    { request: inPublic, venue: display({ validUntil: "2027-04-01" }) },
    "attend",
    "law.licence-days",
  ],
  [
    "a show with one without an end",
    "D1",
    { request: inPublic, venue: display({ validUntil: null }) },
    "attend",
    "law.licence-vague",
  ],
  ["a country with rules of its own", "D1", { request: inPublic, venue: { countryCode: "FR" } }, "absent"],
  ["an animal", "D1", { request: inPublic, specimen: animal }, "absent"],
  ["no border", "P2", { venue: { countryCode: "NO" } }, "clear", "permits.no-border"],
  ["papers of both sides", "P2", { permits: [...both] }, "clear", "law.border-papers"],
  ["a paper of one side", "P2", { permits: [both[0]] }, "attend", "law.border-not-known"],
  ["no papers", "P2", {}, "attend"],
  [
    "England, whose own rule speaks",
    "P2",
    { venue: { countryCode: "GB", subdivisionCode: "GB-ENG" } },
    "absent",
  ],
  [
    "Scotland, which has no rule at the border",
    "P2",
    { venue: { countryCode: "GB", subdivisionCode: "GB-SCT" } },
    "attend",
  ],
  [
    "a show in Ireland, which examines nothing",
    "P2",
    { request: inPublic, venue: { countryCode: "IE" } },
    "attend",
  ],
];

test.each(rows)("%s, %s", (_what, rule, said, answer, fact) => {
  const found = answerOf(judgeElsewhere(caseOf(said), requestOf(said, "SE")), rule);
  expect(found.answer).toBe(answer);
  if (fact !== undefined) expect(found.facts).toContain(fact);
});
