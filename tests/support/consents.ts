/** Consents for tests of rules and reads: everything granted and known, until a test says otherwise. */
import fc from "fast-check";
import {
  type Answer,
  answers,
  audienceLimits,
  bases,
  type ConsentFacts,
  type ConsentInput,
  dispositions,
  type Scope,
  scopes,
} from "#lib/provenance/schema.ts";

export function allScopes(answer: Answer, but: Partial<Record<Scope, Answer>> = {}): Record<Scope, Answer> {
  return { ...(Object.fromEntries(scopes.map((scope) => [scope, answer])) as Record<Scope, Answer>), ...but };
}

export function aConsentFact(said: Partial<ConsentFacts> = {}): ConsentFacts {
  return {
    consentId: "01920000-0000-7000-8000-000000000001",
    donorCode: "D-AAAAA",
    basis: "donor in life",
    signedOn: "2012-05-02",
    witnessCount: 2,
    answers: allScopes("granted"),
    audience: "anyone",
    territoriesAllowed: [],
    territoriesRefused: [],
    validUntil: null,
    reviewDueOn: null,
    nonCommercialOnly: false,
    identifiable: false,
    withdrawalReceivedOn: null,
    withdrawalEffectiveOn: null,
    disposition: "retain indefinitely",
    dispositionDueOn: null,
    verifiedOn: "2026-01-10",
    ...said,
  };
}

export function aConsentForm(donorCode: string, said: Partial<ConsentInput> = {}): ConsentInput {
  return {
    donorCode,
    basis: "donor in life",
    formVersion: "2019/2",
    signedOn: "2019-05-02",
    witnessCount: 2,
    evidencePlace: "Donor archive, cabinet 3",
    answers: allScopes("granted"),
    audience: "anyone",
    territoriesAllowed: [],
    territoriesRefused: [],
    validUntil: null,
    reviewDueOn: null,
    nonCommercialOnly: false,
    identifiable: false,
    disposition: "retain indefinitely",
    dispositionDueOn: null,
    verifiedBy: "Donor office",
    verifiedOn: "2026-01-10",
    ...said,
  };
}

/** Any day of twenty years. */
export const anyDay = fc
  .integer({ min: 0, max: 20 * 365 })
  .map((days) => new Date(Date.UTC(2020, 0, 1 + days)).toISOString().slice(0, 10));

const anyCountries = fc.uniqueArray(fc.constantFrom("AT", "CZ", "DE", "IE", "NO", "PL"), { maxLength: 4 });

/** Any consent that a form could say. */
export const anyConsent: fc.Arbitrary<ConsentFacts> = fc.record({
  consentId: fc.uuid({ version: 7 }),
  donorCode: fc
    .string({ unit: fc.constantFrom(..."23456789ABC"), minLength: 5, maxLength: 5 })
    .map((text) => `D-${text}`),
  basis: fc.constantFrom(...bases),
  signedOn: fc.option(anyDay),
  witnessCount: fc.option(fc.integer({ min: 0, max: 3 })),
  answers: fc
    .array(fc.constantFrom(...answers), { minLength: scopes.length, maxLength: scopes.length })
    .map(
      (given) => Object.fromEntries(scopes.map((scope, at) => [scope, given[at]])) as Record<Scope, Answer>,
    ),
  audience: fc.constantFrom(...audienceLimits),
  territoriesAllowed: anyCountries,
  territoriesRefused: anyCountries,
  validUntil: fc.option(anyDay),
  reviewDueOn: fc.option(anyDay),
  nonCommercialOnly: fc.boolean(),
  identifiable: fc.boolean(),
  withdrawalReceivedOn: fc.option(anyDay),
  withdrawalEffectiveOn: fc.constant(null),
  disposition: fc.constantFrom(...dispositions),
  dispositionDueOn: fc.option(anyDay),
  verifiedOn: fc.option(anyDay),
});
