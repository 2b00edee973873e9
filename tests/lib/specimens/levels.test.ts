import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Landmark,
  levelAtCount,
  levelAtSheet,
  levelCount,
  levelCountAtSheet,
  orderedLandmarks,
  sheetAtLevel,
} from "#lib/specimens/levels.ts";
import { vertebralLevels } from "#lib/specimens/schema.ts";

test.each([
  ["C1", 1],
  ["C7", 7],
  ["T1", 8],
  ["T12", 19],
  ["L1", 20],
  ["L5", 24],
  ["S1", 25],
  ["S5", 29],
  ["Co", 30],
] as const)("%s counts %i", (level, count) => {
  expect(levelCount(level)).toBe(count);
  expect(levelAtCount(count)).toBe(level);
});

test("there is no level above the first or below the last", () => {
  expect(levelAtCount(0)).toBeNull();
  expect(levelAtCount(31)).toBeNull();
  expect(levelAtCount(Number.NaN)).toBeNull();
});

const known: Landmark[] = [
  { number: 30, level: "T5" },
  { number: 10, level: "T1" },
  { number: 90, level: "L1" },
];

describe("between known sheets", () => {
  test.each([
    [10, "T1"],
    [15, "T2"],
    [20, "T3"],
    [30, "T5"],
    [60, "T9"],
    [90, "L1"],
  ] as const)("sheet %i lies at %s", (number, level) => expect(levelAtSheet(known, number)).toBe(level));

  test("each stretch runs straight by itself", () => {
    expect(levelCountAtSheet(known, 25)).toBeCloseTo(11, 12);
    expect(levelCountAtSheet(known, 60)).toBeCloseTo(16, 12);
  });

  test("a level has its sheet", () => {
    expect(sheetAtLevel(known, "T3")).toBeCloseTo(20, 12);
    expect(sheetAtLevel(known, "T9")).toBeCloseTo(60, 12);
  });

  test("numbering from foot to head runs the other way", () => {
    const upward: Landmark[] = [
      { number: 1, level: "L1" },
      { number: 61, level: "T1" },
    ];
    expect(levelAtSheet(upward, 31)).toBe("T7");
    expect(sheetAtLevel(upward, "T7")).toBeCloseTo(31, 12);
  });
});

describe("beyond known sheets", () => {
  test("nothing is said", () => {
    expect(levelAtSheet(known, 9)).toBeNull();
    expect(levelAtSheet(known, 91)).toBeNull();
    expect(sheetAtLevel(known, "C7")).toBeNull();
  });

  test("the nearest stretch goes on when asked for", () => {
    expect(levelAtSheet(known, 5, true)).toBe("C7");
    expect(sheetAtLevel(known, "L2", true)).toBeCloseTo(97.5, 12);
  });

  test("one known sheet says only itself", () => {
    const one: Landmark[] = [{ number: 10, level: "T1" }];
    expect(levelAtSheet(one, 10)).toBe("T1");
    expect(levelAtSheet(one, 11)).toBeNull();
    expect(levelAtSheet([], 10)).toBeNull();
    expect(levelCountAtSheet(known, Number.NaN)).toBeNull();
  });
});

test.each([
  [
    "levels that turn round",
    [
      ["T1", 1],
      ["T5", 2],
      ["T3", 3],
    ],
  ],
  [
    "one level twice",
    [
      ["T1", 1],
      ["T1", 2],
    ],
  ],
  [
    "two levels at one sheet",
    [
      ["T1", 1],
      ["T2", 1],
    ],
  ],
] as const)("%s are no order", (_what, pairs) => {
  const landmarks = pairs.map(([level, number]) => ({ level, number }));
  expect(orderedLandmarks(landmarks)).toBeNull();
  expect(levelAtSheet(landmarks, 1)).toBeNull();
});

test("the sheet at a level lies at that level", () => {
  const rising = fc
    .uniqueArray(fc.nat(400), { minLength: 2, maxLength: 12 })
    .map((numbers) =>
      numbers
        .sort((one, other) => one - other)
        .map((number, index): Landmark => ({ number, level: vertebralLevels[index * 2] ?? "C1" })),
    );
  fc.assert(
    fc.property(rising, fc.nat(), (landmarks, seed) => {
      const level = vertebralLevels[seed % (landmarks.length * 2 - 1)] ?? "C1";
      const number = sheetAtLevel(landmarks, level);
      expect(levelCountAtSheet(landmarks, number ?? Number.NaN)).toBeCloseTo(levelCount(level), 6);
    }),
  );
});
