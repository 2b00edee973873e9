/** Places, moves and hand-overs, and what is read of them by whom. */
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import type { Refusal } from "#lib/platform/refusal.ts";
import {
  bookSpecimen,
  keepPlace,
  moveSpecimen,
  placeOfVenue,
  placeOnTheWay,
  writeHandover,
  writeHandovers,
  writeMove,
  writeMoves,
} from "#lib/whereabouts/commands.ts";
import { brokenLinks } from "#lib/whereabouts/custody.ts";
import { listPlaces } from "#lib/whereabouts/queries/places.ts";
import {
  custodyOf,
  getWhereabouts,
  homePlacesOf,
  lastHandoversOf,
  placesOf,
} from "#lib/whereabouts/queries.ts";
import { aCentre, aSpecimen, aVenue, aViewer, inWork, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const registrar = aViewer("registrar");
const inspector = aViewer("inspector");
const lecturer = aViewer("lecturer", "01920000-0000-7000-8000-0000000000aa");
const administrator = aViewer("administrator");
let house = "";

beforeAll(async () => {
  await testDatabase();
  house = (await aCentre()).name;
});
beforeEach(() => {
  setClock(() => new Date("2027-01-15T09:00:00Z"));
});

const refusalOf = async (attempt: Promise<unknown>) => {
  const thrown = await attempt.then(
    () => null,
    (error: Refusal) => error,
  );
  return (
    thrown && {
      kind: thrown.kind,
      reason: thrown.reason,
      parameters: thrown.parameters,
      issues: thrown.issues,
    }
  );
};
const place = { id: null, name: "Store", kind: "store", parentId: null, venueId: null } as const;
let shelves = 0;
async function aShelf(parentId: string | null = null): Promise<string> {
  shelves += 1;
  return await keepPlace(registrar, {
    ...place,
    kind: "shelf",
    name: `Shelf ${shelves}`,
    code: `A-${shelves}`,
    parentId,
  });
}
const note = { releasedBy: "R. Registrar", receivedBy: "D. Driver", reason: "journey out", loanId: null };
const handOver = (specimen: Made, toParty: string) =>
  inWork((work) => writeHandover(work, { specimenId: specimen.id, toParty, ...note }));
const custody = (specimen: Made) => custodyOf(registrar, specimen.id);
const placeNow = async (...specimens: Made[]) => {
  const found = await placesOf(
    database(),
    specimens.map(({ id }) => id),
  );
  return specimens.map(({ id }) => found.get(id) ?? null);
};
async function aWholeWithParts() {
  const whole = await aSpecimen({ kind: "skeleton or bone" });
  const arm = await aSpecimen({ wholeId: whole.id });
  const hand = await aSpecimen({ wholeId: arm.id });
  return { whole, arm, hand };
}

describe("a place", () => {
  test("lies in a larger one, and reads from the largest to itself", async () => {
    const store = await keepPlace(registrar, { ...place, code: "ST", name: "Store" });
    const cabinet = await keepPlace(registrar, {
      ...place,
      code: "ST-C",
      name: "Cabinet C",
      kind: "cabinet",
      parentId: store,
    });
    const shelf = await keepPlace(registrar, {
      ...place,
      code: "ST-C-4",
      name: "Shelf 4",
      kind: "shelf",
      parentId: cabinet,
    });
    const places = await listPlaces(registrar);
    expect(places.find(({ id }) => id === shelf)).toEqual({
      id: shelf,
      code: "ST-C-4",
      name: "Shelf 4",
      kind: "shelf",
      parentId: cabinet,
      venueId: null,
      depth: 2,
      within: ["Store", "Cabinet C"],
    });
    expect(places.find(({ id }) => id === store)?.within).toEqual([]);
  });

  test("never lies inside itself, however far round", async () => {
    const outer = await aShelf();
    const inner = await aShelf(outer);
    const round = keepPlace(registrar, {
      ...place,
      id: outer,
      code: "ROUND",
      name: "Round",
      parentId: inner,
    });
    expect(await refusalOf(round)).toMatchObject({
      issues: [{ path: "parentId", message: "place.inside-itself" }],
    });
    const itself = keepPlace(registrar, {
      ...place,
      id: outer,
      code: "ROUND",
      name: "Round",
      parentId: outer,
    });
    expect(await refusalOf(itself)).toMatchObject({
      issues: [{ path: "parentId", message: "place.inside-itself" }],
    });
  });

  test("has a code of its own, which it may keep when it is renamed", async () => {
    const id = await keepPlace(registrar, { ...place, code: "ONLY" });
    expect(await refusalOf(keepPlace(registrar, { ...place, code: "ONLY" }))).toMatchObject({
      reason: "place.code-taken",
      parameters: { code: "ONLY" },
    });
    expect(await keepPlace(registrar, { ...place, id, code: "ONLY", name: "Renamed" })).toBe(id);
    expect((await listPlaces(registrar)).find((row) => row.id === id)?.name).toBe("Renamed");
  });

  test("of a venue names the venue, and no other place does", async () => {
    const venueId = await aVenue();
    for (const wrong of [
      { kind: "venue", venueId: null },
      { kind: "room", venueId },
    ] as const)
      expect(await refusalOf(keepPlace(registrar, { ...place, code: "V", ...wrong }))).toMatchObject({
        issues: [{ path: "venueId", message: "place.venue-of-its-kind" }],
      });
    const unknown = "01920000-0000-7000-8000-0000000000ff";
    expect(
      await refusalOf(keepPlace(registrar, { ...place, code: "V", kind: "venue", venueId: unknown })),
    ).toMatchObject({
      kind: "not-found",
    });
    expect(await refusalOf(keepPlace(registrar, { ...place, code: "V", parentId: unknown }))).toMatchObject({
      kind: "not-found",
    });
    expect(await refusalOf(keepPlace(registrar, { ...place, id: unknown, code: "V" }))).toMatchObject({
      kind: "not-found",
    });
  });

  test("of a venue and of the way between is made once, when it is first needed", async () => {
    const venueId = await aVenue({ name: "Lecture room" });
    const made = await Promise.all([1, 2, 3].map(() => inWork((work) => placeOfVenue(work, venueId))));
    expect(new Set(made).size).toBe(1);
    expect((await listPlaces(registrar)).find(({ id }) => id === made[0])).toMatchObject({
      kind: "venue",
      venueId,
    });
    expect(await inWork(placeOnTheWay)).toBe(await inWork(placeOnTheWay));
  });
});

describe("a move", () => {
  test("says where a specimen stands now; earlier moves stay", async () => {
    const specimen = await aSpecimen();
    const [first, second] = [await aShelf(), await aShelf()];
    await moveSpecimen(registrar, { specimenId: specimen.id, placeId: first, reason: "accessioned" });
    await moveSpecimen(registrar, { specimenId: specimen.id, placeId: second, reason: "store rearranged" });
    expect(await placeNow(specimen)).toEqual([second]);
    const { moves } = await getWhereabouts(registrar, specimen.id);
    expect(moves?.map((move) => [move.reason, move.movedBy])).toEqual([
      ["store rearranged", registrar.name],
      ["accessioned", registrar.name],
    ]);
  });

  test("takes along the parts that stand with it, and leaves those that stand elsewhere", async () => {
    const { whole, arm, hand } = await aWholeWithParts();
    const [shelf, workshop, other] = [await aShelf(), await aShelf(), await aShelf()];
    await moveSpecimen(registrar, { specimenId: whole.id, placeId: shelf, reason: "accessioned" });
    expect(await placeNow(whole, arm, hand)).toEqual([shelf, shelf, shelf]);
    await moveSpecimen(registrar, { specimenId: hand.id, placeId: workshop, reason: "cleaning" });
    await moveSpecimen(registrar, { specimenId: whole.id, placeId: other, reason: "store rearranged" });
    expect(await placeNow(whole, arm, hand)).toEqual([other, other, workshop]);
  });

  test("to where it stands already is refused as a command, and leaves no entry within a larger act", async () => {
    const specimen = await aSpecimen();
    const shelf = await aShelf();
    const move = { specimenId: specimen.id, placeId: shelf, reason: "accessioned" };
    await moveSpecimen(registrar, move);
    expect(await refusalOf(moveSpecimen(registrar, move))).toMatchObject({ reason: "move.already-there" });
    await inWork((work) => writeMove(work, move));
    expect(await database().move.count({ where: { specimenId: specimen.id } })).toBe(1);
  });

  test("of a specimen that is away, or out of the house, is left to the loan", async () => {
    const specimen = await aSpecimen();
    const [shelf, venuePlace] = [
      await aShelf(),
      await inWork(async (work) => placeOfVenue(work, await aVenue())),
    ];
    const out = moveSpecimen(registrar, { specimenId: specimen.id, placeId: venuePlace, reason: "lent" });
    expect(await refusalOf(out)).toMatchObject({ reason: "move.outside-the-house" });
    await handOver(specimen, "Carrier North");
    const back = moveSpecimen(registrar, { specimenId: specimen.id, placeId: shelf, reason: "put back" });
    expect(await refusalOf(back)).toMatchObject({
      reason: "move.not-in-the-house",
      parameters: { holder: "Carrier North" },
    });
    await handOver(specimen, house);
    await moveSpecimen(registrar, { specimenId: specimen.id, placeId: shelf, reason: "put back" });
    expect(await placeNow(specimen)).toEqual([shelf]);
  });

  test("out does not make the house forget where a specimen belongs", async () => {
    const specimen = await aSpecimen();
    const shelf = await aShelf();
    await moveSpecimen(registrar, { specimenId: specimen.id, placeId: shelf, reason: "accessioned" });
    await inWork(async (work) => {
      await writeMove(work, {
        specimenId: specimen.id,
        placeId: await placeOnTheWay(work),
        reason: "journey out",
      });
    });
    expect((await placesOf(database(), [specimen.id])).get(specimen.id)).not.toBe(shelf);
    expect((await homePlacesOf(database(), [specimen.id])).get(specimen.id)).toBe(shelf);
  });

  test("goes to a place and of a specimen that are there", async () => {
    const unknown = "01920000-0000-7000-8000-0000000000ff";
    const specimen = await aSpecimen();
    expect(
      await refusalOf(moveSpecimen(registrar, { specimenId: specimen.id, placeId: unknown, reason: "x" })),
    ).toMatchObject({ kind: "not-found" });
    expect(
      await refusalOf(moveSpecimen(registrar, { specimenId: unknown, placeId: await aShelf(), reason: "x" })),
    ).toMatchObject({ kind: "not-found" });
    expect(
      await refusalOf(
        inWork((work) => writeMoves(work, { specimenIds: [specimen.id], placeId: unknown, reason: "x" })),
      ),
    ).toMatchObject({ kind: "not-found" });
  });
});

describe("custody", () => {
  test("begins in the house and is handed on; who has it now is the last receiver", async () => {
    const specimen = await aSpecimen();
    expect(await custody(specimen)).toEqual({ holder: null, chain: [] });
    for (const party of ["Carrier North", "School of Medicine", "Carrier North", house])
      await handOver(specimen, party);
    const { holder, chain } = await custody(specimen);
    expect(holder).toBe(house);
    expect(chain.map((link) => [link.sequence, link.fromParty, link.toParty])).toEqual([
      [1, null, house],
      [2, house, "Carrier North"],
      [3, "Carrier North", "School of Medicine"],
      [4, "School of Medicine", "Carrier North"],
      [5, "Carrier North", house],
    ]);
    expect(chain[1]).toMatchObject(note);
    expect(brokenLinks(chain)).toEqual([]);
  });

  test("of a whole goes over with the parts that are held with it", async () => {
    const { whole, arm, hand } = await aWholeWithParts();
    await handOver(hand, "Restorer South");
    await handOver(whole, "Carrier North");
    const holders = await lastHandoversOf(database(), [whole.id, arm.id, hand.id]);
    expect([whole, arm, hand].map(({ id }) => holders.get(id)?.toParty)).toEqual([
      "Carrier North",
      "Carrier North",
      "Restorer South",
    ]);
  });

  test("handed to who has it already adds nothing", async () => {
    const specimen = await aSpecimen();
    await handOver(specimen, "Carrier North");
    await handOver(specimen, "Carrier North");
    expect((await custody(specimen)).chain).toHaveLength(2);
  });

  test("stays one chain when twenty hand over at once", async () => {
    const specimens = await Promise.all([1, 2, 3].map(() => aSpecimen()));
    const ids = specimens.map(({ id }) => id);
    await Promise.all(
      Array.from({ length: 20 }, (_, at) =>
        inWork((work) =>
          writeHandovers(work, {
            specimenIds: at % 2 ? ids : [...ids].reverse(),
            toParty: `Carrier ${at}`,
            ...note,
          }),
        ),
      ),
    );
    for (const specimen of specimens) {
      const { chain } = await custody(specimen);
      expect(chain).toHaveLength(21);
      expect(brokenLinks(chain)).toEqual([]);
    }
  });

  test("does not go back in time", async () => {
    const specimen = await aSpecimen();
    await handOver(specimen, "Carrier North");
    setClock(() => new Date("2027-01-14T09:00:00Z"));
    expect(await refusalOf(handOver(specimen, "School of Medicine"))).toMatchObject({
      reason: "custody.broken-chain",
    });
    expect((await custody(specimen)).holder).toBe("Carrier North");
  });
});

describe("the sheet of whereabouts", () => {
  test("shows the house the place, the holder, the chain, the moves and the bookings", async () => {
    const specimen = await aSpecimen();
    const shelf = await aShelf();
    await moveSpecimen(registrar, { specimenId: specimen.id, placeId: shelf, reason: "accessioned" });
    await handOver(specimen, "Carrier North");
    const days = { startsOn: "2027-03-01", endsOn: "2027-03-05" };
    const bookingId = await bookSpecimen(registrar, {
      specimenId: specimen.id,
      purpose: "picture-taking",
      ...days,
    });
    for (const viewer of [registrar, inspector, programViewer])
      expect(await getWhereabouts(viewer, specimen.id)).toMatchObject({
        accessionNumber: specimen.accessionNumber,
        place: { id: shelf, kind: "shelf" },
        custody: { holder: "Carrier North" },
        inTheHouse: false,
        moves: [{ placeId: shelf, reason: "accessioned" }],
        bookings: [
          { bookingId, purpose: "picture-taking", released: false, bookedBy: registrar.name, ...days },
        ],
      });
  });

  test("shows nobody else where it stands, who has it or for whom it is booked", async () => {
    const specimen = await aSpecimen();
    await moveSpecimen(registrar, {
      specimenId: specimen.id,
      placeId: await aShelf(),
      reason: "accessioned",
    });
    await handOver(specimen, "Carrier North");
    for (const viewer of [lecturer, administrator]) {
      expect(await getWhereabouts(viewer, specimen.id)).toEqual({
        specimenId: specimen.id,
        accessionNumber: specimen.accessionNumber,
        place: null,
        custody: null,
        inTheHouse: null,
        moves: null,
        bookings: null,
      });
      expect(await refusalOf(custodyOf(viewer, specimen.id))).toMatchObject({ kind: "forbidden" });
    }
  });

  test("is not there for an id that is unknown or no id at all", async () => {
    for (const id of ["01920000-0000-7000-8000-0000000000ff", "nonsense"]) {
      expect(await refusalOf(getWhereabouts(registrar, id))).toMatchObject({ kind: "not-found" });
      expect(await refusalOf(custodyOf(registrar, id))).toMatchObject({ kind: "not-found" });
    }
  });
});
