import { describe, expect, test } from "vitest";
import { agreementTerms } from "#lib/agreements/terms.ts";
import { limitsOfSpecimen } from "#lib/environment/specimen-limits.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import type { PermitInput } from "#lib/provenance/schema.ts";
import { termsFacts as facts, aTermsSubject as subject } from "#tests/lib/agreements/terms-facts.ts";
import { aLentSpecimen, aRequestFact, aSpecimenCase } from "#tests/support/loan-cases.ts";

const clausesOf = (said: Parameters<typeof facts>[0]) =>
  new Map(agreementTerms(facts(said)).clauses.map(({ id, texts }) => [id, texts.en?.text]));

test("the terms name parties, term, venue, schedule, limits and clauses", () => {
  const terms = agreementTerms(facts());
  expect(terms).toMatchObject({
    format: "loan-agreement-3",
    languages: ["en"],
    lender: { name: "Centre" },
    borrower: { name: "Faculty", contactName: "A. Lecturer" },
    term: { startsOn: "2027-03-01", returnBy: "2027-07-01" },
    venue: { name: "Hall 2", countryCode: "NO" },
    cover: { needed: { minor: 1_200_000, currency: "EUR" } },
  });
  expect(terms.schedule).toMatchObject([
    {
      accessionNumber: "AN 2019.0142",
      massKg: 1.2,
      isWithMount: false,
      condition: { grade: "A" },
      restrictions: [],
    },
  ]);
  expect(terms.clauses.length).toBeGreaterThan(30);
  expect(JSON.stringify(terms.clauses)).toContain("12,000.00 EUR");
});

test("hazards, restrictions and stages are codes, figures and days", () => {
  const [consent] = aSpecimenCase().provenance.consents;
  if (!consent) throw new RangeError("no consent");
  const { schedule, stages } = agreementTerms(
    facts({
      subjects: [
        subject({
          specimen: { hazards: [{ substance: "formaldehyde", percent: 4, note: "In the fluid" }] },
          provenance: { ...aSpecimenCase().provenance, consents: [{ ...consent, validUntil: "2030-01-01" }] },
        }),
      ],
      stages: [
        {
          direction: "out",
          carrier: "Careful carriers",
          through: ["DK"],
          departsOn: "2027-02-26",
          arrivesOn: "2027-03-01",
        },
      ],
    }),
  );
  expect(schedule[0]?.hazards).toEqual([{ substance: "formaldehyde", percent: 4 }]);
  expect(schedule[0]?.restrictions).toEqual([
    { code: "restriction.consent-ends", parameters: { endsOn: "2030-01-01" } },
  ]);
  expect(stages).toMatchObject([{ through: ["DK"] }]);
});

test("the limits of the schedule are bands to keep within and ceilings, never what is only aimed at", () => {
  const [row] = agreementTerms(facts()).schedule;
  const own = limitsOfSpecimen(aLentSpecimen());
  expect(row?.limits).toEqual({
    temperatureC: own.temperatureC.warn,
    humidity: own.humidity.warn,
    temperatureChange24hK: own.temperatureChange24hK.warn,
    humidityChange24h: own.humidityChange24h.warn,
    illuminanceLx: own.illuminanceLx.max,
    lightLxHoursPerYear: own.lightLxHoursPerYear.max,
    uvMicrowattPerLumen: own.uvMicrowattPerLumen.alarm,
  });
  expect(row?.limits).toMatchObject({ temperatureC: { low: 15, high: 25 }, uvMicrowattPerLumen: 75 });
});

test("the source of a figure speaks of that figure", () => {
  const { sources } = agreementTerms(facts()).groupLimits;
  const ofUltraviolet = sources.filter(({ quantity }) => quantity === "uvMicrowattPerLumen");
  expect(ofUltraviolet.map(({ where }) => where)).toContain("75 µW/lm");
});

test("a source that a milder figure of another level rests on is not printed", () => {
  const wax = subject({ specimen: { accessionNumber: "AN 2", kind: "cast", preparation: "dry" } });
  const slide = subject({
    specimen: { accessionNumber: "AN 3", kind: "histological slide", preparation: "slide" },
  });
  const { limits, sources } = agreementTerms(facts({ subjects: [wax, slide] })).groupLimits;
  // Both aim at 10 µW/lm; the slide alone sets the ceiling of 50.
  expect(limits.uvMicrowattPerLumen).toBe(50);
  const ofUltraviolet = sources.filter(({ quantity }) => quantity === "uvMicrowattPerLumen");
  expect(ofUltraviolet.map(({ where }) => where)).not.toContain("75 µW/lm");
});

test("the thickness of a sheet stands in the schedule as it is known, and not taken to whole millimetres", () => {
  const sheet = {
    kind: "sheet",
    preparation: "epoxy sheet",
    size: { lengthMm: 420, widthMm: 300, heightMm: 4 },
    sheetThicknessMm: 3.5,
  } as const;
  const [row] = agreementTerms(facts({ subjects: [subject({ specimen: sheet })] })).schedule;
  expect(row?.size).toEqual({ lengthMm: 420, widthMm: 300, heightMm: 3.5 });
});

test("the limits of the group are the strictest of its specimens", () => {
  const slide = subject({
    specimen: { accessionNumber: "AN 2", preparation: "slide", kind: "histological slide" },
  });
  const skeleton = subject({
    specimen: { accessionNumber: "AN 3", preparation: "mounted skeleton", kind: "skeleton or bone" },
  });
  const narrow = agreementTerms(facts({ subjects: [slide, skeleton] }));
  expect(narrow.groupLimits.limits.humidity).toEqual({ low: 0.4, high: 0.55 });
  expect(narrow.groupLimits.conflicts).toEqual([]);
});

test("the terms hold no donor, whatever provenance knows", () => {
  const text = canonicalText(agreementTerms(facts()));
  for (const { donorCode, consentId } of subject().provenance.consents) {
    expect(text).not.toContain(donorCode);
    expect(text).not.toContain(consentId);
  }
});

test("the same facts give the same text and hash", () => {
  const [first, second] = [agreementTerms(facts()), agreementTerms(facts())].map(canonicalText);
  expect(first).toBe(second);
  expect(sha256Hex(first ?? "")).toMatch(/^[0-9a-f]{64}$/);
});

describe("sampling, casting and scanning", () => {
  const permission = (kind: PermitInput["kind"]): PermitInput => ({
    kind,
    number: `P ${kind}`,
    authority: "The lender",
    territories: [],
    validFrom: null,
    validUntil: "2028-01-01",
  });
  const permitted = (...kinds: PermitInput["kind"][]) =>
    subject({ provenance: { ...aSpecimenCase().provenance, permits: kinds.map(permission) } });
  const request = aRequestFact({ activities: ["sampling", "casting and scanning"] });

  test("are allowed where every specimen allows them, and the clauses say so", () => {
    const subjects = [permitted("sampling", "casting and scanning"), permitted("sampling")];
    expect(agreementTerms(facts({ request, subjects })).purpose.activities).toEqual(["sampling"]);
    const clauses = clausesOf({ request, subjects });
    expect(clauses.get("no-alteration")).toContain("Allowed for all specimens of this loan: sampling;");
    expect(clauses.get("sampling")).toContain("samples only as the lender's written permission says");
    expect(clauses.get("sampling")).toContain("No genetic analysis");
  });

  test("are not allowed without a permission or without a plan", () => {
    for (const said of [
      { request, subjects: [permitted()] },
      { request: aRequestFact(), subjects: [permitted("sampling")] },
    ]) {
      expect(agreementTerms(facts(said)).purpose.activities).toEqual([]);
      const clauses = clausesOf(said);
      expect(clauses.get("sampling")).toContain("samples no tissue");
      expect(clauses.get("no-alteration")).toContain("Allowed for all specimens of this loan: none;");
    }
  });
});

describe("the clauses say", () => {
  const cost = aSpecimenCase().specimen.replacementCost;
  if (!cost) throw new RangeError("no cost");
  const worth = (...costs: (typeof cost | null)[]) => ({
    subjects: costs.map((replacementCost) => subject({ specimen: { replacementCost } })),
  });

  test.each([
    ["the sum", worth(cost, cost), "24,000.00 EUR (all rows of the schedule)"],
    [
      "a least sum where a cost is not known",
      worth(cost, null),
      "12,000.00 EUR (at least; some rows state no cost)",
    ],
    [
      "no sum of several currencies",
      worth(cost, { ...cost, currency: "NOK" }),
      "not stated (currencies differ",
    ],
  ])("of the replacement costs %s", (_what, said, words) => {
    expect(clausesOf(said).get("replacement-cost")).toContain(words);
  });

  test("to whom it is shown, and which pictures are allowed", () => {
    const request = aRequestFact({
      purpose: "exhibition",
      audience: "general public",
      pictures: ["internal", "press"],
    });
    const clauses = clausesOf({ request });
    expect(clauses.get("purpose")).toContain("for the general public, without charge");
    expect(clauses.get("pictures")).toContain("Allowed: for internal use and for the press.");
    expect(clausesOf({}).get("pictures")).toContain("Allowed: none.");
  });
});

test("a loan without a specimen has no terms", () => {
  expect(() => agreementTerms(facts({ subjects: [] }))).toThrow(RangeError);
});

test("every limit that is printed has a source, and none is named twice", () => {
  const { limits, sources } = agreementTerms(facts()).groupLimits;
  expect([...new Set(sources.map(({ quantity }) => quantity))].sort()).toEqual(Object.keys(limits).sort());
  expect(new Set(sources.map((source) => JSON.stringify(source))).size).toBe(sources.length);
});
