import { describe, expect, test } from "vitest";
import type { ConsentFacts } from "#lib/provenance/schema.ts";
import { nothingKnownInLaw } from "#lib/specimens/schema.ts";
import { judgeConsent } from "#lib/suitability/rules/general.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import { strictestOutcome } from "#lib/workings/outcome.ts";
import { paidShow, publicShow, rows } from "#tests/lib/suitability/rules/general-rows.ts";
import { aConsentFact, allScopes } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const caseWith = (...consents: ConsentFacts[]) =>
  aSpecimenCase({ provenance: { consents, donorsWithoutConsent: 0, permits: [], title: null } });
const nobodyKnown = aSpecimenCase({
  provenance: { consents: [], donorsWithoutConsent: 0, permits: [], title: null },
});

const of = (findings: readonly Finding[], rule: string) =>
  findings.filter((finding) => finding.rule === rule);
const outcomeOf = (findings: readonly Finding[], rule: string) =>
  strictestOutcome(of(findings, rule).map((finding) => finding.outcome));

test.each(rows)("%s (%s)", (_what, rule, consent, request, outcome, fact) => {
  const findings = judgeConsent(caseWith(aConsentFact(consent)), aRequestFact(request));
  expect(outcomeOf(findings, rule)).toBe(outcome);
  expect(of(findings, rule).map((finding) => finding.fact)).toContain(fact);
});

describe("a human specimen without a consent record", () => {
  test("is attend for teaching, by the path for collections of unknown provenance", () => {
    const findings = judgeConsent(nobodyKnown, aRequestFact());
    expect(outcomeOf(findings, "G2")).toBe("attend");
    expect(of(findings, "G2")[0]?.wayOut).toBe("way.legacy-path");
  });
  test("is a bar in public", () => {
    expect(outcomeOf(judgeConsent(nobodyKnown, aRequestFact(publicShow)), "G2")).toBe("bar");
  });
  test("is not lent before the oversight body's word, and is attend after it", () => {
    expect(outcomeOf(judgeConsent(nobodyKnown, aRequestFact()), "G10")).toBe("bar");
    const oversight = { reference: "OB 4/27", decidedOn: "2026-11-01" };
    const after = judgeConsent(nobodyKnown, aRequestFact({ oversight }));
    expect(strictestOutcome(after.map((finding) => finding.outcome))).toBe("attend");
  });
  test("is never said to be unrecognisable", () => {
    expect(outcomeOf(judgeConsent(nobodyKnown, aRequestFact()), "G8")).toBe("attend");
  });
});

test("a young donor is attend, and a bar in public", () => {
  const young = aSpecimenCase({ specimen: { ageBand: "10–19" } });
  expect(outcomeOf(judgeConsent(young, aRequestFact()), "G8")).toBe("attend");
  expect(outcomeOf(judgeConsent(young, aRequestFact(publicShow)), "G8")).toBe("bar");
});

test("a specimen whose age nobody knows is taken as recent", () => {
  const undated = aSpecimenCase({ specimen: { acquiredOn: null, preparedOn: null } });
  expect(of(judgeConsent(undated, aRequestFact()), "G15")).toMatchObject([
    { outcome: "attend", fact: "consent.age-of-specimen-not-known" },
  ]);
});

test.each([
  ["its acquisition", {}, "2014-02-01"],
  ["what it was held since", { legal: { ...nothingKnownInLaw, heldSince: "1988-01-01" } }, "1988-01-01"],
  [
    "the time of its making",
    { acquiredOn: null, preparedOn: null, legal: { ...nothingKnownInLaw, madePeriod: "1850 to 1899" } },
    "1850 to 1899",
  ],
] as const)("a specimen's age is known as far back as %s", (_what, specimen, since) => {
  expect(of(judgeConsent(aSpecimenCase({ specimen }), aRequestFact()), "G15")).toMatchObject([
    { outcome: "clear", parameters: { since } },
  ]);
});

test("a specimen that somebody claims stays, whatever its donor allowed", () => {
  const title = {
    status: "disputed",
    ownerName: "",
    leaveToLend: true,
    leaveReference: "W 1",
    recordedOn: "2026-01-01",
  } as const;
  const claimed = aSpecimenCase({ provenance: { ...aSpecimenCase().provenance, title } });
  const findings = judgeConsent(claimed, aRequestFact());
  expect(outcomeOf(findings, "G3")).toBe("bar");
  expect(of(findings, "G3").map(({ fact }) => fact)).toContain("consent.claim-pending");
});

describe("a composite", () => {
  test.each([
    ["clear where every donor allows it", {}, "clear"],
    ["attend where one form is to be reviewed", { reviewDueOn: "2027-05-01" }, "attend"],
    [
      "a bar where one donor refused",
      { answers: allScopes("granted", { "professional teaching": "refused" }) },
      "bar",
    ],
  ] as const)("is %s", (_what, second, outcome) => {
    const findings = judgeConsent(caseWith(aConsentFact(), aConsentFact(second)), aRequestFact());
    expect(of(findings, "G13")).toMatchObject([
      { outcome, fact: "consent.composite", parameters: { donors: 2 } },
    ]);
  });
  test("counts a donor without a record, and one donor makes none", () => {
    const half = aSpecimenCase({
      provenance: { consents: [aConsentFact()], donorsWithoutConsent: 1, permits: [], title: null },
    });
    expect(outcomeOf(judgeConsent(half, aRequestFact()), "G13")).toBe("bar");
    expect(of(judgeConsent(caseWith(aConsentFact()), aRequestFact()), "G13")).toEqual([]);
  });
});

test("an animal specimen asks no donor", () => {
  const animal = aSpecimenCase({ specimen: { human: false, scientificName: "Equus caballus" } });
  expect(judgeConsent(animal, aRequestFact(paidShow))).toMatchObject([
    { outcome: "clear", fact: "consent.animal" },
  ]);
});

test("a donor without a record makes the whole composite unknown", () => {
  const composite = aSpecimenCase({
    provenance: { consents: [aConsentFact()], donorsWithoutConsent: 1, permits: [], title: null },
  });
  const findings = judgeConsent(composite, aRequestFact());
  expect(outcomeOf(findings, "G1")).toBe("attend");
  expect(of(findings, "G2")).toMatchObject([{ fact: "consent.no-record-of-one", parameters: { donors: 1 } }]);
});

describe("the worked example: an adult donor, scopes for teaching, research, lending, export and internal pictures", () => {
  const consent = aConsentFact({
    answers: allScopes("not asked", {
      "professional teaching": "granted",
      research: "granted",
      "lending to others": "granted",
      export: "granted",
      "pictures, internal": "granted",
      "public display, free": "refused",
    }),
  });
  const lyon = aVenueFact({ countryCode: "FR" });

  test("a paid exhibition in Lyon with press pictures is barred by G1 and G6, and its pictures by G7", () => {
    const findings = judgeConsent(
      caseWith(consent),
      aRequestFact({ ...paidShow, pictures: ["press"], venue: lyon }),
    );
    expect(outcomeOf(findings, "G1")).toBe("bar");
    expect(outcomeOf(findings, "G6")).toBe("bar");
    expect(of(findings, "G7")).toMatchObject([
      { fact: "consent.pictures-not-known", wayOut: "way.without-these-pictures" },
    ]);
  });
  test("the medical faculty in Lyon, for enrolled students and without charge, is clear", () => {
    const findings = judgeConsent(caseWith(consent), aRequestFact({ venue: lyon }));
    expect(findings.filter((finding) => finding.outcome !== "clear")).toEqual([]);
  });
});
