/** What somebody reads who is not signed in: nothing where the catalogue is closed, and little where it is open. */
import sharp from "sharp";
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import { toDate } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { addPicture } from "#lib/specimens/commands/add-picture.ts";
import {
  findOpenCatalogue,
  getPublicPicture,
  listPublicSpecies,
  listPublicSpecimens,
} from "#lib/specimens/queries/public-catalogue.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";
import { aCentre, aViewer, inWork, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aRecorded, aShown } from "#tests/support/specimen-records.ts";

beforeAll(async () => {
  await testDatabase("vocabularies");
}, 120_000);
beforeEach(async () => {
  setClock(() => new Date("2027-01-15T09:00:00Z"));
  await aCentre({ publicCatalogue: true });
});

const openly = "pictures and models, openly online";
const published = (said: Partial<SpecimenInput> = {}, shown: Parameters<typeof aRecorded>[1] = []) =>
  aRecorded({ publishable: true, ...said }, shown);
const isListed = async ({ accessionNumber }: Made, text = accessionNumber) =>
  (await listPublicSpecimens(null, { text })).rows.some((row) => row.accessionNumber === accessionNumber);
const rowOf = async ({ accessionNumber }: Made) =>
  (await listPublicSpecimens(null, { text: accessionNumber })).rows[0];

describe("a catalogue that is not open", () => {
  test.each([{}, { publicCatalogue: false }])("is not there for anybody: %o", async (said) => {
    const specimen = await published();
    await aCentre(said);
    for (const viewer of [null, aViewer("curator")]) {
      await expect(listPublicSpecimens(viewer)).rejects.toMatchObject({ kind: "not-found" });
      const picture = getPublicPicture(viewer, specimen.id, { showsHuman: true });
      await expect(picture).rejects.toMatchObject({ kind: "not-found" });
      expect(await findOpenCatalogue(viewer)).toBeNull();
    }
  });
});

describe("an open catalogue", () => {
  test("names the centre, and lists what may be published and nothing else", async () => {
    const [open, closed] = [await published(), await aRecorded()];
    expect([await isListed(open), await isListed(closed)]).toEqual([true, false]);
    expect(await findOpenCatalogue(null)).toEqual({
      name: "Centre for Anatomical Loans",
      email: "loans@example.org",
    });
  });

  test("tells number, titles, species, preparation and what is shown, and no other fact", async () => {
    const specimen = await published(
      {
        title: "Trunk of a nerve",
        latinTitle: "Truncus nervi",
        note: "from the estate",
        replacementCost: {
          minor: 120_000,
          currency: "EUR",
          basis: "preparation cost",
          statedOn: "2026-01-01",
          statedBy: "A. Curator",
        },
      },
      ["vagus-nerve", aShown("heart", { state: "removed" })],
    );
    expect(await rowOf(specimen)).toEqual({
      id: specimen.id,
      accessionNumber: specimen.accessionNumber,
      title: "Trunk of a nerve",
      latinTitle: "Truncus nervi",
      preparation: "silicone-impregnated",
      use: "viewing only",
      human: true,
      scientificName: "Homo sapiens",
      structures: ["vagus nerve"],
      hasPicture: false,
    });
    expect(await isListed(specimen, "n. vagus")).toBe(true);
  });

  test("does not answer to the house's other numbers", async () => {
    const formerNumbers = [{ number: "OLD 77-13", kind: "department" as const, markedOn: "" }];
    const specimen = await published({ formerNumbers });
    expect([await isListed(specimen, "OLD 77-13"), await isListed(specimen)]).toEqual([false, true]);
  });

  test("is asked by region, system, species and allowed use", async () => {
    const nerve = await published({ use: "handling" }, ["brachial-plexus"]);
    const gut = await published({ human: false, scientificName: "Equus caballus", ageBand: null }, [
      "stomach",
    ]);
    const found = async (asked: Parameters<typeof listPublicSpecimens>[1]) => {
      const ids = (await listPublicSpecimens(null, asked, { size: 200 })).rows.map(({ id }) => id);
      return [ids.includes(nerve.id), ids.includes(gut.id)];
    };
    expect(await found({ species: "Equus caballus" })).toEqual([false, true]);
    expect(await found({ use: "handling" })).toEqual([true, false]);
    expect(await found({ regionId: "upper-limb" })).toEqual([true, false]);
    expect(await found({ systemId: "alimentary-system" })).toEqual([false, true]);
    await aRecorded({ human: false, scientificName: "Lynx lynx", ageBand: null, publishable: false });
    const species = await listPublicSpecies(null);
    expect(species).toContain("Equus caballus");
    expect(species).not.toContain("Lynx lynx");
  });

  test("is not asked by days or places", async () => {
    await published();
    const { rows } = await listPublicSpecimens(null, {
      freeFrom: "2027-03-01",
      freeUntil: "2027-03-02",
      placeId: newId(),
    } as never);
    expect(rows.length).toBeGreaterThan(0);
  });

  test("is read page by page without loss", async () => {
    for (let made = 0; made < 3; made += 1) await published();
    const all = (await listPublicSpecimens(null)).rows.map(({ id }) => id);
    const first = await listPublicSpecimens(null, {}, { size: 2 });
    const second = await listPublicSpecimens(null, {}, { size: 200, after: first.next ?? "" });
    expect([...first.rows, ...second.rows].map(({ id }) => id)).toEqual(all);
  });
});

describe("pictures in an open catalogue", () => {
  const withPicture = async (said: Partial<SpecimenInput> = {}) => {
    const specimen = await published(said);
    const content = await sharp({ create: { width: 400, height: 200, channels: 3, background: "red" } })
      .png()
      .toBuffer();
    await addPicture(programViewer, { specimenId: specimen.id, content });
    return specimen;
  };
  const consented = async (specimenId: string, answers: Record<string, string>, withdrawn = false) =>
    await inWork(async ({ transaction }) => {
      const donorCode = `D-${newId().slice(-5).toUpperCase()}`;
      const day = withdrawn ? toDate("2026-01-01") : null;
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
          withdrawalReceivedOn: day,
          withdrawalEffectiveOn: day,
          answers: { create: Object.entries(answers).map(([scope, answer]) => ({ scope, answer })) },
        },
      });
    });
  /** Whether there is one, and whether it is given before and after the viewer's choice. */
  const given = async (specimen: Made) => {
    const bytes = (showsHuman: boolean) =>
      getPublicPicture(null, specimen.id, { showsHuman }).then(
        ({ mediaType }) => mediaType === "image/jpeg",
        () => false,
      );
    return [(await rowOf(specimen))?.hasPicture, await bytes(false), await bytes(true)];
  };
  const animal = { human: false, scientificName: "Equus caballus", ageBand: null };

  test("of animals need no choice", async () =>
    expect(await given(await withPicture(animal))).toEqual([true, true, true]));

  test("of human specimens are there where every donor granted it, and only after the choice", async () => {
    const specimen = await withPicture();
    await consented(specimen.id, { [openly]: "granted" });
    expect(await given(specimen)).toEqual([true, false, true]);
    await consented(specimen.id, { [openly]: "granted" });
    expect(await given(specimen)).toEqual([true, false, true]);
    await consented(specimen.id, { [openly]: "not asked", "pictures, internal": "granted" });
    expect(await given(specimen)).toEqual([false, false, false]);
  });

  test.each([
    ["no donor is known", []],
    ["only other pictures were granted", [{ "pictures, internal": "granted", "mass media": "granted" }]],
    ["a donor refused", [{ [openly]: "refused" }]],
    ["one of two was not asked", [{ [openly]: "granted" }, { [openly]: "not asked" }]],
  ] as const)("of human specimens are not there where %s", async (_what, donors) => {
    const specimen = await withPicture();
    for (const answers of donors) await consented(specimen.id, answers as Record<string, string>);
    expect(await given(specimen)).toEqual([false, false, false]);
  });

  test("of human specimens are not there once a donor has withdrawn", async () => {
    const specimen = await withPicture();
    await consented(specimen.id, { [openly]: "granted" }, true);
    expect(await given(specimen)).toEqual([false, false, false]);
  });

  test("of what may not be published are not given, and of what is not there neither", async () => {
    const hidden = await withPicture({ ...animal, publishable: false });
    for (const id of [hidden.id, newId(), "x"]) {
      const picture = getPublicPicture(null, id, { showsHuman: true });
      await expect(picture).rejects.toMatchObject({ kind: "not-found" });
    }
  });
});
