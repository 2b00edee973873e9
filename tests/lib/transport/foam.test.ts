import fc from "fast-check";
import { expect, test } from "vitest";
import {
  curveThroughOptimum,
  curveThroughPoints,
  cushionOptimum,
  cushionPeakG,
  foams,
  foamsToTry,
  MOST_PEAK_G,
} from "#lib/transport/foam.ts";
import { foamIds } from "#lib/transport/schema.ts";

const foam = fc.constantFrom(...foamIds.map((id) => foams[id]));
const fallMm = fc.double({ min: 100, max: 1200, noNaN: true });
const thicknessMm = fc.double({ min: 20, max: 200, noNaN: true });
const stressKpa = fc.double({ min: 0.1, max: 20, noNaN: true });

test("no static stress gives less shock than the best one", () => {
  fc.assert(
    fc.property(foam, fallMm, thicknessMm, stressKpa, (curve, fall, thickness, stress) => {
      const optimum = cushionOptimum(curve, fall, thickness);
      expect(cushionPeakG(curve, stress, fall, thickness)).toBeGreaterThanOrEqual(optimum.peakG * (1 - 1e-9));
      expect(cushionPeakG(curve, optimum.staticStressKpa, fall, thickness)).toBeCloseTo(optimum.peakG, 6);
    }),
  );
});

test("drop and thickness count only by their ratio", () => {
  fc.assert(
    fc.property(foam, fallMm, thicknessMm, stressKpa, (curve, fall, thickness, stress) => {
      const once = cushionPeakG(curve, stress, fall, thickness);
      expect(cushionPeakG(curve, stress, fall * 1.5, thickness * 1.5) / once).toBeCloseTo(1, 9);
    }),
  );
});

test("a higher fall gives more shock, a thicker cushion less", () => {
  fc.assert(
    fc.property(foam, fallMm, thicknessMm, stressKpa, (curve, fall, thickness, stress) => {
      const here = cushionPeakG(curve, stress, fall, thickness);
      expect(cushionPeakG(curve, stress, fall * 1.1, thickness)).toBeGreaterThanOrEqual(here);
      expect(cushionPeakG(curve, stress, fall, thickness * 1.1)).toBeLessThanOrEqual(here);
    }),
  );
});

test("the shock is bounded whatever the stress", () => {
  expect(cushionPeakG(foams["polyethylene-35"], 1e6, 2000, 25)).toBe(MOST_PEAK_G);
});

test("a curve through its lowest point has its lowest point there", () => {
  const point = { thicknessMm: 50, dropHeightMm: 610, staticStressKpa: 4.8, peakG: 50 };
  const optimum = cushionOptimum(curveThroughOptimum(point), 610, 50);
  expect(optimum.staticStressKpa).toBeCloseTo(4.8, 9);
  expect(optimum.peakG).toBeCloseTo(50, 9);
});

test("a curve through points of a curve is that curve", () => {
  const curve = foams["polyethylene-35"];
  const points = [1, 2, 4, 8].map((staticStressKpa) => ({
    thicknessMm: 75,
    dropHeightMm: 610,
    staticStressKpa,
    peakG: cushionPeakG(curve, staticStressKpa, 610, 75),
  }));
  const fitted = curveThroughPoints(points);
  expect(fitted.aKpa).toBeCloseTo(curve.aKpa, 6);
  expect(fitted.bPerKpa).toBeCloseTo(curve.bPerKpa, 9);
});

test("points of one energy, or falling ones, make no curve", () => {
  const at = (staticStressKpa: number, peakG: number) => ({
    thicknessMm: 50,
    dropHeightMm: 500,
    staticStressKpa,
    peakG,
  });
  expect(() => curveThroughPoints([at(2, 40), at(2, 41), at(2, 42)])).toThrow(RangeError);
  expect(() => curveThroughPoints([at(1, 100), at(2, 20), at(4, 5)])).toThrow(RangeError);
});

test("an own foam takes the place of the list", () => {
  const own = {
    densityKgM3: 30,
    creepLimitKpa: 5,
    points: [1, 3, 6].map((staticStressKpa) => ({
      thicknessMm: 50,
      dropHeightMm: 600,
      staticStressKpa,
      peakG: cushionPeakG({ aKpa: 50, bPerKpa: 0.02 }, staticStressKpa, 600, 50),
    })),
  };
  expect(foamsToTry(own, "polyethylene-35").map((one) => one.id)).toEqual(["own"]);
  expect(foamsToTry(undefined, "ester-polyurethane-32").map((one) => one.id)).toEqual([
    "ester-polyurethane-32",
  ]);
  expect(foamsToTry(undefined, undefined).map((one) => one.id)).toEqual([...foamIds]);
});

test.each([
  [0, 500, 50],
  [1, -1, 50],
  [1, 500, 0],
  [Number.NaN, 500, 50],
])("stress %d, fall %d, thickness %d are out of range", (stress, fall, thickness) => {
  expect(() => cushionPeakG(foams["polyethylene-35"], stress, fall, thickness)).toThrow(RangeError);
});
