/** What is free on some days: with its wholes and parts, and with the days around that a loan takes. */
import fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, rangesOverlap, toDate } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { type DaysAround, daysAroundOf } from "#lib/specimens/days-around.ts";
import { listSpecimens } from "#lib/specimens/queries/list-specimens.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";
import { busyPeriodsOf } from "#lib/whereabouts/queries.ts";
import { aCentre, aViewer, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";
import { aRecorded } from "#tests/support/specimen-records.ts";

const curator = aViewer("curator");
const today = "2027-01-15";
const around: DaysAround[] = [
  { kind: "whole body", before: 20, after: 25 },
  { upToKg: 25, before: 3, after: 5 },
  { before: 9, after: 12 },
];

type Made = { id: string; accessionNumber: string } & Pick<
  SpecimenInput,
  "kind" | "massKg" | "mountedMassKg"
>;
const made: Made[] = [];

beforeAll(async () => {
  await testDatabase("tables");
  await aCentre();
  setClock(() => new Date(`${today}T09:00:00Z`));
  const add = async (said: Partial<SpecimenInput>) => {
    const facts = { kind: "organ" as const, massKg: null, mountedMassKg: null, ...said };
    const { id, accessionNumber } = await aRecorded(facts);
    made.push({ id, accessionNumber, ...facts });
    return id;
  };
  const body = await add({ kind: "whole body", massKg: 60 });
  const limb = await add({ kind: "body region", wholeId: body, massKg: 6 });
  await add({ wholeId: limb, massKg: 0.4 });
  await add({ massKg: 2, mountedMassKg: 40 });
  await add({ massKg: 2 });
  await add({});
}, 120_000);
afterAll(() => setClock());

test("a specimen is listed exactly where the calendar of whereabouts has no booking in all its days", async () => {
  const day = fc.integer({ min: -30, max: 90 }).map((days) => addDays(today, days));
  const days = fc.tuple(day, fc.integer({ min: 1, max: 30 })).map(([from, length]) => ({
    startsOn: from,
    endsOn: addDays(from, length),
  }));
  // Days that are all past are wanted by nobody.
  const wantedDays = days.filter(({ endsOn }) => endsOn > today);
  const booking = fc.record({
    of: fc.nat({ max: 5 }),
    days,
    hold: fc.option(fc.boolean(), { nil: null }),
    released: fc.boolean(),
  });
  await fc.assert(
    fc.asyncProperty(
      // Two bookings of one specimen could overlap, which the database refuses.
      fc.uniqueArray(booking, { minLength: 1, maxLength: 3, selector: ({ of }) => of }),
      wantedDays,
      fc.boolean(),
      async (bookings, wanted, kept) => {
        await inWork(async ({ transaction }) => {
          await transaction.booking.deleteMany();
          for (const [index, { of, days: booked, hold, released }] of bookings.entries())
            await transaction.booking.create({
              data: {
                id: newId(),
                specimenId: made[of]?.id ?? "",
                purpose: "rest",
                bookedBy: "a",
                startsOn: toDate(booked.startsOn),
                endsOn: toDate(booked.endsOn),
                strength: hold === null ? "firm" : "hold",
                expiresAt: hold === null ? null : new Date(hold ? "2027-02-01" : "2027-01-02"),
                releasedAt: released && index === 0 ? new Date("2027-01-10") : null,
              },
            });
        });
        const lines = kept ? around : [];
        const { rows } = await listSpecimens(curator, {
          freeFrom: wanted.startsOn,
          freeUntil: wanted.endsOn,
          around: lines,
        });
        const expected: string[] = [];
        const busy = await busyPeriodsOf(
          database(),
          made.map(({ id }) => id),
          "2020-01-01",
          "2029-01-01",
        );
        for (const specimen of made) {
          const { before, after } = daysAroundOf(specimen, lines);
          const first = addDays(wanted.startsOn, -before);
          const all = { startsOn: first < today ? today : first, endsOn: addDays(wanted.endsOn, after) };
          const isTaken = (busy.get(specimen.id) ?? []).some((one) => rangesOverlap(one, all));
          if (!isTaken) expected.push(specimen.accessionNumber);
        }
        expect(rows.map(({ accessionNumber }) => accessionNumber)).toEqual(expected.sort());
      },
    ),
    { numRuns: 60 },
  );
}, 60_000);
