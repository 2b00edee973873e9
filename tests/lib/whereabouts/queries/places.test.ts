/** Places as the pages read them: counted, on their sheet, with what stands there, and who may not look. */
import { beforeAll, describe, expect, test } from "vitest";
import { newId } from "#lib/platform/identity.ts";
import type { Refusal } from "#lib/platform/refusal.ts";
import { keepPlace, moveSpecimen, placeOfVenue, writeMove } from "#lib/whereabouts/commands.ts";
import {
  getPlace,
  getPlaceName,
  listPlaces,
  listPlacesWithCounts,
  listSpecimensAt,
  listUnplaced,
} from "#lib/whereabouts/queries/places.ts";
import type { PlaceInput } from "#lib/whereabouts/schema.ts";
import {
  aBorrower,
  aCentre,
  aSpecimen,
  aVenue,
  aViewer,
  inWork,
  type Made,
} from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const curator = aViewer("curator");
const inspector = aViewer("inspector");
const outsiders = [aViewer("lecturer", "01920000-0000-7000-8000-0000000000aa"), aViewer("administrator")];
const unknown = "01920000-0000-7000-8000-0000000000ff";

beforeAll(async () => {
  await testDatabase();
  await aCentre();
});

let made = 0;
async function aPlace(name: string, said: Partial<PlaceInput> = {}): Promise<string> {
  made += 1;
  return await keepPlace(curator, {
    id: null,
    code: `P-${made}`,
    name,
    kind: "store",
    parentId: null,
    venueId: null,
    ...said,
  });
}
const move = (specimen: Made, placeId: string) =>
  moveSpecimen(curator, { specimenId: specimen.id, placeId, reason: "put away" });
const refusalOf = async (attempt: Promise<unknown>) =>
  await attempt.then(
    () => null,
    ({ kind, reason }: Refusal) => ({ kind, reason }),
  );

describe("the places of a house", () => {
  test("say how many specimens stand at each, and with everything inside", async () => {
    const store = await aPlace("Dry store");
    const shelf = await aPlace("Shelf", { kind: "shelf", parentId: store });
    const [first, second, third] = [await aSpecimen(), await aSpecimen(), await aSpecimen()];
    await move(first, store);
    await move(second, shelf);
    await move(third, store);
    await move(third, shelf);
    const places = await listPlacesWithCounts(curator);
    const count = (id: string) => {
      const { here, total } = places.find((place) => place.id === id) ?? { here: -1, total: -1 };
      return [here, total];
    };
    expect(count(store)).toEqual([1, 3]);
    expect(count(shelf)).toEqual([2, 2]);
    expect((await getPlace(curator, store)).inside.map(({ id, total }) => [id, total])).toEqual([[shelf, 2]]);
  });

  test("list what stands at a place and inside it by number, page after page, with since when", async () => {
    const store = await aPlace("Cabinet room", { kind: "room" });
    const cabinet = await aPlace("Cabinet", { kind: "cabinet", parentId: store });
    const specimens: Made[] = [];
    for (let at = 0; at < 5; at += 1) {
      const specimen = await aSpecimen();
      await move(specimen, at % 2 === 0 ? store : cabinet);
      specimens.push(specimen);
    }
    const numbers = specimens.map(({ accessionNumber }) => accessionNumber).sort();
    const one = await listSpecimensAt(curator, store, { size: 3 });
    expect(one.rows.map((row) => row.accessionNumber)).toEqual(numbers.slice(0, 3));
    expect(one.previous).toBeNull();
    const two = await listSpecimensAt(curator, store, { size: 3, after: one.next ?? "" });
    expect(two.rows.map((row) => row.accessionNumber)).toEqual(numbers.slice(3));
    expect(two.next).toBeNull();
    const back = await listSpecimensAt(curator, store, { size: 3, before: two.previous ?? "" });
    expect(back.rows).toEqual(one.rows);
    const inside = await listSpecimensAt(curator, cabinet);
    expect(inside.rows.map((row) => row.place.name)).toEqual(["Cabinet", "Cabinet"]);
    for (const { since } of inside.rows) expect(since).toBeInstanceOf(Date);
  });

  test("forget a specimen that has gone on its way", async () => {
    const store = await aPlace("Loading bay", { kind: "room" });
    const specimen = await aSpecimen();
    await move(specimen, store);
    const venueId = await aVenue();
    await inWork(async (work) => {
      const placeId = await placeOfVenue(work, venueId);
      await writeMove(work, { specimenId: specimen.id, placeId, reason: "lent" });
    });
    expect((await listSpecimensAt(curator, store)).rows).toEqual([]);
    expect((await getPlace(curator, store)).total).toBe(0);
  });

  test("say the same of a place to which thousands were moved", async () => {
    const [busy, other] = [await aPlace("Packing table", { kind: "room" }), await aPlace("Aside")];
    const [restless, quiet, gone] = [await aSpecimen(), await aSpecimen(), await aSpecimen()];
    await move(gone, busy);
    await move(gone, other);
    await inWork(({ transaction }) =>
      transaction.move.createMany({
        data: Array.from({ length: 5_001 }, () => ({
          id: newId(),
          specimenId: restless.id,
          placeId: busy,
          movedAt: new Date("2027-01-10T09:00:00Z"),
          movedBy: "Somebody",
          reason: "counted again",
        })),
      }),
    );
    await move(quiet, busy);
    const { rows } = await listSpecimensAt(curator, busy);
    expect(rows.map(({ id }) => id)).toEqual([restless.id, quiet.id]);
    expect((await getPlace(curator, busy)).here).toBe(2);
    expect((await listSpecimensAt(curator, other)).rows.map(({ id }) => id)).toEqual([gone.id]);
  });

  test("name the larger places by way of which one comes to a shelf, and the borrower of a venue", async () => {
    const store = await aPlace("Wet store");
    const cabinet = await aPlace("Cabinet 1", { kind: "cabinet", parentId: store });
    const shelf = await aPlace("Shelf 1", { kind: "shelf", parentId: cabinet });
    expect((await getPlace(inspector, shelf)).around).toEqual([
      { id: store, name: "Wet store" },
      { id: cabinet, name: "Cabinet 1" },
    ]);
    const institutionId = await aBorrower({ name: "Faculty by the Lake" });
    const venueId = await aVenue({ institutionId, name: "Room of bones" });
    const placeId = await inWork((work) => placeOfVenue(work, venueId));
    expect(await getPlace(inspector, placeId)).toMatchObject({
      kind: "venue",
      around: [],
      inside: [],
      venue: { name: "Room of bones", institution: { id: institutionId, name: "Faculty by the Lake" } },
    });
  });

  test("know what has no place yet, page after page", async () => {
    const placed = await aSpecimen();
    const loose = [await aSpecimen(), await aSpecimen(), await aSpecimen()];
    await move(placed, await aPlace("Rack", { kind: "shelf" }));
    const numbers: string[] = [];
    let after: string | null = null;
    do {
      const page = await listUnplaced(curator, { size: 2, ...(after === null ? {} : { after }) });
      numbers.push(...page.rows.map((row) => row.accessionNumber));
      after = page.rows.length < 2 ? null : page.next;
      if (page.previous !== null) {
        const { rows } = await listUnplaced(curator, { size: 2, before: page.previous });
        expect(rows.map((row) => row.accessionNumber)).toEqual(
          numbers.slice(-page.rows.length - 2, -page.rows.length),
        );
      }
    } while (after !== null);
    expect(numbers).toEqual([...numbers].sort());
    expect(numbers).toEqual(expect.arrayContaining(loose.map(({ accessionNumber }) => accessionNumber)));
    expect(numbers).not.toContain(placed.accessionNumber);
  });

  test("are not there for a borrower or an administrator, nor under an id that nobody gave", async () => {
    const store = await aPlace("Store");
    for (const viewer of outsiders)
      for (const look of [
        listPlaces(viewer),
        listPlacesWithCounts(viewer),
        getPlace(viewer, store),
        getPlaceName(viewer, store),
        listSpecimensAt(viewer, store),
        listUnplaced(viewer),
      ])
        expect(await refusalOf(look)).toMatchObject({ kind: "forbidden" });
    for (const id of [unknown, "nonsense"])
      for (const look of [getPlace(curator, id), getPlaceName(curator, id)])
        expect(await refusalOf(look)).toMatchObject({ kind: "not-found" });
    expect(await getPlaceName(curator, store)).toMatchObject({ name: "Store" });
    for (const page of [{ after: "nonsense" }, { before: "e30" }, { size: 0 }]) {
      expect(await refusalOf(listSpecimensAt(curator, store, page))).toMatchObject({ kind: "invalid" });
      expect(await refusalOf(listUnplaced(curator, page))).toMatchObject({ kind: "invalid" });
    }
  });
});

describe("keeping a place", () => {
  const change = (id: string, said: Partial<PlaceInput>) =>
    keepPlace(curator, {
      id,
      code: `C-${id}`.slice(0, 40),
      name: "Changed",
      kind: "store",
      parentId: null,
      venueId: null,
      ...said,
    });

  test("puts it inside itself by no two changes at once", async () => {
    for (let round = 0; round < 5; round += 1) {
      const [first, second] = [await aPlace("First"), await aPlace("Second")];
      const answers = await Promise.all([
        refusalOf(change(first, { parentId: second })),
        refusalOf(change(second, { parentId: first })),
      ]);
      expect(answers.filter((answer) => answer === null)).toHaveLength(1);
      expect(answers).toContainEqual({ kind: "invalid", reason: "input.invalid" });
    }
  });

  test("gives no code twice when two ask for it at once", async () => {
    const answers = await Promise.all(
      [1, 2].map(() => refusalOf(aPlace("Same code", { code: "AT-ONCE", kind: "shelf" }))),
    );
    expect(answers).toContainEqual(null);
    expect(answers).toContainEqual({ kind: "conflict", reason: "place.code-taken" });
  });

  test("keeps what is inside the house inside, and what stands for the outside as it is", async () => {
    const venueId = await aVenue();
    const placeId = await inWork((work) => placeOfVenue(work, venueId));
    const store = await aPlace("Store that stays");
    expect(await refusalOf(change(store, { kind: "on the way" }))).toMatchObject({
      reason: "place.stays-inside",
    });
    const { code, kind } = await getPlace(curator, placeId);
    for (const said of [
      { kind: "store" },
      { code: "V-OTHER", kind, venueId },
      { code, kind, venueId, parentId: store },
    ] as const)
      expect(await refusalOf(change(placeId, said))).toMatchObject({ reason: "place.kept-by-the-program" });
    expect(await refusalOf(change(placeId, { code, kind, venueId, name: "Renamed" }))).toBeNull();
    expect(await refusalOf(change(store, { parentId: placeId }))).toMatchObject({ kind: "invalid" });
  });
});
