/** What drawings are made from is read alike for a specimen's page and for a loan's. */
import { beforeAll, describe, expect, test } from "vitest";
import { programViewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";
import { recordSeries } from "#lib/specimens/commands/record-series.ts";
import { drawSpecimen } from "#lib/specimens/drawing/draw.ts";
import { drawingRequestOf } from "#lib/specimens/drawing/request.ts";
import { drawnFactsOf } from "#lib/specimens/queries/drawn-facts.ts";
import { getSpecimen, specimenFactsOf } from "#lib/specimens/queries.ts";
import { aCentre, aViewer, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aSeriesRecord } from "#tests/support/specimen-records.ts";

const curator = aViewer("curator");

beforeAll(async () => {
  await testDatabase("vocabularies");
  await aCentre();
}, 120_000);

describe("the facts that a drawing is made from", () => {
  test("have the place of a sheet in its series, other thicknesses counted", async () => {
    const series = await recordSeries(
      programViewer,
      aSeriesRecord({
        title: "Head, sagittal sheets",
        plane: "sagittal",
        direction: "left to right",
        sheetCount: 3,
        thicknessMm: 3,
        sawLossMm: 1,
        startLevelMm: -5,
        landmarks: [],
      }),
    );
    const ids = series.sheets.map(({ id }) => id);
    await inWork(({ transaction }) =>
      transaction.specimen.update({ where: { id: ids[0] ?? "" }, data: { sheetThicknessMm: 5 } }),
    );
    const facts = await drawnFactsOf(database(), ids);
    expect(ids.map((id) => facts.get(id)?.sheetPlace?.fromMedianMm)).toEqual([2.5, -2.5, -6.5]);
    expect(facts.get(ids[1] ?? "")?.sheetPlace).toMatchObject({
      number: 2,
      code: expect.stringMatching(/\S/),
      vertebra: null,
    });
  });

  test("give one picture of a sheet, whichever page asks", async () => {
    const series = await recordSeries(
      programViewer,
      aSeriesRecord({
        title: "Trunk, transverse sheets",
        plane: "transverse",
        sheetCount: 9,
        landmarks: [
          { number: 1, level: "T6" },
          { number: 9, level: "T8" },
        ],
      }),
    );
    const id = series.sheets[4]?.id ?? "";
    const sheet = await getSpecimen(curator, id);
    expect(sheet.sheetPlace?.vertebra).toBe(14);
    const [lent, drawn] = [await specimenFactsOf(database(), [id]), await drawnFactsOf(database(), [id])];
    const [record, facts] = [lent.get(id), drawn.get(id)];
    if (!record || !facts) throw new Error("no sheet");
    expect(drawSpecimen(drawingRequestOf({ ...record, ...facts }))).toEqual(
      drawSpecimen(drawingRequestOf(sheet)),
    );
  });

  test("have no entry for what is not there", async () => {
    expect(await drawnFactsOf(database(), [newId()])).toEqual(new Map());
  });
});
