import sharp from "sharp";
import { afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { toDate } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { addPicture } from "#lib/specimens/commands/add-picture.ts";
import { recordPreparationStep } from "#lib/specimens/commands/record-preparation-step.ts";
import { listSpecimens } from "#lib/specimens/queries/list-specimens.ts";
import { getPicture, getSpecimen, specimenFactsOf } from "#lib/specimens/queries.ts";
import { aCentre, aViewer, inWork, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aRecorded, aShown } from "#tests/support/specimen-records.ts";

const institution = "01920000-0000-7000-8000-0000000000aa";
const lecturer = aViewer("lecturer", institution);
const curator = aViewer("curator");
const cost = {
  minor: 1_250_000,
  currency: "EUR",
  basis: "cost to replace",
  statedOn: "2026-01-10",
  statedBy: "A. Keeper",
} as const;

beforeAll(async () => {
  await testDatabase("vocabularies");
  await aCentre();
}, 120_000);
beforeEach(() => setClock(() => new Date("2027-01-15T09:00:00Z")));
afterEach(() => setClock());

const truncate = async () =>
  await inWork(async ({ transaction }) => {
    await transaction.booking.deleteMany();
    await transaction.shown.deleteMany();
    await transaction.component.deleteMany();
    await transaction.formerNumber.deleteMany();
    await transaction.hazard.deleteMany();
    await transaction.preparationStep.deleteMany();
    await transaction.specimenDonor.deleteMany();
    await transaction.specimen.updateMany({ data: { wholeId: null } });
    await transaction.specimen.deleteMany({ where: { moves: { none: {} } } });
  });

describe("one specimen", () => {
  let id = "";
  beforeAll(async () => {
    await truncate();
    const whole = await aRecorded({ accessionNumber: "W 1", title: "Trunk", kind: "body region" });
    ({ id } = await aRecorded(
      {
        accessionNumber: "W 2",
        title: "Heart",
        wholeId: whole.id,
        replacementCost: cost,
        size: { lengthMm: 120, widthMm: 90, heightMm: 80 },
        massKg: 0.4,
        components: [{ name: "stand", count: 1, detachable: true }],
        formerNumbers: [{ number: "B 17", kind: "jar", markedOn: "lid" }],
        hazards: [{ substance: "mercury", percent: null, note: "injected" }],
      },
      ["heart", aShown("thymus", { state: "absent" })],
    ));
    await recordPreparationStep(programViewer, {
      specimenId: id,
      step: "impregnation",
      startedOn: "2020-03-01",
      endedOn: "2020-05-01",
      note: "",
    });
    await recordPreparationStep(programViewer, {
      specimenId: id,
      step: "fixation",
      startedOn: "2020-01-01",
      endedOn: null,
      note: "",
    });
  });

  test("is read with everything that belongs to it", async () => {
    expect(await getSpecimen(aViewer("collection manager"), id)).toMatchObject({
      id,
      version: 1,
      accessionNumber: "W 2",
      sex: "female",
      ageBand: "60–69",
      replacementCost: cost,
      size: { lengthMm: 120, widthMm: 90, heightMm: 80 },
      components: [{ name: "stand", count: 1, detachable: true }],
      formerNumbers: [{ number: "B 17", kind: "jar", markedOn: "lid" }],
      hazards: [{ substance: "mercury", percent: null, note: "injected" }],
      shown: [
        { structureId: "heart", english: "heart", latin: "cor", state: "shown" },
        { structureId: "thymus", state: "absent" },
      ],
      preparationSteps: [{ step: "fixation" }, { step: "impregnation", startedOn: "2020-03-01" }],
      whole: { accessionNumber: "W 1" },
      parts: [],
      series: null,
      picture: null,
    });
  });

  test.each([
    // role, sees sex and age, sees the cost
    ["registrar", false, true],
    ["curator", true, false],
    ["conservator", true, false],
    ["collection manager", true, true],
    ["donor officer", true, true],
    ["inspector", true, true],
    ["administrator", false, false],
    ["lecturer", true, false],
    ["borrower registrar", false, false],
  ] as const)("a %s sees the person's facts: %s, the cost: %s", async (role, person, costSeen) => {
    const sheet = await getSpecimen(aViewer(role, institution), id);
    expect(["sex" in sheet, "ageBand" in sheet, "replacementCost" in sheet]).toEqual([
      person,
      person,
      costSeen,
    ]);
  });

  test("the sex of an animal is no fact of a person", async () => {
    const horse = await aRecorded({
      human: false,
      scientificName: "Equus caballus",
      ageBand: null,
      sex: "male",
    });
    expect(await getSpecimen(aViewer("registrar"), horse.id)).toMatchObject({ sex: "male" });
  });

  test.each([newId(), "nonsense", "", "' or 1=1"])("%j is not found", async (unknown) => {
    await expect(getSpecimen(curator, unknown)).rejects.toMatchObject({ kind: "not-found" });
    await expect(getPicture(curator, unknown)).rejects.toMatchObject({ kind: "not-found" });
  });

  test("its facts for rules hold the cost and the class of fragility; unknown ids have none", async () => {
    const facts = await specimenFactsOf(database(), [id, newId(), id]);
    expect([...facts.keys()]).toEqual([id]);
    expect(facts.get(id)).toMatchObject({
      id,
      accessionNumber: "W 2",
      replacementCost: cost,
      fragilityClass: "compact-organ",
      seriesId: null,
      sheetThicknessMm: null,
      components: [{ name: "stand" }],
    });
    expect(await specimenFactsOf(database(), [])).toEqual(new Map());
  });
});

describe("pictures of the dead", () => {
  const borrower = aViewer("borrower registrar", institution);
  const withPicture = async (said: Parameters<typeof aRecorded>[0] = {}) => {
    const specimen = await aRecorded(said);
    const content = await sharp({ create: { width: 400, height: 200, channels: 3, background: "red" } })
      .png()
      .toBuffer();
    await addPicture(programViewer, { specimenId: specimen.id, content });
    return specimen;
  };
  const consented = async (specimenId: string, answers: Record<string, string>, withdrawn = false) =>
    await inWork(async ({ transaction }) => {
      const donorCode = `D-${newId().slice(-5).toUpperCase()}`;
      await transaction.donor.create({ data: { code: donorCode } });
      await transaction.specimenDonor.create({ data: { specimenId, donorCode } });
      await transaction.consent.create({
        data: {
          id: newId(),
          donorCode,
          basis: "donor in life",
          formVersion: "1",
          evidencePlace: "safe",
          audience: "anyone",
          nonCommercialOnly: false,
          disposition: "unknown",
          withdrawalReceivedOn: withdrawn ? toDate("2026-01-01") : null,
          withdrawalEffectiveOn: withdrawn ? toDate("2026-01-01") : null,
          answers: { create: Object.entries(answers).map(([scope, answer]) => ({ scope, answer })) },
        },
      });
    });
  const seenBy = async (viewer: typeof lecturer, { id, accessionNumber }: Made) => {
    const sheet = (await getSpecimen(viewer, id)).picture !== null;
    const row = (await listSpecimens(viewer, { text: accessionNumber })).rows[0]?.pictureId !== null;
    const bytes = await getPicture(viewer, id).then(
      ({ mediaType }) => mediaType === "image/jpeg",
      () => false,
    );
    expect([row, bytes]).toEqual([sheet, sheet]);
    return sheet;
  };
  beforeAll(truncate);

  test("are seen by the house", async () => expect(await seenBy(curator, await withPicture())).toBe(true));

  test("are not seen by who borrows while no donor is known to have allowed them", async () => {
    const unknown = await withPicture();
    expect(await seenBy(lecturer, unknown)).toBe(false);
    expect(await seenBy(borrower, unknown)).toBe(false);
  });

  test("are seen by who borrows where every donor allowed pictures, and not once one has withdrawn", async () => {
    const specimen = await withPicture();
    await consented(specimen.id, { "pictures, internal": "granted" });
    expect(await seenBy(lecturer, specimen)).toBe(true);
    await consented(specimen.id, { "pictures, internal": "granted" }, true);
    expect(await seenBy(lecturer, specimen)).toBe(false);
  });

  test("are not seen by who borrows where a donor refused, or was never asked", async () => {
    for (const answer of ["refused", "not asked", "unknown"]) {
      const specimen = await withPicture();
      await consented(specimen.id, {
        "pictures, internal": answer,
        "pictures, professional publication": answer,
      });
      expect(await seenBy(lecturer, specimen), answer).toBe(false);
    }
  });

  test("of animals are seen by everyone", async () =>
    expect(
      await seenBy(
        lecturer,
        await withPicture({ human: false, scientificName: "Equus caballus", ageBand: null }),
      ),
    ).toBe(true));
});
