import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  AgreementTerms,
  clausesAgreed,
  findTerms,
  readTerms,
  recallNoticeAgreed,
  rulingLanguage,
  saysTheSame,
  scheduledNumbers,
} from "#lib/agreements/frozen-terms.ts";
import { agreementTerms, type TermsFacts } from "#lib/agreements/terms.ts";
import { canonicalText } from "#lib/platform/hash.ts";
import { hazardSubstances, preparations, specimenKinds } from "#lib/specimens/schema.ts";
import {
  audiences,
  displayStyles,
  plannedActivities,
  plannedPictures,
  purposes,
  teachingUses,
} from "#lib/suitability/schema.ts";
import { aTermsSubject, termsFacts } from "#tests/lib/agreements/terms-facts.ts";
import { anyConsent, anyDay } from "#tests/support/consents.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const terms = agreementTerms(termsFacts());
const frozen = canonicalText(terms);

const anyCountry = fc.constantFrom("NO", "FR", "DE");
const anySubject = fc
  .record({
    kind: fc.constantFrom(...specimenKinds),
    preparation: fc.constantFrom(...preparations),
    massKg: fc.option(fc.double({ min: 0.001, max: 2_000, noNaN: true })),
    hazards: fc.array(
      fc.record({
        substance: fc.constantFrom(...hazardSubstances),
        percent: fc.option(fc.double({ min: 0, max: 100, noNaN: true })),
        note: fc.string(),
      }),
      { maxLength: 2 },
    ),
    replacementCost: fc.constantFrom(null, aSpecimenCase().specimen.replacementCost),
    human: fc.boolean(),
    title: fc.string({ unit: "binary" }),
  })
  .chain((specimen) =>
    fc
      .array(anyConsent, { maxLength: 2 })
      .map((consents) =>
        aTermsSubject({ specimen, provenance: { ...aSpecimenCase().provenance, consents } }),
      ),
  );

const anyFacts: fc.Arbitrary<TermsFacts> = fc
  .record({
    request: fc
      .record({
        purpose: fc.constantFrom(...purposes),
        teachingUse: fc.constantFrom(...teachingUses),
        audience: fc.constantFrom(...audiences),
        displayStyle: fc.constantFrom(...displayStyles),
        paidAdmission: fc.boolean(),
        pictures: fc.uniqueArray(fc.constantFrom(...plannedPictures)),
        activities: fc.uniqueArray(fc.constantFrom(...plannedActivities)),
        venue: anyCountry.map((countryCode) => aVenueFact({ countryCode })),
      })
      .map(aRequestFact),
    subjects: fc.array(anySubject, { minLength: 1, maxLength: 3 }),
    stages: fc.array(
      fc.record({
        direction: fc.constantFrom("out", "home"),
        carrier: fc.string({ unit: "grapheme" }),
        through: fc.array(anyCountry, { maxLength: 2 }),
        departsOn: anyDay,
        arrivesOn: anyDay,
      }),
      { maxLength: 2 },
    ),
  })
  .map(termsFacts);

test("whatever is drawn up can be read again, and reading changes nothing", () => {
  fc.assert(
    fc.property(anyFacts, (facts) => {
      const drawn = agreementTerms(facts);
      const text = canonicalText(drawn);
      const read = readTerms(text);
      expect(read).toEqual(drawn);
      expect(canonicalText(read)).toBe(text);
      expect(AgreementTerms.parse(read)).toEqual(read);
    }),
    { numRuns: 60 },
  );
});

describe("a text that is not wholly of this form is not read", () => {
  const { purpose, ...without } = terms;
  const [row] = terms.schedule;
  test.each<[string, string, string]>([
    ["an earlier form", canonicalText({ ...terms, format: "loan-agreement-1" }), "loan-agreement-1"],
    ["something missing", canonicalText(without), "loan-agreement-3"],
    ["something left over", canonicalText({ ...terms, aside: "" }), "loan-agreement-3"],
    [
      "something left over further in",
      canonicalText({ ...terms, purpose: { ...purpose, aside: "" } }),
      "loan-agreement-3",
    ],
    [
      "a sentence for a code",
      canonicalText({ ...terms, schedule: [{ ...row, restrictions: ["Not handled by learners."] }] }),
      "loan-agreement-3",
    ],
    [
      "a restriction that nobody knows",
      canonicalText({
        ...terms,
        schedule: [{ ...row, restrictions: [{ code: "restriction.other", parameters: {} }] }],
      }),
      "loan-agreement-3",
    ],
    ["no terms at all", "[1]", "unknown"],
    ["no data at all", "an agreement", "unknown"],
  ])("%s", (_what, text, format) => {
    expect(() => readTerms(text)).toThrow(
      expect.objectContaining({
        kind: "conflict",
        reason: "agreement.other-format",
        parameters: { format },
      }),
    );
  });
});

describe("terms of the form before the library", () => {
  const {
    languages: _languages,
    opensOn: _opens,
    annexes: _annexes,
    amends: _amends,
    clauses: _clauses,
    ...common
  } = terms;
  const clauses = [{ id: "parties", number: 1, heading: "Parties", text: "The lender is Centre." }];
  const earlier = { ...common, format: "loan-agreement-2", language: "en", clauses };

  test("are read as they were signed, and their clauses stand as they stood", () => {
    const read = readTerms(canonicalText(earlier));
    expect(read).toEqual(earlier);
    expect(rulingLanguage(read)).toBe("en");
    expect(clausesAgreed(read, "de")).toEqual(clauses);
    expect(canonicalText(read)).toBe(canonicalText(earlier));
  });

  test("say nothing of what the library's form says, and are not read with something left over", () => {
    expect(saysTheSame(canonicalText(earlier), terms)).toBe(false);
    expect(findTerms(canonicalText({ ...earlier, amends: null }))).toBeNull();
  });
});

describe("the clauses as they were agreed", () => {
  const both = agreementTerms(termsFacts({ languages: ["de", "fr"] }));

  test("stand in each language of the agreement and in no other", () => {
    expect(rulingLanguage(both)).toBe("de");
    for (const { texts } of both.clauses) expect(Object.keys(texts).sort()).toEqual(["de", "fr"]);
    const [german] = clausesAgreed(both, "de");
    const [french] = clausesAgreed(both, "fr");
    expect([german?.heading, french?.heading]).toEqual([
      "Parteien und Unterzeichnende",
      "Parties et signataires",
    ]);
    expect(clausesAgreed(both, "en")[0]).toEqual(german);
  });

  test("are those that were frozen, whatever the library says later", () => {
    const [first, ...others] = both.clauses;
    const reworded = { ...first, texts: { de: { heading: "Alt", text: "So war es." } } };
    const read = readTerms(canonicalText({ ...both, clauses: [reworded, ...others] }));
    expect(clausesAgreed(read, "de")[0]).toMatchObject({ heading: "Alt", text: "So war es." });
  });
});

test("the notice of a recall is the one that the version agrees, and none of a text that is not read", () => {
  const noticeOf = (parameters: Parameters<typeof termsFacts>[0]) =>
    recallNoticeAgreed(JSON.stringify(agreementTerms(termsFacts(parameters))));
  expect(noticeOf({})).toBe(30);
  expect(noticeOf({ parameters: { recallDays: 45 } })).toBe(45);
  expect(recallNoticeAgreed("{}")).toBeNull();
});

describe("the numbers of the schedule", () => {
  test("are read in every form, so that a signed version in an earlier one still lets its specimens out", () => {
    expect(scheduledNumbers(frozen)).toEqual(["AN 2019.0142"]);
    const schedule = [
      { accessionNumber: "AN 1", hazards: ["alcohol, 70 %"], restrictions: [] },
      { accessionNumber: "AN 2", hazards: [], restrictions: ["Not sampled."] },
    ];
    expect(scheduledNumbers(canonicalText({ format: "loan-agreement-1", schedule }))).toEqual([
      "AN 1",
      "AN 2",
    ]);
  });

  test("of a text without a schedule are not made up", () => {
    for (const text of ["{}", "an agreement"])
      expect(() => scheduledNumbers(text)).toThrow(
        expect.objectContaining({ reason: "agreement.other-format" }),
      );
  });
});

describe("two versions say the same", () => {
  test("but for their number and their day", () => {
    const again = agreementTerms(
      termsFacts({ loan: { ...terms.loan, version: 2, drawnUpOn: "2027-01-20" } }),
    );
    expect(saysTheSame(frozen, terms)).toBe(true);
    expect(saysTheSame(frozen, again)).toBe(true);
  });

  test("but for what they amend", () => {
    const hash = "a".repeat(64);
    const amends = {
      number: 1,
      version: 1,
      sha256: hash,
      differences: [],
      earlier: [{ version: 1, sha256: hash }],
    };
    const amended = agreementTerms(termsFacts({ amends }));
    expect(amended.annexes.applies).toContain("M");
    expect(saysTheSame(frozen, amended)).toBe(true);
  });

  test("also where the frozen version had no place for the report of the venue and the cover of the stay", () => {
    const certificate = {
      insurer: "Mutual",
      policyNumber: "1",
      amount: { minor: 1, currency: "EUR" },
      startsAt: "2027-01-01T00:00:00Z",
      endsAt: "2028-01-01T00:00:00Z",
      coversTransit: true,
      territories: [],
    };
    const facilityReport = { version: 2, reportedOn: "2026-12-01", validUntil: "2028-12-01" };
    const certificates = [{ ...certificate, coversStay: true }];
    const now = agreementTerms(termsFacts({ certificates, facilityReport }));
    const { report: _report, ...facility } = now.annexes.facility;
    const earlier = canonicalText({
      ...now,
      cover: { ...now.cover, certificates: [certificate] },
      annexes: { ...now.annexes, facility },
    });
    expect(readTerms(earlier)).toMatchObject({ cover: { certificates: [certificate] } });
    expect(saysTheSame(earlier, now)).toBe(true);
    // said once, another word is another version
    const other = agreementTerms(
      termsFacts({ certificates: [{ ...certificate, coversStay: false }], facilityReport }),
    );
    expect(saysTheSame(canonicalText(now), other)).toBe(false);
    const newer = agreementTerms(
      termsFacts({ certificates, facilityReport: { ...facilityReport, version: 3 } }),
    );
    expect(saysTheSame(canonicalText(now), newer)).toBe(false);
  });

  test("not in another language or with another notice of recall", () => {
    for (const facts of [{ languages: ["de"] as const }, { parameters: { recallDays: 45 } }])
      expect(saysTheSame(frozen, agreementTerms(termsFacts(facts)))).toBe(false);
  });

  test("not with another specimen, day or venue, or in another form", () => {
    for (const facts of [
      { subjects: [aTermsSubject(), aTermsSubject({ specimen: { accessionNumber: "AN 9" } })] },
      { request: aRequestFact({ endsOn: "2027-07-02" }) },
      { request: aRequestFact({ venue: aVenueFact({ name: "Hall 3" }) }) },
    ])
      expect(saysTheSame(frozen, agreementTerms(termsFacts(facts)))).toBe(false);
    expect(saysTheSame(canonicalText({ ...terms, format: "loan-agreement-1" }), terms)).toBe(false);
    expect(saysTheSame("an agreement", terms)).toBe(false);
  });
});
