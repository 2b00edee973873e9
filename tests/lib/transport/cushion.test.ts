import fc from "fast-check";
import { expect, test } from "vitest";
import { Refusal } from "#lib/platform/refusal.ts";
import {
  boardsOfCrateMm,
  CREEP_LOSS,
  cushion,
  kerstenSideMm,
  SHOCK_MARGIN,
  tryCushion,
} from "#lib/transport/cushion.ts";
import { cushionPeakG, foams, STANDARD_GRAVITY } from "#lib/transport/foam.ts";

const sides = { lengthMm: 600, widthMm: 400, heightMm: 300 };

const anySides = fc.record({
  lengthMm: fc.integer({ min: 60, max: 2500 }),
  widthMm: fc.integer({ min: 60, max: 1200 }),
  heightMm: fc.integer({ min: 60, max: 1200 }),
});
const anyCushion = fc.record({
  massKg: fc.double({ min: 0.2, max: 400, noNaN: true }),
  sides: anySides,
  bearingShare: fc.constantFrom(0.5, 1),
  dropHeightMm: fc.constantFrom(200, 310, 460, 610, 760, 970),
  peakG: fc.integer({ min: 15, max: 80 }),
});

test("a cushion that holds keeps every promise on every face", () => {
  let held = 0;
  fc.assert(
    fc.property(anyCushion, (input) => {
      const found = cushion(input);
      if (!found.holds) return;
      held += 1;
      const foam = foams[found.foam === "own" ? "polyethylene-35" : found.foam];
      const weightN = input.massKg * STANDARD_GRAVITY;
      const shortestMm = Math.min(input.sides.lengthMm, input.sides.widthMm);
      for (const face of found.faces) {
        const stressKpa = (weightN / (face.padCount * face.padShortMm * face.padLongMm)) * 1000;
        expect(face.staticStressKpa).toBeCloseTo(stressKpa, 6);
        const peakG = cushionPeakG(foam, stressKpa, input.dropHeightMm, found.thicknessMm);
        expect(peakG * (1 + SHOCK_MARGIN)).toBeLessThanOrEqual(input.peakG * (1 + 1e-9));
        const creptMm = found.thicknessMm * (1 - CREEP_LOSS);
        expect(cushionPeakG(foam, stressKpa, input.dropHeightMm, creptMm)).toBeLessThanOrEqual(
          input.peakG * (1 + 1e-9),
        );
        expect(stressKpa).toBeLessThanOrEqual(foam.creepLimitKpa * (1 + 1e-9));
        expect(face.padShortMm).toBeGreaterThanOrEqual(kerstenSideMm(found.thicknessMm));
        expect(face.padShortMm).toBeLessThanOrEqual(face.padLongMm);
        if (face.face === "base-and-lid") {
          expect(face.padShortMm).toBeLessThanOrEqual(shortestMm);
        }
      }
    }),
    { numRuns: 200 },
  );
  expect(held).toBeGreaterThan(20);
});

test("pads never cover more than the share of the face that can bear load", () => {
  fc.assert(
    fc.property(anyCushion, (input) => {
      const { lengthMm, widthMm, heightMm } = input.sides;
      const areas = {
        "base-and-lid": lengthMm * widthMm,
        "long-sides": Math.max(lengthMm, widthMm) * heightMm,
        ends: Math.min(lengthMm, widthMm) * heightMm,
      };
      for (const face of cushion(input).faces) {
        expect(face.bearingAreaMm2).toBeLessThanOrEqual(areas[face.face] * input.bearingShare * (1 + 1e-9));
      }
    }),
  );
});

test("a lower fall, or contents that bear more, never need a thicker cushion", () => {
  fc.assert(
    fc.property(anyCushion, (input) => {
      const here = cushion(input);
      if (!here.holds) return;
      const tougher = cushion({ ...input, peakG: input.peakG + 10 });
      expect(tougher.holds).toBe(true);
      expect(tougher.thicknessMm).toBeLessThanOrEqual(here.thicknessMm);
    }),
  );
});

test("no thinner board holds than the one chosen", () => {
  const found = cushion({ massKg: 25, sides, dropHeightMm: 610, peakG: 40 });
  expect(found.thicknessMm).toBe(75);
  for (const thinnerMm of [25, 50] as const) {
    const thinner = cushion({ massKg: 25, sides, dropHeightMm: 610, peakG: 40, thicknessMm: thinnerMm });
    expect(thinner.holds).toBe(false);
    expect(thinner.faults).toContain("shock");
    expect(thinner.wouldHold?.thicknessMm).toBe(75);
  }
});

test("each face has its own area when the face is small", () => {
  const found = cushion({
    massKg: 60,
    sides: { lengthMm: 900, widthMm: 500, heightMm: 120 },
    dropHeightMm: 200,
    peakG: 60,
  });
  expect(found.faces.map((face) => face.face)).toEqual(["base-and-lid", "long-sides", "ends"]);
  expect(found.faces.every((face) => face.padShortMm <= 500)).toBe(true);
  expect(found.faces[2]?.padShortMm).toBeLessThanOrEqual(120);
});

test("what would hold is told when nothing does, and does hold", () => {
  const light = {
    massKg: 0.5,
    sides: { lengthMm: 250, widthMm: 250, heightMm: 250 },
    dropHeightMm: 760,
    peakG: 20,
  };
  const found = cushion(light);
  expect(found.holds).toBe(false);
  const { wouldHold } = found;
  expect(wouldHold?.massKg).toBeGreaterThan(0.5);
  expect(cushion({ ...light, massKg: wouldHold?.massKg ?? 0.5 }).holds).toBe(true);
  expect(wouldHold?.peakG).toBeGreaterThan(20);
  expect(cushion({ ...light, peakG: wouldHold?.peakG ?? 20 }).holds).toBe(true);
});

test("a lower drop is told where that would do", () => {
  const fragile = { massKg: 6, sides, dropHeightMm: 1070, peakG: 20 };
  const lowerMm = cushion(fragile).wouldHold?.dropHeightMm ?? null;
  expect(lowerMm).not.toBeNull();
  expect(cushion({ ...fragile, dropHeightMm: lowerMm ?? 1 }).holds).toBe(true);
  expect(cushion({ ...fragile, dropHeightMm: (lowerMm ?? 1) + 10 }).holds).toBe(false);
});

test("an overloaded small face is a fault of creep", () => {
  const load = { sides: { lengthMm: 300, widthMm: 300, heightMm: 300 }, massKg: 200, bearingShare: 1 };
  expect(tryCushion(load, foams["polyethylene-35"], 50, 310, 60).faults).toContain("creep");
});

test("a load narrower than its pad must be is a fault of buckling", () => {
  const load = { sides: { lengthMm: 300, widthMm: 300, heightMm: 60 }, massKg: 5, bearingShare: 1 };
  expect(tryCushion(load, foams["polyethylene-35"], 75, 310, 60).faults).toContain("buckling");
});

test("own points override the list", () => {
  const points = [2, 4, 8].map((staticStressKpa) => ({
    thicknessMm: 75,
    dropHeightMm: 610,
    staticStressKpa,
    peakG: cushionPeakG({ aKpa: 70, bPerKpa: 0.017 }, staticStressKpa, 610, 75),
  }));
  const found = cushion({
    massKg: 25,
    sides,
    dropHeightMm: 610,
    peakG: 40,
    ownFoam: { densityKgM3: 33, creepLimitKpa: 8, points },
  });
  expect(found).toMatchObject({ holds: true, foam: "own", foamDensityKgM3: 33 });
});

test("own points without a curve are refused with the field named", () => {
  const flat = { thicknessMm: 50, dropHeightMm: 500, staticStressKpa: 2, peakG: 40 };
  const ask = () =>
    cushion({
      massKg: 25,
      sides,
      dropHeightMm: 610,
      peakG: 40,
      ownFoam: { densityKgM3: 33, creepLimitKpa: 8, points: [flat, flat, flat] },
    });
  expect(ask).toThrow(Refusal);
  expect(ask).toThrow(/transport.no-cushion-curve/);
});

test("very fragile contents get at least 100 mm in a crate, all others 50 mm", () => {
  expect(boardsOfCrateMm(20)).toEqual([100, 125, 150]);
  expect(boardsOfCrateMm(25)[0]).toBe(100);
  expect(boardsOfCrateMm(26)[0]).toBe(50);
});

test("absurd but allowed input gets finite figures", () => {
  const speck = { lengthMm: 0.1, widthMm: 0.1, heightMm: 0.1 };
  for (const massKg of [0.001, 3000]) {
    const found = cushion({ massKg, sides: speck, dropHeightMm: 2000, peakG: 5 });
    expect(found.holds).toBe(false);
    expect(Number.isFinite(found.peakG)).toBe(true);
  }
});

test.each([{ massKg: Number.NaN }, { massKg: 0 }, { peakG: 1 }, { dropHeightMm: -10 }, { thicknessMm: 60 }])(
  "input with %j is refused",
  (wrong) => {
    expect(() => cushion.explain({ massKg: 25, sides, dropHeightMm: 610, peakG: 40, ...wrong })).toThrow(
      Refusal,
    );
  },
);
