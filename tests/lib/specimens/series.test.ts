/** Worked values of series geometry, computed by hand for this project, and what must hold for any series. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  blockLengthMm,
  coverage,
  cutChance,
  missingNumbers,
  nearestSheet,
  numberRuns,
  type SeriesCut,
  sheetCountOf,
  sheetPositions,
  sheetsCutting,
} from "#lib/specimens/series.ts";

const cut = (
  sheetCount: number,
  thicknessMm: number,
  sawLossMm: number,
  said: Partial<SeriesCut> = {},
): SeriesCut => ({
  firstNumber: 1,
  sheetCount,
  thicknessMm,
  sawLossMm,
  startLevelMm: 0,
  ...said,
});

describe("worked values", () => {
  test.each([
    // sheets, thickness, loss, block length, coverage
    [100, 3.5, 1, 449, 0.77951],
    [40, 2.5, 1, 139, 0.71942],
    [200, 1, 0.02, 203.98, 0.98049],
    [66, 3.5, 1, 296, 0.78041],
    [1, 3, 1, 3, 1],
  ])(
    "%i sheets of %f mm with %f mm loss make a block of %f mm",
    (count, thickness, loss, length, covered) => {
      const positions = sheetPositions(cut(count, thickness, loss));
      expect(blockLengthMm(positions)).toBeCloseTo(length, 9);
      expect(coverage(positions)).toBeCloseTo(covered, 5);
    },
  );

  test("a block of 300 mm gives 66 sheets of 3.5 mm", () => expect(sheetCountOf(300, 3.5, 1)).toBe(66));
  test("a block shorter than one sheet gives none", () => expect(sheetCountOf(3.4, 3.5, 1)).toBe(0));

  const series = sheetPositions(cut(66, 3.5, 1));

  test.each([
    // position, sheet, distance, in a gap
    [3.5, 1, 0, false],
    [3.9, 1, 0.4, true],
    [4.1, 2, 0.4, true],
    [4.5, 2, 0, false],
    [20, 5, 0, false],
    [22, 5, 0.5, true],
    [-2, 1, 2, true],
    [300, 66, 4, true],
  ])("at %f mm the nearest sheet is %i", (position, number, distance, gap) => {
    const nearest = nearestSheet(series, position);
    expect(nearest?.number).toBe(number);
    expect(nearest?.distanceMm).toBeCloseTo(distance, 9);
    expect(nearest?.between !== null).toBe(gap);
  });

  test("a position that fell to the saw has two neighbours", () =>
    expect(nearestSheet(series, 3.9)?.between).toMatchObject({ before: 1, behind: 2 }));

  test("a structure from 118 to 231 mm is cut by sheets 27 to 52", () => {
    const cutting = sheetsCutting(series, 118, 231);
    expect([cutting[0], cutting.at(-1), cutting.length]).toEqual([27, 52, 26]);
  });

  test.each([
    [0, 0.7778],
    [0.5, 0.8889],
    [1, 1],
    [10, 1],
  ])("a feature %f mm high is met with a chance of %f", (height, chance) =>
    expect(cutChance(height, 3.5, 1)).toBeCloseTo(chance, 4),
  );
});

describe("missing sheets", () => {
  const positions = sheetPositions(cut(10, 3, 1));
  const present = new Set([1, 2, 3, 6, 7, 8, 9]);

  test("are named, and drawn together in runs", () => {
    expect(missingNumbers(cut(10, 3, 1), present)).toEqual([4, 5, 10]);
    expect(numberRuns([5, 4, 10, 4])).toEqual([
      { from: 4, to: 5 },
      { from: 10, to: 10 },
    ]);
    expect(numberRuns([])).toEqual([]);
  });

  test("keep their place: what is behind them does not move up", () => expect(positions[5]?.fromMm).toBe(20));

  test("lower the coverage", () => expect(coverage(positions, present)).toBeCloseTo(21 / 39, 12));

  test("widen the gap to the neighbours at hand", () => {
    expect(nearestSheet(positions, 13, present)).toEqual({
      number: 3,
      distanceMm: 2,
      between: { before: 3, beforeMm: 2, behind: 6, behindMm: 7 },
    });
    expect(nearestSheet(positions, 100, present)?.between).toEqual({
      before: 9,
      beforeMm: 65,
      behind: null,
      behindMm: null,
    });
    expect(nearestSheet(positions, 5, new Set())).toBeNull();
  });
});

test("sheets of other thickness push what is behind them", () => {
  const positions = sheetPositions(
    cut(3, 3, 1, { firstNumber: 10, startLevelMm: 100, otherThicknessMm: new Map([[10, 5]]) }),
  );
  expect(positions.map(({ number, fromMm, toMm, centreMm }) => [number, fromMm, toMm, centreMm])).toEqual([
    [10, 100, 105, 102.5],
    [11, 106, 109, 107.5],
    [12, 110, 113, 111.5],
  ]);
});

test.each([
  ["no sheets", () => sheetPositions(cut(0, 3, 1))],
  ["half a sheet", () => sheetPositions(cut(1.5, 3, 1))],
  ["no thickness", () => sheetPositions(cut(5, 0, 1))],
  ["an unknown thickness", () => sheetPositions(cut(5, Number.NaN, 1))],
  ["a negative loss", () => sheetPositions(cut(5, 3, -1))],
  ["an unknown start", () => sheetPositions(cut(5, 3, 1, { startLevelMm: Number.NaN }))],
  ["a sheet of no thickness", () => sheetPositions(cut(5, 3, 1, { otherThicknessMm: new Map([[2, 0]]) }))],
  ["an unknown block", () => sheetCountOf(Number.NaN, 3, 1)],
  ["an unknown height", () => cutChance(Number.NaN, 3, 1)],
  ["an unknown position", () => nearestSheet([], Number.NaN)],
])("%s is refused", (_what, attempt) => expect(attempt).toThrow(RangeError));

test("nothing covers nothing", () => {
  expect(blockLengthMm([])).toBe(0);
  expect(coverage([])).toBe(0);
});

const anyCut = fc.record({
  firstNumber: fc.nat(1_000),
  sheetCount: fc.integer({ min: 1, max: 60 }),
  thicknessMm: fc.integer({ min: 1, max: 200 }).map((tenths) => tenths / 10),
  sawLossMm: fc.integer({ min: 0, max: 30 }).map((tenths) => tenths / 10),
  startLevelMm: fc.integer({ min: -500, max: 500 }),
});

describe("for any series", () => {
  test("sheets lie in order, never overlap, and are apart by the loss", () => {
    fc.assert(
      fc.property(anyCut, (any) => {
        const positions = sheetPositions(any);
        for (const [index, sheet] of positions.entries()) {
          const before = positions[index - 1];
          if (before) expect(sheet.fromMm - before.toMm).toBeCloseTo(any.sawLossMm, 6);
          expect(sheet.number).toBe(any.firstNumber + index);
        }
      }),
    );
  });

  test("the block that a count of sheets used up gives that count again", () => {
    fc.assert(
      fc.property(anyCut, (any) => {
        expect(sheetCountOf(blockLengthMm(sheetPositions(any)), any.thicknessMm, any.sawLossMm)).toBe(
          any.sheetCount,
        );
      }),
    );
  });

  test("coverage lies between 0 and 1 and never grows when a sheet goes missing", () => {
    fc.assert(
      fc.property(anyCut, fc.nat(), (any, seed) => {
        const positions = sheetPositions(any);
        const gone = any.firstNumber + (seed % any.sheetCount);
        const fewer = new Set(positions.map(({ number }) => number).filter((number) => number !== gone));
        expect(coverage(positions)).toBeLessThanOrEqual(1 + 1e-12);
        expect(coverage(positions, fewer)).toBeGreaterThanOrEqual(0);
        expect(coverage(positions, fewer)).toBeLessThan(coverage(positions));
      }),
    );
  });

  test("the centre of a sheet is nearest to that sheet, and only that sheet is cut there", () => {
    fc.assert(
      fc.property(anyCut, fc.nat(), (any, seed) => {
        const positions = sheetPositions(any);
        const sheet = positions[seed % positions.length];
        if (!sheet) return;
        expect(nearestSheet(positions, sheet.centreMm)).toMatchObject({
          number: sheet.number,
          distanceMm: 0,
        });
        expect(sheetsCutting(positions, sheet.centreMm - 0.01, sheet.centreMm + 0.01)).toEqual([
          sheet.number,
        ]);
      }),
    );
  });

  test("a feature as high as the loss is certain to be met", () => {
    fc.assert(
      fc.property(anyCut, (any) => {
        expect(cutChance(any.sawLossMm, any.thicknessMm, any.sawLossMm)).toBeCloseTo(1, 9);
      }),
    );
  });
});
