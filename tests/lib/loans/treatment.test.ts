/** Hours of treatment: how they are written, and their exact sum. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { decimalOf } from "#lib/costing/exact.ts";
import { hoursTogether, TreatmentHours, TreatmentInput } from "#lib/loans/treatment.ts";
import { newId } from "#lib/platform/identity.ts";

test.each([
  ["0", true],
  ["1.5", true],
  ["0.25", true],
  ["2000", true],
  ["2000.01", false],
  ["1.125", false],
  ["1.50", false],
  ["-1", false],
  ["", false],
  ["an hour", false],
])("%j hours are taken: %s", (hours, taken) => {
  expect(TreatmentHours.safeParse(hours).success).toBe(taken);
});

test("hours without a word of what is to be done are refused, none and nought are not", () => {
  const input = (hours: string | null, work: string) =>
    TreatmentInput.safeParse({ loanId: newId(), specimenId: newId(), hours, work });
  expect(input("1", " ").error?.issues).toMatchObject([
    { path: ["work"], message: "treatment.work-missing" },
  ]);
  expect(input("1", "Dust").success).toBe(true);
  expect(input("0", "").success).toBe(true);
  expect(input(null, "").success).toBe(true);
});

test("hours are added exactly, whatever their order", () => {
  expect(hoursTogether([])).toBe("0");
  expect(hoursTogether(["0.1", "0.2"])).toBe("0.3");
  expect(hoursTogether(["1.25", "0.25", "2"])).toBe("3.5");
  const hundredths = fc.array(fc.integer({ min: 0, max: 200_000 }), { maxLength: 20 });
  fc.assert(
    fc.property(hundredths, (all) => {
      const said = all.map((one) => decimalOf(one, 2));
      expect(Math.round(Number(hoursTogether(said)) * 100)).toBe(all.reduce((sum, one) => sum + one, 0));
      expect(hoursTogether([...said].reverse())).toBe(hoursTogether(said));
    }),
  );
});
