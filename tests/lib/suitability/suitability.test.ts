import { expect, test } from "vitest";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { type Finding, ruleGroups } from "#lib/suitability/schema.ts";
import { barsOf, judgeSuitability, officesNeeded, suitabilityMatrix } from "#lib/suitability/suitability.ts";
import { strictestOutcome } from "#lib/workings/outcome.ts";
import { aConsentFact, allScopes } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const secondId = "01920000-0000-7000-8000-000000000102";
const overall = (findings: readonly Finding[]) =>
  strictestOutcome(findings.map((finding) => finding.outcome));
const rulesWith = (findings: readonly Finding[], outcome: Finding["outcome"]) =>
  [
    ...new Set(findings.filter((finding) => finding.outcome === outcome).map((finding) => finding.rule)),
  ].sort();

test("a request that nothing is against is clear in every group", () => {
  const findings = judgeSuitability(aRequestFact(), [aSpecimenCase()]);
  expect(findings.filter((finding) => finding.outcome !== "clear")).toEqual([]);
  const row = suitabilityMatrix(findings).get(aSpecimenCase().specimen.id);
  expect(row).toEqual(Object.fromEntries(ruleGroups.map((group) => [group, "clear"])));
});

test("every specimen has a finding in every group, with its fact and its source", () => {
  const nothingKnown: SpecimenCase = {
    ...aSpecimenCase({
      specimen: { id: secondId, size: null, massKg: null, replacementCost: null, ageBand: null },
    }),
    provenance: { consents: [], donorsWithoutConsent: 0, permits: [], title: null },
    latestCheck: null,
    spentLxHours: null,
  };
  const findings = judgeSuitability(aRequestFact(), [aSpecimenCase(), nothingKnown]);
  for (const id of [aSpecimenCase().specimen.id, secondId])
    for (const group of ruleGroups)
      expect(
        findings.some((finding) => finding.specimenId === id && finding.group === group),
        `${id} ${group}`,
      ).toBe(true);
  for (const finding of findings) {
    expect(finding.fact).toMatch(/^[a-z-]+\.[a-z-]+$/);
    expect(finding.source.length).toBeGreaterThan(10);
    expect(finding.wayOut === "").toBe(finding.outcome === "clear");
  }
});

test("nothing known at all is never clear where it matters", () => {
  const unknownVenue = aVenueFact({
    temperatureLowC: null,
    temperatureHighC: null,
    temperatureSwing24hK: null,
    humidityLow: null,
    humidityHigh: null,
    humiditySwing24h: null,
    illuminanceLx: null,
    uvMicrowattPerLumen: null,
    hoursOpenPerDay: null,
    daysOpenPerWeek: null,
    supervisedRoom: null,
    restrictedView: null,
    spillProvision: null,
    reportedOn: null,
    passages: [],
  });
  const subject: SpecimenCase = {
    ...aSpecimenCase({ specimen: { size: null, massKg: null, replacementCost: null, ageBand: null } }),
    provenance: { consents: [], donorsWithoutConsent: 0, permits: [], title: null },
    latestCheck: null,
    spentLxHours: null,
  };
  const row = suitabilityMatrix(
    judgeSuitability(aRequestFact({ venue: unknownVenue, statedCover: null }), [subject]),
  ).get(subject.specimen.id);
  expect(row).toMatchObject({
    consent: "bar",
    title: "bar",
    condition: "attend",
    use: "attend",
    climate: "attend",
    light: "attend",
    "way in": "attend",
    cover: "attend",
  });
});

const lyon = aVenueFact({ countryCode: "FR" });
const example = aSpecimenCase({
  provenance: {
    ...aSpecimenCase().provenance,
    consents: [
      aConsentFact({
        answers: allScopes("not asked", {
          "professional teaching": "granted",
          research: "granted",
          "lending to others": "granted",
          export: "granted",
          "pictures, internal": "granted",
          "public display, free": "refused",
        }),
      }),
    ],
  },
});

test("the worked example: a paid exhibition in Lyon with press pictures is barred", () => {
  const request: RequestFacts = aRequestFact({
    purpose: "exhibition",
    audience: "general public",
    paidAdmission: true,
    pictures: ["press"],
    venue: lyon,
  });
  const findings = judgeSuitability(request, [example]);
  expect(rulesWith(findings, "bar")).toEqual(["FR1", "G1", "G6"]);
  expect(findings.find(({ rule }) => rule === "G7")).toMatchObject({ fact: "consent.pictures-not-known" });
});

test("the worked example: the medical faculty in Lyon is attend by the French rule, at the border and for its notice", () => {
  const findings = judgeSuitability(aRequestFact({ venue: lyon }), [example]);
  expect(overall(findings)).toBe("attend");
  expect(rulesWith(findings, "attend")).toEqual(["B4", "EU2", "FR2", "P2"]);
});

test("findings stand in the order of the specimens and of the groups", () => {
  const findings = judgeSuitability(aRequestFact(), [
    aSpecimenCase({ specimen: { id: secondId } }),
    aSpecimenCase(),
  ]);
  const ids = [...new Set(findings.map((finding) => finding.specimenId))];
  expect(ids).toEqual([secondId, aSpecimenCase().specimen.id]);
  const places = findings
    .filter(({ specimenId }) => specimenId === secondId)
    .map(({ group }) => ruleGroups.indexOf(group));
  expect(places).toEqual([...places].sort((a, b) => a - b));
});

test("a group that nobody judged is attend in the matrix", () => {
  const [first] = judgeSuitability(aRequestFact(), [aSpecimenCase()]);
  const row = suitabilityMatrix(first ? [first] : []).get(aSpecimenCase().specimen.id);
  expect(row).toMatchObject({ consent: "clear", cover: "attend" });
});

test.each([
  ["everything clear asks for the curator alone", {}, ["curator"]],
  [
    "a review that falls due asks for the donor officer",
    { reviewDueOn: "2027-05-01" },
    ["donor officer", "curator"],
  ],
  [
    "a wish nobody knows asks for the oversight body as well",
    { answers: allScopes("granted", { "professional teaching": "unknown" }) },
    ["donor officer", "oversight body", "curator"],
  ],
  [
    "a recognisable person asks for two persons",
    { identifiable: true },
    ["donor officer", "oversight body", "curator"],
  ],
] as const)("%s", (_what, said, offices) => {
  const subject = aSpecimenCase({
    provenance: { ...aSpecimenCase().provenance, consents: [aConsentFact(said)] },
  });
  expect(officesNeeded(judgeSuitability(aRequestFact(), [subject]))).toEqual(offices);
});

const poor = aSpecimenCase({
  latestCheck: {
    findings: [
      {
        markId: "01920000-0000-4000-8000-000000000201",
        term: "structure.crack",
        place: "upper third",
        severity: "moderate",
        activity: "stable",
        note: "",
      },
    ],
    verdict: { fitToShow: true, fitToHandle: true, fitToTravel: true },
    checkedOn: "2026-10-01",
  },
});

test("a poor condition asks for the conservator, before and after it was signed off", () => {
  const conservator = { decidedOn: "2026-11-20", conditions: "" };
  for (const request of [aRequestFact(), aRequestFact({ conservator })])
    expect(officesNeeded(judgeSuitability(request, [poor]))).toEqual(["conservator", "curator"]);
  expect(officesNeeded(judgeSuitability(aRequestFact({ conservator }), [aSpecimenCase()]))).toEqual([
    "curator",
  ]);
});

test("bars are the findings that bar", () => {
  const findings = judgeSuitability(aRequestFact({ teachingUse: "handling" }), [
    aSpecimenCase({ specimen: { use: "viewing only" } }),
  ]);
  expect(barsOf(findings).map((finding) => finding.fact)).toEqual(["use.viewing-only"]);
});
