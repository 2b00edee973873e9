import fc from "fast-check";
import { expect, test } from "vitest";
import { passage, routeOutcome } from "#lib/transport/route.ts";
import type { Passage } from "#lib/transport/schema.ts";
import { outcomes } from "#lib/workings/outcome.ts";

const outer = { lengthMm: 1000, widthMm: 700, heightMm: 900 };
const crate = { outer, grossMassKg: 60 };
const rank = (outcome: (typeof outcomes)[number]) => outcomes.indexOf(outcome);

test("a door keeps 20 mm each way, to the millimetre", () => {
  const door = (clearWidthMm: number, clearHeightMm: number) =>
    passage({ crate, passage: { kind: "door", clearWidthMm, clearHeightMm } });
  expect(door(720, 920)).toMatchObject({ outcome: "clear", manner: "upright", spareMm: 0 });
  expect(door(719, 2000)).toMatchObject({ outcome: "bar", fact: "door-width", spareMm: -1 });
  expect(door(900, 919)).toMatchObject({ outcome: "bar", fact: "door-height", spareMm: -1 });
});

test("a truck under the crate needs height", () => {
  const door: Passage = { kind: "door", clearWidthMm: 900, clearHeightMm: 940 };
  expect(passage({ crate, passage: door }).outcome).toBe("clear");
  expect(passage({ crate: { ...crate, raisedMm: 30 }, passage: door }).outcome).toBe("bar");
});

test("a crate that may stand on any side is attended to when only another side passes", () => {
  const low: Passage = { kind: "door", clearWidthMm: 950, clearHeightMm: 750 };
  expect(passage({ crate, passage: low }).outcome).toBe("bar");
  expect(passage({ crate: { ...crate, orientation: "any-side" }, passage: low })).toMatchObject({
    outcome: "attend",
    manner: "on-another-side",
  });
});

test.each<Passage>([
  { kind: "door" },
  { kind: "door", clearWidthMm: 2000 },
  { kind: "corridor-turn" },
  { kind: "corridor-turn", firstWidthMm: 2000 },
  {
    kind: "lift",
    carWidthMm: 2000,
    carDepthMm: 2000,
    carHeightMm: 2200,
    doorWidthMm: 1500,
    doorHeightMm: 2100,
  },
  { kind: "lift", ratedMassKg: 1000 },
  { kind: "ramp" },
])("what nobody has measured is attended to: %j", (unknown) => {
  const found = passage({ crate, passage: unknown });
  expect(found.outcome).toBe("attend");
  expect(found.checks.some((one) => one.available === null)).toBe(true);
});

test("a known bar stays a bar beside an unknown", () => {
  expect(passage({ crate, passage: { kind: "door", clearWidthMm: 600 } }).outcome).toBe("bar");
});

test("one known side of a lift's car bars what is wider", () => {
  expect(passage({ crate, passage: { kind: "lift", carWidthMm: 700 } })).toMatchObject({
    outcome: "bar",
    fact: "lift-plan",
  });
});

test("a crate too long to turn may go on sideways, with attention", () => {
  const square = { outer: { lengthMm: 1400, widthMm: 1380, heightMm: 900 }, grossMassKg: 60 };
  const turn: Passage = { kind: "corridor-turn", firstWidthMm: 1430, secondWidthMm: 1430 };
  expect(passage({ crate: square, passage: turn })).toMatchObject({
    outcome: "attend",
    manner: "sideways",
    spareMm: 10,
  });
});

test("a turn that bars names the width, and the ladder limit when nothing would turn", () => {
  const long = { outer: { ...outer, lengthMm: 5000 }, grossMassKg: 60 };
  const found = passage({
    crate: long,
    passage: { kind: "corridor-turn", firstWidthMm: 1500, secondWidthMm: 1500 },
  });
  expect(found.outcome).toBe("bar");
  expect(found.checks.find((one) => one.fact === "ladder-limit")?.outcome).toBe("bar");
});

test("a low corridor bars when its height is known", () => {
  const turn: Passage = { kind: "corridor-turn", firstWidthMm: 3000, secondWidthMm: 3000 };
  expect(passage({ crate, passage: turn }).outcome).toBe("clear");
  expect(passage({ crate, passage: { ...turn, clearHeightMm: 900 } })).toMatchObject({
    outcome: "bar",
    fact: "corridor-height",
  });
});

// Car of 630 kg: 1100 × 1400 mm, door 800 mm (ISO 8100-30, from memory).
const lift: Passage = {
  kind: "lift",
  doorWidthMm: 800,
  doorHeightMm: 2100,
  carWidthMm: 1100,
  carDepthMm: 1400,
  carHeightMm: 2200,
  ratedMassKg: 630,
};

test("a crate along the walls of the car is clear, across it is attended to, longer than that is barred", () => {
  const of = (lengthMm: number) =>
    passage({ crate: { outer: { lengthMm, widthMm: 300, heightMm: 900 }, grossMassKg: 60 }, passage: lift });
  expect(of(1380)).toMatchObject({ outcome: "clear", spareMm: 0 });
  expect(of(1400)).toMatchObject({ outcome: "attend", manner: "across-the-car" });
  expect(of(1760)).toMatchObject({ outcome: "bar", fact: "lift-plan" });
});

test("a lift that bears the crate but not a person with it is attended to", () => {
  const of = (grossMassKg: number) => passage({ crate: { outer, grossMassKg }, passage: lift });
  expect(of(555).outcome).toBe("clear");
  expect(of(556)).toMatchObject({ outcome: "attend", fact: "lift-load" });
  expect(of(631)).toMatchObject({ outcome: "bar", fact: "lift-load" });
  expect(passage({ crate: { outer, grossMassKg: 556, truckMassKg: 75 }, passage: lift }).outcome).toBe("bar");
});

test("a ramp steeper than 1 in 12 or too heavy to push is attended to, one on which it tips is barred", () => {
  const ramp = (slopePercent: number, grossMassKg: number) =>
    passage({
      crate: { outer, grossMassKg, tipAngleDeg: 35, persons: 2 },
      passage: { kind: "ramp", clearWidthMm: 1500, slopePercent },
    });
  expect(ramp(8, 60).outcome).toBe("clear");
  expect(ramp(12, 60)).toMatchObject({ outcome: "attend", fact: "ramp-slope" });
  expect(ramp(8, 500)).toMatchObject({ outcome: "attend", fact: "ramp-push" });
  expect(ramp(75, 60)).toMatchObject({ outcome: "bar", fact: "ramp-tipping" });
});

test("a ramp's rated load counts the persons", () => {
  const ramp: Passage = { kind: "ramp", clearWidthMm: 1500, slopePercent: 0, ratedMassKg: 200 };
  expect(passage({ crate: { outer, grossMassKg: 125 }, passage: ramp }).outcome).toBe("clear");
  expect(passage({ crate: { outer, grossMassKg: 126 }, passage: ramp })).toMatchObject({
    outcome: "bar",
    fact: "ramp-load",
  });
});

const measureMm = fc.integer({ min: 500, max: 3500 });
const anyPassage: fc.Arbitrary<Passage> = fc.oneof(
  fc.record({ kind: fc.constant("door" as const), clearWidthMm: measureMm, clearHeightMm: measureMm }),
  fc.record({
    kind: fc.constant("corridor-turn" as const),
    firstWidthMm: measureMm,
    secondWidthMm: measureMm,
  }),
  fc.record({
    kind: fc.constant("lift" as const),
    doorWidthMm: measureMm,
    doorHeightMm: measureMm,
    carWidthMm: measureMm,
    carDepthMm: measureMm,
    carHeightMm: measureMm,
    ratedMassKg: fc.integer({ min: 100, max: 2000 }),
  }),
);
const anyCrate = fc.record({
  outer: fc.record({
    lengthMm: fc.integer({ min: 300, max: 2600 }),
    widthMm: fc.integer({ min: 300, max: 1500 }),
    heightMm: fc.integer({ min: 300, max: 2200 }),
  }),
  grossMassKg: fc.integer({ min: 5, max: 800 }),
  orientation: fc.constantFrom("this-side-up" as const, "any-side" as const),
});
const growth = fc.record({
  lengthMm: fc.nat(60),
  widthMm: fc.nat(60),
  heightMm: fc.nat(60),
  massKg: fc.nat(60),
});

test("a larger or heavier crate never has a milder answer", () => {
  fc.assert(
    fc.property(anyPassage, anyCrate, growth, (through, moved, more) => {
      const larger = {
        ...moved,
        grossMassKg: moved.grossMassKg + more.massKg,
        outer: {
          lengthMm: moved.outer.lengthMm + more.lengthMm,
          widthMm: moved.outer.widthMm + more.widthMm,
          heightMm: moved.outer.heightMm + more.heightMm,
        },
      };
      const before = passage({ crate: moved, passage: through });
      const after = passage({ crate: larger, passage: through });
      expect(rank(after.outcome)).toBeGreaterThanOrEqual(rank(before.outcome));
    }),
    { numRuns: 2000 },
  );
});

test("a crate that may stand on any side never has a stricter answer than one that must stand up", () => {
  fc.assert(
    fc.property(anyPassage, anyCrate, (through, moved) => {
      const upright = passage({ crate: { ...moved, orientation: "this-side-up" }, passage: through });
      const any = passage({ crate: { ...moved, orientation: "any-side" }, passage: through });
      expect(rank(any.outcome)).toBeLessThanOrEqual(rank(upright.outcome));
    }),
    { numRuns: 500 },
  );
});

test("an outcome that is not clear always has its reason among the checks or in the manner", () => {
  fc.assert(
    fc.property(anyPassage, anyCrate, (through, moved) => {
      const found = passage({ crate: moved, passage: through });
      const failing = found.checks.filter((one) => one.outcome !== "clear");
      expect(found.outcome === "clear").toBe(failing.length === 0 && found.manner === "upright");
      for (const one of found.checks) {
        expect(one.spare).toBeCloseTo((one.available ?? Number.NaN) - one.needed, 9);
      }
    }),
  );
});

test("a way in of which nothing is known is attended to", () => {
  expect(routeOutcome([])).toBe("attend");
  const clear = passage({ crate, passage: { kind: "door", clearWidthMm: 2000, clearHeightMm: 2000 } });
  const bar = passage({ crate, passage: { kind: "door", clearWidthMm: 500, clearHeightMm: 2000 } });
  expect(routeOutcome([clear])).toBe("clear");
  expect(routeOutcome([clear, bar])).toBe("bar");
});
