import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Answer, answers, scopes } from "#lib/provenance/schema.ts";
import { answerOn, commonTerritories, stricterAnswer, strictestConsent } from "#lib/provenance/strictest.ts";
import { aConsentFact, allScopes, anyConsent, anyDay } from "#tests/support/consents.ts";

const day = "2027-03-01";
const first = (said: Parameters<typeof aConsentFact>[0] = {}) =>
  aConsentFact({ donorCode: "D-AAAAA", ...said });
const second = (said: Parameters<typeof aConsentFact>[0] = {}) =>
  aConsentFact({ donorCode: "D-BBBBB", ...said });
const of = (...consents: ReturnType<typeof aConsentFact>[]) =>
  strictestConsent({ consents, donorsWithoutConsent: 0 }, day);

/** Whether a country lies within the territories of a result. */
const isWithin = (
  {
    territoriesAllowed,
    territoriesRefused,
  }: Pick<ReturnType<typeof of>, "territoriesAllowed" | "territoriesRefused">,
  country: string,
) =>
  (territoriesAllowed === null || territoriesAllowed.includes(country)) &&
  !territoriesRefused.includes(country);

describe("the strictest of several answers", () => {
  const rows: [Answer, Answer, Answer][] = [
    ["granted", "granted", "granted"],
    ["granted", "unknown", "unknown"],
    ["granted", "not asked", "not asked"],
    ["granted", "refused", "refused"],
    ["unknown", "not asked", "not asked"],
    ["unknown", "refused", "refused"],
    ["not asked", "refused", "refused"],
  ];
  test.each(rows)("of %s and %s is %s, whoever said which", (one, other, strictest) => {
    expect(stricterAnswer(one, other)).toBe(strictest);
    expect(stricterAnswer(other, one)).toBe(strictest);
  });
});

describe("a composite specimen", () => {
  test("follows in each scope the donor who allowed least, and names that donor", () => {
    const { answers: found } = of(
      first({ answers: allScopes("granted", { export: "refused" }) }),
      second({ answers: allScopes("granted", { "mass media": "not asked" }) }),
    );
    expect(found.export).toEqual({ answer: "refused", donorCode: "D-AAAAA" });
    expect(found["mass media"]).toEqual({ answer: "not asked", donorCode: "D-BBBBB" });
    expect(found.research.answer).toBe("granted");
  });

  test("is granted nothing once one donor has withdrawn", () => {
    const found = of(first(), second({ withdrawalReceivedOn: "2027-02-01" }));
    for (const scope of scopes)
      expect(found.answers[scope]).toEqual({ answer: "refused", donorCode: "D-BBBBB" });
    expect(found.notInForce).toEqual([{ donorCode: "D-BBBBB", state: "withdrawn" }]);
  });

  test("is granted nothing once one consent has expired", () => {
    const found = of(first({ validUntil: "2027-02-28" }), second());
    expect(found.answers.research).toEqual({ answer: "refused", donorCode: "D-AAAAA" });
    expect(found.notInForce).toEqual([{ donorCode: "D-AAAAA", state: "expired" }]);
  });

  test("with a donor without a form is unknown where nobody refused", () => {
    const found = strictestConsent(
      {
        consents: [first({ answers: allScopes("granted", { export: "refused" }) })],
        donorsWithoutConsent: 1,
      },
      day,
    );
    expect(found.answers.research).toEqual({ answer: "unknown", donorCode: null });
    expect(found.answers.export).toEqual({ answer: "refused", donorCode: "D-AAAAA" });
    expect(found.audience.unknown).toBe(true);
  });

  test("without a known donor is unknown throughout", () => {
    const found = of();
    for (const scope of scopes) expect(found.answers[scope]).toEqual({ answer: "unknown", donorCode: null });
    expect(found.audience).toEqual({ limit: "unknown", donorCode: null, unknown: true });
  });

  test("takes the narrowest audience and says when one is not known", () => {
    expect(of(first({ audience: "anyone" }), second({ audience: "professionals only" })).audience).toEqual({
      limit: "professionals only",
      donorCode: "D-BBBBB",
      unknown: false,
    });
    expect(of(first({ audience: "enrolled students" }), second({ audience: "unknown" })).audience).toEqual({
      limit: "enrolled students",
      donorCode: "D-AAAAA",
      unknown: true,
    });
  });

  test("takes the earliest of the days and whose they are", () => {
    const found = of(
      first({
        validUntil: "2031-12-31",
        reviewDueOn: "2028-01-01",
        dispositionDueOn: "2029-01-01",
        disposition: "burial",
      }),
      second({
        validUntil: "2030-06-30",
        reviewDueOn: null,
        dispositionDueOn: "2030-01-01",
        disposition: "cremation",
      }),
    );
    expect(found.validUntil).toEqual({ value: "2030-06-30", donorCode: "D-BBBBB" });
    expect(found.reviewDueOn).toEqual({ value: "2028-01-01", donorCode: "D-AAAAA" });
    expect(found.dispositionDue).toEqual({
      value: { disposition: "burial", dueOn: "2029-01-01" },
      donorCode: "D-AAAAA",
    });
  });

  test("may not be used for gain, or shown as somebody recognisable, once one donor limits it", () => {
    expect(of(first(), second({ nonCommercialOnly: true })).nonCommercialOnly?.donorCode).toBe("D-BBBBB");
    expect(of(first({ identifiable: true }), second()).identifiable?.donorCode).toBe("D-AAAAA");
    expect(of(first(), second())).toMatchObject({ nonCommercialOnly: null, identifiable: null });
  });
});

describe("territories", () => {
  test("no stated list is no limit", () => {
    expect(commonTerritories([[], []])).toBeNull();
  });
  test("two lists leave what stands on both", () => {
    expect(commonTerritories([["DE", "AT", "NO"], [], ["NO", "IE", "AT"]])).toEqual(["AT", "NO"]);
  });
  test("two lists without a common country leave nowhere", () => {
    expect(commonTerritories([["DE"], ["NO"]])).toEqual([]);
  });
});

describe("whatever the donors said", () => {
  const severity = (answer: Answer) => ["granted", "unknown", "not asked", "refused"].indexOf(answer);
  const several = fc.array(anyConsent, { minLength: 1, maxLength: 5 });

  test("the result is as strict as each of them, and somebody said it", () => {
    fc.assert(
      fc.property(several, anyDay, (consents, on) => {
        const found = strictestConsent({ consents, donorsWithoutConsent: 0 }, on);
        for (const scope of scopes) {
          const said = consents.map((consent) => answerOn(consent, scope, on));
          const { answer, donorCode } = found.answers[scope];
          expect(severity(answer)).toBe(Math.max(...said.map(severity)));
          expect(
            consents.some(
              (consent) => consent.donorCode === donorCode && answerOn(consent, scope, on) === answer,
            ),
          ).toBe(true);
        }
      }),
    );
  });

  test("one more donor, known or not, never makes an answer milder", () => {
    fc.assert(
      fc.property(several, anyConsent, fc.nat(2), anyDay, (consents, another, without, on) => {
        const before = strictestConsent({ consents, donorsWithoutConsent: 0 }, on);
        const after = strictestConsent(
          { consents: [...consents, another], donorsWithoutConsent: without },
          on,
        );
        for (const scope of scopes)
          expect(severity(after.answers[scope].answer)).toBeGreaterThanOrEqual(
            severity(before.answers[scope].answer),
          );
        for (const country of ["AT", "CZ", "DE", "IE", "NO", "PL"])
          if (!isWithin(before, country)) expect(isWithin(after, country)).toBe(false);
      }),
    );
  });

  test("the order of the donors changes no answer", () => {
    fc.assert(
      fc.property(several, anyDay, (consents, on) => {
        const read = (list: typeof consents) => {
          const found = strictestConsent({ consents: list, donorsWithoutConsent: 0 }, on);
          return {
            answers: scopes.map((scope) => found.answers[scope].answer),
            audience: [found.audience.limit, found.audience.unknown],
            allowed: found.territoriesAllowed,
            refused: found.territoriesRefused,
            validUntil: found.validUntil?.value,
          };
        };
        expect(read([...consents].reverse())).toEqual(read(consents));
      }),
    );
  });

  test("as days pass no answer becomes milder", () => {
    fc.assert(
      fc.property(several, anyDay, anyDay, (consents, one, other) => {
        const [earlier, later] = [one, other].sort() as [string, string];
        for (const scope of scopes) {
          const answerAt = (on: string) =>
            severity(strictestConsent({ consents, donorsWithoutConsent: 0 }, on).answers[scope].answer);
          expect(answerAt(later)).toBeGreaterThanOrEqual(answerAt(earlier));
        }
      }),
    );
  });

  test("a country is allowed when it is on what is left of the lists and not refused", () => {
    fc.assert(
      fc.property(several, (consents) => {
        const found = strictestConsent({ consents, donorsWithoutConsent: 0 }, day);
        for (const country of ["AT", "CZ", "DE", "IE", "NO", "PL"]) {
          const everyone = consents.every(
            ({ territoriesAllowed, territoriesRefused }) =>
              !territoriesRefused.includes(country) &&
              (territoriesAllowed.length === 0 || territoriesAllowed.includes(country)),
          );
          expect(isWithin(found, country)).toBe(everyone);
        }
      }),
    );
  });

  test("the answers come from the closed set", () => {
    fc.assert(
      fc.property(fc.array(anyConsent, { maxLength: 3 }), anyDay, (consents, on) => {
        const found = strictestConsent({ consents, donorsWithoutConsent: 0 }, on);
        for (const scope of scopes) expect(answers).toContain(found.answers[scope].answer);
      }),
    );
  });
});
