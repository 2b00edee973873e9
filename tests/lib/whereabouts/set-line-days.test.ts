/** The days of a loan's lines set anew: wider, narrower, never over somebody else's, never over what is past. */
import { beforeAll, beforeEach, expect, test } from "vitest";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { toDateText } from "#lib/platform/dates.ts";
import { setLineDays } from "#lib/whereabouts/commands/set-line-days.ts";
import { bookSpecimen, firmBookings, holdSpecimens } from "#lib/whereabouts/commands.ts";
import { aLoanOf, aSpecimen, aViewer, inWork, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const curator = aViewer("curator");
beforeAll(async () => {
  await testDatabase();
});
beforeEach(() => {
  setClock(() => new Date("2027-01-15T09:00:00Z"));
});

const march = { startsOn: "2027-03-01", endsOn: "2027-04-01" };
const book = (specimen: Made, startsOn: string, endsOn: string) =>
  bookSpecimen(curator, { specimenId: specimen.id, purpose: "examination", startsOn, endsOn });

/** A firm booking of March for each specimen. @returns the lines */
async function kept(...specimens: Made[]): Promise<string[]> {
  const { lineIds } = await aLoanOf(specimens);
  await inWork((work) =>
    holdSpecimens(
      work,
      specimens.map((specimen, index) => ({
        specimenId: specimen.id,
        loanLineId: lineIds[index] ?? "",
        ...march,
        expiresAt: new Date("2027-02-01T00:00:00Z"),
      })),
    ),
  );
  await inWork((work) => firmBookings(work, lineIds));
  return lineIds;
}
const set = (lineIds: string[], startsOn: string, endsOn: string) =>
  inWork((work) => setLineDays(work, lineIds, { startsOn, endsOn }));
const daysOf = async (specimen: Made, purpose = "loan") => {
  const rows = await database().booking.findMany({ where: { specimenId: specimen.id, purpose } });
  return rows.map((row) => [toDateText(row.startsOn), toDateText(row.endsOn)]);
};

test("days become wider on both sides, and narrower again", async () => {
  const specimen = await aSpecimen();
  const lines = await kept(specimen);
  expect(await set(lines, "2027-02-10", "2027-05-01")).toEqual([]);
  expect(await daysOf(specimen)).toEqual([["2027-02-10", "2027-05-01"]]);
  expect(await set(lines, "2027-03-05", "2027-04-01")).toEqual([]);
  expect(await daysOf(specimen)).toEqual([["2027-03-05", "2027-04-01"]]);
});

test("what a whole takes along is set with it", async () => {
  const whole = await aSpecimen({ kind: "skeleton or bone" });
  const part = await aSpecimen({ wholeId: whole.id });
  const lines = await kept(whole);
  await set(lines, "2027-02-10", "2027-05-01");
  expect(await daysOf(part)).toEqual([["2027-02-10", "2027-05-01"]]);
});

test("days that somebody else has are left to them, and named with the day from which it is free", async () => {
  const [taken, free] = [await aSpecimen(), await aSpecimen()];
  const lines = await kept(taken, free);
  await book(taken, "2027-02-01", "2027-02-20");
  await book(taken, "2027-04-10", "2027-04-20");
  expect(await set(lines, "2027-02-10", "2027-05-01")).toEqual([
    { accessionNumber: taken.accessionNumber, takenFrom: "2027-02-01", freeFrom: "2027-02-20" },
  ]);
  expect(await daysOf(taken)).toEqual([["2027-02-20", "2027-04-10"]]);
  expect(await daysOf(taken, "examination")).toHaveLength(2);
  expect(await daysOf(free)).toEqual([["2027-02-10", "2027-05-01"]]);
});

test("days of a part are in the way of its whole", async () => {
  const whole = await aSpecimen({ kind: "skeleton or bone" });
  const part = await aSpecimen({ wholeId: whole.id });
  const lines = await kept(whole);
  await book(part, "2027-04-10", "2027-04-20");
  expect(await set(lines, "2027-03-01", "2027-05-01")).toMatchObject([{ takenFrom: "2027-04-10" }]);
  expect(await daysOf(whole)).toEqual([["2027-03-01", "2027-04-10"]]);
});

test("a hold that has run out is in nobody's way", async () => {
  const specimen = await aSpecimen();
  const lines = await kept(specimen);
  const { lineIds } = await aLoanOf([specimen]);
  const later = { startsOn: "2027-04-10", endsOn: "2027-04-20" };
  await inWork((work) =>
    holdSpecimens(work, [
      {
        specimenId: specimen.id,
        loanLineId: lineIds[0] ?? "",
        ...later,
        expiresAt: new Date("2027-01-20T00:00:00Z"),
      },
    ]),
  );
  expect(await set(lines, "2027-03-01", "2027-05-01")).toHaveLength(1);
  setClock(() => new Date("2027-01-21T00:00:00Z"));
  expect(await set(lines, "2027-03-01", "2027-05-01")).toEqual([]);
  expect(await daysOf(specimen)).toEqual([["2027-03-01", "2027-05-01"]]);
});

test("days that are past stay as they were, and none are kept in hindsight", async () => {
  const [away, late] = [await aSpecimen(), await aSpecimen()];
  const lines = await kept(away, late);
  setClock(() => new Date("2027-03-10T09:00:00Z"));
  await set(lines, "2027-02-01", "2027-04-01");
  expect(await daysOf(away)).toEqual([["2027-03-01", "2027-04-01"]]);
  setClock(() => new Date("2027-05-10T09:00:00Z"));
  await book(late, "2027-05-01", "2027-05-05");
  await set(lines, "2027-03-01", "2027-05-24");
  expect(await daysOf(away)).toEqual([["2027-03-01", "2027-05-24"]]);
  expect(await daysOf(late)).toEqual([["2027-03-01", "2027-05-01"]]);
});
