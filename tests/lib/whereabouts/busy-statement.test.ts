/** One statement by the index of ranges, and the same answer as by looking at every booking. */
import fc from "fast-check";
import { beforeAll, beforeEach, expect, test, vi } from "vitest";
import type { Prisma } from "#.generated/prisma/client.ts";
import { setClock } from "#lib/platform/clock.ts";
import { database } from "#lib/platform/database.ts";
import { addDays, rangesOverlap, toDate } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { busyStatement } from "#lib/whereabouts/busy-statement.ts";
import { busyPeriodsOf } from "#lib/whereabouts/queries.ts";
import { aSpecimenRow, inWork } from "#tests/support/builders.ts";
import { testDatabase } from "#tests/support/database.ts";

const specimens = Array.from({ length: 2_000 }, () => aSpecimenRow());
const today = "2027-01-15";
const perSpecimen = 5;
type Row = { specimenId: string; startsOn: string; endsOn: string };
/** Ten thousand bookings, five of each specimen one after the other. */
const bookings: Row[] = specimens.flatMap(({ id }, at) =>
  Array.from({ length: perSpecimen }, (_, index) => {
    const startsOn = addDays(today, index * 120 + (at % 100));
    return { specimenId: id, startsOn, endsOn: addDays(startsOn, 10 + (at % 9)) };
  }),
);

beforeAll(async () => {
  await testDatabase();
  await inWork(async ({ transaction }) => {
    await transaction.specimen.createMany({ data: specimens });
    await transaction.booking.createMany({
      data: bookings.map(
        ({ specimenId, startsOn, endsOn }): Prisma.BookingCreateManyInput => ({
          id: newId(),
          specimenId,
          purpose: "rest",
          strength: "firm",
          startsOn: toDate(startsOn),
          endsOn: toDate(endsOn),
          bookedBy: "test",
        }),
      ),
    });
  });
}, 60_000);
beforeEach(() => setClock(() => new Date(`${today}T09:00:00Z`)));

const thousand = specimens.slice(0, 1_000).map(({ id }) => id);
const month = { startsOn: "2027-05-01", endsOn: "2027-06-01" };

test("a month of a thousand specimens among ten thousand bookings is one statement", async () => {
  const asked = vi.spyOn(database(), "$queryRaw");
  const found = vi.spyOn(database().booking, "findMany");
  const busy = await busyPeriodsOf(database(), thousand, month.startsOn, month.endsOn);
  expect([asked.mock.calls.length, found.mock.calls.length]).toEqual([1, 0]);
  expect(busy.size).toBe(1_000);
  const expected = bookings.filter((row) => thousand.includes(row.specimenId) && rangesOverlap(row, month));
  expect(expected.length).toBeGreaterThan(50);
  const rows = [...busy.values()].flat();
  const key = ({ specimenId, startsOn, endsOn }: Row) => `${specimenId} ${startsOn} ${endsOn}`;
  expect(rows.map(key).sort()).toEqual(expected.map(key).sort());
});

test("it finds bookings by the index behind “never twice”, and reads no table of them through", async () => {
  const statement = busyStatement(thousand, month.startsOn, month.endsOn, new Date());
  const plan = await database().$queryRawUnsafe<Record<string, string>[]>(
    `EXPLAIN ${statement.text}`,
    ...statement.values,
  );
  const text = plan.map((line) => Object.values(line)[0]).join("\n");
  expect(text).toMatch(/booking_never_twice/);
  expect(text).not.toMatch(/Seq Scan on booking/);
});

test("whatever is asked, the answer is that of looking at every booking", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.uniqueArray(fc.integer({ min: 0, max: specimens.length - 1 }), { minLength: 1, maxLength: 6 }),
      fc.integer({ min: -40, max: 600 }),
      fc.integer({ min: 1, max: 200 }),
      async (at, start, length) => {
        const ids = at.map((index) => specimens[index]?.id ?? "");
        const window = { startsOn: addDays(today, start), endsOn: addDays(today, start + length) };
        const busy = await busyPeriodsOf(database(), ids, window.startsOn, window.endsOn);
        for (const id of ids)
          expect((busy.get(id) ?? []).map(({ startsOn }) => startsOn)).toEqual(
            bookings
              .filter((row) => row.specimenId === id && rangesOverlap(row, window))
              .map(({ startsOn }) => startsOn),
          );
      },
    ),
    { numRuns: 40 },
  );
});
