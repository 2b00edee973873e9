/** UK1 to UK9 as tables: each clear, attend and bar where it can be. */
import { expect, test } from "vitest";
import { judgeUnitedKingdom, writtenWord } from "#lib/suitability/rules/united-kingdom.ts";
import { aConsentFact } from "#tests/support/consents.ts";
import {
  aLicenceFact,
  animal,
  answerOf,
  caseOf,
  inPublic,
  type RuleRow,
  requestOf,
} from "#tests/support/rule-rows.ts";

const licensed = { licences: [aLicenceFact("public display")] };
const home = { legal: { originCountry: "GB" } };
const recent = { originCountry: "GB", heldSince: "2015-01-01" };

const rows: RuleRow[] = [
  ["no show in public", "UK1", {}, "clear", "permits.not-public"],
  ["a show with a licence", "UK1", { request: inPublic, venue: licensed }, "clear", "law.licence"],
  [
    "a show with a licence without an end",
    "UK1",
    { request: inPublic, venue: { licences: [aLicenceFact("public display", { validUntil: null })] } },
    "attend",
    "law.licence-vague",
  ],
  ["a show without a licence", "UK1", { request: inPublic }, "bar", "law.licence-missing"],
  [
    "a show with a lapsed licence",
    "UK1",
    {
      request: inPublic,
      venue: { licences: [aLicenceFact("public display", { validUntil: "2027-04-01" })] },
    },
    "bar",
    "law.licence-days",
  ],
  [
    "a show with a licence for storage only",
    "UK1",
    { request: inPublic, venue: { licences: [aLicenceFact("storage")] } },
    "bar",
  ],
  [
    "a show of somebody who died before 1906",
    "UK1",
    { request: inPublic, consents: [], legal: { deathPeriod: "before September 1906" } },
    "clear",
    "law.uk-licence-off",
  ],
  [
    "a show of somebody who died a hundred years ago",
    "UK1",
    { request: inPublic, consents: [], legal: { deathPeriod: "September 1906 to 1919" } },
    "attend",
  ],

  [
    "a death before September 1906",
    "UK2",
    { consents: [], legal: { deathPeriod: "before September 1906" } },
    "clear",
    "law.uk-before-the-century",
  ],
  [
    "a death before 1920",
    "UK2",
    { consents: [], legal: { deathPeriod: "September 1906 to 1919" } },
    "attend",
    "law.uk-hundred-years",
  ],
  [
    "a death that may lie within the hundred years",
    "UK2",
    { consents: [], legal: { deathPeriod: "1920 to 1932" } },
    "attend",
    "law.uk-death-not-known",
  ],
  ["a death that nobody dated", "UK2", { consents: [] }, "attend", "law.uk-death-not-known"],
  ["a form that the donor signed in 2012", "UK2", {}, "clear", "law.uk-recent"],

  ["a witnessed form", "UK3", { legal: recent }, "clear", "law.uk-own-consent"],
  [
    "a will without a witness",
    "UK3",
    { legal: recent, consents: [{ basis: "will", witnessCount: 0 }] },
    "clear",
  ],
  [
    "a form whose witnesses nobody counted",
    "UK3",
    { legal: recent, consents: [{ witnessCount: null }] },
    "attend",
    "law.uk-witness-not-known",
  ],
  [
    "the same in public",
    "UK3",
    { legal: recent, consents: [{ witnessCount: null }], request: inPublic },
    "bar",
  ],
  [
    "a relative's word",
    "UK3",
    { legal: recent, consents: [{ basis: "relative or authorised person" }] },
    "bar",
    "law.uk-no-own-consent",
  ],
  ["no consent record", "UK3", { legal: recent, consents: [] }, "bar"],
  [
    "one donor of two without an own word",
    "UK3",
    { legal: recent, consents: [{}, { basis: "unclaimed" }] },
    "bar",
  ],
  ["material held since 1990", "UK3", { legal: { ...recent, heldSince: "1990-01-01" } }, "absent"],
  ["imported material", "UK3", {}, "absent"],

  [
    "material held since 1990",
    "UK4",
    { legal: { ...recent, heldSince: "1990-01-01" } },
    "clear",
    "law.uk-existing",
  ],
  ["material held since 2015", "UK4", { legal: recent }, "clear", "law.uk-not-existing"],
  [
    "material held since nobody knows when",
    "UK4",
    { ...home, specimen: { acquiredOn: null, preparedOn: null } },
    "attend",
    "law.uk-held-not-known",
  ],

  ["an import with its paper", "UK5", { permits: [{}] }, "clear", "law.import-paper"],
  ["an import without a paper", "UK5", {}, "attend", "law.uk-origin-not-proved"],
  ["what came from the United Kingdom", "UK5", home, "absent"],

  ["licensed premises", "UK6", { venue: { licences: [aLicenceFact("anatomy")] } }, "clear", "law.licence"],
  [
    "written authority",
    "UK6",
    { venue: { licences: [aLicenceFact("authority to keep elsewhere")] } },
    "clear",
  ],
  [
    "authority without an end",
    "UK6",
    { venue: { licences: [aLicenceFact("anatomy", { validUntil: null })] } },
    "attend",
  ],
  ["premises without either", "UK6", {}, "bar", "law.licence-missing"],
  [
    "a show of what may have been examined",
    "UK6",
    { request: inPublic },
    "bar",
    "law.uk-examination-not-known",
  ],
  [
    "the same after the oversight body's word",
    "UK6",
    { request: { ...inPublic, oversight: { reference: "OB 1", decidedOn: "2026-01-01" } } },
    "attend",
  ],
  [
    "what was never examined",
    "UK6",
    { legal: { anatomicalExamination: false } },
    "clear",
    "law.uk-not-anatomical",
  ],

  ["a storage licence", "UK7", { venue: { licences: [aLicenceFact("storage")] } }, "clear"],
  ["no storage licence", "UK7", {}, "attend"],
  [
    "a lapsed storage licence",
    "UK7",
    { venue: { licences: [aLicenceFact("storage", { validUntil: "2026-02-01" })] } },
    "bar",
  ],
  ["a show, which is no education", "UK7", { request: inPublic }, "absent"],

  ["a cast without cells", "UK8", { legal: { containsCells: false } }, "clear", "law.uk-no-cells"],
  ["cells that nobody stated", "UK8", {}, "attend", "law.cells-not-known"],
  ["tissue", "UK8", { legal: { containsCells: true } }, "absent"],

  ["papers of the death", "UK9", { legal: { deathPapers: true } }, "clear"],
  ["no papers of the death", "UK9", {}, "attend"],
  ["a death before 1906", "UK9", { consents: [], legal: { deathPeriod: "before September 1906" } }, "absent"],
];

test.each(rows)("%s, %s", (_what, rule, said, answer, fact) => {
  const found = answerOf(judgeUnitedKingdom(caseOf(said), requestOf(said, "GB")), rule);
  expect(found.answer).toBe(answer);
  if (fact !== undefined) expect(found.facts).toContain(fact);
});

test("a cast without cells asks nothing else", () => {
  const said = { legal: { containsCells: false }, request: inPublic };
  expect(judgeUnitedKingdom(caseOf(said), requestOf(said, "GB")).map(({ rule }) => rule)).toEqual(["UK8"]);
});

test("Scotland, other countries and animals are not judged here", () => {
  expect(judgeUnitedKingdom(caseOf({}), requestOf({ venue: { subdivisionCode: "GB-SCT" } }, "GB"))).toEqual(
    [],
  );
  expect(judgeUnitedKingdom(caseOf({}), requestOf({}, "IE"))).toEqual([]);
  expect(judgeUnitedKingdom(caseOf({ specimen: animal }), requestOf({}, "GB"))).toEqual([]);
});

test("a lender in the United Kingdom lends its own holdings, and what it imported only where it says so", () => {
  const there = { request: { lenderCountry: "GB" } };
  const rulesOf = (imported: boolean | null) =>
    judgeUnitedKingdom(caseOf({ legal: { imported } }), requestOf(there, "GB")).map(({ rule }) => rule);
  expect(rulesOf(false)).not.toContain("UK5");
  expect(rulesOf(true)).not.toContain("UK3");
  expect(rulesOf(null)).toEqual(expect.arrayContaining(["UK3", "UK4", "UK5"]));
});

test("a word in writing wants its day and one witness", () => {
  expect(writtenWord(aConsentFact())).toBe("own");
  expect(writtenWord(aConsentFact({ witnessCount: 0 }))).toBe("not-own");
  expect(writtenWord(aConsentFact({ signedOn: null }))).toBe("not-known");
});
