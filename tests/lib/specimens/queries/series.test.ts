/** Series as they are read: geometry from the records, sheets here, lent and missing. */
import { beforeAll, describe, expect, test } from "vitest";
import { programViewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";
import { recordSeries } from "#lib/specimens/commands/record-series.ts";
import { listSpecimens } from "#lib/specimens/queries/list-specimens.ts";
import { getSeries, listSeries } from "#lib/specimens/queries/series.ts";
import { getSpecimen, sheetNumbersOf, specimenFactsOf } from "#lib/specimens/queries.ts";
import { nothingKnownInLaw } from "#lib/specimens/schema.ts";
import type { SeriesRecord } from "#lib/specimens/sheet-template.ts";
import { aCentre, aLoanOf, aViewer, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aRecorded, aSeriesRecord, aSheetTemplate } from "#tests/support/specimen-records.ts";

const curator = aViewer("curator");
const lecturer = aViewer("lecturer", newId());

beforeAll(async () => {
  await testDatabase("vocabularies");
  await aCentre();
}, 120_000);

const recorded = (said: Partial<SeriesRecord> = {}) => recordSeries(programViewer, aSeriesRecord(said));

describe("a series", () => {
  test("has every number with its position, and what is missing, lent and here", async () => {
    const series = await recorded({
      sheetCount: 10,
      thicknessMm: 3,
      sawLossMm: 1,
      startLevelMm: 100,
      landmarks: [
        { number: 1, level: "T1" },
        { number: 9, level: "T5" },
      ],
      sheets: aSheetTemplate({ missing: [4, 10] }),
    });
    const at = (number: number) => {
      const sheet = series.sheets.find((one) => one.number === number);
      if (!sheet) throw new Error(`no sheet ${number}`);
      return sheet;
    };
    const { lineIds } = await aLoanOf([at(2), at(3), at(5)]);
    const [away = "", lost = "", home = ""] = lineIds;
    const walk = async (lineId: string, states: string[]) =>
      await inWork(async ({ transaction }) => {
        for (const state of states)
          await transaction.loanLine.update({
            where: { id: lineId },
            data: { state, ...(state === "checked in" ? { verdict: "no change" } : {}) },
          });
      });
    const out = ["requested", "accepted", "packed", "travelling out"];
    await walk(away, [...out, "resting at venue", "at venue"]);
    await walk(lost, [...out, "missing"]);
    await walk(home, [...out, "travelling home", "resting at home", "checked in", "closed"]);

    const read = await getSeries(lecturer, series.id);
    expect(read.sheets.map(({ state }) => state)).toEqual([
      "here",
      "lent",
      "missing",
      "missing",
      "here",
      "here",
      "here",
      "here",
      "here",
      "missing",
    ]);
    expect(read.sheets[4]).toMatchObject({
      number: 5,
      fromMm: 116,
      toMm: 119,
      centreMm: 117.5,
      level: "T3",
      specimenId: at(5).id,
      accessionNumber: at(5).accessionNumber,
    });
    expect(read.sheets[3]).toMatchObject({ number: 4, specimenId: null, accessionNumber: null });
    expect(read.sheets[9]).toMatchObject({ level: null });
    expect(read.geometry).toMatchObject({ blockLengthMm: 39, lossMm: 9, missing: [3, 4, 10], lent: [2] });
    expect(read.geometry.coverage).toBeCloseTo(21 / 39, 12);
    expect(read.geometry.coverageHere).toBeCloseTo(18 / 39, 12);

    const [row] = (await listSeries(lecturer)).filter(({ id }) => id === series.id);
    expect(row).toMatchObject({ sheetCount: 10, recorded: 8, away: 2, thicknessMm: 3 });
  });

  test("counts a sheet of another thickness as it is", async () => {
    const series = await recorded({ sheetCount: 3, thicknessMm: 3, sawLossMm: 1 });
    const [first] = series.sheets;
    await inWork(({ transaction }) =>
      transaction.specimen.update({ where: { id: first?.id ?? "" }, data: { sheetThicknessMm: 5 } }),
    );
    const read = await getSeries(curator, series.id);
    expect(read.sheets.map(({ fromMm }) => fromMm)).toEqual([0, 6, 10]);
    const facts = await specimenFactsOf(
      database(),
      series.sheets.map(({ id }) => id),
    );
    expect(series.sheets.map(({ id }) => facts.get(id)?.sheetThicknessMm)).toEqual([5, 3, 3]);
    expect(facts.get(first?.id ?? "")).toMatchObject({
      seriesId: series.id,
      numberInSeries: 1,
      fragilityClass: "sheet",
    });
  });

  test("without sheets is all missing", async () => {
    const series = await recorded({ sheetCount: 4, sheets: null });
    expect((await getSeries(curator, series.id)).geometry).toMatchObject({
      missing: [1, 2, 3, 4],
      coverage: 0,
      lent: [],
    });
  });

  test.each([newId(), "nonsense"])(
    "%j is not found",
    async (id) => await expect(getSeries(curator, id)).rejects.toMatchObject({ kind: "not-found" }),
  );
});

test("a sheet knows its series, and a list can leave sheets out or show only them", async () => {
  const series = await recorded({ sheetCount: 3 });
  const [first] = series.sheets;
  expect((await getSpecimen(curator, first?.id ?? "")).series).toMatchObject({
    id: series.id,
    number: 1,
    thicknessMm: 3,
  });
  const only = await listSpecimens(curator, { seriesId: series.id });
  expect(only.rows.map(({ numberInSeries }) => numberInSeries)).toEqual([1, 2, 3]);
  expect(only.rows[0]?.seriesCode).not.toBeNull();
  expect((await listSpecimens(curator, { withoutSheets: true, kind: "sheet" })).rows).toEqual([]);
});

test("the numbers that a series holds are read in their order, for several series at once", async () => {
  const some = await recorded({ sheetCount: 4, sheets: aSheetTemplate({ missing: [2] }) });
  const none = await recorded({ sheetCount: 3, sheets: null });
  const held = await sheetNumbersOf(database(), [some.id, none.id, some.id]);
  expect(held.get(some.id)).toEqual([1, 3, 4]);
  expect(held.get(none.id)).toBeUndefined();
});

test("what the law asks is read by all, and the time of death by those who see facts of the person", async () => {
  const { id } = await aRecorded({
    legal: { ...nothingKnownInLaw, containsCells: true, deathPeriod: "1946 to 1969" },
  });
  expect((await getSpecimen(curator, id)).legal).toMatchObject({
    containsCells: true,
    deathPeriod: "1946 to 1969",
  });
  const { legal } = await getSpecimen(aViewer("registrar"), id);
  expect(legal).toMatchObject({ containsCells: true });
  expect(legal).not.toHaveProperty("deathPeriod");
});
