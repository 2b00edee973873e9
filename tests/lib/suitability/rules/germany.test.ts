import { expect, test } from "vitest";
import { judgeGermany } from "#lib/suitability/rules/germany.ts";
import { allScopes } from "#tests/support/consents.ts";
import {
  aLicenceFact,
  animal,
  answerOf,
  caseOf,
  inPublic,
  type RuleRow,
  requestOf,
  type Said,
} from "#tests/support/rule-rows.ts";

const demonstrated: Said["request"] = { ...inPublic, activities: ["dissection before visitors"] };
const decided = { oversight: { reference: "OB 1", decidedOn: "2026-01-01" } };

const rows: RuleRow[] = [
  ["teaching", "DE1", {}, "clear", "permits.not-public"],
  [
    "a show of which the order office knows",
    "DE1",
    { request: inPublic, venue: { licences: [aLicenceFact("notice to the order office")] } },
    "clear",
  ],
  ["a show of which it does not", "DE1", { request: inPublic }, "attend", "law.licence-missing"],
  ["a didactic show", "DE2", { request: inPublic }, "clear"],
  ["a promotional show", "DE2", { request: { ...inPublic, displayStyle: "promotional" } }, "attend"],
  [
    "an artistic show",
    "DE2",
    { request: { ...inPublic, displayStyle: "artistic" } },
    "bar",
    "law.germany-artistic",
  ],
  ["no dissection before visitors", "DE3", { request: inPublic }, "clear"],
  [
    "sampling alone, which a visitor does not see",
    "DE3",
    {
      request: { ...inPublic, activities: ["sampling"] },
      consents: [{ basis: "will", answers: allScopes("granted", { sampling: "refused" }) }],
    },
    "clear",
    "law.germany-no-demonstration",
  ],
  [
    "a dissection before students, without the public",
    "DE3",
    { request: { activities: ["dissection before visitors"] } },
    "clear",
  ],
  [
    "a dissection that every donor declared for",
    "DE3",
    { request: demonstrated },
    "attend",
    "law.germany-declared",
  ],
  [
    "a dissection where a donor refused the taking",
    "DE3",
    {
      request: demonstrated,
      consents: [{ answers: allScopes("granted", { sampling: "refused" }) }],
    },
    "bar",
    "law.germany-not-declared",
  ],
  [
    "a dissection with a relative's word",
    "DE3",
    {
      request: demonstrated,
      consents: [{ basis: "relative or authorised person" }],
    },
    "bar",
  ],
  ["a donor's own word", "DE4", { request: inPublic }, "clear", "law.germany-no-injustice"],
  [
    "an order of an authority, for teaching",
    "DE4",
    { consents: [{ basis: "order of an authority" }] },
    "attend",
    "law.germany-injustice",
  ],
  ["an unclaimed body in public", "DE4", { consents: [{ basis: "unclaimed" }], request: inPublic }, "bar"],
  [
    "a death from 1933 to 1945 in public",
    "DE4",
    { consents: [], legal: { deathPeriod: "1933 to 1945" }, request: inPublic },
    "bar",
  ],
  ["a death after 1945", "DE4", { consents: [], legal: { deathPeriod: "1946 to 1969" } }, "clear"],
  ["circumstances that nobody knows", "DE4", { consents: [] }, "attend", "law.germany-context-not-known"],
  ["the same in public", "DE4", { consents: [], request: inPublic }, "bar"],
  [
    "the same after the oversight body's word",
    "DE4",
    { consents: [], request: { ...inPublic, ...decided } },
    "attend",
  ],
];

test.each(rows)("%s, %s", (_what, rule, said, answer, fact) => {
  const found = answerOf(judgeGermany(caseOf(said), requestOf(said, "DE")), rule);
  expect(found.answer).toBe(answer);
  if (fact !== undefined) expect(found.facts).toContain(fact);
});

test("elsewhere, and for animals, the German rules say nothing", () => {
  expect(judgeGermany(caseOf({}), requestOf({}, "AT"))).toEqual([]);
  expect(judgeGermany(caseOf({ specimen: animal }), requestOf({}, "DE"))).toEqual([]);
});
