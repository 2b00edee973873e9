import { expect, test } from "vitest";
import { judgeFrance } from "#lib/loans/rules/france.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const inFrance = { venue: aVenueFact({ countryCode: "FR" }) };

test("a paid exhibition of human specimens in France is a bar", () => {
  const request = aRequestFact({
    ...inFrance,
    purpose: "exhibition",
    audience: "general public",
    paidAdmission: true,
  });
  expect(judgeFrance(aSpecimenCase(), request)).toMatchObject([{ rule: "FR1", outcome: "bar" }]);
});

test("teaching without charge in France is attend: proof of origin and consent is asked for", () => {
  expect(judgeFrance(aSpecimenCase(), aRequestFact(inFrance))).toMatchObject([
    { rule: "FR2", outcome: "attend", wayOut: "way.evidence-bundle" },
  ]);
});

test("elsewhere, and for animals, the French rules say nothing", () => {
  expect(judgeFrance(aSpecimenCase(), aRequestFact())).toEqual([]);
  const animal = aSpecimenCase({ specimen: { human: false, scientificName: "Equus caballus" } });
  expect(judgeFrance(animal, aRequestFact(inFrance))).toEqual([]);
});
