import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type SeriesOfSheet,
  sagittalHeadLevel,
  sheetPlaceOf,
  storedSheetPlace,
  trunkLevel,
  vertebraNamed,
} from "#lib/specimens/drawing/sheet-place.ts";
import { seriesOfSheets } from "#seed/scenario/series.ts";

const trunk: SeriesOfSheet = { ...seriesOfSheets["SR 03"].series, otherThicknessMm: new Map() };
const head: SeriesOfSheet = { ...seriesOfSheets["SR 07"].series, otherThicknessMm: new Map() };

describe("the place of a sheet in its series", () => {
  it("has the vertebra of the known sheets, and counts on a little beyond them", () => {
    expect(sheetPlaceOf(trunk, 67)?.vertebra).toBe(20);
    expect(sheetPlaceOf(trunk, 1)?.vertebra).toBeCloseTo(7.25, 9);
    expect(sheetPlaceOf(trunk, 132)?.vertebra).toBeCloseTo(28.857, 3);
  });

  it("has no vertebra where none is marked near it", () => {
    expect(sheetPlaceOf({ ...trunk, landmarks: [] }, 67)?.vertebra).toBeNull();
    const few = trunk.landmarks.slice(0, 2);
    expect(sheetPlaceOf({ ...trunk, landmarks: few }, 132)?.vertebra).toBeNull();
  });

  it("is no place for a number that the series does not have", () => {
    expect(sheetPlaceOf(trunk, 0)).toBeNull();
    expect(sheetPlaceOf(trunk, 133)).toBeNull();
  });

  it("lies as far from the median plane as the saw went", () => {
    expect(sheetPlaceOf(head, 1)?.fromMedianMm).toBe(69.5);
    expect(sheetPlaceOf(head, 12)?.fromMedianMm).toBe(3.5);
    expect(sheetPlaceOf(head, 13)?.fromMedianMm).toBe(-2.5);
    expect(sheetPlaceOf({ ...head, direction: "right to left" }, 1)?.fromMedianMm).toBe(-69.5);
    expect(sheetPlaceOf({ ...head, otherThicknessMm: new Map([[1, 7]]) }, 2)?.fromMedianMm).toBe(61.5);
  });

  it("is the same from the stored row", () => {
    const stored = { ...head, sheets: [{ numberInSeries: 1, sheetThicknessMm: 7 }] };
    const read = sheetPlaceOf({ ...head, otherThicknessMm: new Map([[1, 7]]) }, 2);
    expect(storedSheetPlace(stored, 2)).toEqual(read);
    expect(storedSheetPlace(stored, null)).toBeNull();
    expect(storedSheetPlace(null, 2)).toBeNull();
  });

  it("has no distance from a plane that the series does not know", () => {
    expect(sheetPlaceOf({ ...head, startLevelMm: 0 }, 12)?.fromMedianMm).toBeNull();
    expect(sheetPlaceOf(trunk, 12)?.fromMedianMm).toBeNull();
  });
});

describe("the level of a drawing", () => {
  it("goes down the trunk with the vertebrae and never back", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 7, max: 30, noNaN: true }),
        fc.double({ min: 7, max: 30, noNaN: true }),
        (one, other) => {
          const [upper, lower] = [Math.min(one, other), Math.max(one, other)].map(trunkLevel);
          expect(upper).not.toBeNull();
          expect(Number(upper)).toBeLessThanOrEqual(Number(lower));
        },
      ),
    );
    expect(trunkLevel(7)).toBe(0);
    expect(trunkLevel(30)).toBe(1);
  });

  it.each([null, 6.9, 30.1, Number.NaN])("is none at a vertebra of %s", (vertebra) => {
    expect(trunkLevel(vertebra)).toBeNull();
  });

  it("is 0.5 in the median plane of a head and stays inside it", () => {
    expect(sagittalHeadLevel(0)).toBe(0.5);
    expect(sagittalHeadLevel(76)).toBe(1);
    expect(sagittalHeadLevel(-400)).toBe(0);
    expect(sagittalHeadLevel(null)).toBeNull();
  });

  it.each([
    ["Transverse sheet of a trunk, level L2", 21],
    ["Transverse sheet of a trunk at the level of T4", 11],
    ["Transverse sheet of a trunk", null],
    ["Transverse sheet of a trunk, level L9", null],
  ])("is read from %s as vertebra %s", (title, vertebra) => expect(vertebraNamed(title)).toBe(vertebra));
});
