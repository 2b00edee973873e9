import { describe, expect, test } from "vitest";
import type { PermitInput } from "#lib/provenance/schema.ts";
import {
  bestPermit,
  fitOfPermit,
  licenceCovers,
  permitFor,
  verdictOnLicence,
  verdictOnPermit,
} from "#lib/suitability/rules/papers.ts";
import { aRequestFact, aVenueFact } from "#tests/support/loan-cases.ts";
import { aLicenceFact, caseOf } from "#tests/support/rule-rows.ts";

const aPermit = (said: Partial<PermitInput> = {}): PermitInput => ({
  kind: "import",
  number: "NO 2026/118",
  authority: "Environment agency",
  territories: ["FR", "NO"],
  validFrom: "2026-01-01",
  validUntil: "2027-12-31",
  ...said,
});
const days = { startsOn: "2027-03-01", endsOn: "2027-07-01" };
const words = { fits: "f", vague: "v", days: "d", country: "c", missing: "m", wayOut: "w" };

test.each([
  ["a paper for the country and the days fits", {}, "fits"],
  ["a paper that ends on the return-by fits", { validUntil: "2027-07-01" }, "fits"],
  ["a paper that ends before the return-by has other days", { validUntil: "2027-06-30" }, "other-days"],
  ["a paper that begins later has other days", { validFrom: "2027-03-02" }, "other-days"],
  ["a paper for another country does not fit", { territories: ["SE"] }, "other-country"],
  ["a paper without countries does not say", { territories: [] }, "not-stated"],
  ["a paper without an end does not say", { validUntil: null }, "not-stated"],
] as const)("%s", (_what, said, fit) => {
  expect(fitOfPermit(aPermit(said as Partial<PermitInput>), "FR", days)).toBe(fit);
});

test.each([
  ["no paper", null, "m", "bar"],
  ["a paper that fits", {}, "f", "clear"],
  ["a vague paper", { validUntil: null }, "v", "attend"],
  ["a lapsed paper", { validUntil: "2027-05-01" }, "d", "bar"],
  ["a paper for elsewhere", { territories: ["SE"] }, "c", "bar"],
] as const)("%s, where the lack of one is a bar", (_what, said, fact, outcome) => {
  const permits = said === null ? [] : [aPermit(said as Partial<PermitInput>)];
  const request = aRequestFact({ venue: aVenueFact({ countryCode: "FR" }) });
  expect(verdictOnPermit(bestPermit(permits, "FR", days), request, words, "bar")).toMatchObject({
    outcome,
    fact,
  });
});

test("papers of another kind are not looked at", () => {
  const subject = caseOf({ permits: [{ kind: "veterinary" }] });
  expect(permitFor(subject, aRequestFact(), ["import"])).toBeNull();
  expect(permitFor(subject, aRequestFact(), ["import", "veterinary"])?.fit).toBe("fits");
});

test.each([
  ["covers its days", {}, true],
  ["does not cover days after its end", { validUntil: "2027-06-30" }, false],
  ["does not cover days before its beginning", { validFrom: "2027-03-02" }, false],
  ["has not said whether it covers without an end", { validUntil: null }, null],
] as const)("a licence %s", (_what, said, covers) => {
  expect(licenceCovers(aLicenceFact("public display", said), days.startsOn, days.endsOn)).toBe(covers);
});

describe("the best licence of a venue", () => {
  const lapsed = aLicenceFact("anatomy", { number: "old", validUntil: "2026-05-01" });
  const endless = aLicenceFact("anatomy", { number: "endless", validUntil: null });
  const good = aLicenceFact("anatomy", { number: "good" });
  const verdict = (...licences: (typeof good)[]) =>
    verdictOnLicence(aRequestFact({ venue: aVenueFact({ licences }) }), ["anatomy"], "attend", "bar");

  test("counts, whichever stands first", () => {
    expect(verdict(lapsed, endless, good)).toMatchObject({
      outcome: "clear",
      parameters: { number: "good" },
    });
    expect(verdict(lapsed, endless)).toMatchObject({ outcome: "attend", parameters: { number: "endless" } });
  });
  test("may be one for other days, which is worse than none where the rule says so", () => {
    expect(verdict(lapsed)).toMatchObject({ outcome: "bar", fact: "law.licence-days" });
    expect(verdict()).toMatchObject({ outcome: "attend", fact: "law.licence-missing" });
  });
});
