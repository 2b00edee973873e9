import { expect, test } from "vitest";
import { consentRestrictions, countryName, picturesAllowedForAll } from "#lib/loans/restrictions.ts";
import type { ConsentFacts } from "#lib/provenance/schema.ts";
import { aConsentFact, allScopes } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase } from "#tests/support/loan-cases.ts";

const withConsent = (...said: Partial<ConsentFacts>[]) =>
  aSpecimenCase({ provenance: { ...aSpecimenCase().provenance, consents: said.map(aConsentFact) } });
const words = (...said: Partial<ConsentFacts>[]) => consentRestrictions(withConsent(...said), aRequestFact());

test("a donor who allowed everything restricts nothing", () => {
  expect(words({})).toEqual([]);
});

test.each([
  [
    "handling",
    { answers: allScopes("granted", { "handling by learners": "refused" }) },
    "Not handled by learners.",
  ],
  [
    "what nobody asked",
    { answers: allScopes("granted", { "public display, free": "not asked" }) },
    "Not shown to the general public.",
  ],
  ["paid showing", { nonCommercialOnly: true }, "Not shown where admission is charged."],
  ["audience", { audience: "enrolled students" }, "Shown to enrolled students and professionals only."],
  ["allowed countries", { territoriesAllowed: ["NO", "FR"] }, "Only in: France, Norway."],
  ["refused countries", { territoriesRefused: ["DE"] }, "Not in: Germany."],
  [
    "pictures",
    { answers: allScopes("granted", { "mass media": "refused" }) },
    "No pictures for these uses: press.",
  ],
  ["an end", { validUntil: "2030-01-01" }, "The consent holds until 2030-01-01."],
  [
    "a disposition",
    { disposition: "burial", dispositionDueOn: "2031-05-01" },
    "Owed back (burial) by 2031-05-01.",
  ],
] as const)("%s is said in words", (_what, said, sentence) => {
  expect(words(said as Partial<ConsentFacts>)).toContain(sentence);
});

test("a composite follows the strictest of its donors", () => {
  const composite = words(
    { territoriesAllowed: ["NO", "SE"] },
    { territoriesAllowed: ["NO", "FR"], audience: "professionals only" },
  );
  expect(composite).toContain("Only in: Norway.");
  expect(composite).toContain("Shown to professionals only.");
});

test("no donor is named", () => {
  expect(
    JSON.stringify(words({ donorCode: "D-7K2QX", identifiable: true, audience: "professionals only" })),
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

test("a country has its English name", () => {
  expect(countryName("FR")).toBe("France");
});
