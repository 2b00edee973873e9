/** How chains of custody begin: in the house, when the specimen came to it. */
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { keepPlace, moveSpecimen, writeHandover } from "#lib/whereabouts/commands.ts";
import { brokenLinks } from "#lib/whereabouts/custody.ts";
import { custodyOf, lastHandoversOf } from "#lib/whereabouts/queries.ts";
import { aCentre, aSpecimen, aViewer, inWork, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const registrar = aViewer("registrar");
const note = { releasedBy: "R. Registrar", receivedBy: "D. Driver", reason: "journey out", loanId: null };
let house = "";
let shelves = 0;

async function aShelf(): Promise<string> {
  shelves += 1;
  return await keepPlace(registrar, {
    id: null,
    code: `B-${shelves}`,
    name: `Shelf ${shelves}`,
    kind: "shelf",
    parentId: null,
    venueId: null,
  });
}
const handOver = (specimen: Made, toParty: string) =>
  inWork((work) => writeHandover(work, { specimenId: specimen.id, toParty, ...note }));
const chainOf = async (specimen: Made) => (await custodyOf(registrar, specimen.id)).chain;

beforeAll(async () => {
  await testDatabase();
  house = (await aCentre()).name;
});
beforeEach(() => {
  setClock(() => new Date("2027-01-15T09:00:00Z"));
});

describe("a chain of custody", () => {
  test("begins with the first place in the house, on the day on which the specimen came to it", async () => {
    const known = await aSpecimen({ acquiredOn: new Date("1931-05-04") });
    const unknown = await aSpecimen();
    const ahead = await aSpecimen({ acquiredOn: new Date("2027-06-01") });
    const shelf = await aShelf();
    for (const { id } of [known, unknown, ahead])
      await moveSpecimen(registrar, { specimenId: id, placeId: shelf, reason: "accessioned" });
    expect(await chainOf(known)).toMatchObject([
      {
        sequence: 1,
        fromParty: null,
        toParty: house,
        receivedBy: house,
        handedOverAt: new Date("1931-05-04T00:00:00Z"),
        loanId: null,
      },
    ]);
    for (const specimen of [unknown, ahead])
      expect(await chainOf(specimen)).toMatchObject([
        { fromParty: null, toParty: house, handedOverAt: new Date("2027-01-15T09:00:00Z") },
      ]);
    await moveSpecimen(registrar, { specimenId: known.id, placeId: await aShelf(), reason: "rearranged" });
    expect(await chainOf(known)).toHaveLength(1);
    await handOver(known, "Carrier North");
    expect(brokenLinks(await chainOf(known))).toEqual([]);
  });

  test("of parts begins with that of their whole, and a chain that has begun is left as it is", async () => {
    const whole = await aSpecimen({ kind: "skeleton or bone" });
    const arm = await aSpecimen({ wholeId: whole.id });
    const hand = await aSpecimen({ wholeId: arm.id });
    await handOver(hand, "Restorer South");
    await moveSpecimen(registrar, { specimenId: whole.id, placeId: await aShelf(), reason: "accessioned" });
    const holders = await lastHandoversOf(database(), [whole.id, arm.id, hand.id]);
    expect([whole, arm, hand].map(({ id }) => holders.get(id)?.toParty)).toEqual([
      house,
      house,
      "Restorer South",
    ]);
  });

  test("begins on the day of acquisition even where the first entry is a way out", async () => {
    const specimen = await aSpecimen({ acquiredOn: new Date("1999-03-01") });
    await handOver(specimen, "Carrier North");
    const chain = await chainOf(specimen);
    expect(
      chain.map(({ handedOverAt, reason, loanId }) => [handedOverAt.toISOString(), reason, loanId]),
    ).toEqual([
      ["1999-03-01T00:00:00.000Z", "the record of custody begins", null],
      ["2027-01-15T09:00:00.000Z", note.reason, note.loanId],
    ]);
  });
});
