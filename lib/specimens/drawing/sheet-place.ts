/**
 * Where a sheet lies in its body, from what its series has recorded, and the level at
 * which the drawing of its region is made. A level is only given where the record
 * bears it out: by vertebrae where some are marked, from the median plane where the
 * origin of the series lies inside its block. Otherwise it is null: unknown.
 */
import {
  type Landmark,
  levelCount,
  levelCountAtSheet,
  orderedLandmarks,
  type VertebralLevel,
} from "#lib/specimens/levels.ts";
import { type SeriesInput, vertebralLevels } from "#lib/specimens/schema.ts";
import { sheetPositions } from "#lib/specimens/series.ts";

export type SheetPlace = Pick<SeriesInput, "code" | "title" | "plane" | "imagedFace"> & {
  number: number;
  /** Vertebral level as a count, C1 = 1; null where none is known near the sheet. */
  vertebra: number | null;
  /** Distance of its middle from the median plane, to the left of the body positive. */
  fromMedianMm: number | null;
};

export type SeriesOfSheet = Pick<
  SeriesInput,
  | "code"
  | "title"
  | "plane"
  | "direction"
  | "imagedFace"
  | "firstNumber"
  | "sheetCount"
  | "thicknessMm"
  | "sawLossMm"
  | "startLevelMm"
> & {
  landmarks: readonly Landmark[];
  otherThicknessMm: ReadonlyMap<number, number>;
};

/** Beyond the outermost sheet with a known level, so many vertebrae are still reckoned on. */
const vertebraeBeyond = 5;

function vertebraOf(landmarks: readonly Landmark[], number: number): number | null {
  const counts = orderedLandmarks(landmarks)?.map(({ level }) => levelCount(level)) ?? [];
  const count = levelCountAtSheet(landmarks, number, true);
  if (count === null || counts.length === 0) return null;
  return count >= Math.min(...counts) - vertebraeBeyond && count <= Math.max(...counts) + vertebraeBeyond
    ? count
    : null;
}

function fromMedianOf(series: SeriesOfSheet, number: number): number | null {
  if (series.plane !== "sagittal") return null;
  const positions = sheetPositions(series);
  const [first, last] = [positions[0], positions.at(-1)];
  const here = positions.find((position) => position.number === number);
  if (!first || !last || !here || !(first.fromMm < 0 && last.toMm > 0)) return null;
  return series.direction === "left to right" ? -here.centreMm : here.centreMm;
}

/** @returns null for a number that is not one of the series' */
export function sheetPlaceOf(series: SeriesOfSheet, number: number): SheetPlace | null {
  const { code, title, plane, imagedFace, firstNumber, sheetCount } = series;
  if (!(number >= firstNumber && number < firstNumber + sheetCount)) return null;
  return {
    code,
    title,
    plane,
    imagedFace,
    number,
    vertebra: vertebraOf(series.landmarks, number),
    fromMedianMm: fromMedianOf(series, number),
  };
}

/** A series as its row is stored, with its landmarks and those of its sheets that have a thickness of their own. */
export type StoredSeries = Omit<SeriesOfSheet, "plane" | "direction" | "landmarks" | "otherThicknessMm"> & {
  plane: string;
  direction: string;
  landmarks: readonly { number: number; level: string }[];
  sheets: readonly { numberInSeries: number | null; sheetThicknessMm: number | null }[];
};

/** @returns null for what is no sheet of a series */
export function storedSheetPlace(series: StoredSeries | null, number: number | null): SheetPlace | null {
  if (series === null || number === null) return null;
  return sheetPlaceOf(
    {
      ...series,
      plane: series.plane as SeriesInput["plane"],
      direction: series.direction as SeriesInput["direction"],
      landmarks: series.landmarks.map((mark) => ({ ...mark, level: mark.level as VertebralLevel })),
      otherThicknessMm: new Map(
        series.sheets.flatMap(({ numberInSeries, sheetThicknessMm }) =>
          numberInSeries === null || sheetThicknessMm === null
            ? []
            : [[numberInSeries, sheetThicknessMm] as const],
        ),
      ),
    },
    number,
  );
}

/**
 * Where the drawing of the trunk has the middle of a vertebra: 0 at the root of the
 * neck, 1 at the top of the thighs. What lies at which vertebra is taught alike
 * everywhere (common practice, no source); between two the level runs straight.
 */
const levelOfVertebra: readonly (readonly [VertebralLevel, number])[] = [
  ["C7", 0],
  ["T1", 0.04],
  ["T2", 0.09],
  ["T3", 0.145],
  ["T4", 0.2],
  ["T5", 0.24],
  ["T6", 0.285],
  ["T7", 0.335],
  ["T8", 0.385],
  ["T9", 0.43],
  ["T10", 0.465],
  ["T11", 0.5],
  ["T12", 0.535],
  ["L1", 0.57],
  ["L2", 0.61],
  ["L3", 0.65],
  ["L4", 0.7],
  ["L5", 0.765],
  ["S1", 0.81],
  ["S5", 0.964],
  ["Co", 1],
];

/** @returns the level in the drawing of the trunk, null above and below it */
export function trunkLevel(vertebra: number | null): number | null {
  const points = levelOfVertebra.map(([level, share]) => [levelCount(level), share] as const);
  for (const [index, [count, share]] of points.entries()) {
    const [before, from] = points[index - 1] ?? [count, share];
    if (vertebra !== null && vertebra >= before && vertebra <= count)
      return count === before ? share : from + ((share - from) * (vertebra - before)) / (count - before);
  }
  return null;
}

/** Half the breadth of an adult's head (common practice, no source). */
const halfHeadMm = 76;

/** @returns 0 at the right side of the head, 0.5 in the median plane, 1 at the left side */
export function sagittalHeadLevel(fromMedianMm: number | null): number | null {
  return fromMedianMm === null ? null : Math.min(Math.max(0.5 + fromMedianMm / (2 * halfHeadMm), 0), 1);
}

/** The vertebra that a title names, as "level L2", for a sheet that belongs to no series. */
export function vertebraNamed(title: string): number | null {
  const level = /\blevel (?:of )?([CTLS]\d{1,2})\b/.exec(title)?.[1];
  const known = (vertebralLevels as readonly string[]).includes(level ?? "");
  return known ? levelCount(level as VertebralLevel) : null;
}
