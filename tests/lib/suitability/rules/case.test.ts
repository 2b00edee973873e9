import { expect, test } from "vitest";
import { finding, isExport, isPublicShow, outcomeOfUnknown } from "#lib/suitability/rules/case.ts";
import { aRequestFact, aVenueFact } from "#tests/support/loan-cases.ts";

test("the public, and whoever pays, make a public show", () => {
  expect(isPublicShow({ audience: "general public", paidAdmission: false })).toBe(true);
  expect(isPublicShow({ audience: "professionals", paidAdmission: true })).toBe(true);
  expect(isPublicShow({ audience: "enrolled students", paidAdmission: false })).toBe(false);
});

test("another country than the lender's is export", () => {
  expect(isExport(aRequestFact())).toBe(false);
  expect(isExport(aRequestFact({ venue: aVenueFact({ countryCode: "SE" }) }))).toBe(true);
});

test("what is not known is attend, and a bar where it is grave and nobody has decided", () => {
  const decided = { oversight: { reference: "OB 1", decidedOn: "2026-01-01" } };
  expect(outcomeOfUnknown(aRequestFact(), false)).toBe("attend");
  expect(outcomeOfUnknown(aRequestFact(), true)).toBe("bar");
  expect(outcomeOfUnknown(aRequestFact(decided), true)).toBe("attend");
});

test("what is clear has no way out, and what is not has one", () => {
  expect(() => finding("s", "G1", "consent", { outcome: "clear", fact: "x", wayOut: "way.y" })).toThrow(
    RangeError,
  );
  expect(() => finding("s", "G1", "consent", { outcome: "bar", fact: "x" })).toThrow(RangeError);
  expect(finding("s", "G1", "consent", { outcome: "clear", fact: "x" }).source).not.toBe("");
});
