import { describe, expect, test } from "vitest";
import { sheetAtPosition, sheetSeries, sheetShrinkage } from "#lib/specimens/sheet-series.ts";
import { specimensWorkings } from "#lib/specimens/workings.ts";

const cut = { thicknessMm: 3.5, sawLossMm: 1, sheetCount: 100 };

test("a series of 100 sheets of 3.5 mm with 1 mm loss used up 449 mm", () => {
  expect(sheetSeries(cut)).toMatchObject({ blockLengthMm: 449, pitchMm: 4.5, lossMm: 99, missing: [] });
  expect(sheetSeries(cut).coverage).toBeCloseTo(0.77951, 5);
  const { steps } = sheetSeries.explain(cut);
  expect(steps.map(({ formula }) => formula)).toEqual([
    "p = t + k",
    "(N − 1) · k",
    "N · t + (N − 1) · k",
    "n · t / L",
  ]);
});

test("missing numbers lower the coverage and are named", () => {
  const answer = sheetSeries({ ...cut, missing: [5, 6, 200] });
  expect(answer.missing).toEqual([5, 6]);
  expect(answer.coverage).toBeCloseTo((98 * 3.5) / 449, 12);
});

describe("the sheet at a position", () => {
  test.each([
    [20, { number: 5, distanceMm: 0, before: null, behind: null }],
    [3.9, { number: 1, before: 1, behind: 2 }],
  ])("%f mm", (positionMm, answer) => expect(sheetAtPosition({ ...cut, positionMm })).toMatchObject(answer));

  test("is none when all are missing", () =>
    expect(
      sheetAtPosition({ thicknessMm: 3, sawLossMm: 1, sheetCount: 1, missing: [1], positionMm: 1 }).number,
    ).toBeNull());
});

test("a length on a sheet that lost 6.65 % of its area was 3.5 % longer", () => {
  const answer = sheetShrinkage({ measuredMm: 100, areaShrinkage: 0.0665 });
  expect(answer.linearShrinkage).toBeCloseTo(0.03382, 5);
  expect(answer.volumeShrinkage).toBeCloseTo(0.09807, 5);
  expect(answer.freshLengthMm).toBeCloseTo(103.5, 2);
});

test.each([
  {},
  { ...cut, thicknessMm: 0 },
  { ...cut, sheetCount: 1.5 },
  { ...cut, sawLossMm: -1 },
  { ...cut, startLevelMm: "x" },
])("%j is refused", (input) =>
  expect(() => sheetSeries.explain(input)).toThrow(expect.objectContaining({ kind: "invalid" })),
);

test("every working can be explained under its own name", () => {
  const ids = specimensWorkings.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const one of specimensWorkings) expect(one.sources.length).toBeGreaterThan(0);
});
