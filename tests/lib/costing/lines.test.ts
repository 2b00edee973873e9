/** The lines that a loan would have by the scale. */
import { expect, test } from "vitest";
import { totalsOf } from "#lib/costing/costing.ts";
import {
  draftOfLine,
  isOfNothing,
  type LoanForCosting,
  linesByScale,
  linesOfQuotation,
  recallMinor,
  scaleRates,
} from "#lib/costing/lines.ts";
import { countedCodes, shareCodes } from "#lib/costing/schema.ts";
import { aCountedLine, aFeeScale, aStatedLine, someLines } from "#tests/support/money.ts";

const crate = { outerLengthMm: 801, outerWidthMm: 600, outerHeightMm: 501 };
const loan: LoanForCosting = {
  purpose: "exhibition",
  specimens: 3,
  crates: [crate, crate],
  isAbroad: true,
  stayDays: 92,
  transitDays: 7,
  costs: [{ minor: 2_400_000, currency: "EUR" }],
  coversItself: false,
  treatmentHours: "0",
};
const lineOf = (code: string, said: Partial<LoanForCosting> = {}) =>
  linesByScale(aFeeScale(), { ...loan, ...said }).find((line) => line.code === code);

test("every line that can be counted stands in the draft once, then the shares", () => {
  expect(linesByScale(aFeeScale(), loan).map(({ code }) => code)).toEqual([...countedCodes, ...shareCodes]);
});

test.each([
  ["loan fee", {}, "1"],
  ["further specimens", {}, "1"],
  ["further specimens", { specimens: 1 }, "0"],
  ["condition check", {}, "3"],
  ["new crate", {}, "2"],
  // 2 × 0.801 × 0.6 × 0.501 = 0.4815612 m³, to the litre
  ["crate volume", {}, "0.482"],
  ["crate volume", { crates: [] }, "0"],
  ["customs", {}, "2"],
  ["customs", { isAbroad: false }, "0"],
  // nobody has stated hours, kilometres or mounts
  ["preparation", {}, "0"],
  ["preparation", { treatmentHours: "2.75" }, "2.75"],
  ["transport out by distance", {}, "0"],
  ["mount", {}, "0"],
  ["return and recall", {}, "1"],
])("%s of %j is counted %s", (code, said, quantity) => {
  expect(lineOf(code, said)?.price).toMatchObject({ kind: "counted", quantity });
});

test("premiums are asked for each currency, and not where the borrower covers itself", () => {
  expect(lineOf("cover on the way")?.price).toMatchObject({
    ofMinor: 2_400_000,
    times: "2",
    unit: "transit",
  });
  expect(lineOf("cover of the stay")?.price).toMatchObject({ times: "92", unit: "day" });
  expect(lineOf("cover of the stay", { coversItself: true })?.price).toMatchObject({ times: "0" });
  const costs = [
    { minor: 1, currency: "EUR" },
    { minor: 2, currency: "NOK" },
  ];
  expect(
    linesByScale(aFeeScale(), { ...loan, costs }).filter(({ code }) => code.startsWith("cover")),
  ).toHaveLength(4);
});

test("recall is a share of the way home, and at least what the scale says", () => {
  expect(recallMinor(aFeeScale(), 42_000)).toBe(30_000);
  expect(recallMinor(aFeeScale(), 100_001)).toBe(40_000);
  expect(scaleRates(aFeeScale(), "teaching")["return and recall"]).toBe(30_000);
});

test("no quotation is without return and emergency recall, at a price", () => {
  expect(linesOfQuotation(someLines())).toEqual(someLines());
  for (const recall of [
    [],
    [aCountedLine("return and recall", "0", 30_000)],
    [aCountedLine("return and recall", "1", 0)],
  ])
    expect(() => linesOfQuotation([aCountedLine("loan fee", "1", 25_000), ...recall])).toThrow(
      expect.objectContaining({ reason: "costing.recall-missing" }),
    );
});

test("lines of nothing stand on no paper", () => {
  expect(
    linesOfQuotation([...someLines(), aStatedLine("none", 0), aCountedLine("mount", "0", 8_500)]),
  ).toEqual(someLines());
  expect(
    isOfNothing({ price: { kind: "share", ofMinor: 5, share: "0", per: "mille", times: "2", unit: "day" } }),
  ).toBe(true);
});

test("a line gives back what went into it", () => {
  const { lines } = totalsOf({ currency: "EUR", lines: someLines(), exchange: [] });
  expect(lines.map(draftOfLine)).toEqual(someLines());
});
