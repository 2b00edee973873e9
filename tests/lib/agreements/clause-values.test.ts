import { describe, expect, test } from "vitest";
import { papersOf } from "#lib/agreements/clause-values.ts";
import { agreementTerms } from "#lib/agreements/terms.ts";
import { practiceOf } from "#lib/people/practice.ts";
import { aTermsSubject as subject, termsFacts } from "#tests/lib/agreements/terms-facts.ts";
import { aConsentFact } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const termsOf = (said: Parameters<typeof termsFacts>[0] = {}) => agreementTerms(termsFacts(said));
const parametersOf = (said: Parameters<typeof termsFacts>[0] = {}) =>
  new Map(termsOf(said).clauses.flatMap(({ parameters }) => parameters.map((one) => [one.name, one])));
const setIn = (name: string, said: Parameters<typeof termsFacts>[0] = {}) =>
  parametersOf(said).get(name)?.value;
const consented = (said: Parameters<typeof aConsentFact>[0]) =>
  subject({ provenance: { ...aSpecimenCase().provenance, consents: [aConsentFact(said)] } });

test("what is set stands beside its standard, and a fact has none", () => {
  const parameters = parametersOf({ parameters: { recallDays: 45 } });
  expect(parameters.get("recallDays")).toEqual({ name: "recallDays", value: 45, standard: 30 });
  expect(parameters.get("startsOn")).toEqual({ name: "startsOn", value: "2027-03-01" });
});

test("a clause with something set is not standard, and all others are", () => {
  const { clauses } = termsOf({ parameters: { recallDays: 45 } });
  expect(clauses.filter(({ isStandard }) => !isStandard).map(({ id }) => id)).toEqual(["recall"]);
});

test("standards follow the centre, the request and what is lent", () => {
  expect(setIn("lenderEmergency")).toBe("+47 1");
  const inOffice = { lenderEmergency: { phone: "+47 2", hours: "office hours" as const } };
  expect(setIn("lenderEmergency", inOffice)).toBe("+47 2 (office hours)");
  expect(setIn("lenderEmergency", { ...inOffice, languages: ["de", "fr"] })).toBe(
    "+47 2 (zu Bürozeiten / aux heures de bureau)",
  );
  expect(setIn("responsiblePerson")).toBe("A. Lecturer");
  expect(setIn("restHours")).toBe(24);
  expect(setIn("restHours", { subjects: [subject({ specimen: { preparation: "fluid-preserved" } })] })).toBe(
    48,
  );
  expect(setIn("priceClass", { request: aRequestFact({ paidAdmission: true }) })).toBe("recovers costs");
  const jarOf = (freeFluidMl: number) =>
    subject({ specimen: { legal: { ...aSpecimenCase().specimen.legal, freeFluidMl } } });
  const known = aRequestFact({ practice: practiceOf({ courierLoans: 0 }) });
  expect(setIn("courier", { request: known, subjects: [jarOf(5_000)] })).toBe("by video");
  expect(setIn("courier", { request: known, subjects: [jarOf(5_001)] })).toBe("travels");
  expect(setIn("transshipment")).toBe("none");
  const practice = practiceOf({ recallNoticeDays: 45, extensionNoticeDays: 21 });
  const house = { request: aRequestFact({ practice }) };
  expect([setIn("recallDays"), setIn("extensionRequestDays")]).toEqual([30, 30]);
  expect([setIn("recallDays", house), setIn("extensionRequestDays", house)]).toEqual([45, 21]);
});

describe("of consent the strictest speaks", () => {
  test("countries are those that every list names", () => {
    const subjects = [
      consented({ territoriesAllowed: ["NO", "DE"] }),
      consented({ territoriesAllowed: ["NO", "FR"] }),
      consented({}),
    ];
    expect(setIn("consentCountries", { subjects })).toEqual(["NO"]);
    expect(setIn("consentCountries")).toBeNull();
  });

  test("the last day is the first of them", () => {
    const subjects = [consented({ validUntil: "2031-01-01" }), consented({ validUntil: "2030-01-01" })];
    expect(setIn("consentEndsOn", { subjects })).toBe("2030-01-01");
  });
});

test("jars are named once for each fluid", () => {
  const jar = (fluidPercent: number) =>
    subject({ specimen: { preparation: "fluid-preserved", fluidName: "ethanol", fluidPercent } });
  expect(setIn("fluids", { subjects: [jar(70), jar(70), jar(60)] })).toEqual([
    { name: "ethanol", percent: 70 },
    { name: "ethanol", percent: 60 },
  ]);
});

test("the accepted quotation is the fee, and its currency that of the costs", () => {
  const costing = {
    kind: "quotation",
    version: 2,
    sha256: "b".repeat(64),
    total: { minor: 480_000, currency: "NOK" },
    drawnUpOn: "2026-12-01",
  };
  expect(setIn("fee", { costing })).toEqual({ minor: 480_000, currency: "NOK" });
  expect(setIn("currency", { costing })).toBe("NOK");
  expect([setIn("fee"), setIn("currency")]).toEqual([null, "EUR"]);
});

test("licences of the venue are named without what nobody needs", () => {
  const licence = {
    kind: "anatomy",
    authority: "Town",
    number: "7",
    validFrom: "2020-01-01",
    validUntil: "2028-01-01",
  } as const;
  const request = aRequestFact({ venue: aVenueFact({ licences: [licence] }) });
  const named = { kind: "anatomy", authority: "Town", number: "7", validUntil: "2028-01-01" };
  expect(setIn("licencesHeld", { request })).toEqual([named]);
  expect(papersOf([licence])).toEqual([named]);
});
