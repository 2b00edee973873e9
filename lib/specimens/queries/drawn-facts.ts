/**
 * What of a record its drawing is made from, beyond its own columns: the structures it
 * shows and, of a sheet, its place in the series. One reading of it for every page, so
 * that a sheet's picture is the same on all of them.
 */
import type { Database, Transaction } from "#lib/platform/database.ts";
import type { DrawnSpecimen } from "#lib/specimens/drawing/request.ts";
import { storedSheetPlace } from "#lib/specimens/drawing/sheet-place.ts";
import type { Shown } from "#lib/specimens/schema.ts";

/** Of a series, what the place of one of its sheets is worked out from. */
export const seriesOfSheetColumns = {
  code: true,
  title: true,
  plane: true,
  direction: true,
  imagedFace: true,
  firstNumber: true,
  sheetCount: true,
  thicknessMm: true,
  sawLossMm: true,
  startLevelMm: true,
  landmarks: { select: { number: true, level: true } },
  sheets: {
    where: { sheetThicknessMm: { not: null } },
    select: { numberInSeries: true, sheetThicknessMm: true },
  },
} as const;

export type DrawnFacts = Pick<DrawnSpecimen, "shown" | "sheetPlace">;

/** For a query that has already authorised. Ids that do not exist have no entry. */
export async function drawnFactsOf(
  reader: Database | Transaction,
  specimenIds: readonly string[],
): Promise<Map<string, DrawnFacts>> {
  const rows = await reader.specimen.findMany({
    where: { id: { in: [...new Set(specimenIds)] } },
    select: {
      id: true,
      numberInSeries: true,
      series: { select: seriesOfSheetColumns },
      shows: { select: { structureId: true, state: true, structure: { select: { latin: true } } } },
    },
  });
  return new Map(
    rows.map(({ id, numberInSeries, series, shows }) => [
      id,
      {
        shown: shows.map(({ structureId, state, structure }) => ({
          structureId,
          state: state as Shown["state"],
          latin: structure.latin,
        })),
        sheetPlace: storedSheetPlace(series, numberInSeries),
      },
    ]),
  );
}
