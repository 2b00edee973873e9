/** The best set of a real catalogue: what shows it, what is free with all days around, and why something stays out. */
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { proposeSet } from "#lib/loans/queries/propose-set.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import { bookSpecimen } from "#lib/whereabouts/commands.ts";
import { aBorrower, aCentre, aViewer, inWork, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aRecorded, aShown } from "#tests/support/specimen-records.ts";

let lecturer = aViewer("lecturer");
let heart: Made;
let limb: Made;
let both: Made;
beforeAll(async () => {
  await testDatabase("vocabularies");
  await aCentre();
  lecturer = aViewer("lecturer", await aBorrower());
}, 120_000);
beforeEach(async () => {
  setClock(() => new Date("2027-01-15T09:00:00Z"));
  await inWork(async ({ transaction }) => {
    await transaction.booking.deleteMany();
    await transaction.shown.deleteMany();
    await transaction.specimen.deleteMany();
  });
  heart = await aRecorded({ massKg: 1, use: "handling" }, ["heart"]);
  limb = await aRecorded({ massKg: 4, use: "viewing only" }, ["brachial-plexus", "deltoid"]);
  both = await aRecorded({ massKg: 6, use: "viewing only" }, [
    aShown("heart", { seen: "landmark only" }),
    aShown("brachial-plexus", { seen: "in section" }),
  ]);
});

const days = { startsOn: "2027-03-01", endsOn: "2027-07-01" };
const ask = (structureIds: string[], said: { use?: "handling" | "viewing only" } = {}, viewer = lecturer) =>
  proposeSet(viewer, { structureIds, ...days, use: "viewing only", ...said });
const numbersOf = (set: { specimens: { accessionNumber: string }[] }) =>
  set.specimens.map(({ accessionNumber }) => accessionNumber).sort();
const promise = (specimen: Made, startsOn: string, endsOn: string) =>
  bookSpecimen(programViewer, { specimenId: specimen.id, purpose: "rest", startsOn, endsOn });

describe("a set", () => {
  test("is the one specimen that shows all of it, and says which of the wanted it shows", async () => {
    const set = await ask(["heart", "brachial-plexus"]);
    expect(numbersOf(set)).toEqual([both.accessionNumber]);
    expect(set.specimens[0]?.shows.map(({ english, seen }) => [english, seen])).toEqual([
      ["heart", "landmark only"],
      ["brachial plexus", "in section"],
    ]);
    expect(set).toMatchObject({ isSmallest: true, atLeast: 1, compared: 3, unshown: [], tooSoon: null });
    expect(set.kept).toEqual({ startsOn: "2027-02-15", endsOn: "2027-07-15" });
  });

  test("takes two where the one is promised, and of one structure what shows it best", async () => {
    await promise(both, "2027-06-30", "2027-07-01");
    expect(numbersOf(await ask(["heart", "brachial-plexus"]))).toEqual(
      [heart.accessionNumber, limb.accessionNumber].sort(),
    );
    expect(numbersOf(await ask(["heart"]))).toEqual([heart.accessionNumber]);
  });

  test("is of human specimens only, or of animals only, where that is asked", async () => {
    const horse = await aRecorded(
      { human: false, scientificName: "Equus caballus", ageBand: null, massKg: 2 },
      ["heart", "brachial-plexus"],
    );
    const found = async (human: boolean) =>
      numbersOf(
        await proposeSet(lecturer, {
          structureIds: ["heart", "brachial-plexus"],
          ...days,
          use: "viewing only",
          human,
        }),
      );
    expect([await found(true), await found(false)]).toEqual([
      [both.accessionNumber],
      [horse.accessionNumber],
    ]);
  });

  test("shows a region by what is recorded of it", async () => {
    await promise(both, "2027-06-30", "2027-07-01");
    expect(numbersOf(await ask(["upper-limb"]))).toEqual([limb.accessionNumber]);
  });

  test("leaves out what is not free on the days around", async () => {
    await promise(heart, "2027-07-14", "2027-07-20");
    const set = await ask(["heart"]);
    expect(numbersOf(set)).toEqual([both.accessionNumber]);
  });

  test("keeps free for all the days that its slowest specimen needs", async () => {
    const trunk = await aRecorded({ kind: "body region", massKg: 30 }, ["stomach"]);
    await promise(heart, "2027-02-05", "2027-02-10");
    await promise(both, "2027-02-05", "2027-02-10");
    const set = await ask(["heart", "stomach"]);
    expect(numbersOf(set)).toHaveLength(1);
    expect(set.unshown).toMatchObject([{ reason: "not with the others" }]);
    expect(numbersOf(await ask(["stomach"]))).toEqual([trunk.accessionNumber]);
    expect(numbersOf(await ask(["heart"]))).toEqual([heart.accessionNumber]);
  });
});

describe("what stays unshown", () => {
  test("is named where nothing shows it", async () => {
    const set = await ask(["heart", "stomach"]);
    expect(set.unshown).toMatchObject([{ structure: { english: "stomach" }, reason: "nothing shows it" }]);
    expect(set.specimens).toHaveLength(1);
  });

  test("is named where what shows it may not be handled", async () => {
    const set = await ask(["heart", "deltoid"], { use: "handling" });
    expect(numbersOf(set)).toEqual([heart.accessionNumber]);
    expect(set.unshown).toMatchObject([{ reason: "only to be looked at", next: null }]);
  });

  test("says from which day of delivery something would be free for as long", async () => {
    await promise(limb, "2027-06-01", "2027-08-01");
    const set = await ask(["deltoid"]);
    expect(set.specimens).toEqual([]);
    expect(set.unshown).toMatchObject([
      {
        reason: "not free",
        next: { deliverFrom: "2027-08-15", accessionNumber: limb.accessionNumber },
      },
    ]);
    const later = await proposeSet(lecturer, {
      structureIds: ["deltoid"],
      startsOn: "2027-08-15",
      endsOn: "2027-12-15",
      use: "viewing only",
    });
    expect(numbersOf(later)).toEqual([limb.accessionNumber]);
  });
});

test("who borrows leaves the days for packing, the house may hurry", async () => {
  const soon = {
    structureIds: ["heart"],
    startsOn: "2027-01-20",
    endsOn: "2027-02-20",
    use: "handling" as const,
  };
  expect(await proposeSet(lecturer, soon)).toMatchObject({
    specimens: [],
    unshown: [{ reason: "too soon", next: { deliverFrom: "2027-01-29" } }],
    tooSoon: "2027-01-29",
  });
  expect(numbersOf(await proposeSet(aViewer("registrar"), soon))).toEqual([heart.accessionNumber]);
});

test("a question that cannot be read says what is wrong with it", async () => {
  const reversed = proposeSet(lecturer, {
    structureIds: ["heart"],
    startsOn: "2027-07-01",
    endsOn: "2027-03-01",
    use: "handling",
  });
  await expect(reversed).rejects.toMatchObject({
    kind: "invalid",
    issues: [{ path: "endsOn", message: "loan.period-reversed" }],
  });
  const many = Array.from({ length: 21 }, (_, at) => `s-${at}`);
  await expect(ask(many)).rejects.toMatchObject({ issues: [{ message: "set.too-many" }] });
});
