/** G14: what takes from a specimen or copies its form, by the donors' word and the centre's permission. */
import { describe, expect, test } from "vitest";
import type { ConsentFacts, PermitInput } from "#lib/provenance/schema.ts";
import { allowedActivities } from "#lib/suitability/rules/activities.ts";
import type { RequestFacts, SpecimenCase } from "#lib/suitability/rules/case.ts";
import { judgeConsent } from "#lib/suitability/rules/general.ts";
import { plannedActivities } from "#lib/suitability/schema.ts";
import { judgeSuitability, officesNeeded } from "#lib/suitability/suitability.ts";
import { aConsentFact, allScopes } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase } from "#tests/support/loan-cases.ts";

const asked = (said: Partial<RequestFacts> = {}) => aRequestFact({ activities: ["sampling"], ...said });
const aPermission = (said: Partial<PermitInput> = {}): PermitInput => ({
  kind: "sampling",
  number: "W 4/27",
  authority: "The centre",
  territories: [],
  validFrom: "2027-01-01",
  validUntil: "2027-07-01",
  ...said,
});
const caseOf = (consents: readonly ConsentFacts[], permits: readonly PermitInput[], human = true) =>
  aSpecimenCase({
    specimen: human ? {} : { human, scientificName: "Equus caballus" },
    provenance: { ...aSpecimenCase().provenance, consents: [...consents], permits: [...permits] },
  });
const judged = (subject: SpecimenCase, request = asked()) =>
  judgeConsent(subject, request).filter(({ rule }) => rule === "G14");
const answered = (sampling: ConsentFacts["answers"]["sampling"]) =>
  aConsentFact({ answers: allScopes("granted", { sampling }) });

test("what is not asked for is not judged", () => {
  expect(judged(caseOf([answered("refused")], []), aRequestFact())).toEqual([]);
  expect(judged(caseOf([], [], false), aRequestFact())).toEqual([]);
});

describe("a human specimen", () => {
  test("is sampled with the donor's word and the centre's permission for all days of the loan", () => {
    expect(judged(caseOf([aConsentFact()], [aPermission()]))).toMatchObject([
      {
        group: "permits",
        outcome: "clear",
        fact: "permits.activity-permitted",
        parameters: { activity: "sampling", number: "W 4/27" },
        wayOut: "",
      },
    ]);
  });

  test.each([
    ["none", [], "permits.activity-not-permitted"],
    [
      "one for the other activity",
      [aPermission({ kind: "casting and scanning" })],
      "permits.activity-not-permitted",
    ],
    [
      "one that ends before the return-by",
      [aPermission({ validUntil: "2027-06-30" })],
      "permits.activity-permission-days",
    ],
    [
      "one that begins after the delivery",
      [aPermission({ validFrom: "2027-03-02" })],
      "permits.activity-permission-days",
    ],
    ["one that says no end", [aPermission({ validUntil: null })], "permits.activity-permission-days"],
    [
      "one for another country",
      [aPermission({ territories: ["SE"] })],
      "permits.activity-permission-country",
    ],
  ])("is not sampled with this permission: %s", (_what, permits, fact) => {
    expect(judged(caseOf([aConsentFact()], permits))).toMatchObject([
      { group: "permits", outcome: "attend", fact, wayOut: "way.activity-permission" },
    ]);
  });

  test("keeps to the permission that fits best", () => {
    const permits = [aPermission({ number: "old", validUntil: "2027-01-31" }), aPermission()];
    expect(judged(caseOf([aConsentFact()], permits))).toMatchObject([
      { outcome: "clear", parameters: { number: "W 4/27" } },
    ]);
  });

  test.each([
    ["refused", "consent.activity-refused"],
    ["not asked", "consent.activity-not-known"],
    ["unknown", "consent.activity-not-known"],
  ] as const)(
    "whose donor's word is %s is not sampled whatever the centre permits, and may go on loan",
    (answer, fact) => {
      const subject = caseOf([answered(answer)], [aPermission()]);
      for (const request of [asked(), asked({ purpose: "research" })])
        expect(judged(subject, request)).toMatchObject([
          { group: "consent", outcome: "attend", fact, wayOut: "way.without-this-activity" },
        ]);
    },
  );

  test("of several donors follows the strictest, and one without a record", () => {
    expect(judged(caseOf([aConsentFact(), answered("refused")], [aPermission()]))).toMatchObject([
      { fact: "consent.activity-refused" },
    ]);
    const one = caseOf([aConsentFact()], [aPermission()]);
    const composite = { ...one, provenance: { ...one.provenance, donorsWithoutConsent: 1 } };
    expect(judged(composite)).toMatchObject([{ fact: "consent.activity-not-known" }]);
    expect(judged(caseOf([], [aPermission()]))).toMatchObject([{ fact: "consent.activity-not-known" }]);
  });
});

describe("an animal specimen", () => {
  test("has no donor to ask, and wants the centre's permission", () => {
    expect(judged(caseOf([], [], false))).toMatchObject([
      { outcome: "attend", fact: "permits.activity-not-permitted" },
    ]);
    expect(judged(caseOf([], [aPermission()], false))).toMatchObject([{ outcome: "clear" }]);
  });

  test("asks no donor officer for want of a permission", () => {
    expect(officesNeeded(judgeSuitability(asked(), [caseOf([], [], false)]))).toEqual(["curator"]);
  });
});

test("each activity is judged by itself", () => {
  const request = asked({ activities: [...plannedActivities] });
  const subject = caseOf([answered("refused")], [aPermission({ kind: "casting and scanning" })]);
  expect(judged(subject, request).map(({ fact, parameters }) => [parameters.activity, fact])).toEqual([
    ["sampling", "consent.activity-refused"],
    ["casting and scanning", "permits.activity-permitted"],
    ["dissection before visitors", "consent.activity-refused"],
  ]);
  expect(allowedActivities(subject, request, request.activities)).toEqual(["casting and scanning"]);
});

test("what is allowed is what is clear, and nothing that was not planned", () => {
  const both = caseOf(
    [aConsentFact()],
    plannedActivities.map((kind) => aPermission({ kind })),
  );
  expect(allowedActivities(both, asked(), [...plannedActivities])).toEqual([...plannedActivities]);
  expect(allowedActivities(both, asked(), [])).toEqual([]);
  expect(allowedActivities(caseOf([aConsentFact()], []), asked(), ["sampling"])).toEqual([]);
  expect(allowedActivities(caseOf([], [aPermission()], false), asked(), ["sampling"])).toEqual(["sampling"]);
});
