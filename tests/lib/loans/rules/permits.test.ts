import { expect, test } from "vitest";
import type { RequestFacts } from "#lib/loans/rules/case.ts";
import { fitOfPermit, judgePermits } from "#lib/loans/rules/permits.ts";
import type { PermitInput } from "#lib/provenance/schema.ts";
import { aRequestFact, aSpecimenCase, aVenueFact } from "#tests/support/loan-cases.ts";

const aPermit = (said: Partial<PermitInput> = {}): PermitInput => ({
  kind: "species protection (CITES)",
  number: "NO 2026/118",
  authority: "Environment agency",
  territories: ["FR", "NO"],
  validFrom: "2026-01-01",
  validUntil: "2027-12-31",
  ...said,
});
const days = { startsOn: "2027-03-01", endsOn: "2027-07-01" };

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

const animal = (...permits: PermitInput[]) =>
  aSpecimenCase({
    specimen: { human: false, scientificName: "Delphinus delphis", ageBand: null },
    provenance: { consents: [], donorsWithoutConsent: 0, permits, title: null },
  });
const abroad = (said: Partial<RequestFacts> = {}) =>
  aRequestFact({ venue: aVenueFact({ countryCode: "FR" }), ...said });

test.each([
  ["at home and among students needs no paper", [], aRequestFact(), "clear", "permits.no-border"],
  [
    "in public at home without a paper is attend",
    [],
    aRequestFact({ audience: "general public" }),
    "attend",
    "permits.species-not-known",
  ],
  ["abroad without a paper is a bar", [], abroad(), "bar", "permits.species-not-known"],
  ["abroad with a fitting paper is clear", [aPermit()], abroad(), "clear", "permits.species-paper"],
  [
    "abroad with a lapsed paper is a bar",
    [aPermit({ validUntil: "2027-05-01" })],
    abroad(),
    "bar",
    "permits.species-paper-days",
  ],
  [
    "abroad with a paper for elsewhere is a bar",
    [aPermit({ territories: ["SE"] })],
    abroad(),
    "bar",
    "permits.species-paper-country",
  ],
  [
    "abroad with a paper that says no end is attend",
    [aPermit({ validUntil: null })],
    abroad(),
    "attend",
    "permits.species-paper-vague",
  ],
  [
    "the best of several papers counts",
    [aPermit({ number: "old", validUntil: "2026-05-01" }), aPermit()],
    abroad(),
    "clear",
    "permits.species-paper",
  ],
] as const)("an animal specimen %s", (_what, permits, request, outcome, fact) => {
  expect(judgePermits(animal(...permits), request)).toMatchObject([{ rule: "P1", outcome, fact }]);
});

test("human material across a border is attend until papers of both sides are on record", () => {
  const human = (...permits: PermitInput[]) =>
    aSpecimenCase({ provenance: { consents: [], donorsWithoutConsent: 0, permits, title: null } });
  expect(judgePermits(human(), aRequestFact())).toMatchObject([
    { outcome: "clear", fact: "permits.no-border" },
  ]);
  expect(judgePermits(human(), abroad())).toMatchObject([
    { outcome: "attend", fact: "permits.border-not-known" },
  ]);
  const outward = aPermit({ kind: "export", number: "E 1" });
  expect(judgePermits(human(outward), abroad())).toMatchObject([{ outcome: "attend" }]);
  const inward = aPermit({ kind: "import", number: "I 1" });
  expect(judgePermits(human(outward, inward), abroad())).toMatchObject([
    { outcome: "clear", fact: "permits.border-papers" },
  ]);
});

test("what is not clear sends the reader to the authority", () => {
  const [finding] = judgePermits(animal(), abroad());
  expect(finding?.wayOut).toBe("way.species-paper");
});
