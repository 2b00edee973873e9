import fc from "fast-check";
import { expect, test } from "vitest";
import { handling, handlingModes, teamFilterKg } from "#lib/transport/handling.ts";

const outer = { lengthMm: 800, widthMm: 600, heightMm: 600 };

test.each([
  [16, "one-person"],
  [16.1, "two-persons"],
  [21.3, "two-persons"],
  [21.4, "pallet-truck"],
  [61.6, "pallet-truck"],
])("by the lower filter %d kg goes by %s", (grossMassKg, mode) => {
  expect(handling({ grossMassKg, outer }).mode).toBe(mode);
});

test.each([
  [25, "one-person"],
  [25.1, "two-persons"],
  [33.3, "two-persons"],
  [33.4, "pallet-truck"],
])("by the higher filter, where it is asked for, %d kg goes by %s", (grossMassKg, mode) => {
  expect(handling({ grossMassKg, outer, crew: "men" }).mode).toBe(mode);
});

test("both filters stand beside the answer, and in its steps", () => {
  const { output, steps } = handling.explain({ grossMassKg: 20, outer });
  expect(output).toMatchObject({ onePersonFilterKg: 16, onePersonHigherKg: 25 });
  expect(output.twoPersonFilterKg).toBeCloseTo(21.33, 2);
  expect(output.twoPersonHigherKg).toBeCloseTo(33.33, 2);
  expect(steps.map(({ value }) => value)).toEqual(expect.arrayContaining([16, 25]));
});

test("a long light crate takes two", () => {
  expect(handling({ grossMassKg: 12, outer: { ...outer, lengthMm: 1500 } }).mode).toBe("two-persons");
});

test("a heavier crate never goes by fewer hands", () => {
  const mass = fc.double({ min: 0.1, max: 2000, noNaN: true });
  fc.assert(
    fc.property(mass, mass, (a, b) => {
      const rank = (grossMassKg: number) => handlingModes.indexOf(handling({ grossMassKg, outer }).mode);
      expect(rank(Math.max(a, b))).toBeGreaterThanOrEqual(rank(Math.min(a, b)));
    }),
  );
});

test("the mass stands on each face of every crate, and the rest where it applies", () => {
  expect(handling({ grossMassKg: 12, outer }).cautions).toEqual([
    "mark-mass-on-each-face",
    "may-be-thrown-when-light",
    "never-lift-by-battens",
  ]);
  expect(
    handling({ grossMassKg: 1200, outer, topplesOntoTwo: true, standsUnlashed: false, keepUpright: true })
      .cautions,
  ).toEqual([
    "mark-mass-on-each-face",
    "trolley-or-truck-on-each-floor",
    "topples-onto-two",
    "secure-against-tipping",
    "not-downhill-of-it",
    "keep-upright",
    "mark-centre-of-gravity",
  ]);
});

test("a team of three lifts half of its sum", () => {
  expect(teamFilterKg("men", 3)).toBe(37.5);
  expect(teamFilterKg("men", 1)).toBe(25);
});
