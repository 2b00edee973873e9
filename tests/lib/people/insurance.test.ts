/** Insurance: its days, and when its end is announced. */
import { expect, test } from "vitest";
import { InsuranceInput, insuranceWarningOn } from "#lib/people/insurance.ts";

test.each([
  ["2027-03-02", null],
  ["2027-03-01", 60],
  ["2027-01-30", 30],
  ["2027-01-08", 30],
  ["2027-01-07", 7],
  ["2026-12-31", 0],
] as const)("an insurance that ends on %s is announced by %s", (until, warning) => {
  expect(insuranceWarningOn(until, "2026-12-31")).toBe(warning);
});

test("an insurance that ends before it begins is refused", () => {
  const { error } = InsuranceInput.safeParse({
    id: null,
    institutionId: "0198c2a0-0000-7000-8000-000000000001",
    insurer: "Quiet Mutual",
    policyNumber: "Q 1",
    minor: 100,
    currency: "EUR",
    validFrom: "2027-01-01",
    validUntil: "2027-01-01",
    coversTransit: true,
    territories: ["NO"],
  });
  expect(error?.issues.map(({ message }) => message)).toEqual(["insurance.period-reversed"]);
});
