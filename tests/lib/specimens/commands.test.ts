/** Recording and revising: what is written, what the audit says of it, and what is refused without a trace. */
import sharp from "sharp";
import { beforeAll, describe, expect, test } from "vitest";
import { programViewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";
import type { Refusal } from "#lib/platform/refusal.ts";
import { addPicture } from "#lib/specimens/commands/add-picture.ts";
import { recordPreparationStep } from "#lib/specimens/commands/record-preparation-step.ts";
import { recordSeries } from "#lib/specimens/commands/record-series.ts";
import { recordShown } from "#lib/specimens/commands/record-shown.ts";
import { recordSpecimen, reviseSpecimen } from "#lib/specimens/commands/record-specimen.ts";
import { getPicture, getSpecimen } from "#lib/specimens/queries.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";
import { aCentre, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import {
  aRecord,
  aRecorded,
  aSeriesRecord,
  aSheetTemplate,
  aShown,
} from "#tests/support/specimen-records.ts";

const curator = aViewer("curator");
const manager = aViewer("collection manager");
const lecturer = aViewer("lecturer", newId());
const cost = {
  minor: 1_250_000,
  currency: "EUR",
  basis: "cost to replace",
  statedOn: "2026-01-10",
  statedBy: "A. Keeper",
} as const;

beforeAll(async () => {
  await testDatabase("vocabularies");
  await aCentre({ accessionPattern: "[A-Z]{2} [^ ]+", accessionExample: "AN 2020.0001" });
}, 120_000);

const counts = async () => {
  const reader = database();
  return {
    specimens: await reader.specimen.count(),
    series: await reader.series.count(),
    shown: await reader.shown.count(),
    entries: await reader.auditEntry.count(),
  };
};

/** The refusal of an attempt that must have changed nothing. */
const refusalOf = async (attempt: () => Promise<unknown>): Promise<Refusal> => {
  const before = await counts();
  const thrown = await attempt().then(
    () => null,
    (error: Refusal) => error,
  );
  expect(thrown?.name).toBe("Refusal");
  expect(await counts()).toEqual(before);
  return thrown as Refusal;
};
const issuesOf = async (attempt: () => Promise<unknown>) =>
  (await refusalOf(attempt)).issues.map(({ path, message }) => `${path}: ${message}`);
const entriesOf = async (tableName: string, act: string) =>
  await database().auditEntry.findMany({ where: { tableName, act }, orderBy: { id: "asc" } });

describe("recording a specimen", () => {
  test("keeps everything that was typed", async () => {
    const record = aRecord({
      replacementCost: cost,
      size: { lengthMm: 120, widthMm: 90, heightMm: 80 },
      mountedSize: { lengthMm: 200, widthMm: 200, heightMm: 300 },
      massKg: 0.4,
      mountedMassKg: 2.1,
      components: [{ name: "stand", count: 1, detachable: true }],
      formerNumbers: [{ number: "B 17", kind: "jar", markedOn: "lid" }],
      hazards: [{ substance: "formaldehyde", percent: 4, note: "" }],
      preparedOn: "2018-06-01",
    });
    const { id, version } = await recordSpecimen(manager, record);
    expect(version).toBe(1);
    expect(await getSpecimen(manager, id)).toMatchObject(record);
    const [entry] = (await entriesOf("specimen", "recordSpecimen")).slice(-1);
    expect(entry).toMatchObject({ rowKey: id, operation: "insert", actor: manager.accountId });
  });

  test("asked again with the same key does it once", async () => {
    const record = aRecord();
    const options = { idempotencyKey: newId() };
    const first = await recordSpecimen(curator, record, options);
    expect(await recordSpecimen(curator, record, options)).toEqual(first);
  });

  const wrong: [string, Partial<SpecimenInput>, string[]][] = [
    [
      "a number outside the pattern",
      { accessionNumber: "nonsense" },
      ["accessionNumber: specimen.number-pattern"],
    ],
    [
      "a species that does not fit",
      { scientificName: "Equus caballus" },
      ["scientificName: specimen.species-mismatch"],
    ],
    ["a fluid that is missing", { preparation: "fluid-preserved" }, ["fluidName: specimen.fluid-missing"]],
    ["a fluid that does not belong", { fluidName: "ethanol" }, ["fluidName: specimen.fluid-not-for-this"]],
    [
      "entries that stand twice",
      {
        components: [
          { name: "stand", count: 1, detachable: true },
          { name: "stand", count: 2, detachable: true },
        ],
        formerNumbers: [
          { number: "1", kind: "jar", markedOn: "" },
          { number: "1", kind: "jar", markedOn: "lid" },
          { number: "1", kind: "field", markedOn: "" },
        ],
        hazards: [
          { substance: "mercury", percent: null, note: "" },
          { substance: "mercury", percent: 1, note: "" },
        ],
      },
      [
        "components.1.name: specimen.twice",
        "formerNumbers.1.number: specimen.twice",
        "hazards.1.substance: specimen.twice",
      ],
    ],
    ["a whole that does not exist", { wholeId: newId() }, ["wholeId: specimen.whole-unknown"]],
  ];
  test.each(wrong)("%s is refused by its field", async (_what, said, issues) => {
    expect(await issuesOf(() => recordSpecimen(curator, aRecord(said)))).toEqual(issues);
  });

  test.each([
    ["nothing", {}],
    ["a number as title", { ...aRecord(), title: 5 }],
    ["a title without end", { ...aRecord(), title: "x".repeat(10_000) }],
    ["a mass below nothing", { ...aRecord(), massKg: -1 }],
    ["a mass that is no number", { ...aRecord(), massKg: Number.NaN }],
    ["a length without end", { ...aRecord(), size: { lengthMm: 1e12, widthMm: 1, heightMm: 1 } }],
    ["a day that is none", { ...aRecord(), preparedOn: "2026-02-30" }],
    [
      "a hundred components",
      {
        ...aRecord(),
        components: Array.from({ length: 100 }, (_, at) => ({ name: `c${at}`, count: 1, detachable: false })),
      },
    ],
  ])("%s is refused", async (_what, input) => {
    expect((await refusalOf(() => recordSpecimen(curator, input as never))).kind).toBe("invalid");
  });

  test("signs that cannot be stored are refused in a sentence", async () => {
    expect(await refusalOf(() => recordSpecimen(curator, aRecord({ title: "a\u0000b" })))).toMatchObject({
      reason: "input.not-storable",
    });
  });

  test("a number that is taken is refused by its field, and by the database when two come at once", async () => {
    const record = aRecord();
    await recordSpecimen(curator, record);
    expect(await issuesOf(() => recordSpecimen(curator, record))).toEqual([
      "accessionNumber: specimen.number-taken",
    ]);
    const twins = aRecord();
    const results = await Promise.allSettled(Array.from({ length: 6 }, () => recordSpecimen(curator, twins)));
    expect(results.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
    for (const result of results)
      if (result.status === "rejected") {
        const { reason, issues } = result.reason as Refusal;
        expect([reason, ...issues.map((issue) => issue.message)]).toContain("specimen.number-taken");
      }
  });

  test("a lecturer and a registrar may not", async () => {
    for (const viewer of [lecturer, aViewer("registrar")])
      expect(await refusalOf(() => recordSpecimen(viewer, aRecord()))).toMatchObject({ kind: "forbidden" });
  });
});

describe("revising a specimen", () => {
  test("writes the new state, counts the version on, and only what changed into the audit", async () => {
    const record = aRecord({
      components: [
        { name: "stand", count: 1, detachable: true },
        { name: "lid", count: 1, detachable: true },
        { name: "label", count: 1, detachable: false },
      ],
      formerNumbers: [{ number: "B 17", kind: "jar", markedOn: "" }],
      hazards: [{ substance: "mercury", percent: null, note: "" }],
    });
    const { id } = await recordSpecimen(manager, record);
    const revised = {
      ...record,
      title: "Heart, reopened",
      components: [
        { name: "stand", count: 1, detachable: true },
        { name: "lid", count: 2, detachable: true },
        { name: "base", count: 1, detachable: false },
      ],
      formerNumbers: [{ number: "B 17", kind: "jar" as const, markedOn: "lid" }],
      hazards: [{ substance: "arsenic" as const, percent: null, note: "" }],
    };
    expect(await reviseSpecimen(manager, { id, version: 1, ...revised })).toEqual({ id, version: 2 });
    const sheet = await getSpecimen(manager, id);
    expect(sheet).toMatchObject({
      ...revised,
      version: 2,
      components: expect.arrayContaining(revised.components),
    });
    const changes = async (table: string) =>
      (await entriesOf(table, "reviseSpecimen")).map(({ operation }) => operation);
    expect(await changes("specimen")).toEqual(["update"]);
    expect((await changes("component")).sort()).toEqual(["delete", "insert", "update"]);
    expect(await changes("former_number")).toEqual(["update"]);
    expect((await changes("hazard")).sort()).toEqual(["delete", "insert"]);
    expect((await database().specimen.findUniqueOrThrow({ where: { id } })).searchKey).toContain(
      " reopened ",
    );
  });

  test("from a version that is not the newest is a conflict that names the newest", async () => {
    const record = aRecord();
    const { id } = await recordSpecimen(curator, record);
    await reviseSpecimen(curator, { id, version: 1, ...record, title: "First" });
    expect(
      await refusalOf(() => reviseSpecimen(curator, { id, version: 1, ...record, title: "Second" })),
    ).toMatchObject({
      kind: "conflict",
      reason: "record.changed-meanwhile",
      parameters: { version: 2 },
    });
    expect((await getSpecimen(curator, id)).title).toBe("First");
  });

  test("at the same moment succeeds for exactly one", async () => {
    const record = aRecord();
    const { id } = await recordSpecimen(curator, record);
    const results = await Promise.allSettled(
      Array.from({ length: 8 }, (_, at) =>
        reviseSpecimen(curator, { id, version: 1, ...record, title: `Reviser ${at}` }),
      ),
    );
    expect(results.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
    expect((await getSpecimen(curator, id)).version).toBe(2);
  });

  test("leaves a cost as it was when the viewer may not see it", async () => {
    const record = aRecord({ replacementCost: cost });
    const { id } = await recordSpecimen(manager, record);
    await reviseSpecimen(aViewer("conservator"), {
      id,
      version: 1,
      ...record,
      replacementCost: null,
      note: "cleaned",
    });
    expect(await getSpecimen(manager, id)).toMatchObject({ note: "cleaned", replacementCost: cost });
    await reviseSpecimen(manager, { id, version: 2, ...record, replacementCost: null });
    expect((await getSpecimen(manager, id)).replacementCost).toBeNull();
  });

  test("never makes a specimen a part of itself or of its own parts", async () => {
    const whole = await aRecorded();
    const part = await aRecorded({ wholeId: whole.id });
    const smaller = await aRecorded({ wholeId: part.id });
    const said = aRecord({ accessionNumber: whole.accessionNumber });
    for (const wholeId of [whole.id, part.id, smaller.id])
      expect(
        await issuesOf(() => reviseSpecimen(curator, { id: whole.id, version: 1, ...said, wholeId })),
      ).toEqual(["wholeId: specimen.whole-in-ring"]);
  });

  test("keeps a sheet of a series a sheet", async () => {
    const { sheets } = await recordSeries(curator, aSeriesRecord({ sheetCount: 1 }));
    const [sheet] = sheets;
    const said = aRecord({ accessionNumber: sheet?.accessionNumber ?? "", kind: "organ" });
    expect(
      await issuesOf(() => reviseSpecimen(curator, { id: sheet?.id ?? "", version: 1, ...said })),
    ).toEqual(["kind: specimen.sheet-of-series"]);
  });

  test("of an unknown specimen is not found, and of no id is refused", async () => {
    expect(
      await refusalOf(() => reviseSpecimen(curator, { id: newId(), version: 1, ...aRecord() })),
    ).toMatchObject({ kind: "not-found" });
    expect((await refusalOf(() => reviseSpecimen(curator, { id: "x", version: 1, ...aRecord() }))).kind).toBe(
      "invalid",
    );
  });
});

describe("what a specimen shows", () => {
  test("is stated as a whole set, and only what differs is written", async () => {
    const { id } = await aRecorded({}, ["heart", "left-ventricle", aShown("aorta", { seen: "in section" })]);
    const before = (await entriesOf("shown", "recordShown")).length;
    const shown = [
      aShown("heart"),
      aShown("aorta", { seen: "landmark only", remark: "cut short" }),
      aShown("thymus", { state: "absent" }),
    ];
    expect(await recordShown(curator, { specimenId: id, shown })).toEqual({
      added: 1,
      changed: 1,
      removed: 1,
    });
    expect(
      (await entriesOf("shown", "recordShown"))
        .slice(before)
        .map(({ operation }) => operation)
        .sort(),
    ).toEqual(["delete", "insert", "update"]);
    expect((await getSpecimen(curator, id)).shown).toHaveLength(3);
    expect(await recordShown(curator, { specimenId: id, shown })).toEqual({
      added: 0,
      changed: 0,
      removed: 0,
    });
  });

  test("may be one structure on both sides, each in its own way", async () => {
    const { id } = await aRecorded({}, [
      aShown("kidney"),
      aShown("kidney", { side: "right", state: "absent" }),
    ]);
    expect((await getSpecimen(curator, id)).shown.map(({ side, state }) => [side, state])).toEqual([
      ["left", "shown"],
      ["right", "absent"],
    ]);
  });

  test("is refused with an unknown structure or the same one twice, by its row", async () => {
    const { id: specimenId } = await aRecorded({}, ["heart"]);
    const shown = [aShown("heart"), aShown("no-such-thing"), aShown("heart")];
    expect(await issuesOf(() => recordShown(curator, { specimenId, shown }))).toEqual([
      "shown.1.structureId: structure.unknown",
      "shown.2.side: shown.twice",
    ]);
    expect(
      (await refusalOf(() => recordShown(curator, { specimenId, shown: [aShown("a\u0000b")] }))).kind,
    ).toBe("invalid");
    expect((await refusalOf(() => recordShown(curator, { specimenId: newId(), shown: [] }))).kind).toBe(
      "not-found",
    );
    expect((await refusalOf(() => recordShown(lecturer, { specimenId, shown: [] }))).kind).toBe("forbidden");
  });

  test("of two at the same moment is one or the other, never a mixture", async () => {
    const { id: specimenId } = await aRecorded();
    const sets = [
      [aShown("heart"), aShown("aorta")],
      [aShown("kidney"), aShown("ureter")],
    ];
    await Promise.all(sets.map((shown) => recordShown(curator, { specimenId, shown })));
    const ids = (await getSpecimen(curator, specimenId)).shown.map(({ structureId }) => structureId);
    expect([
      ["aorta", "heart"],
      ["kidney", "ureter"],
    ]).toContainEqual(ids);
  });
});

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

describe("a step in the making", () => {
  test("is added, open or ended", async () => {
    const { id: specimenId } = await aRecorded();
    await recordPreparationStep(aViewer("conservator"), {
      specimenId,
      step: "fixation",
      startedOn: "2020-01-01",
      endedOn: "2020-01-01",
      note: "",
    });
    await recordPreparationStep(curator, {
      specimenId,
      step: "dehydration",
      startedOn: "2020-02-01",
      endedOn: null,
      note: "cold",
    });
    expect((await getSpecimen(curator, specimenId)).preparationSteps).toMatchObject([
      { step: "fixation", endedOn: "2020-01-01" },
      { step: "dehydration", endedOn: null, note: "cold" },
    ]);
  });

  test("that ends before it starts, or of no specimen, is refused", async () => {
    const { id: specimenId } = await aRecorded();
    const step = { step: "curing" as const, startedOn: "2020-01-02", endedOn: "2020-01-01", note: "" };
    expect(await issuesOf(() => recordPreparationStep(curator, { specimenId, ...step }))).toEqual([
      "endedOn: step.ends-before-start",
    ]);
    expect(
      (await refusalOf(() => recordPreparationStep(curator, { specimenId: newId(), ...step, endedOn: null })))
        .kind,
    ).toBe("not-found");
  });
});

describe("a picture", () => {
  const red = async () =>
    await sharp({ create: { width: 20, height: 10, channels: 3, background: "red" } })
      .png()
      .toBuffer();

  test("becomes the specimen's, and the one before stays stored", async () => {
    const { id: specimenId } = await aRecorded();
    const first = await addPicture(curator, { specimenId, content: await red() });
    const second = await addPicture(curator, { specimenId, content: await red() });
    expect(first).toMatchObject({ widthPx: 20, heightPx: 10 });
    expect((await getSpecimen(curator, specimenId)).picture?.id).toBe(second.id);
    expect(await database().storedFile.count({ where: { id: { in: [first.id, second.id] } } })).toBe(2);
    const picture = await getPicture(curator, specimenId);
    expect((await sharp(picture.content).metadata()).format).toBe("jpeg");
  });

  test("leaves no bytes in the audit", async () => {
    const { id: specimenId } = await aRecorded();
    await addPicture(curator, { specimenId, content: await red() });
    const [entry] = (await entriesOf("stored_file", "addPicture")).slice(-1);
    expect(Object.keys(entry?.after as object).sort()).not.toContain("content");
  });

  test("that is none is refused, and the old one stays", async () => {
    const { id: specimenId } = await aRecorded();
    const { id } = await addPicture(curator, { specimenId, content: await red() });
    expect(
      await issuesOf(() => addPicture(curator, { specimenId, content: Buffer.from("nonsense") })),
    ).toEqual(["content: picture.unreadable"]);
    expect(
      (await refusalOf(() => addPicture(curator, { specimenId, content: "nonsense" as never }))).kind,
    ).toBe("invalid");
    expect((await getSpecimen(curator, specimenId)).picture?.id).toBe(id);
  });

  test("of no specimen is not found, and nobody who borrows may give one", async () => {
    const content = await red();
    expect((await refusalOf(() => addPicture(programViewer, { specimenId: newId(), content }))).kind).toBe(
      "not-found",
    );
    expect((await refusalOf(() => addPicture(lecturer, { specimenId: newId(), content }))).kind).toBe(
      "forbidden",
    );
  });
});
