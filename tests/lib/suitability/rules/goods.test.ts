import { expect, test } from "vitest";
import type { TitleInput } from "#lib/provenance/schema.ts";
import { crossesCustoms, judgeGoods } from "#lib/suitability/rules/goods.ts";
import { animal, answerOf, caseOf, forMoney, type RuleRow, requestOf } from "#tests/support/rule-rows.ts";

const abroad = { countryCode: "GB" };
const species = "species protection (CITES)";
const label = "scientific exchange label (CITES)";
const jar = (
  fluidName: "ethanol" | "isopropanol" | "formaldehyde solution" | "glycerol" | "other fluid",
  fluidPercent: number | null,
) => ({ preparation: "fluid-preserved", fluidName, fluidPercent }) as const;
const guest: TitleInput = {
  status: "loan-in",
  ownerName: "Owner",
  leaveToLend: true,
  leaveReference: "W 1",
  recordedOn: "2026-01-01",
};

const rows: RuleRow[] = [
  ["an animal that stays in the country", "CI1", { specimen: animal }, "clear", "permits.no-border"],
  [
    "one shown there that nobody looked up",
    "CI1",
    { specimen: animal, request: { audience: "general public" } },
    "bar",
    "law.species-not-known",
  ],
  [
    "one that goes abroad and nobody looked up",
    "CI1",
    { specimen: animal, venue: abroad },
    "bar",
    "law.species-not-known",
  ],
  [
    "the same after the oversight body's word",
    "CI1",
    {
      specimen: animal,
      venue: abroad,
      request: { oversight: { reference: "OB 1", decidedOn: "2026-01-01" } },
    },
    "attend",
  ],
  [
    "one that is not listed",
    "CI1",
    { specimen: animal, venue: abroad, legal: { speciesAppendix: "not listed" } },
    "clear",
    "law.species-not-listed",
  ],
  [
    "a listed one without a number",
    "CI1",
    { specimen: animal, venue: abroad, legal: { speciesAppendix: "II" } },
    "bar",
    "law.species-listed",
  ],
  [
    "a listed one with a permit",
    "CI1",
    { specimen: animal, venue: abroad, legal: { speciesAppendix: "II" }, permits: [{ kind: species }] },
    "clear",
    "law.species-paper",
  ],
  [
    "a listed one with a label of exchange",
    "CI1",
    { specimen: animal, venue: abroad, legal: { speciesAppendix: "II" }, permits: [{ kind: label }] },
    "clear",
  ],
  [
    "a label of exchange where admission is charged",
    "CI1",
    {
      specimen: animal,
      venue: abroad,
      legal: { speciesAppendix: "II" },
      permits: [{ kind: label }],
      request: forMoney,
    },
    "bar",
  ],
  [
    "a permit that names no country",
    "CI1",
    { specimen: animal, venue: abroad, permits: [{ kind: species, territories: [] }] },
    "attend",
    "law.species-paper-vague",
  ],
  [
    "a lapsed permit",
    "CI1",
    { specimen: animal, venue: abroad, permits: [{ kind: species, validUntil: "2027-05-01" }] },
    "bar",
    "law.species-paper-days",
  ],
  [
    "a permit for elsewhere",
    "CI1",
    { specimen: animal, venue: abroad, permits: [{ kind: species, territories: ["SE"] }] },
    "bar",
    "law.species-paper-country",
  ],
  [
    "the best of several permits",
    "CI1",
    {
      specimen: animal,
      venue: abroad,
      permits: [{ kind: species, validUntil: "2026-05-01" }, { kind: species }],
    },
    "clear",
  ],
  ["a human specimen", "CI1", { venue: abroad }, "absent"],

  ["an animal that is only shown", "NG1", { specimen: animal }, "clear", "law.genes-not-used"],
  [
    "an animal that is sampled",
    "NG1",
    { specimen: animal, request: { activities: ["sampling"] } },
    "attend",
    "law.genes-sampled",
  ],
  ["a human specimen that is sampled", "NG1", { request: { activities: ["sampling"] } }, "absent"],

  ["glycerol", "DG1", { specimen: jar("glycerol", 90) }, "clear", "law.fluid-not-classed"],
  [
    "weak formaldehyde",
    "DG1",
    { specimen: jar("formaldehyde solution", 10) },
    "clear",
    "law.fluid-weak-formaldehyde",
  ],
  [
    "strong formaldehyde of unknown volume",
    "DG1",
    { specimen: jar("formaldehyde solution", 10.1) },
    "attend",
    "law.fluid-volume-not-known",
  ],
  [
    "ethanol of unknown volume",
    "DG1",
    { specimen: jar("ethanol", 70) },
    "attend",
    "law.fluid-volume-not-known",
  ],
  [
    "30 ml of ethanol",
    "DG1",
    { specimen: jar("ethanol", 70), legal: { freeFluidMl: 30 } },
    "clear",
    "law.fluid-small-quantity",
  ],
  [
    "31 ml of isopropanol",
    "DG1",
    { specimen: jar("isopropanol", 50), legal: { freeFluidMl: 31 } },
    "attend",
    "law.fluid-declared",
  ],
  ["another fluid", "DG1", { specimen: jar("other fluid", null) }, "attend", "law.fluid-not-known"],
  ["no fluid", "DG1", {}, "absent"],

  ["half a year abroad", "CU1", { venue: abroad }, "clear", "law.carnet-fits"],
  [
    "nine months abroad",
    "CU1",
    { venue: abroad, request: { endsOn: "2027-12-01" } },
    "attend",
    "law.carnet-short-states",
  ],
  [
    "more than a year abroad",
    "CU1",
    { venue: abroad, request: { endsOn: "2028-03-01" } },
    "attend",
    "law.carnet-too-long",
  ],
  ["in the country", "CU1", {}, "absent"],
  ["in the country, by way of another", "CU1", { request: { through: ["CH"] } }, "clear", "law.carnet-fits"],
  [
    "between members of the Union",
    "CU1",
    { venue: { countryCode: "FR" }, request: { lenderCountry: "DE", through: ["LU"] } },
    "absent",
  ],
  [
    "between members of the Union, by way of a country outside it",
    "CU1",
    { venue: { countryCode: "FR" }, request: { lenderCountry: "DE", through: ["CH"] } },
    "clear",
  ],

  ["four months in the Union", "CU2", { venue: { countryCode: "FR" } }, "clear", "law.admission-fits"],
  [
    "more than 24 months in the Union",
    "CU2",
    { venue: { countryCode: "FR" }, request: { endsOn: "2029-03-01" } },
    "bar",
    "law.admission-too-long",
  ],
  [
    "a guest from outside since the autumn",
    "CU2",
    {
      title: guest,
      legal: { imported: true },
      specimen: { acquiredOn: "2026-10-01" },
      request: { lenderCountry: "FI" },
      venue: { countryCode: "SE" },
    },
    "clear",
  ],
  [
    "a guest from outside for three years",
    "CU2",
    {
      title: guest,
      legal: { imported: true },
      specimen: { acquiredOn: "2024-10-01" },
      request: { lenderCountry: "FI" },
      venue: { countryCode: "SE" },
    },
    "bar",
  ],
  [
    "a guest since nobody knows when",
    "CU2",
    {
      title: guest,
      legal: { imported: true },
      specimen: { acquiredOn: null },
      request: { lenderCountry: "FI" },
      venue: { countryCode: "SE" },
    },
    "attend",
    "law.admission-not-known",
  ],
  [
    "the lender's own in the Union",
    "CU2",
    { request: { lenderCountry: "FI" }, venue: { countryCode: "SE" } },
    "absent",
  ],
];

test.each(rows)("%s, %s", (_what, rule, said, answer, fact) => {
  const found = answerOf(judgeGoods(caseOf(said), requestOf(said)), rule);
  expect(found.answer).toBe(answer);
  if (fact !== undefined) expect(found.facts).toContain(fact);
});

test("members of the Union have no customs between them", () => {
  const between = (lenderCountry: string, countryCode: string) =>
    crossesCustoms(requestOf({ request: { lenderCountry }, venue: { countryCode } }));
  expect(between("FI", "SE")).toBe(false);
  expect(between("FI", "GB")).toBe(true);
  expect(between("NO", "GB")).toBe(true);
  expect(between("NO", "NO")).toBe(false);
});
