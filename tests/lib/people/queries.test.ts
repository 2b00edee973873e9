/** Institutions and venues as they are read: by an id that is one, and by a borrower the own alone. */
import { beforeAll, describe, expect, test } from "vitest";
import { getInstitution, getVenue, listVenueNames } from "#lib/people/queries.ts";
import { aBorrower, aVenue, aViewer } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const registrar = aViewer("registrar");
const noIds = ["nothing", "' OR 1=1 --", "", "\u0000", "%E0%A4%A", "__proto__"];
const unknownId = "01920000-0000-7000-8000-0000000000ff";
let ours: string;
let theirs: string;
let ourVenue: string;
let theirVenue: string;

beforeAll(async () => {
  await testDatabase();
  ours = await aBorrower({ name: "School by the Ferry" });
  theirs = await aBorrower({ name: "School on the Hill" });
  ourVenue = await aVenue({ institutionId: ours, name: "Reading room" });
  theirVenue = await aVenue({ institutionId: theirs, name: "Hall" });
});

describe.each([
  ["an institution", getInstitution],
  ["a venue", getVenue],
] as const)("%s", (_what, get) => {
  test("is not there under an id that nobody has, nor under what is no id", async () => {
    for (const viewer of [registrar, aViewer("borrower registrar", ours)])
      for (const id of [unknownId, ...noIds])
        await expect(get(viewer, id), id).rejects.toMatchObject({
          kind: "not-found",
          reason: "record.not-found",
        });
  });
});

test("a borrower's registrar reads the own institution with its venues, and no other", async () => {
  const borrower = aViewer("borrower registrar", ours);
  const sheet = await getInstitution(borrower, ours);
  expect(sheet.venues.map(({ name }) => name)).toEqual(["Reading room"]);
  expect((await getVenue(borrower, ourVenue)).name).toBe("Reading room");
  await expect(getInstitution(borrower, theirs)).rejects.toMatchObject({ kind: "not-found" });
  await expect(getVenue(borrower, theirVenue)).rejects.toMatchObject({ kind: "not-found" });
});

test("venues are offered to the house all, to a borrower the own", async () => {
  const namesFor = async (viewer: typeof registrar) => (await listVenueNames(viewer)).map(({ name }) => name);
  expect(await namesFor(registrar)).toEqual(["Reading room", "Hall"]);
  expect(await namesFor(aViewer("lecturer", theirs))).toEqual(["Hall"]);
  expect(await namesFor(aViewer("lecturer"))).toEqual([]);
});
