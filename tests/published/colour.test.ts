/** Colour against published pairs, worked values and grades. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  deltaE76,
  deltaE2000,
  greyScaleGrade,
  labFromXyz,
  whitePoints,
  type Xyz,
  xyzFromLab,
  yellownessIndex,
} from "#lib/condition/colour.ts";

function whiteFromChromaticity(x: number, y: number): Xyz {
  return { x: x / y, y: 1, z: (1 - x - y) / y };
}

// Sharma, Wu and Dalal, Color Research and Application 30:21–30 (2005), table 1; four printed decimals, 1e-4.
describe("Sharma, Wu and Dalal 2005, table 1", () => {
  const rows = readFileSync(new URL("../golden/ciede2000.tsv", import.meta.url), "utf8")
    .trim()
    .split("\n")
    .slice(2)
    .map((line) => line.split("\t").map(Number));

  test("holds all 34 pairs", () => expect(rows).toHaveLength(34));

  test.each(rows)("pair %d", (_pair, ...numbers) => {
    const [l1, a1, b1, l2, a2, b2, expected] = numbers as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const first = { lightness: l1, a: a1, b: b1 };
    const second = { lightness: l2, a: a2, b: b2 };
    expect(Math.abs(deltaE2000(first, second) - expected)).toBeLessThan(1e-4);
    expect(Math.abs(deltaE2000(second, first) - expected)).toBeLessThan(1e-4);
  });
});

// Worked values in the documentation of an open colour library, which cites ASTM E313-15e1; four decimals.
describe("ASTM E313 yellowness", () => {
  test("XYZ 95, 100, 105 under D65/2° is 4.3400", () =>
    expect(Math.abs(yellownessIndex({ x: 95, y: 100, z: 105 }, "D65/2°") - 4.34)).toBeLessThan(1e-4));

  // Worked from the same coefficients separately.
  test.each([
    [{ x: 95, y: 100, z: 105 }, "D65/10°", 2.8945],
    [{ x: 95, y: 100, z: 105 }, "C/2°", 10.0895],
    [{ x: 95, y: 100, z: 105 }, "C/10°", 9.074],
    [{ x: 105, y: 100, z: 95 }, "D65/2°", 28.66],
    [{ x: 105, y: 100, z: 95 }, "D65/10°", 27.4055],
  ] as const)("%o under %s is %d", (colour, condition, expected) => {
    expect(Math.abs(yellownessIndex(colour, condition) - expected)).toBeLessThan(1e-4);
  });

  test.each(["C/2°", "D65/2°", "C/10°", "D65/10°"] as const)("the white of %s is not yellow", (condition) => {
    expect(Math.abs(yellownessIndex(whitePoints[condition], condition))).toBeLessThan(1e-3);
  });

  // A sheet before and after, D65/10°, worked separately; the Lab values are printed to four figures.
  test.each([
    [{ lightness: 92, a: -0.5, b: 2 }, 3.535],
    [{ lightness: 90.5, a: -0.8, b: 6 }, 11.059],
  ])("the sheet %o", (lab, expected) => {
    const white = whitePoints["D65/10°"];
    expect(Math.abs(yellownessIndex(xyzFromLab(lab, white), "D65/10°") - expected)).toBeLessThan(1e-3);
  });
});

// Test file of an open colour library (models, CIELAB); XYZ on 0–1, white from its chromaticity; 1e-6.
describe("CIELAB from XYZ", () => {
  const grey = { x: 0.07049534, y: 0.1008, z: 0.09558313 };
  test.each([
    [grey, whiteFromChromaticity(0.3457, 0.3585), [37.9856291, -23.62907688, -4.41746615]],
    [grey, whiteFromChromaticity(0.3127, 0.329), [37.9856291, -22.61920654, 4.19811236]],
    [
      { x: 0.4709771, y: 0.3495, z: 0.11301649 },
      whiteFromChromaticity(0.3457, 0.3585),
      [65.7097188, 41.56438554, 37.78303554],
    ],
  ] as const)("%o", (colour, white, [lightness, a, b]) => {
    const lab = labFromXyz(colour, white);
    expect(Math.abs(lab.lightness - lightness)).toBeLessThan(1e-6);
    expect(Math.abs(lab.a - a)).toBeLessThan(1e-6);
    expect(Math.abs(lab.b - b)).toBeLessThan(1e-6);
    const back = xyzFromLab({ lightness, a, b }, white);
    expect(Math.abs(back.x - colour.x)).toBeLessThan(1e-8);
    expect(Math.abs(back.y - colour.y)).toBeLessThan(1e-8);
    expect(Math.abs(back.z - colour.z)).toBeLessThan(1e-8);
  });
});

// ISO 105-A02 (EN 20105-A02:1994), table of the grey scale.
describe("grey scale for change in colour", () => {
  test.each([
    [0, "5"],
    [0.8, "4–5"],
    [1.7, "4"],
    [2.5, "3–4"],
    [3.4, "3"],
    [4.8, "2–3"],
    [6.8, "2"],
    [9.6, "1–2"],
    [13.6, "1"],
  ])("a difference of %d is grade %s", (difference, grade) => expect(greyScaleGrade(difference)).toBe(grade));
});

// Worked from the definition separately; four decimals.
test("the CIE 1976 difference of a yellowed sheet is 4.2825", () => {
  const difference = deltaE76({ lightness: 92, a: -0.5, b: 2 }, { lightness: 90.5, a: -0.8, b: 6 });
  expect(Math.abs(difference - 4.2825)).toBeLessThan(1e-4);
});
