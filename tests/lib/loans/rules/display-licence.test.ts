import { expect, test } from "vitest";
import { judgeDisplayLicence, licenceCovers } from "#lib/loans/rules/display-licence.ts";
import type { Licence } from "#lib/people/schema.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const aLicence = (said: Partial<Licence> = {}): Licence => ({
  kind: "public display",
  authority: "Health inspectorate",
  number: "PD 77",
  validFrom: "2026-01-01",
  validUntil: "2028-01-01",
  ...said,
});

test.each([
  ["covers its days", {}, true],
  ["does not cover days after its end", { validUntil: "2027-06-30" }, false],
  ["does not cover days before its beginning", { validFrom: "2027-03-02" }, false],
  ["has not said whether it covers without an end", { validUntil: null }, null],
] as const)("a licence %s", (_what, said, covers) => {
  expect(licenceCovers(aLicence(said), "2027-03-01", "2027-07-01")).toBe(covers);
});

const shown = (...licences: Licence[]) =>
  aRequestFact({ purpose: "exhibition", audience: "general public", venue: aVenueFact({ licences }) });

test.each([
  ["without a licence on record is attend", shown(), "attend", "permits.display-licence-missing"],
  ["with a licence for the days is clear", shown(aLicence()), "clear", "permits.display-licence"],
  [
    "with a lapsed licence is attend",
    shown(aLicence({ validUntil: "2027-04-01" })),
    "attend",
    "permits.display-licence-days",
  ],
  [
    "with a licence without an end is attend",
    shown(aLicence({ validUntil: null })),
    "attend",
    "permits.display-licence-vague",
  ],
  [
    "with a licence of another kind is attend",
    shown(aLicence({ kind: "storage" })),
    "attend",
    "permits.display-licence-missing",
  ],
] as const)("a human specimen in public %s", (_what, request, outcome, fact) => {
  const findings = judgeDisplayLicence(aSpecimenCase(), request);
  expect(findings).toMatchObject([{ rule: "D1", group: "permits", outcome, fact }]);
  expect(findings[0]?.wayOut).toBe(outcome === "clear" ? "" : "way.ask-authority-display");
});

test("among students no licence for display is asked for", () => {
  expect(judgeDisplayLicence(aSpecimenCase(), aRequestFact())).toMatchObject([
    { outcome: "clear", fact: "permits.not-public" },
  ]);
});

test("an animal specimen needs no licence for human material", () => {
  const animal = aSpecimenCase({ specimen: { human: false, scientificName: "Equus caballus" } });
  expect(judgeDisplayLicence(animal, shown())).toEqual([]);
});
