import { describe, expect, test } from "vitest";
import { facilityFigures } from "#lib/agreements/annex-data.ts";
import { agreementTerms } from "#lib/agreements/terms.ts";
import { canonicalText } from "#lib/platform/hash.ts";
import { aTermsSubject as subject, termsFacts } from "#tests/lib/agreements/terms-facts.ts";
import { aConsentFact } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const limits = agreementTerms(termsFacts()).groupLimits.limits;
const annexesOf = (said: Parameters<typeof termsFacts>[0] = {}) => agreementTerms(termsFacts(said)).annexes;

describe("the figures of a venue beside the limits of the group", () => {
  const isBeyond = (venue: Parameters<typeof aVenueFact>[0], fact: string) =>
    facilityFigures(aVenueFact(venue), limits).find((figure) => figure.fact === fact)?.isBeyond;

  test.each([
    ["temperatureHighC", { temperatureHighC: 25 }, false],
    ["temperatureHighC", { temperatureHighC: 25.1 }, true],
    ["temperatureLowC", { temperatureLowC: 15 }, false],
    ["temperatureLowC", { temperatureLowC: 14.9 }, true],
    ["uvMicrowattPerLumen", { uvMicrowattPerLumen: 75 }, false],
    ["uvMicrowattPerLumen", { uvMicrowattPerLumen: 76 }, true],
    ["illuminanceLx", { illuminanceLx: Number.NaN }, true],
    ["illuminanceLx", { illuminanceLx: null }, null],
  ] as const)("%s with %j is beyond: %s", (fact, venue, beyond) => {
    expect(isBeyond(venue, fact)).toBe(beyond);
  });

  test("where nothing is in common there is nothing to be beyond", () => {
    const none = { ...limits, temperatureC: null };
    const [low] = facilityFigures(aVenueFact(), none);
    expect(low).toEqual({ fact: "temperatureLowC", stated: 19, limit: null, isBeyond: null });
  });
});

describe("which annexes apply", () => {
  test("all but those that have nothing to hold", () => {
    expect(annexesOf().applies.join("")).toBe("ABCDEFHIJKL");
    const certificate = {
      insurer: "Mutual",
      policyNumber: "1",
      amount: { minor: 1, currency: "EUR" },
      startsAt: "2027-01-01T00:00:00Z",
      endsAt: "2028-01-01T00:00:00Z",
      coversTransit: true,
      territories: [],
    };
    expect(annexesOf({ certificates: [certificate] }).applies).toContain("G");
    const animal = subject({
      specimen: { human: false },
      provenance: { ...aSpecimenCase().provenance, consents: [] },
    });
    expect(annexesOf({ subjects: [animal] }).applies).not.toContain("H");
  });
});

describe("the index of evidence", () => {
  const provenance = aSpecimenCase().provenance;

  test("says for each human specimen whether consent is on record for every donor", () => {
    const complete = (said: Partial<typeof provenance>) =>
      annexesOf({ subjects: [subject({ provenance: { ...provenance, ...said } })] }).evidence[0]
        ?.isConsentComplete;
    expect(complete({})).toBe(true);
    expect(complete({ donorsWithoutConsent: 1 })).toBe(false);
    expect(complete({ consents: [] })).toBe(false);
  });

  test("names no donor and no consent", () => {
    const consent = aConsentFact({ donorCode: "D-7QX4M" });
    const text = canonicalText(
      annexesOf({ subjects: [subject({ provenance: { ...provenance, consents: [consent] } })] }),
    );
    expect(text).not.toContain("D-7QX4M");
    expect(text).not.toContain(consent.consentId);
  });
});

test("the texts of notices stand in each language of the agreement", () => {
  const { notices } = annexesOf({ languages: ["de", "en"], request: aRequestFact() });
  expect(Object.keys(notices).sort()).toEqual(["de", "en"]);
  expect(notices.de?.human).toContain("Präparate");
});
