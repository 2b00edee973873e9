/** Recording and revising: what is written, what the audit says of it, and what is refused without a trace. */

import { beforeAll, describe, expect, test } from "vitest";
import { database } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";
import type { Refusal } from "#lib/platform/refusal.ts";
import { recordSeries } from "#lib/specimens/commands/record-series.ts";
import { recordSpecimen, reviseSpecimen } from "#lib/specimens/commands/record-specimen.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";
import { aCentre, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aRecord, aRecorded, aSeriesRecord } from "#tests/support/specimen-records.ts";
import { entriesOf, issuesOf, refusalOf } from "#tests/support/untouched.ts";

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
