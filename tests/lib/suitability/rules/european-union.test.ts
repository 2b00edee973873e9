import { expect, test } from "vitest";
import { judgeEuropeanUnion, reachesEuro } from "#lib/suitability/rules/european-union.ts";
import { aLentSpecimen } from "#tests/support/loan-cases.ts";
import { animal, answerOf, caseOf, type RuleRow, requestOf } from "#tests/support/rule-rows.ts";

const out = { lenderCountry: "FI" };
const cost = (minor: number, currency = "EUR") => ({
  replacementCost: {
    minor,
    currency,
    basis: "preparation cost",
    statedOn: "2026-05-01",
    statedBy: "M",
  } as const,
});
const bone = { ...animal, preparation: "dry" } as const;

/** Rows to a venue in Great Britain, from Norway unless the row says another lender. */
const rows: RuleRow[] = [
  [
    "export with a licence",
    "EU1",
    { request: out, permits: [{ kind: "export" }] },
    "clear",
    "law.export-licence",
  ],
  ["export of what costs less", "EU1", { request: out }, "attend", "law.union-export-below"],
  [
    "export of what costs more",
    "EU1",
    { request: out, specimen: cost(5_000_000) },
    "attend",
    "law.union-export-over",
  ],
  [
    "export of what nobody has costed",
    "EU1",
    { request: out, specimen: { replacementCost: null } },
    "attend",
    "law.union-export-over",
  ],
  ["between two members", "EU1", { request: out, venue: { countryCode: "SE" } }, "absent"],
  ["between two others", "EU1", {}, "absent"],

  [
    "what comes from a member",
    "EU2",
    { request: out, legal: { originCountry: "FI" } },
    "clear",
    "law.union-made-there",
  ],
  [
    "what is younger than 200 years",
    "EU2",
    { request: out, legal: { originCountry: "NO" } },
    "clear",
    "law.union-import-below",
  ],
  [
    "what is old and costly",
    "EU2",
    {
      request: out,
      legal: { originCountry: "NO", madePeriod: "before 1800" },
      specimen: { preparedOn: null, ...cost(1_800_000) },
    },
    "attend",
    "law.union-statement",
  ],
  [
    "what may be old",
    "EU2",
    {
      request: out,
      legal: { originCountry: "NO", madePeriod: "1800 to 1849" },
      specimen: { preparedOn: null, ...cost(1_800_000) },
    },
    "attend",
    "law.union-age-or-cost-not-known",
  ],
  ["what comes from nobody knows where", "EU2", { request: out }, "attend", "law.union-origin-not-known"],
  ["what comes in from outside", "EU2", { venue: { countryCode: "FR" } }, "attend"],

  [
    "an impregnated animal",
    "EU3",
    { request: out, specimen: animal },
    "clear",
    "law.union-complete-preparation",
  ],
  [
    "a dry one with a certificate",
    "EU3",
    { request: out, specimen: bone, permits: [{ kind: "veterinary" }] },
    "clear",
    "law.veterinary-paper",
  ],
  [
    "a dry one with a vague certificate",
    "EU3",
    { request: out, specimen: bone, permits: [{ kind: "veterinary", territories: [] }] },
    "attend",
  ],
  [
    "a dry one without a certificate",
    "EU3",
    { request: out, specimen: bone },
    "bar",
    "law.veterinary-missing",
  ],
  ["a human specimen", "EU3", { request: out }, "absent"],
];

test.each(rows)("%s, %s", (_what, rule, said, answer, fact) => {
  const found = answerOf(judgeEuropeanUnion(caseOf(said), requestOf(said, "GB")), rule);
  expect(found.answer).toBe(answer);
  if (fact !== undefined) expect(found.facts).toContain(fact);
});

test("a cost reaches a threshold at the threshold itself, and is not known in another currency", () => {
  expect(reachesEuro(aLentSpecimen(cost(1_800_000)), 1_800_000)).toBe(true);
  expect(reachesEuro(aLentSpecimen(cost(1_799_999)), 1_800_000)).toBe(false);
  expect(reachesEuro(aLentSpecimen(cost(9_000_000, "NOK")), 1_800_000)).toBeNull();
  expect(reachesEuro(aLentSpecimen({ replacementCost: null }), 1_800_000)).toBeNull();
});
