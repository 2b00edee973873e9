import { expect, test } from "vitest";
import { judgeUnitedStates } from "#lib/suitability/rules/united-states.ts";
import { allScopes } from "#tests/support/consents.ts";
import { aRequestFact } from "#tests/support/loan-cases.ts";
import {
  animal,
  answerOf,
  caseOf,
  forMoney,
  inPublic,
  type RuleRow,
  requestOf,
} from "#tests/support/rule-rows.ts";

const city = { subdivisionCode: "US-CA", town: "San Francisco" };
const hawaii = { subdivisionCode: "US-HI" };
const toured = { ...aRequestFact().borrower, kind: "touring exhibition" } as const;
const paid = { ...forMoney, borrower: toured };
const freeOnly = [{ answers: allScopes("granted", { "public display, paid": "not asked" }) }];
const noDisplay = [{ answers: allScopes("granted", { "public display, free": "not asked" }) }];

const rows: RuleRow[] = [
  ["teaching, a named purpose", "US1", {}, "clear", "law.us-named-purpose"],
  ["a display that the gift names", "US1", { request: inPublic }, "clear", "law.us-display-named"],
  [
    "a free display that it does not name",
    "US1",
    { request: inPublic, consents: noDisplay },
    "bar",
    "law.us-display-not-named",
  ],
  [
    "the same after the oversight body's word",
    "US1",
    {
      request: { ...inPublic, oversight: { reference: "OB 1", decidedOn: "2026-01-01" } },
      consents: noDisplay,
    },
    "attend",
  ],
  ["a paid display that it does not name", "US1", { request: forMoney, consents: freeOnly }, "bar"],
  ["an animal", "US1", { specimen: animal }, "absent"],

  ["a free display in San Francisco", "US2", { venue: city, request: inPublic }, "clear", "law.us-no-money"],
  [
    "a death before 1920",
    "US2",
    { venue: city, request: paid, consents: [], legal: { deathPeriod: "September 1906 to 1919" } },
    "clear",
    "law.us-over-hundred",
  ],
  [
    "a paid display with authority on record",
    "US2",
    { venue: city, request: paid },
    "attend",
    "law.us-authority-to-judge",
  ],
  [
    "a paid display of a museum",
    "US2",
    { venue: city, request: { ...forMoney, borrower: { ...toured, kind: "museum" } } },
    "attend",
    "law.us-presumed-house",
  ],
  [
    "a paid display without authority",
    "US2",
    { venue: city, request: paid, consents: freeOnly },
    "bar",
    "law.us-no-authority",
  ],
  ["a paid display without any consent", "US2", { venue: city, request: paid, consents: [] }, "bar"],
  [
    "the town of the borrower",
    "US2",
    {
      venue: { subdivisionCode: "US-CA" },
      request: { ...paid, borrower: { ...toured, town: "San Francisco" } },
      consents: [],
    },
    "bar",
  ],
  ["another town", "US2", { venue: { subdivisionCode: "US-CA" }, request: paid }, "absent"],
  [
    "a paid display in a state that nobody named",
    "US2",
    { request: forMoney },
    "bar",
    "law.us-state-not-known",
  ],

  ["a free display in Hawaii", "US3", { venue: hawaii, request: inPublic }, "clear"],
  [
    "a paid display of a death over eighty years ago",
    "US3",
    { venue: hawaii, request: paid, consents: [], legal: { deathPeriod: "1933 to 1945" } },
    "attend",
    "law.us-over-eighty",
  ],
  ["a paid display in Hawaii", "US3", { venue: hawaii, request: paid }, "bar", "law.us-commercial-hawaii"],

  ["a display in a state that nobody named", "US3", { request: inPublic }, "bar", "law.us-state-not-known"],
  [
    "a display in a state that nobody named",
    "US4",
    { request: inPublic },
    "attend",
    "law.us-state-not-known",
  ],
  ["teaching in a state that nobody named", "US2", {}, "absent"],
  ["teaching in California", "US4", { venue: city }, "clear"],
  ["a display in California", "US4", { venue: city, request: inPublic }, "attend", "law.us-california-signs"],

  [
    "clean dry bone",
    "US5",
    { specimen: { kind: "skeleton or bone", preparation: "dry" } },
    "clear",
    "law.us-not-remains",
  ],
  ["a cast without cells", "US5", { legal: { containsCells: false } }, "clear"],
  ["tissue with its paper", "US5", { permits: [{}] }, "clear", "law.import-paper"],
  ["tissue without a paper", "US5", {}, "attend", "law.us-not-infectious"],
  ["a lender in the country", "US5", { request: { lenderCountry: "US" } }, "absent"],

  ["a code that a broker decided", "US6", { tariffCountries: ["US"] }, "clear", "law.us-tariff-decided"],
  ["a code for another country", "US6", { tariffCountries: ["CA"] }, "attend", "law.us-tariff-open"],
  ["a cast without tissue", "US6", { legal: { containsCells: false } }, "clear"],
  ["an animal as well", "US6", { specimen: animal }, "attend"],
];

test.each(rows)("%s, %s", (_what, rule, said, answer, fact) => {
  const found = answerOf(judgeUnitedStates(caseOf(said), requestOf(said, "US")), rule);
  expect(found.answer).toBe(answer);
  if (fact !== undefined) expect(found.facts).toContain(fact);
});

test("elsewhere the rules of the United States say nothing", () => {
  expect(judgeUnitedStates(caseOf({}), requestOf({}, "CA"))).toEqual([]);
});
