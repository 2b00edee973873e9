/** What holds of the general rules whatever the donors said and the borrower asks. */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { ConsentFacts } from "#lib/provenance/schema.ts";
import { strictestConsent } from "#lib/provenance/strictest.ts";
import { allowedPictures } from "#lib/suitability/rules/activities.ts";
import { judgeConsent, scopesAsked } from "#lib/suitability/rules/general.ts";
import type { Finding } from "#lib/suitability/schema.ts";
import {
  audiences,
  displayStyles,
  plannedActivities,
  plannedPictures,
  purposes,
  teachingUses,
} from "#lib/suitability/schema.ts";
import { strictestOutcome } from "#lib/workings/outcome.ts";
import { aConsentFact, allScopes, anyConsent } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const caseWith = (...consents: ConsentFacts[]) =>
  aSpecimenCase({ provenance: { consents, donorsWithoutConsent: 0, permits: [], title: null } });
const answered = (but: Parameters<typeof allScopes>[1]) => ({ answers: allScopes("granted", but) });

const anyRequest = fc
  .record({
    purpose: fc.constantFrom(...purposes),
    teachingUse: fc.constantFrom(...teachingUses),
    audience: fc.constantFrom(...audiences),
    paidAdmission: fc.boolean(),
    displayStyle: fc.constantFrom(...displayStyles),
    pictures: fc.uniqueArray(fc.constantFrom(...plannedPictures)),
    activities: fc.uniqueArray(fc.constantFrom(...plannedActivities)),
    through: fc.uniqueArray(fc.constantFrom("DE", "PL", "CZ")),
    country: fc.constantFrom("NO", "DE", "FR"),
  })
  .map(({ country, ...said }) => aRequestFact({ ...said, venue: aVenueFact({ countryCode: country }) }));

const graveness = { clear: 0, attend: 1, bar: 2 };
const worst = (findings: readonly Finding[]) =>
  graveness[strictestOutcome(findings.map(({ outcome }) => outcome))];

test("another donor never makes anything milder", () => {
  fc.assert(
    fc.property(anyConsent, anyConsent, anyRequest, (first, second, request) => {
      const alone = judgeConsent(caseWith(first), request);
      const together = judgeConsent(caseWith(first, second), request);
      expect(worst(together)).toBeGreaterThanOrEqual(worst(alone));
    }),
  );
});

test("no finding names a donor", () => {
  fc.assert(
    fc.property(anyConsent, anyRequest, (consent, request) => {
      const text = JSON.stringify(judgeConsent(caseWith(consent), request));
      expect(text).not.toContain(consent.donorCode);
      expect(text).not.toContain(consent.consentId);
    }),
  );
});

test("every request asks for at least one scope", () => {
  fc.assert(fc.property(anyRequest, (request) => scopesAsked(request).length > 0));
});

test("a country is judged on the way only where one is named", () => {
  fc.assert(
    fc.property(anyConsent, anyRequest, (consent, request) => {
      const judged = judgeConsent(caseWith(consent), request).filter(({ fact }) =>
        fact.startsWith("consent.transit-"),
      );
      expect(judged.map(({ parameters }) => parameters.country)).toEqual(request.through);
    }),
  );
});

test("pictures are allowed only where every donor granted them", () => {
  const first = aConsentFact();
  const second = aConsentFact(answered({ "mass media": "not asked" }));
  const { answers } = strictestConsent({ consents: [first, second], donorsWithoutConsent: 0 }, "2026-11-25");
  expect(allowedPictures(answers, ["internal", "press"])).toEqual(["internal"]);
});
