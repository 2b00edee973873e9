import { expect, test } from "vitest";
import {
  countedSteps,
  PlanDays,
  planDefaults,
  planScopeOf,
  planSteps,
  restDays,
  sourceOfStep,
} from "#lib/loans/plan-defaults.ts";

test("each step says where its days come from", () => {
  for (const step of planSteps) expect(sourceOfStep(step).source, step).not.toBe("");
});

test("a centre's own days are whole, and none is left out", () => {
  expect(PlanDays.safeParse(planDefaults).success).toBe(true);
  for (const wrong of [-1, 0.5, Number.NaN, 5_000])
    expect(
      PlanDays.safeParse({ ...planDefaults, pack: { ...planDefaults.pack, national: wrong } }).success,
    ).toBe(false);
  const { [countedSteps[0]]: _left, ...rest } = planDefaults;
  expect(PlanDays.safeParse(rest).success).toBe(false);
});

test.each([
  [{ heaviestKg: 200, hasJars: false }, 1],
  [{ heaviestKg: 201, hasJars: false }, 2],
  [{ heaviestKg: null, hasJars: true }, 2],
  [{ heaviestKg: null, hasJars: false }, 1],
])("crates of %o rest %i days", (crates, days) => {
  expect(restDays(crates)).toBe(days);
});

test("a loan abroad is counted as one, whatever it is for", () => {
  const loan = { lenderCountry: "FI", venueCountry: "FI", purpose: "teaching" };
  expect(planScopeOf({ ...loan, venueCountry: "DK" })).toBe("international");
  expect(planScopeOf(loan)).toBe("teaching nearby");
  expect(planScopeOf({ ...loan, purpose: "exhibition" })).toBe("national");
});
