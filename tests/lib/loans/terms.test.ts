import { describe, expect, test } from "vitest";
import {
  agreementTerms,
  dayWords,
  moneyWords,
  saysTheSame,
  type TermsFacts,
  type TermsSubject,
} from "#lib/loans/terms.ts";
import { canonicalText, sha256Hex } from "#lib/platform/hash.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const party = {
  name: "Centre",
  address: "Fjord road 1",
  city: "Port Selwyn",
  countryCode: "NO",
  email: "a@b.example",
  phone: "+47 1",
};
const subject = (said: Parameters<typeof aSpecimenCase>[0] = {}): TermsSubject => ({
  ...aSpecimenCase(said),
  latinTitle: "membrum superius",
  series: null,
  condition: { checkedOn: "2027-02-10", grade: "A" },
});
const facts = (said: Partial<TermsFacts> = {}): TermsFacts => ({
  request: aRequestFact(),
  loan: { number: "L 2026-031", title: "Winter course", version: 1, drawnUpOn: "2027-01-10" },
  lender: party,
  borrower: {
    ...party,
    name: "Faculty",
    contactName: "A. Lecturer",
    contactEmail: "l@b.example",
    contactPhone: "+47 2",
  },
  subjects: [subject()],
  certificates: [],
  crates: [],
  stages: [],
  conditions: [],
  ...said,
});

test("the terms name parties, term, venue, schedule, limits and clauses", () => {
  const terms = agreementTerms(facts());
  expect(terms).toMatchObject({
    format: "loan-agreement-1",
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

test("the limits of the schedule are the warning bands of the preparation", () => {
  const [row] = agreementTerms(facts()).schedule;
  expect(row?.limits).toMatchObject({
    temperatureC: { low: 15, high: 25 },
    humidity: { low: 0.35, high: 0.65 },
    illuminanceLx: 100,
  });
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

describe("freezing", () => {
  test("the same facts give the same text and hash", () => {
    const [first, second] = [agreementTerms(facts()), agreementTerms(facts())].map(canonicalText);
    expect(first).toBe(second);
    expect(sha256Hex(first ?? "")).toMatch(/^[0-9a-f]{64}$/);
  });
  test("terms read back from their text say the same; another version or date changes nothing of it", () => {
    const terms = agreementTerms(facts());
    expect(saysTheSame(JSON.parse(canonicalText(terms)), terms)).toBe(true);
    expect(
      saysTheSame(
        agreementTerms(facts({ loan: { ...terms.loan, version: 2, drawnUpOn: "2027-01-20" } })),
        terms,
      ),
    ).toBe(true);
  });
  test("another specimen, day or venue is another agreement", () => {
    const terms = agreementTerms(facts());
    for (const other of [
      facts({ subjects: [subject(), subject({ specimen: { accessionNumber: "AN 9" } })] }),
      facts({ request: aRequestFact({ endsOn: "2027-07-02" }) }),
      facts({ request: aRequestFact({ venue: aVenueFact({ name: "Hall 3" }) }) }),
    ])
      expect(saysTheSame(agreementTerms(other), terms)).toBe(false);
  });
});

test.each([
  [{ minor: 1_234_500, currency: "EUR" }, "12,345.00 EUR"],
  [{ minor: 1_234_500, currency: "JPY" }, "1,234,500 JPY"],
] as const)("%j is written %s", (money, text) => {
  expect(moneyWords(money)).toBe(text);
});

test("a loan without a specimen has no terms", () => {
  expect(() => agreementTerms(facts({ subjects: [] }))).toThrow(RangeError);
});

test("every limit that is printed has a source, and none is named twice", () => {
  const { limits, sources } = agreementTerms(facts()).groupLimits;
  expect([...new Set(sources.map(({ quantity }) => quantity))].sort()).toEqual(Object.keys(limits).sort());
  expect(new Set(sources.map((source) => JSON.stringify(source))).size).toBe(sources.length);
});

test.each([
  ["2027-03-01", "1 March 2027"],
  ["2028-02-29", "29 February 2028"],
])("the day %s is written %s", (day, text) => {
  expect(dayWords(day)).toBe(text);
});
