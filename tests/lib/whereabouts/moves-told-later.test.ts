/** Moves that are told afterwards, and a house that changes its name under its specimens. */
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { configureCentre } from "#lib/people/commands.ts";
import { getCentre } from "#lib/people/queries.ts";
import { setClock } from "#lib/platform/clock.ts";
import type { Refusal } from "#lib/platform/refusal.ts";
import { keepPlace, moveSpecimen, writeHandover } from "#lib/whereabouts/commands.ts";
import { custodyOf, getWhereabouts } from "#lib/whereabouts/queries.ts";
import { aCentre, aSpecimen, aViewer, inWork, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const manager = aViewer("collection manager");
const stand = (moment: string) => setClock(() => new Date(moment));
let shelves = 0;
async function aShelf(): Promise<string> {
  shelves += 1;
  return await keepPlace(manager, {
    id: null,
    code: `M-${shelves}`,
    name: `Shelf ${shelves}`,
    kind: "shelf",
    parentId: null,
    venueId: null,
  });
}
const move = async (specimen: Made, movedAt: string | null = null, placeId?: string) =>
  await moveSpecimen(manager, {
    specimenId: specimen.id,
    placeId: placeId ?? (await aShelf()),
    reason: "put away",
    movedAt,
  }).then(
    () => null,
    ({ kind, reason, parameters }: Refusal) => ({ kind, reason, parameters }),
  );
const movesOf = async (specimen: Made) =>
  (await getWhereabouts(manager, specimen.id)).moves?.map(({ movedAt }) => movedAt.toISOString());
const handOver = (specimen: Made, toParty: string) =>
  inWork((work) =>
    writeHandover(work, {
      specimenId: specimen.id,
      toParty,
      releasedBy: "R. Registrar",
      receivedBy: "D. Driver",
      reason: "journey",
      loanId: null,
    }),
  );

beforeAll(async () => {
  await testDatabase();
  await aCentre();
});
beforeEach(() => {
  stand("2027-01-15T09:00:00Z");
});

describe("a move that is told afterwards", () => {
  test("counts from when it was made", async () => {
    const specimen = await aSpecimen();
    expect(await move(specimen, "2027-01-14T16:30:00Z")).toBeNull();
    expect(await move(specimen)).toBeNull();
    expect(await movesOf(specimen)).toEqual(["2027-01-15T09:00:00.000Z", "2027-01-14T16:30:00.000Z"]);
  });

  test("is not told out of order, and not before it is made", async () => {
    const specimen = await aSpecimen();
    await move(specimen, "2027-01-14T16:30:00Z");
    expect(await move(specimen, "2027-01-14T16:29:00Z")).toEqual({
      kind: "conflict",
      reason: "move.before-the-last",
      parameters: { last: "2027-01-14T16:30:00.000Z" },
    });
    expect(await move(specimen, "2027-01-15T09:01:00Z")).toMatchObject({ reason: "move.in-the-future" });
    expect(await movesOf(specimen)).toHaveLength(1);
  });

  test("lies after the hand-over that brought the specimen home", async () => {
    const specimen = await aSpecimen();
    stand("2027-01-10T09:00:00Z");
    await handOver(specimen, "Carrier North");
    stand("2027-01-15T08:00:00Z");
    await handOver(specimen, "Centre for Anatomical Loans");
    expect(await move(specimen, "2027-01-12T09:00:00Z")).toMatchObject({ reason: "move.before-the-last" });
    expect(await move(specimen, "2027-01-15T08:00:00Z")).toBeNull();
  });

  test("asks of the parts that go along what it asks of the whole", async () => {
    const whole = await aSpecimen();
    const part = await aSpecimen({ wholeId: whole.id });
    const shelf = await aShelf();
    await move(whole, "2027-01-10T09:00:00Z", shelf);
    await move(part, "2027-01-14T09:00:00Z");
    await move(part, "2027-01-14T10:00:00Z", shelf);
    expect(await move(whole, "2027-01-12T09:00:00Z")).toMatchObject({ reason: "move.before-the-last" });
    expect(await move(whole, "2027-01-14T10:30:00Z")).toBeNull();
    expect(await movesOf(part)).toHaveLength(4);
  });

  test("names a moment that can be read", async () => {
    const specimen = await aSpecimen();
    for (const moment of ["yesterday", "2027-01-14", "2027-01-14T10:00", "0027-01-14T10:00:00Z"])
      expect(await move(specimen, moment)).toMatchObject({ kind: "invalid" });
    expect(await movesOf(specimen)).toEqual([]);
  });
});

test("a house that changes its name still has what it had, and hands it on from where it stands", async () => {
  const specimen = await aSpecimen();
  const settings = (await getCentre(manager))?.settings;
  if (!settings) throw new Error("the centre was configured");
  await handOver(specimen, settings.name);
  await configureCentre(manager, { ...settings, name: "Anatomical Lending House" });
  expect(await getCentre(manager)).toMatchObject({
    settings: { name: "Anatomical Lending House" },
    formerNames: [settings.name],
  });
  expect((await getWhereabouts(manager, specimen.id)).inTheHouse).toBe(true);
  expect(await move(specimen)).toBeNull();
  await handOver(specimen, "Anatomical Lending House");
  expect((await custodyOf(manager, specimen.id)).chain).toHaveLength(1);
  await handOver(specimen, "Carrier North");
  const { chain } = await custodyOf(manager, specimen.id);
  expect(chain.map(({ fromParty, toParty }) => [fromParty, toParty])).toEqual([
    [null, settings.name],
    [settings.name, "Carrier North"],
  ]);
  expect((await getWhereabouts(manager, specimen.id)).inTheHouse).toBe(false);
  expect(await move(specimen)).toMatchObject({
    reason: "move.not-in-the-house",
    parameters: { holder: "Carrier North" },
  });
});
