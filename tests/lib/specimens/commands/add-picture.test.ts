/** Pictures of specimens: taken, replaced, refused. */
import sharp from "sharp";
import { beforeAll, describe, expect, test } from "vitest";
import { programViewer } from "#lib/people/viewer.ts";
import { database } from "#lib/platform/database.ts";
import { newId } from "#lib/platform/identity.ts";
import { addPicture } from "#lib/specimens/commands/add-picture.ts";
import { getPicture, getSpecimen } from "#lib/specimens/queries.ts";
import { aCentre, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aRecorded } from "#tests/support/specimen-records.ts";
import { entriesOf, issuesOf, refusalOf } from "#tests/support/untouched.ts";

const curator = aViewer("curator");
const lecturer = aViewer("lecturer", newId());

beforeAll(async () => {
  await testDatabase("vocabularies");
  await aCentre({ accessionPattern: "[A-Z]{2} [^ ]+", accessionExample: "AN 2020.0001" });
}, 120_000);

describe("a picture", () => {
  const red = async () =>
    await sharp({ create: { width: 400, height: 200, channels: 3, background: "red" } })
      .png()
      .toBuffer();

  test("becomes the specimen's, and the one before stays stored", async () => {
    const { id: specimenId } = await aRecorded();
    const first = await addPicture(curator, { specimenId, content: await red() });
    const second = await addPicture(curator, { specimenId, content: await red() });
    expect(first).toMatchObject({ widthPx: 400, heightPx: 200 });
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
