/** Series with their sheets in one go, revised later, and never two sheets with one number. */

import { beforeAll, describe, expect, test } from "vitest";
import { database } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";
import { recordSeries } from "#lib/specimens/commands/record-series.ts";
import { aCentre, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aSeriesRecord, aSheetTemplate } from "#tests/support/specimen-records.ts";
import { issuesOf, refusalOf } from "#tests/support/untouched.ts";

const curator = aViewer("curator");

beforeAll(async () => {
  await testDatabase("vocabularies");
  await aCentre({ accessionPattern: "[A-Z]{2} [^ ]+", accessionExample: "AN 2020.0001" });
}, 120_000);

describe("recording a series", () => {
  test("makes its sheets in one go, with gaps", async () => {
    const template = aSheetTemplate({ missing: [3], numberStem: "SG 100/", digits: 3 });
    const { id, sheets } = await recordSeries(
      curator,
      aSeriesRecord({ sheetCount: 5, firstNumber: 2, embedding: "polyester", sheets: template }),
    );
    expect(sheets.map(({ number, accessionNumber }) => [number, accessionNumber])).toEqual([
      [2, "SG 100/002"],
      [4, "SG 100/004"],
      [5, "SG 100/005"],
      [6, "SG 100/006"],
    ]);
    const stored = await database().specimen.findMany({
      where: { seriesId: id },
      orderBy: { numberInSeries: "asc" },
    });
    expect(stored[0]).toMatchObject({
      kind: "sheet",
      preparation: "polyester sheet",
      title: "Trunk, transverse sheet 2",
      numberInSeries: 2,
    });
  });

  test("of thousands of sheets is one act", async () => {
    const template = aSheetTemplate({ numberStem: "LG 1/", digits: 4 });
    const { sheets } = await recordSeries(curator, aSeriesRecord({ sheetCount: 3_000, sheets: template }));
    expect(sheets).toHaveLength(3_000);
  });

  test("again with its id revises it and adds only sheets that have turned up", async () => {
    const template = aSheetTemplate({ missing: [2, 3] });
    const record = aSeriesRecord({
      sheetCount: 4,
      sheets: template,
      landmarks: [{ number: 1, level: "T1" }],
    });
    const { id, sheets } = await recordSeries(curator, record);
    expect(sheets).toHaveLength(2);
    const again = await recordSeries(curator, {
      ...record,
      id,
      title: "Trunk, measured again",
      landmarks: [
        { number: 1, level: "T2" },
        { number: 4, level: "T3" },
      ],
      sheets: { ...template, missing: [2] },
    });
    expect(again).toMatchObject({ id, sheets: [{ number: 3 }] });
    const stored = await database().series.findUniqueOrThrow({
      where: { id },
      include: { landmarks: true, sheets: true },
    });
    expect(stored).toMatchObject({ title: "Trunk, measured again" });
    expect([stored.landmarks.length, stored.sheets.length]).toEqual([2, 3]);
    expect(
      await issuesOf(() =>
        recordSeries(curator, { ...record, id, sheetCount: 3, landmarks: [], sheets: null }),
      ),
    ).toEqual(["sheetCount: series.sheet-outside"]);
  });

  const wrong: [string, Parameters<typeof aSeriesRecord>[0], string[]][] = [
    [
      "levels out of order",
      {
        landmarks: [
          { number: 1, level: "T5" },
          { number: 5, level: "T1" },
          { number: 9, level: "T8" },
        ],
      },
      ["landmarks: series.landmarks-disorder"],
    ],
    [
      "a level outside",
      { landmarks: [{ number: 11, level: "T5" }] },
      ["landmarks.0.number: series.number-outside"],
    ],
    [
      "a gap outside",
      { sheets: aSheetTemplate({ missing: [3, 11] }) },
      ["sheets.missing.1: series.number-outside"],
    ],
    [
      "a species that does not fit",
      { sheets: aSheetTemplate({ scientificName: "Equus caballus" }) },
      ["sheets.scientificName: specimen.species-mismatch"],
    ],
    [
      "an animal's age band",
      { sheets: aSheetTemplate({ human: false, scientificName: "Equus caballus" }) },
      ["sheets.ageBand: specimen.age-band-human-only"],
    ],
    [
      "numbers outside the pattern",
      { sheets: aSheetTemplate({ numberStem: "sheet-" }) },
      ["sheets.numberStem: specimen.number-pattern"],
    ],
  ];
  test.each(wrong)("%s is refused by its field", async (_what, said, issues) =>
    expect(await issuesOf(() => recordSeries(curator, aSeriesRecord(said)))).toEqual(issues),
  );

  test("with a code or a number that is taken is a conflict", async () => {
    const record = aSeriesRecord();
    await recordSeries(curator, record);
    expect(
      await refusalOf(() => recordSeries(curator, { ...aSeriesRecord(), code: record.code })),
    ).toMatchObject({ reason: "series.code-taken" });
    expect(
      await refusalOf(() => recordSeries(curator, { ...aSeriesRecord(), sheets: record.sheets })),
    ).toMatchObject({ reason: "specimen.number-taken" });
  });

  test("that does not exist is not found", async () =>
    expect(await refusalOf(() => recordSeries(curator, aSeriesRecord({ id: newId() })))).toMatchObject({
      kind: "not-found",
    }));

  test("never gets two sheets with one number, nor a sheet without its number, by anybody", async () => {
    const { id } = await recordSeries(curator, aSeriesRecord({ sheetCount: 2 }));
    const rows = await database().specimen.findMany({
      where: { seriesId: id },
      orderBy: { numberInSeries: "asc" },
    });
    const change = (data: { numberInSeries: number | null }) =>
      database().$transaction(async (transaction) => {
        await transaction.$executeRaw`SELECT set_config('anatheca.actor', 'a', true), set_config('anatheca.act', 'test', true)`;
        await transaction.specimen.update({ where: { id: rows[1]?.id ?? "" }, data });
      });
    await expect(change({ numberInSeries: 1 })).rejects.toThrow(/Unique constraint/);
    await expect(change({ numberInSeries: null })).rejects.toThrow(/specimen_sheet_has_series/);
  });
});
