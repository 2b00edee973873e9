import { expect, test } from "vitest";
import {
  activitiesAllowedForAll,
  consentRestrictions,
  picturesAllowedForAll,
} from "#lib/agreements/restrictions.ts";
import type { ConsentFacts, PermitInput } from "#lib/provenance/schema.ts";
import { aConsentFact, allScopes } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase } from "#tests/support/loan-cases.ts";

const withConsent = (...said: Partial<ConsentFacts>[]) =>
  aSpecimenCase({ provenance: { ...aSpecimenCase().provenance, consents: said.map(aConsentFact) } });
const restrictions = (...said: Partial<ConsentFacts>[]) =>
  consentRestrictions(withConsent(...said), aRequestFact());

test("a donor who allowed everything restricts nothing", () => {
  expect(restrictions({})).toEqual([]);
});

test.each<[string, Partial<ConsentFacts>, string, Record<string, unknown>]>([
  [
    "handling",
    { answers: allScopes("granted", { "handling by learners": "refused" }) },
    "restriction.not-handled",
    {},
  ],
  [
    "what nobody asked",
    { answers: allScopes("granted", { "public display, free": "not asked" }) },
    "restriction.not-public",
    {},
  ],
  ["paid showing", { nonCommercialOnly: true }, "restriction.not-for-admission", {}],
  [
    "audience",
    { audience: "enrolled students" },
    "restriction.audience-within",
    { audience: "enrolled students" },
  ],
  ["an audience that is not known", { audience: "unknown" }, "restriction.audience-not-known", {}],
  [
    "allowed countries",
    { territoriesAllowed: ["FR", "NO"] },
    "restriction.only-in",
    { countries: ["FR", "NO"] },
  ],
  ["refused countries", { territoriesRefused: ["DE"] }, "restriction.not-in", { countries: ["DE"] }],
  [
    "pictures",
    { answers: allScopes("granted", { "mass media": "refused" }) },
    "restriction.no-pictures-for",
    { pictures: ["press"] },
  ],
  ["a face", { identifiable: true }, "restriction.recognisable", {}],
  ["sampling", { answers: allScopes("granted", { sampling: "refused" }) }, "restriction.not-sampled", {}],
  [
    "casting and scanning",
    { answers: allScopes("granted", { "casting and scanning": "unknown" }) },
    "restriction.not-cast-or-scanned",
    {},
  ],
  ["an end", { validUntil: "2030-01-01" }, "restriction.consent-ends", { endsOn: "2030-01-01" }],
  [
    "a disposition",
    { disposition: "burial", dispositionDueOn: "2031-05-01" },
    "restriction.owed-back",
    { disposition: "burial", dueOn: "2031-05-01" },
  ],
])("%s alone is one code with its parameters", (_what, said, code, parameters) => {
  expect(restrictions(said)).toEqual([{ code, parameters }]);
});

test("a composite follows the strictest of its donors", () => {
  expect(
    restrictions(
      { territoriesAllowed: ["NO", "SE"], audience: "unknown" },
      { territoriesAllowed: ["NO", "FR"], audience: "professionals only" },
    ),
  ).toEqual([
    { code: "restriction.audience-not-known", parameters: {} },
    { code: "restriction.audience-within", parameters: { audience: "professionals only" } },
    { code: "restriction.only-in", parameters: { countries: ["NO"] } },
  ]);
});

test("donors whose countries have none in common allow no country", () => {
  expect(restrictions({ territoriesAllowed: ["NO"] }, { territoriesAllowed: ["FR"] })).toEqual([
    { code: "restriction.no-country-in-common", parameters: {} },
  ]);
});

test("no donor is named", () => {
  expect(
    JSON.stringify(
      restrictions({ donorCode: "D-7K2QX", identifiable: true, audience: "professionals only" }),
    ),
  ).not.toContain("7K2QX");
});

test("an animal has no donor's restrictions", () => {
  const animal = aSpecimenCase({ specimen: { human: false, scientificName: "Equus caballus" } });
  expect(consentRestrictions(animal, aRequestFact())).toEqual([]);
});

test("pictures are for all specimens of the loan or for none", () => {
  const request = aRequestFact({ pictures: ["internal", "press"] });
  const open = withConsent({});
  const noPress = withConsent({ answers: allScopes("granted", { "mass media": "refused" }) });
  expect(picturesAllowedForAll([open], request)).toEqual(["internal", "press"]);
  expect(picturesAllowedForAll([open, noPress], request)).toEqual(["internal"]);
});

test("sampling, casting and scanning are for all specimens of the loan or for none", () => {
  const request = aRequestFact({ activities: ["sampling", "casting and scanning"] });
  const permits = request.activities.map(
    (kind): PermitInput => ({
      kind,
      number: "P 1",
      authority: "The lender",
      territories: [],
      validFrom: null,
      validUntil: "2028-01-01",
    }),
  );
  const permitted = (said: Partial<ConsentFacts>) =>
    aSpecimenCase({
      provenance: { ...aSpecimenCase().provenance, permits, consents: [aConsentFact(said)] },
    });
  const open = permitted({});
  const noSampling = permitted({ answers: allScopes("granted", { sampling: "refused" }) });
  expect(activitiesAllowedForAll([open], request)).toEqual(["sampling", "casting and scanning"]);
  expect(activitiesAllowedForAll([open, noSampling], request)).toEqual(["casting and scanning"]);
  expect(activitiesAllowedForAll([open, withConsent({})], request)).toEqual([]);
  expect(activitiesAllowedForAll([open], aRequestFact())).toEqual([]);
});
