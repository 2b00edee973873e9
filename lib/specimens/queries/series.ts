/**
 * Reads of series of sheets, with the geometry worked out from what was measured.
 * Whether a sheet is here, lent or missing is read off the records: a number
 * without a specimen is missing, a specimen on a loan line that has left is lent.
 */
import { Prisma } from "#.generated/prisma/client.ts";
import type { Viewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { Id } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";
import { type Landmark, levelAtSheet, type VertebralLevel } from "#lib/specimens/levels.ts";
import type { SeriesInput } from "#lib/specimens/schema.ts";
import { blockLengthMm, coverage, type SheetPosition, sheetPositions } from "#lib/specimens/series.ts";
import { type SheetState, sheetStateOf, statesAway } from "#lib/specimens/sheet-state.ts";

export type SeriesSheetRow = SheetPosition & {
  specimenId: string | null;
  accessionNumber: string | null;
  title: string | null;
  state: SheetState;
  /** From the known levels of the series; null outside them. */
  level: VertebralLevel | null;
};

export type SeriesGeometry = {
  blockLengthMm: number;
  /** Lost to the saw over the whole series. */
  lossMm: number;
  /** Part of the block that sheets of the collection hold, and that sheets now in the house hold. */
  coverage: number;
  coverageHere: number;
  missing: number[];
  lent: number[];
};

export type SeriesSheet = SeriesInput & { id: string; sheets: SeriesSheetRow[]; geometry: SeriesGeometry };

export async function getSeries(_viewer: Viewer, id: string): Promise<SeriesSheet> {
  if (!Id.safeParse(id).success) throw notFound("series");
  const row = await database().series.findUnique({
    where: { id },
    include: {
      landmarks: { orderBy: { number: "asc" } },
      sheets: {
        select: {
          id: true,
          accessionNumber: true,
          title: true,
          numberInSeries: true,
          sheetThicknessMm: true,
          loanLines: { where: { state: { in: [...statesAway] } }, select: { state: true } },
        },
      },
    },
  });
  if (!row) throw notFound("series");
  const { sheets: found, landmarks: marks, ...facts } = row;
  const landmarks = marks.map(({ number, level }): Landmark => ({ number, level: level as VertebralLevel }));
  const byNumber = new Map(found.map((sheet) => [sheet.numberInSeries, sheet]));
  const otherThicknessMm = new Map<number, number>();
  for (const { numberInSeries: number, sheetThicknessMm } of found)
    if (number !== null && sheetThicknessMm !== null) otherThicknessMm.set(number, sheetThicknessMm);

  const positions = sheetPositions({ ...facts, otherThicknessMm });
  const sheets = positions.map((position): SeriesSheetRow => {
    const sheet = byNumber.get(position.number);
    return {
      ...position,
      specimenId: sheet?.id ?? null,
      accessionNumber: sheet?.accessionNumber ?? null,
      title: sheet?.title ?? null,
      state: sheetStateOf(sheet ? sheet.loanLines.map(({ state }) => state) : null),
      level: levelAtSheet(landmarks, position.number),
    };
  });
  const numbers = (holds: (state: SheetState) => boolean) =>
    sheets.filter(({ state }) => holds(state)).map(({ number }) => number);
  return {
    ...facts,
    plane: facts.plane as SeriesInput["plane"],
    direction: facts.direction as SeriesInput["direction"],
    embedding: facts.embedding as SeriesInput["embedding"],
    landmarks,
    sheets,
    geometry: {
      blockLengthMm: blockLengthMm(positions),
      lossMm: facts.sawLossMm * (positions.length - 1),
      coverage: coverage(positions, new Set(numbers((state) => state !== "missing"))),
      coverageHere: coverage(positions, new Set(numbers((state) => state === "here"))),
      missing: numbers((state) => state === "missing"),
      lent: numbers((state) => state === "lent"),
    },
  };
}

export type SeriesListRow = Pick<
  SeriesInput,
  "code" | "title" | "plane" | "embedding" | "thicknessMm" | "sheetCount"
> & {
  id: string;
  /** Sheets that have a record, and those of them that are away. */
  recorded: number;
  away: number;
};

/** All series by code; of very many the first five hundred. */
export async function listSeries(_viewer: Viewer): Promise<SeriesListRow[]> {
  return await database().$queryRaw<SeriesListRow[]>`
    SELECT series.id, series.code, series.title, series.plane, series.embedding,
      series.thickness_mm AS "thicknessMm", series.sheet_count AS "sheetCount",
      count(sheet.id)::int AS recorded,
      count(sheet.id) FILTER (WHERE EXISTS (
        SELECT 1 FROM loan_line WHERE loan_line.specimen_id = sheet.id AND loan_line.state IN (${Prisma.join([...statesAway])})
      ))::int AS away
    FROM series LEFT JOIN specimen sheet ON sheet.series_id = series.id
    GROUP BY series.id ORDER BY series.code LIMIT 500`;
}
