import { expect, test } from "vitest";
import { readableFindings, readableGates, sightOfLoan } from "#lib/loans/sight.ts";
import { houseRoles } from "#lib/people/viewer.ts";
import { finding } from "#lib/suitability/rules/case.ts";
import { aViewer } from "#tests/support/builders.ts";

const theirs = { institutionId: "01920000-0000-7000-8000-0000000000b0" };
const sightOf = (role: Parameters<typeof aViewer>[0]) =>
  sightOfLoan(aViewer(role, theirs.institutionId), theirs);

const minor = finding("s", "G8", "consent", {
  outcome: "attend",
  fact: "consent.minor",
  wayOut: "way.two-persons",
});
const low = finding("s", "V3", "cover", {
  outcome: "bar",
  fact: "cover.too-low",
  parameters: { neededMinor: 9_900_000 },
  wayOut: "way.raise-cover",
});
const gate = {
  gate: "cover",
  holds: false,
  facts: [{ code: "gate.cover-no-cover", parameters: {} }],
} as const;

test("a lecturer reads outcome and way out, and no reason", () => {
  expect(readableFindings([minor, low], sightOf("lecturer"))).toEqual([
    { ...minor, fact: "reason.withheld", parameters: {}, source: "" },
    { ...low, fact: "reason.withheld", parameters: {}, source: "" },
  ]);
  expect(readableGates([{ ...gate, facts: [...gate.facts] }], sightOf("lecturer"))).toEqual([
    { gate: "cover", holds: false, facts: [] },
  ]);
});

test("a borrower's registrar reads reasons and costs, and not how old a donor was", () => {
  const [first, second] = readableFindings([minor, low], sightOf("borrower registrar"));
  expect(first).toMatchObject({ fact: "reason.person-withheld", outcome: "attend" });
  expect(second).toEqual(low);
});

test("a borrower's registrar does not read how long ago a death lies", () => {
  const early = finding("s", "UK2", "permits", { outcome: "clear", fact: "law.uk-before-the-century" });
  expect(readableFindings([early], sightOf("borrower registrar"))).toMatchObject([
    { rule: "UK2", fact: "reason.person-withheld", outcome: "clear" },
  ]);
  expect(readableFindings([early], sightOf("curator"))).toEqual([early]);
});

test("a curator reads reasons and no amounts", () => {
  const [first, second] = readableFindings([minor, low], sightOf("curator"));
  expect(first).toEqual(minor);
  expect(second).toMatchObject({ fact: "reason.cost-withheld", parameters: {} });
});

test("another institution's borrower has no sight of anything", () => {
  const stranger = aViewer("borrower registrar", "01920000-0000-7000-8000-0000000000ff");
  expect(Object.values(sightOfLoan(stranger, theirs))).toEqual([false, false, false, false, false]);
});

test("the outcome and the way out are never kept back", () => {
  for (const role of [...houseRoles, "lecturer", "borrower registrar"] as const)
    for (const [index, read] of readableFindings([minor, low], sightOf(role)).entries()) {
      const original = [minor, low][index];
      expect([read.outcome, read.wayOut]).toEqual([original?.outcome, original?.wayOut]);
    }
});
