import { expect, test } from "vitest";
import { borrowerOccasions, CheckRecord, loanOccasions } from "#lib/condition/recording.ts";
import { occasions } from "#lib/condition/schema.ts";

const record = (said: object) => ({
  specimenId: "01920000-0000-7000-8000-000000000101",
  loanId: null,
  occasion: "periodic",
  checkedOn: "2026-10-01",
  check: {
    findings: [],
    verdict: { fitToShow: true, fitToHandle: true, fitToTravel: true },
    grounds: "Nothing to see.",
    checkedBy: "K. N.",
  },
  ...said,
});

test("a check on the way of a loan names the loan", () => {
  for (const occasion of loanOccasions) {
    const parsed = CheckRecord.safeParse(record({ occasion }));
    expect(parsed.error?.issues[0]).toMatchObject({ path: ["loanId"], message: "check.needs-loan" });
    expect(
      CheckRecord.safeParse(record({ occasion, loanId: "01920000-0000-7000-8000-000000000301" })).success,
    ).toBe(true);
  }
  expect(CheckRecord.safeParse(record({})).success).toBe(true);
});

test("a borrower looks at the venue, never for the lender", () => {
  expect(borrowerOccasions).not.toContain("out");
  expect(borrowerOccasions).not.toContain("home");
  for (const occasion of [...loanOccasions, ...borrowerOccasions]) expect(occasions).toContain(occasion);
});

test("a verdict without grounds is refused", () => {
  const { check } = record({});
  expect(CheckRecord.safeParse(record({ check: { ...check, grounds: " " } })).success).toBe(false);
});
