/** What keeps a specimen out of a proposal before anybody has asked for it, and what is only wanted still. */
import { describe, expect, test } from "vitest";
import { judgeBeforeAsking, standingBeforeAsking } from "#lib/suitability/before-asking.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { aConsentFact, allScopes } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const standing = (subject: SpecimenCase, request: Partial<RequestFacts> = {}) =>
  standingBeforeAsking(judgeBeforeAsking(aRequestFact(request), subject));
const factsOf = (findings: readonly { fact: string }[]) => findings.map(({ fact }) => fact);
const of = (said: Parameters<typeof aConsentFact>[0]) => {
  const { provenance } = aSpecimenCase();
  return aSpecimenCase({ provenance: { ...provenance, consents: [aConsentFact(said)] } });
};

test("what nothing is against is not kept back", () => {
  expect(standing(aSpecimenCase())).toEqual({ keptBackBy: [], papersWanted: [] });
});

describe("a specimen is kept back", () => {
  test("where a donor did not allow the purpose, and not where the purpose is another", () => {
    const subject = of({ answers: allScopes("granted", { research: "refused" }) });
    expect(factsOf(standing(subject, { purpose: "research" }).keptBackBy)).toEqual(["consent.refused"]);
    expect(standing(subject).keptBackBy).toEqual([]);
  });

  test("where a donor set a narrower audience", () => {
    const subject = of({ audience: "professionals only" });
    expect(factsOf(standing(subject).keptBackBy)).toContain("consent.audience-outside");
    expect(standing(subject, { audience: "professionals" }).keptBackBy).toEqual([]);
  });

  test("in a country that a donor refused, and not at home", () => {
    const subject = of({ territoriesRefused: ["DE"] });
    const abroad = { venue: aVenueFact({ countryCode: "DE" }) };
    expect(factsOf(standing(subject, abroad).keptBackBy)).toEqual(["consent.territory-outside"]);
    expect(standing(subject).keptBackBy).toEqual([]);
  });

  test("where consent to lending is not known: what is not known is never clear", () => {
    const subject = of({ answers: allScopes("granted", { "lending to others": "unknown" }) });
    expect(factsOf(standing(subject).keptBackBy)).toEqual(["consent.not-known"]);
  });

  test("where it is not ours and its owner has given no leave", () => {
    const { provenance } = aSpecimenCase();
    const subject = aSpecimenCase({ provenance: { ...provenance, title: null } });
    expect(factsOf(standing(subject).keptBackBy)).toEqual(["title.no-record"]);
  });

  test("where its last check says that it is not fit to travel", () => {
    const subject = aSpecimenCase({
      latestCheck: {
        findings: [],
        verdict: { fitToShow: true, fitToHandle: true, fitToTravel: false },
        checkedOn: "2026-10-01",
      },
    });
    expect(standing(subject).keptBackBy.map(({ group }) => group)).toEqual(["condition"]);
  });
});

test("a paper that may still be had keeps nothing back, and is named", () => {
  const venue = aVenueFact({ countryCode: "IE" });
  const { keptBackBy, papersWanted } = standing(aSpecimenCase(), { venue });
  expect(keptBackBy).toEqual([]);
  expect(factsOf(papersWanted)).toEqual(["law.ireland-no-authorisation"]);
});
