import fc from "fast-check";
import { expect, test } from "vitest";
import {
  dropHeight,
  dropHeightMm,
  dropHeightsOfCarrierMm,
  handlingTypeDropMm,
  ista1aDropMm,
  ista2aDropMm,
  LOWEST_DROP_MM,
} from "#lib/transport/drop-height.ts";
import { carrierClasses } from "#lib/transport/schema.ts";

const masses = fc.double({ min: 0.01, max: 3000, noNaN: true });

test("a row begins with its own mass and ends before the next", () => {
  expect(ista1aDropMm(18.999)).toBe(610);
  expect(ista1aDropMm(19)).toBe(460);
  expect(ista2aDropMm(45)).toBe(310);
});

test("the table of handling types counts a boundary to the lighter row", () => {
  expect(handlingTypeDropMm(9)).toBe(1070);
  expect(handlingTypeDropMm(9.001)).toBe(910);
});

test("the table follows the carrier", () => {
  expect(dropHeight({ grossMassKg: 24, carrierClass: "specialist-door-to-door" })).toEqual({
    dropHeightMm: 460,
    table: "ista-1a",
  });
  expect(dropHeight({ grossMassKg: 24, carrierClass: "mixed-carriers" }).dropHeightMm).toBe(660);
  expect(dropHeight({ grossMassKg: 24, carrierClass: "parcel-or-courier" }).dropHeightMm).toBe(760);
  // Between 9 and 10 kg ISTA 2A asks for more than the table of handling types.
  expect(dropHeight({ grossMassKg: 9.5, carrierClass: "parcel-or-courier" }).dropHeightMm).toBe(970);
});

test("a heavier crate never falls higher", () => {
  fc.assert(
    fc.property(fc.constantFrom(...carrierClasses), masses, masses, (carrier, a, b) => {
      expect(dropHeightMm(carrier, Math.max(a, b))).toBeLessThanOrEqual(
        dropHeightMm(carrier, Math.min(a, b)),
      );
    }),
  );
});

test("a rougher carrier never falls lower, and none falls below 200 mm", () => {
  fc.assert(
    fc.property(masses, (massKg) => {
      const heights = carrierClasses.map((carrier) => dropHeightMm(carrier, massKg));
      expect([...heights].sort((a, b) => a - b)).toEqual(heights);
      expect(Math.min(...heights)).toBeGreaterThanOrEqual(LOWEST_DROP_MM);
    }),
  );
});

test("the list of a carrier's heights holds whatever its table gives", () => {
  fc.assert(
    fc.property(fc.constantFrom(...carrierClasses), masses, (carrier, massKg) => {
      expect(dropHeightsOfCarrierMm(carrier)).toContain(dropHeightMm(carrier, massKg));
    }),
  );
  expect(dropHeightsOfCarrierMm("specialist-door-to-door")).toEqual([200, 310, 460, 610, 760]);
});

test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("a mass of %d kg is out of range", (massKg) => {
  expect(() => dropHeightMm("mixed-carriers", massKg)).toThrow(RangeError);
  expect(() => handlingTypeDropMm(massKg)).toThrow(RangeError);
});

test("both tables show among the steps where the larger counts", () => {
  const { steps } = dropHeight.explain({ grossMassKg: 50, carrierClass: "commercial-freight" });
  expect(steps.map((step) => step.value)).toEqual(["larger-of-ista-2a-and-handling-type", 310, 760, 760]);
});

test("a crate that is too light for the row of a heavier one is designed for the next, and says why", () => {
  const { output, steps } = dropHeight.explain({
    grossMassKg: 20.4,
    carrierClass: "specialist-door-to-door",
    tooLight: [
      { dropHeightMm: 200, grossMassKg: 17 },
      { dropHeightMm: 460, grossMassKg: 18.2 },
    ],
  });
  expect(output.dropHeightMm).toBe(610);
  expect(steps.slice(1)).toEqual([
    { label: "drop height of the table", value: 460, unit: "mm", formula: "row of 20.4 kg, at least 200 mm" },
    {
      label: "a crate designed for 460 mm",
      value: 18.2,
      unit: "kg",
      formula: "too light for it: has to take 610 mm",
    },
    {
      label: "drop height",
      value: 610,
      unit: "mm",
      formula: "lowest that its own crate is heavy enough for",
    },
  ]);
});

test("a lighter crate that is heavy enough after all changes nothing", () => {
  const question = { grossMassKg: 20.4, carrierClass: "specialist-door-to-door" } as const;
  expect(dropHeight({ ...question, tooLight: [{ dropHeightMm: 460, grossMassKg: 19 }] })).toEqual(
    dropHeight(question),
  );
});
