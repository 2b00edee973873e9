import { expect, test } from "vitest";
import {
  allOwnWord,
  daysAway,
  diedBefore,
  diedYearsBefore,
  heldSince,
  isExamined,
  isImportedAtVenue,
  isInUnion,
  isOwnWord,
  madeBefore,
  unionCrossing,
} from "#lib/suitability/rules/legal-facts.ts";
import { aRequestFact, aVenueFact } from "#tests/support/loan-cases.ts";
import { caseOf } from "#tests/support/rule-rows.ts";

const to = (countryCode: string, lenderCountry = "NO") =>
  aRequestFact({ lenderCountry, venue: aVenueFact({ countryCode }) });

test("an own word is given in life or in a will, and nobody speaks for a donor who is not known", () => {
  expect(isOwnWord({ basis: "will" })).toBe(true);
  expect(isOwnWord({ basis: "relative or authorised person" })).toBe(false);
  expect(allOwnWord(caseOf({}).provenance)).toBe(true);
  expect(allOwnWord(caseOf({ consents: [] }).provenance)).toBe(false);
  expect(allOwnWord({ ...caseOf({}).provenance, donorsWithoutConsent: 1 })).toBe(false);
});

test("a specimen is held since the earliest day that anybody says", () => {
  expect(heldSince(caseOf({ legal: { heldSince: "1970-01-01" } }))).toBe("1970-01-01");
  expect(heldSince(caseOf({}))).toBe("2014-02-01");
  expect(heldSince(caseOf({ specimen: { acquiredOn: null, preparedOn: null } }))).toBeNull();
});

test("a death is dated by its period, or by a form that the donor signed later", () => {
  expect(diedBefore(caseOf({ consents: [], legal: { deathPeriod: "1920 to 1932" } }), "1933-01-01")).toBe(
    true,
  );
  expect(
    diedBefore(caseOf({ consents: [], legal: { deathPeriod: "1920 to 1932" } }), "1925-01-01"),
  ).toBeNull();
  expect(diedBefore(caseOf({}), "1926-11-25")).toBe(false);
  expect(diedBefore(caseOf({ consents: [{ signedOn: null }] }), "1926-11-25")).toBeNull();
  expect(diedBefore(caseOf({ consents: [{ basis: "foetal, by parents" }] }), "1926-11-25")).toBeNull();
  expect(
    diedYearsBefore(
      caseOf({ consents: [], legal: { deathPeriod: "September 1906 to 1919" } }),
      aRequestFact(),
      100,
    ),
  ).toBe(true);
});

test("a making is dated by its day, or else by its period", () => {
  expect(madeBefore(caseOf({}), "2015-06-02")).toBe(true);
  expect(madeBefore(caseOf({}), "2015-06-01")).toBe(false);
  expect(madeBefore(caseOf({ specimen: { preparedOn: null } }), "2015-06-01")).toBeNull();
  expect(
    madeBefore(
      caseOf({ specimen: { preparedOn: null }, legal: { madePeriod: "before 1800" } }),
      "1826-01-01",
    ),
  ).toBe(true);
});

test("what came from the venue's country is no import there, and what a lender in it imported is what it says", () => {
  expect(isImportedAtVenue(caseOf({}), to("GB"))).toBe(true);
  expect(isImportedAtVenue(caseOf({ legal: { originCountry: "GB" } }), to("GB"))).toBe(false);
  expect(isImportedAtVenue(caseOf({ legal: { imported: true } }), to("GB", "GB"))).toBe(true);
  expect(isImportedAtVenue(caseOf({}), to("GB", "GB"))).toBeNull();
});

test("a loan crosses the Union's border outwards, inwards or not at all", () => {
  expect(isInUnion("FI")).toBe(true);
  expect(isInUnion("GB")).toBe(false);
  expect(unionCrossing(to("GB", "FI"))).toBe("out");
  expect(unionCrossing(to("FR"))).toBe("in");
  expect(unionCrossing(to("FR", "FI"))).toBeNull();
  expect(unionCrossing(to("GB"))).toBeNull();
});

test("teaching and research examine; the days around a loan are away too", () => {
  expect(isExamined({ purpose: "teaching" })).toBe(true);
  expect(isExamined({ purpose: "exhibition" })).toBe(false);
  expect(daysAway(aRequestFact())).toEqual({ from: "2027-02-15", to: "2027-07-15" });
});
