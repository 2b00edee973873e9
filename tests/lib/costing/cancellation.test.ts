/** The share that is due by the days left until dispatch. */
import { expect, test } from "vitest";
import { cancellationCharge, shareDue } from "#lib/costing/cancellation.ts";
import { CancellationScale } from "#lib/costing/schema.ts";
import { aFeeScale } from "#tests/support/money.ts";

const { cancellation: scale } = aFeeScale();

test.each([
  [200, "0"],
  [61, "0"],
  [60, "10"],
  [31, "10"],
  [30, "25"],
  [15, "25"],
  [14, "50"],
  [1, "50"],
  [0, "80"],
  [-3, "80"],
])("%i days before dispatch %s %% are due", (days, percent) => {
  expect(shareDue(scale, days)).toBe(percent);
});

test("the charge is rounded once, half up, from the total with its tax", () => {
  // 4 706.43 × 25 % = 1 176.6075
  const { output, steps } = cancellationCharge.explain({
    totalMinor: 470_643,
    currency: "EUR",
    scale,
    dispatchOn: "2027-03-21",
    cancelledOn: "2027-03-01",
  });
  expect(output).toEqual({ daysBefore: 20, percent: "25", chargeMinor: 117_661 });
  expect(steps.at(-1)).toMatchObject({ value: "1176.61", unit: "EUR", formula: "4706.43 × 25 %" });
});

const faults = (steps: { daysBefore: number; percent: string }[]) =>
  CancellationScale.safeParse(steps).error?.issues.map(({ message }) => message) ?? [];

test("a scale runs towards dispatch, never falls, and ends on its day", () => {
  expect(faults(scale)).toEqual([]);
  expect(
    faults([
      { daysBefore: 14, percent: "10" },
      { daysBefore: 14, percent: "20" },
    ]),
  ).toEqual(["costing.cancellation-order", "costing.cancellation-ends"]);
  expect(
    faults([
      { daysBefore: 14, percent: "50" },
      { daysBefore: 0, percent: "20" },
    ]),
  ).toEqual(["costing.cancellation-falls"]);
  expect(faults([{ daysBefore: 0, percent: "100.5" }])).toEqual(["costing.percent"]);
});
