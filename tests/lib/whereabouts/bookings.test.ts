/** Holding, firming and giving back, one after the other. */
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { sentence } from "#app/_words/sentences.ts";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, toDateText } from "#lib/platform/dates.ts";
import type { Refusal } from "#lib/platform/refusal.ts";
import {
  bookSpecimen,
  firmBookings,
  holdSpecimens,
  releaseBooking,
  releaseLineBookings,
} from "#lib/whereabouts/commands.ts";
import { busyPeriodsOf, freePeriodsOf } from "#lib/whereabouts/queries.ts";
import { aLoanOf, aSpecimen, aViewer, inWork, type Made } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const curator = aViewer("curator");
const lecturer = aViewer("lecturer", "01920000-0000-7000-8000-0000000000aa");
const stand = (moment: string) => setClock(() => new Date(moment));

beforeAll(async () => {
  await testDatabase();
});
beforeEach(() => {
  stand("2027-01-15T09:00:00Z");
});

const march = { startsOn: "2027-03-01", endsOn: "2027-04-01" };
const book = (specimen: Made, days = march, purpose: "examination" | "rest" = "examination") =>
  bookSpecimen(curator, { specimenId: specimen.id, purpose, ...days });
const hold = async (lines: [Made, string][], days = march, expiresAt = new Date("2027-02-01T00:00:00Z")) =>
  await inWork((work) =>
    holdSpecimens(
      work,
      lines.map(([specimen, loanLineId]) => ({ specimenId: specimen.id, loanLineId, ...days, expiresAt })),
    ),
  );
const refusalOf = async (attempt: Promise<unknown>) => {
  const thrown = await attempt.then(
    () => null,
    (error: Refusal) => error,
  );
  return thrown && { kind: thrown.kind, reason: thrown.reason, parameters: thrown.parameters };
};
const rowsOf = async (...specimens: Made[]) => {
  const rows = await database().booking.findMany({
    where: { specimenId: { in: specimens.map(({ id }) => id) } },
    orderBy: [{ startsOn: "asc" }, { specimenId: "asc" }],
  });
  return rows.map((row) => ({
    specimen: specimens.find(({ id }) => id === row.specimenId)?.accessionNumber,
    days: [toDateText(row.startsOn), toDateText(row.endsOn)],
    strength: row.strength,
    released: row.releasedAt !== null,
    line: row.loanLineId,
  }));
};
async function aWholeWithParts() {
  const whole = await aSpecimen({ kind: "skeleton or bone" });
  const arm = await aSpecimen({ wholeId: whole.id });
  const hand = await aSpecimen({ wholeId: arm.id });
  return { whole, arm, hand };
}

describe("days of a loan that are taken", () => {
  const refusedDays = async (specimen: Made, asked: { startsOn: string; endsOn: string }) => {
    const { lineIds } = await aLoanOf([specimen], asked);
    const busy = { startsOn: addDays(asked.startsOn, -14), endsOn: addDays(asked.endsOn, 14) };
    return await refusalOf(hold([[specimen, lineIds[0] as string]], busy));
  };

  test("is refused with the first day on which it can be delivered, days for packing and checks kept", async () => {
    const specimen = await aSpecimen();
    await book(specimen);
    const asked = { startsOn: "2027-04-05", endsOn: "2027-04-20" };
    expect(await refusedDays(specimen, asked)).toMatchObject({
      reason: "booking.taken",
      parameters: { freeFrom: "2027-04-01", deliverFrom: "2027-04-15", wayOut: "booking.deliver-from" },
    });
    // What follows too early for all days of the loan puts it off until behind that.
    await book(specimen, { startsOn: "2027-05-10", endsOn: "2027-05-20" });
    expect(await refusedDays(specimen, asked)).toMatchObject({ parameters: { deliverFrom: "2027-06-03" } });
    const later = await aLoanOf([specimen], { startsOn: "2027-06-03", endsOn: "2027-06-18" });
    const days = { startsOn: "2027-05-20", endsOn: "2027-07-02" };
    expect(await refusalOf(hold([[specimen, later.lineIds[0] as string]], days))).toBeNull();
  });

  test("is refused in a sentence that names that day", async () => {
    const specimen = await aSpecimen();
    await book(specimen);
    const refused = await refusedDays(specimen, { startsOn: "2027-04-05", endsOn: "2027-04-20" });
    expect(sentence(refused?.reason ?? "", refused?.parameters)).toBe(
      `${specimen.accessionNumber} is promised on some of these days. With its days for packing, travel and checks it can be delivered from 15 April 2027 on, for as long as you asked.`,
    );
    const house = await refusalOf(book(specimen));
    expect(sentence(house?.reason ?? "", house?.parameters)).toBe(
      `${specimen.accessionNumber} is promised on some of these days. It is free again from 1 April 2027.`,
    );
  });
});

describe("a booking for the house", () => {
  test("is refused on days that are taken, with the day from which the wanted days fit", async () => {
    const specimen = await aSpecimen();
    await book(specimen);
    await book(specimen, { startsOn: "2027-04-05", endsOn: "2027-04-20" });
    const { accessionNumber } = specimen;
    expect(await refusalOf(book(specimen, { startsOn: "2027-03-31", endsOn: "2027-04-02" }))).toEqual({
      kind: "conflict",
      reason: "booking.taken",
      parameters: { accessionNumber, freeFrom: "2027-04-01", wayOut: "booking.free-from" },
    });
    expect(await refusalOf(book(specimen, { startsOn: "2027-03-20", endsOn: "2027-03-30" }))).toMatchObject({
      parameters: { accessionNumber, freeFrom: "2027-04-20" },
    });
    expect(await refusalOf(book(specimen, { startsOn: "2027-04-01", endsOn: "2027-04-05" }))).toBeNull();
  });

  test("takes every part along, and is given back with them", async () => {
    const { whole, arm, hand } = await aWholeWithParts();
    const id = await book(whole);
    expect((await rowsOf(whole, arm, hand)).map((row) => row.specimen).sort()).toEqual(
      [whole, arm, hand].map((specimen) => specimen.accessionNumber).sort(),
    );
    expect(await refusalOf(book(hand))).toMatchObject({
      reason: "booking.taken",
      parameters: { accessionNumber: hand.accessionNumber, freeFrom: "2027-04-01" },
    });
    await releaseBooking(curator, { bookingId: id });
    expect((await rowsOf(whole, arm, hand)).every((row) => row.released)).toBe(true);
    expect(await refusalOf(book(hand))).toBeNull();
  });

  test("of a whole is refused while a part is promised, naming the part and when all of it is free", async () => {
    const { whole, arm, hand } = await aWholeWithParts();
    await book(hand);
    await book(arm, { startsOn: "2027-04-03", endsOn: "2027-05-01" });
    expect(await refusalOf(book(whole, { startsOn: "2027-03-20", endsOn: "2027-04-01" }))).toMatchObject({
      parameters: { accessionNumber: hand.accessionNumber, freeFrom: "2027-05-01" },
    });
  });

  test("counts for a part that was recorded only afterwards", async () => {
    const whole = await aSpecimen();
    await book(whole);
    const part = await aSpecimen({ wholeId: whole.id });
    expect(await refusalOf(book(part))).toMatchObject({
      reason: "booking.taken",
      parameters: { accessionNumber: part.accessionNumber, freeFrom: "2027-04-01" },
    });
    expect(await refusalOf(book(part, { startsOn: "2027-04-01", endsOn: "2027-04-02" }))).toBeNull();
  });

  test("of a part cannot be torn out of the booking of its whole", async () => {
    const { whole, arm } = await aWholeWithParts();
    await book(whole);
    const row = await database().booking.findFirstOrThrow({ where: { specimenId: arm.id } });
    expect(await refusalOf(releaseBooking(curator, { bookingId: row.id }))).toMatchObject({
      reason: "booking.of-its-whole",
      parameters: { accessionNumber: whole.accessionNumber },
    });
    expect((await rowsOf(arm))[0]?.released).toBe(false);
  });

  test("is given back once, and never when it belongs to a loan", async () => {
    const specimen = await aSpecimen();
    const id = await book(specimen);
    await releaseBooking(curator, { bookingId: id });
    expect(await refusalOf(releaseBooking(curator, { bookingId: id }))).toMatchObject({ kind: "not-found" });
    const loan = await aLoanOf([specimen]);
    await hold([[specimen, loan.lineIds[0] as string]]);
    const held = await database().booking.findFirstOrThrow({
      where: { specimenId: specimen.id, releasedAt: null },
    });
    expect(await refusalOf(releaseBooking(curator, { bookingId: held.id }))).toMatchObject({
      reason: "booking.of-a-loan",
    });
  });

  test("needs days, in order and not for ever, and a specimen that is there", async () => {
    const specimen = await aSpecimen();
    for (const endsOn of ["2027-03-01", "2027-02-01", "2099-01-01", "soon"])
      expect(await refusalOf(book(specimen, { startsOn: "2027-03-01", endsOn }))).toMatchObject({
        kind: "invalid",
      });
    expect(
      await refusalOf(book({ id: "01920000-0000-7000-8000-0000000000ff", accessionNumber: "" })),
    ).toMatchObject({
      kind: "not-found",
    });
    expect(await rowsOf(specimen)).toEqual([]);
  });

  test("is not for a lecturer to make", async () => {
    const specimen = await aSpecimen();
    const attempt = bookSpecimen(lecturer, { specimenId: specimen.id, purpose: "rest", ...march });
    expect(await refusalOf(attempt)).toMatchObject({ kind: "forbidden" });
  });
});

describe("a hold for a loan", () => {
  test("keeps everybody else away until it runs out, and then makes room", async () => {
    const specimen = await aSpecimen();
    const [first, second] = [await aLoanOf([specimen]), await aLoanOf([specimen])];
    await hold([[specimen, first.lineIds[0] as string]]);
    expect(await refusalOf(hold([[specimen, second.lineIds[0] as string]]))).toMatchObject({
      reason: "booking.taken",
    });
    stand("2027-02-01T00:00:00Z");
    expect(
      (await busyPeriodsOf(database(), [specimen.id], "2027-01-01", "2028-01-01")).get(specimen.id),
    ).toEqual([]);
    await hold([[specimen, second.lineIds[0] as string]], march, new Date("2027-02-15T00:00:00Z"));
    expect(await rowsOf(specimen)).toMatchObject([{ line: second.lineIds[0], strength: "hold" }]);
    expect(await refusalOf(inWork((work) => firmBookings(work, first.lineIds)))).toEqual({
      kind: "conflict",
      reason: "booking.lapsed",
      parameters: { accessionNumber: specimen.accessionNumber },
    });
  });

  test("is renewed by its own line without standing in its own way", async () => {
    const specimen = await aSpecimen();
    const loan = await aLoanOf([specimen]);
    const line = loan.lineIds[0] as string;
    await hold([[specimen, line]]);
    await hold([[specimen, line]], { startsOn: "2027-03-15", endsOn: "2027-04-15" });
    expect((await rowsOf(specimen)).map((row) => row.days)).toEqual([["2027-03-15", "2027-04-15"]]);
  });

  test("takes all its specimens or none", async () => {
    const [free, taken] = [await aSpecimen(), await aSpecimen()];
    await book(taken);
    const loan = await aLoanOf([free, taken]);
    const attempt = hold([
      [free, loan.lineIds[0] as string],
      [taken, loan.lineIds[1] as string],
    ]);
    expect(await refusalOf(attempt)).toMatchObject({
      parameters: { accessionNumber: taken.accessionNumber },
    });
    expect(await rowsOf(free)).toEqual([]);
  });

  test("of a whole and of its part in one loan gives the part to its own line", async () => {
    const { whole, arm, hand } = await aWholeWithParts();
    const loan = await aLoanOf([whole, arm]);
    const [wholeLine, armLine] = loan.lineIds as [string, string];
    await hold([
      [whole, wholeLine],
      [arm, armLine],
    ]);
    const rows = await rowsOf(whole, arm, hand);
    expect(rows.find((row) => row.specimen === arm.accessionNumber)?.line).toBe(armLine);
    expect(rows.find((row) => row.specimen === whole.accessionNumber)?.line).toBe(wholeLine);
    await inWork((work) => firmBookings(work, [wholeLine, armLine]));
    expect((await rowsOf(whole, arm, hand)).every((row) => row.strength === "firm")).toBe(true);
  });

  test("made firm outlives its day of expiry", async () => {
    const specimen = await aSpecimen();
    const loan = await aLoanOf([specimen]);
    await hold([[specimen, loan.lineIds[0] as string]]);
    await inWork((work) => firmBookings(work, loan.lineIds));
    stand("2027-02-20T00:00:00Z");
    expect(await refusalOf(book(specimen))).toMatchObject({ reason: "booking.taken" });
  });

  test("of a whole is not firm when one of its parts has gone to somebody else meanwhile", async () => {
    const { whole, hand } = await aWholeWithParts();
    const loan = await aLoanOf([whole]);
    await hold([[whole, loan.lineIds[0] as string]]);
    stand("2027-02-02T00:00:00Z");
    await book(hand);
    expect(await refusalOf(inWork((work) => firmBookings(work, loan.lineIds)))).toMatchObject({
      reason: "booking.lapsed",
    });
  });
});

describe("giving a loan's days back", () => {
  const firm = async (days = march) => {
    const specimen = await aSpecimen();
    const loan = await aLoanOf([specimen]);
    await hold([[specimen, loan.lineIds[0] as string]], days);
    await inWork((work) => firmBookings(work, loan.lineIds));
    return { specimen, loan };
  };

  test("frees all of them", async () => {
    const { specimen, loan } = await firm();
    await inWork((work) => releaseLineBookings(work, loan.lineIds));
    expect(await rowsOf(specimen)).toMatchObject([{ released: true, days: ["2027-03-01", "2027-04-01"] }]);
    expect(await refusalOf(book(specimen))).toBeNull();
  });

  test("from a day on keeps the days that were used", async () => {
    const { specimen, loan } = await firm();
    await inWork((work) => releaseLineBookings(work, loan.lineIds, "2027-03-10"));
    expect(await rowsOf(specimen)).toMatchObject([{ released: false, days: ["2027-03-01", "2027-03-10"] }]);
    expect(await refusalOf(book(specimen, { startsOn: "2027-03-10", endsOn: "2027-03-12" }))).toBeNull();
  });

  test("from a day before they began frees all of them", async () => {
    const { specimen, loan } = await firm();
    await inWork((work) => releaseLineBookings(work, loan.lineIds, "2027-03-01"));
    expect(await rowsOf(specimen)).toMatchObject([{ released: true }]);
  });

  test("never makes them more", async () => {
    const { specimen, loan } = await firm();
    await inWork((work) => releaseLineBookings(work, loan.lineIds, "2027-05-01"));
    expect(await rowsOf(specimen)).toMatchObject([{ released: false, days: ["2027-03-01", "2027-04-01"] }]);
  });
});

describe("busy and free days", () => {
  test("of a whole and its parts follow each other up and down, not sideways", async () => {
    const { whole, arm, hand } = await aWholeWithParts();
    const other = await aSpecimen({ wholeId: whole.id });
    await book(arm);
    const busy = await busyPeriodsOf(
      database(),
      [whole.id, arm.id, hand.id, other.id],
      "2027-01-01",
      "2028-01-01",
    );
    expect(busy.get(whole.id)?.map((period) => period.startsOn)).toContain("2027-03-01");
    expect(busy.get(hand.id)?.map((period) => period.startsOn)).toContain("2027-03-01");
    expect(busy.get(other.id)).toEqual([]);
  });

  test("name the line that a booking belongs to", async () => {
    const specimen = await aSpecimen();
    const loan = await aLoanOf([specimen]);
    await hold([[specimen, loan.lineIds[0] as string]]);
    const busy = await busyPeriodsOf(database(), [specimen.id], "2027-03-31", "2027-04-01");
    expect(busy.get(specimen.id)).toMatchObject([
      { loanLineId: loan.lineIds[0], strength: "hold", purpose: "loan", ...march },
    ]);
    expect(
      (await busyPeriodsOf(database(), [specimen.id], "2027-04-01", "2027-05-01")).get(specimen.id),
    ).toEqual([]);
  });

  test("are shown to a lecturer as free days only", async () => {
    const specimen = await aSpecimen();
    await book(specimen);
    const free = await freePeriodsOf(lecturer, [specimen.id], "2027-02-01", "2027-05-01");
    expect([...free]).toEqual([
      [
        specimen.id,
        [
          { startsOn: "2027-02-01", endsOn: "2027-03-01" },
          { startsOn: "2027-04-01", endsOn: "2027-05-01" },
        ],
      ],
    ]);
    expect(await refusalOf(freePeriodsOf(lecturer, ["nonsense"], "2027-02-01", "2027-05-01"))).toMatchObject({
      kind: "not-found",
    });
    expect(await refusalOf(freePeriodsOf(lecturer, [specimen.id], "2027-02-01", "later"))).toMatchObject({
      kind: "invalid",
    });
    expect(await refusalOf(freePeriodsOf(lecturer, [specimen.id], "2027-05-01", "2027-02-01"))).toMatchObject(
      { kind: "invalid" },
    );
    expect(await refusalOf(freePeriodsOf(lecturer, [specimen.id], "2027-01-01", "9999-01-01"))).toMatchObject(
      { kind: "invalid" },
    );
  });
});
