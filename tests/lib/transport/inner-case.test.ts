import fc from "fast-check";
import { expect, test } from "vitest";
import { kerstenSideMm } from "#lib/transport/cushion.ts";
import { innerCase, innerWallsMm } from "#lib/transport/inner-case.ts";
import { boardThicknessesMm, crateKinds } from "#lib/transport/schema.ts";

const sides = { lengthMm: 300, widthMm: 200, heightMm: 150 };

test("in a single case the specimen itself lies on the cushion", () => {
  expect(innerCase({ kind: "single-case", sides, massKg: 3 })).toEqual({
    sides,
    massKg: 3,
    bearingShare: 0.5,
    wrapMm: 10,
  });
});

test("a double case adds wrap, lining and plywood on each side", () => {
  const found = innerCase({ kind: "double-case", sides, massKg: 3 });
  expect(found.sides).toEqual({ lengthMm: 388, widthMm: 288, heightMm: 238 });
  expect(found.bearingShare).toBe(1);
  // Shell (388·288·238 − 370·270·220 mm³) of plywood, lining of what is left around the specimen.
  const shellKg = (0.388 * 0.288 * 0.238 - 0.37 * 0.27 * 0.22) * 600;
  const liningKg = (0.37 * 0.27 * 0.22 - 0.3 * 0.2 * 0.15) * 35;
  expect(found.massKg).toBeCloseTo(3 + shellKg + liningKg, 9);
});

test("a jar gets twice the lining", () => {
  const jar = innerCase({ kind: "jar-case", sides, massKg: 3 });
  const double = innerCase({ kind: "double-case", sides, massKg: 3 });
  expect(jar.sides.lengthMm - double.sides.lengthMm).toBe(50);
});

test("a sheet lies flat on a carrier and stands in a slot, however it was measured", () => {
  const measured = { lengthMm: 3, widthMm: 520, heightMm: 380 };
  const flat = innerCase({ kind: "full-face-sheet-carrier", sides: measured, massKg: 0.7, count: 4 });
  expect(flat.sides).toEqual({ lengthMm: 598, widthMm: 458, heightMm: 4 * (3 + 28) + 18 });
  const upright = innerCase({ kind: "upright-slot-case", sides: measured, massKg: 0.7, count: 12 });
  expect(upright.sides).toEqual({ lengthMm: 588, widthMm: 234 + 18, heightMm: 448 });
});

test("an inner case is never thinner than its outer cushion's pads must be, nor lighter than what it holds", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...crateKinds.filter((kind) => kind !== "single-case")),
      fc.constantFrom(...boardThicknessesMm),
      fc.constantFrom(...innerWallsMm),
      fc.integer({ min: 1, max: 30 }),
      fc.record({
        lengthMm: fc.integer({ min: 1, max: 2000 }),
        widthMm: fc.integer({ min: 1, max: 1000 }),
        heightMm: fc.integer({ min: 1, max: 1000 }),
      }),
      (kind, cushionMm, wallMm, count, anySides) => {
        const found = innerCase({ kind, sides: anySides, massKg: 0.5, count, wallMm, cushionMm });
        expect(Math.min(...Object.values(found.sides))).toBeGreaterThanOrEqual(kerstenSideMm(cushionMm));
        expect(found.massKg).toBeGreaterThan(0.5 * count);
      },
    ),
  );
});

test("a thicker wall makes a heavier load", () => {
  const masses = innerWallsMm.map(
    (wallMm) => innerCase({ kind: "double-case", sides, massKg: 1, wallMm }).massKg,
  );
  expect([...masses].sort((a, b) => a - b)).toEqual(masses);
});
