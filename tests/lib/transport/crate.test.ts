import fc from "fast-check";
import { expect, test } from "vitest";
import { Refusal } from "#lib/platform/refusal.ts";
import { chooseWall, crate, tipAngleDeg } from "#lib/transport/crate.ts";

const anyCrate = fc.record({
  sides: fc.record({
    lengthMm: fc.integer({ min: 50, max: 2000 }),
    widthMm: fc.integer({ min: 50, max: 1000 }),
    heightMm: fc.integer({ min: 50, max: 1500 }),
  }),
  massKg: fc.double({ min: 0.1, max: 400, noNaN: true }),
  cushionMm: fc.constantFrom(25, 50, 75, 100, 125, 150),
  stackable: fc.boolean(),
});

test.each([
  [20, 800, "light"],
  [61, 800, "standard"],
  [20, 1300, "standard"],
  [228, 800, "heavy"],
  [20, 2100, "heavy"],
  [455, 800, "framed"],
  [20, 4000, "framed"],
])("%d kg with a longest inner side of %d mm get a %s wall", (massKg, longestMm, name) => {
  expect(chooseWall(massKg, { lengthMm: longestMm, widthMm: 500, heightMm: 400 }).name).toBe(name);
});

test("beyond the table an engineer designs it", () => {
  const ask = () =>
    crate({ sides: { lengthMm: 500, widthMm: 500, heightMm: 500 }, massKg: 1135, cushionMm: 50 });
  expect(ask).toThrow(Refusal);
  expect(ask).toThrow(/transport.crate-beyond-table/);
  expect(() =>
    crate({ sides: { lengthMm: 4900, widthMm: 500, heightMm: 500 }, massKg: 50, cushionMm: 50 }),
  ).toThrow(Refusal);
});

test("gross mass is the sum of the parts to a tenth, as it is shown, and all parts weigh something", () => {
  fc.assert(
    fc.property(anyCrate, (input) => {
      const built = crate(input);
      const parts = Object.values(built.partsKg);
      expect(parts.every((partKg) => partKg > 0)).toBe(true);
      const sumKg = parts.reduce((sum, partKg) => sum + partKg, 0);
      expect(Math.abs(built.grossMassKg - sumKg)).toBeLessThanOrEqual(0.05 + 1e-9);
      expect(Number(built.grossMassKg.toFixed(1))).toBe(built.grossMassKg);
    }),
  );
});

test("load, inner and outer lie in each other", () => {
  fc.assert(
    fc.property(anyCrate, (input) => {
      const { inner, outer } = crate(input);
      for (const side of ["lengthMm", "widthMm", "heightMm"] as const) {
        expect(inner[side]).toBe(input.sides[side] + 2 * (10 + input.cushionMm));
        expect(outer[side]).toBeGreaterThan(inner[side]);
      }
    }),
  );
});

test("the centre of gravity lies inside the crate, and a low load lowers it", () => {
  fc.assert(
    fc.property(anyCrate, (input) => {
      const middle = crate(input);
      const low = crate({ ...input, centreOfGravityShare: 0.2 });
      expect(middle.centreOfGravityHeightMm).toBeGreaterThan(middle.wall.skidHeightMm / 2);
      expect(middle.centreOfGravityHeightMm).toBeLessThan(middle.outer.heightMm);
      expect(low.centreOfGravityHeightMm).toBeLessThan(middle.centreOfGravityHeightMm);
      expect(low.tipAngleDeg).toBeGreaterThan(middle.tipAngleDeg);
    }),
  );
});

test("heavier contents or a thicker cushion never make a lighter crate", () => {
  fc.assert(
    fc.property(anyCrate, fc.double({ min: 0, max: 100, noNaN: true }), (input, moreKg) => {
      const here = crate(input).grossMassKg;
      expect(crate({ ...input, massKg: input.massKg + moreKg }).grossMassKg).toBeGreaterThanOrEqual(here);
      expect(crate({ ...input, cushionMm: input.cushionMm + 25 }).grossMassKg).toBeGreaterThan(here);
    }),
  );
});

test("nothing may stand on a lid that is not for stacking", () => {
  const sides = { lengthMm: 600, widthMm: 400, heightMm: 300 };
  expect(crate({ sides, massKg: 10, cushionMm: 50, stackable: false }).lidLoadKn).toBe(0);
  expect(crate({ sides, massKg: 10, cushionMm: 50 }).lidLoadKn).toBeGreaterThan(0);
});

test("a middle batten stands where the unheld length would exceed 610 mm", () => {
  const sides = { lengthMm: 400, widthMm: 400, heightMm: 400 };
  const edgesOnly = { ...chooseWall(100, sides), middleBattens: false };
  const wall = { ...edgesOnly, middleBattens: true };
  const battensKg = (lengthMm: number, by: typeof wall) =>
    crate({ sides: { ...sides, lengthMm }, massKg: 100, wrapMm: 0, cushionMm: 50, wall: by }).partsKg.battens;
  // Shell = length + 124 mm; unheld = shell − 2 × 70 mm.
  expect(battensKg(626, wall)).toBeCloseTo(battensKg(626, edgesOnly), 9);
  const oneMiddleMm = 524 - 140;
  expect(battensKg(627, wall) - battensKg(627, edgesOnly)).toBeCloseTo(
    (3 * oneMiddleMm * 70 * 22 * 480) / 1e9,
    9,
  );
});

test("a tall crate on a narrow base is told", () => {
  const tall = crate({ sides: { lengthMm: 600, widthMm: 250, heightMm: 1500 }, massKg: 20, cushionMm: 50 });
  expect(tall).toMatchObject({ topplesOntoTwo: true, standsUnlashedOnRoad: false });
  const flat = crate({ sides: { lengthMm: 600, widthMm: 500, heightMm: 200 }, massKg: 20, cushionMm: 50 });
  expect(flat).toMatchObject({ topplesOntoTwo: false, standsUnlashedOnRoad: true });
});

test("half the base over the height gives the angle", () => {
  expect(tipAngleDeg(1000, 500)).toBeCloseTo(45, 9);
  expect(() => tipAngleDeg(0, 500)).toThrow(RangeError);
});
