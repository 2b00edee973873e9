import { describe, expect, test } from "vitest";
import { deltaE76, deltaE2000, yellownessIndex } from "#lib/condition/colour.ts";
import { colourDifference, yellowness } from "#lib/condition/colour-workings.ts";
import { Refusal } from "#lib/platform/refusal.ts";

const before = { lightness: 92, a: -0.5, b: 2 };
const after = { lightness: 90.5, a: -0.8, b: 6 };

describe("colour difference", () => {
  test("gives both differences, the grade and the word", () => {
    expect(colourDifference({ first: before, second: after })).toEqual({
      deltaE2000: deltaE2000(before, after),
      deltaE76: deltaE76(before, after),
      // ΔE*ab 4.28 lies nearer 4.8 than 3.4.
      greyScaleGrade: "2–3",
      change: "significant",
    });
  });

  test("shows the three single differences first", () => {
    const { steps } = colourDifference.explain({ first: before, second: after });
    expect(steps.slice(0, 3).map((step) => step.value)).toEqual([-1.5, -0.30000000000000004, 4]);
  });

  test("refuses a lightness above 100", () =>
    expect(() => colourDifference({ first: { ...before, lightness: 101 }, second: after })).toThrow(Refusal));
});

describe("yellowness", () => {
  const clear = { x: 76.2704, y: 80.7044, z: 83.8385 };

  test("alone is not compared", () =>
    expect(yellowness({ reading: clear })).toEqual({
      yellowness: yellownessIndex(clear, "D65/10°"),
      rise: null,
      change: "not-compared",
    }));

  test.each([
    [83.8385, "steady"],
    [82, "watch"],
    [79, "limits-use"],
    [88, "steady"],
  ] as const)("with Z at %d it is %s", (z, change) => {
    const result = yellowness({ reading: { ...clear, z }, earlier: clear });
    expect(result.change).toBe(change);
    expect(result.rise).toBeCloseTo((114.98 * (83.8385 - z)) / 80.7044, 6);
  });

  test("uses the coefficients of the stated observer", () =>
    expect(yellowness({ reading: clear, illuminantObserver: "C/2°" }).yellowness).toBe(
      yellownessIndex(clear, "C/2°"),
    ));

  test("refuses a black reading", () =>
    expect(() => yellowness({ reading: { x: 0, y: 0, z: 0 } })).toThrow(Refusal));
});
