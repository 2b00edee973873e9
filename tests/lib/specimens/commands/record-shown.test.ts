/** What a specimen shows, stated as a whole set. */

import { beforeAll, describe, expect, test } from "vitest";
import { newId } from "#lib/platform/identity.ts";
import { recordShown } from "#lib/specimens/commands/record-shown.ts";
import { getSpecimen } from "#lib/specimens/queries.ts";
import { aCentre, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aRecorded, aShown } from "#tests/support/specimen-records.ts";
import { entriesOf, issuesOf, refusalOf } from "#tests/support/untouched.ts";

const curator = aViewer("curator");
const lecturer = aViewer("lecturer", newId());

beforeAll(async () => {
  await testDatabase("vocabularies");
  await aCentre({ accessionPattern: "[A-Z]{2} [^ ]+", accessionExample: "AN 2020.0001" });
}, 120_000);

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
