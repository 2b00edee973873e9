/** The best set of a real catalogue: what shows it, what is free with all days around, and why something stays out. */
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { proposeSet } from "#lib/loans/queries/propose-set.ts";
import { programViewer } from "#lib/people/viewer.ts";
import { setClock } from "#lib/platform/clock.ts";
import { linkDonor, recordConsent, recordTitle, registerDonor } from "#lib/provenance/commands.ts";
import type { ConsentInput } from "#lib/provenance/schema.ts";
import type { Shown, SpecimenInput } from "#lib/specimens/schema.ts";
import { bookSpecimen } from "#lib/whereabouts/commands.ts";
import { aBorrower, aCentre, aVenue, aViewer, inWork, type Made } from "#tests/support/builders.ts";
import { aConsentForm, allScopes } from "#tests/support/consents.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aRecorded, aShown } from "#tests/support/specimen-records.ts";

/** A specimen of the catalogue that may be lent: it is ours, and its donor has agreed to everything but what is said. */
async function aLendable(
  said: Partial<SpecimenInput>,
  shown: readonly (Shown | string)[],
  consent: Partial<ConsentInput> = {},
): Promise<Made> {
  const specimen = await aRecorded(said, shown);
  await recordTitle(programViewer, {
    specimenId: specimen.id,
    status: "owned",
    ownerName: "",
    leaveToLend: false,
    leaveReference: "",
    recordedOn: "2020-01-01",
  });
  if (said.human !== false) {
    const code = await registerDonor(programViewer, {});
    await recordConsent(programViewer, aConsentForm(code, consent));
    await linkDonor(programViewer, { specimenId: specimen.id, donorCodes: [code] });
  }
  return specimen;
}

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
  });
  heart = await aLendable({ massKg: 1, use: "handling" }, ["heart"]);
  limb = await aLendable({ massKg: 4, use: "viewing only" }, ["brachial-plexus", "deltoid"]);
  both = await aLendable({ massKg: 6, use: "viewing only" }, [
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
    const horse = await aLendable(
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
    const trunk = await aLendable({ kind: "body region", massKg: 30 }, ["stomach"]);
    await promise(heart, "2027-02-05", "2027-02-10");
    await promise(both, "2027-02-05", "2027-02-10");
    const set = await ask(["heart", "stomach"]);
    expect(numbersOf(set)).toHaveLength(1);
    expect(set.unshown).toMatchObject([{ reason: "not with the others" }]);
    expect(numbersOf(await ask(["stomach"]))).toEqual([trunk.accessionNumber]);
    expect(numbersOf(await ask(["heart"]))).toEqual([heart.accessionNumber]);
  });
});

describe("what could not be lent for it", () => {
  const refused = { answers: allScopes("granted", { "public display, free": "refused" }) };

  test("is left out and named, and a wider set is proposed instead", async () => {
    const all = ["heart", "stomach"];
    const tight = await aLendable({ massKg: 2 }, all, refused);
    const stomach = await aLendable({ massKg: 2 }, ["stomach"]);
    expect(numbersOf(await ask(all))).toEqual([tight.accessionNumber]);
    const show = await proposeSet(lecturer, {
      structureIds: all,
      ...days,
      use: "viewing only",
      purpose: "exhibition",
      audience: "general public",
    });
    expect(numbersOf(show)).toHaveLength(2);
    expect(numbersOf(show)).toContain(stomach.accessionNumber);
    expect(show.keptBack).toMatchObject([
      { accessionNumber: tight.accessionNumber, because: [{ group: "consent", outcome: "bar" }] },
    ]);
    expect(show.keptBack[0]?.because.map(({ wayOut }) => wayOut)).toEqual(["way.use-within-consent"]);
  });

  test("is told a lecturer without the reason, and the house with it", async () => {
    await aLendable({}, ["stomach"], refused);
    const question = {
      structureIds: ["stomach"],
      ...days,
      use: "viewing only" as const,
      purpose: "exhibition" as const,
      audience: "general public" as const,
    };
    const [theirs, ours] = [
      await proposeSet(lecturer, question),
      await proposeSet(aViewer("registrar"), question),
    ];
    expect(theirs.keptBack[0]?.because).toMatchObject([{ fact: "reason.withheld", parameters: {} }]);
    expect(ours.keptBack[0]?.because).toMatchObject([{ fact: "consent.refused" }]);
    expect(theirs.unshown).toMatchObject([{ reason: "not to be lent so", next: null }]);
  });

  test("depends on the country of the venue", async () => {
    const institutionId = lecturer.institutionId ?? "";
    const abroad = await aVenue({ institutionId, countryCode: "DE" });
    const atHome = await aLendable({}, ["stomach"], { territoriesRefused: ["DE"] });
    expect(numbersOf(await ask(["stomach"]))).toEqual([atHome.accessionNumber]);
    const set = await proposeSet(lecturer, {
      structureIds: ["stomach"],
      ...days,
      use: "viewing only",
      venueId: abroad,
    });
    expect(set).toMatchObject({ specimens: [], countryCode: "DE" });
    expect(set.keptBack.map(({ accessionNumber }) => accessionNumber)).toEqual([atHome.accessionNumber]);
  });

  test("is not asked of a venue that is somebody else's", async () => {
    const question = { structureIds: ["heart"], ...days, use: "viewing only" as const };
    await expect(proposeSet(lecturer, { ...question, venueId: await aVenue() })).rejects.toMatchObject({
      kind: "not-found",
    });
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
