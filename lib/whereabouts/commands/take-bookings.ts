/**
 * Never twice: the constraint `booking_never_twice` decides whether days are
 * taken, and nothing here repeats its judgement. Whoever changes bookings first
 * locks the specimens in order of their id, so that no two wait for each other.
 * Holds that have run out are removed in the same transaction.
 */
import type { Work } from "#lib/people/command.ts";
import { addDays, type DateText, rangesOverlap, toDate, toDateText } from "#lib/platform/dates.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { refusalFromDatabase } from "#lib/platform/transaction.ts";
import { bookingRows, type Wanted } from "#lib/whereabouts/booking-rows.ts";
import { nextFreeStart, withBuffers } from "#lib/whereabouts/free-periods.ts";
import { wholesOf, withPartsOf } from "#lib/whereabouts/queries.ts";
import type { Period } from "#lib/whereabouts/schema.ts";

/** Locks specimens in order of id until the transaction ends. @returns their accession numbers by id */
export async function lockSpecimens(
  { transaction }: Work,
  ids: Iterable<string>,
): Promise<Map<string, string>> {
  const wanted = [...new Set(ids)];
  const rows = await transaction.$queryRaw<{ id: string; accession_number: string }[]>`
    SELECT id::text AS id, accession_number FROM specimen WHERE id = ANY(${wanted}::uuid[])
    ORDER BY id FOR NO KEY UPDATE`;
  if (rows.length < wanted.length) throw notFound("specimen");
  return new Map(rows.map((row) => [row.id, row.accession_number]));
}

/** @returns the id of each booking by the specimen that was asked for */
export async function takeBookings(work: Work, wanted: readonly Wanted[]): Promise<Map<string, Id>> {
  const { transaction, viewer, now } = work;
  for (const { period } of wanted)
    if (!(period.startsOn < period.endsOn)) throw new Refusal("invalid", "booking.period-reversed");
  const tree = await withPartsOf(
    transaction,
    wanted.map(({ specimenId }) => specimenId),
  );
  const rows = bookingRows(wanted, tree);
  const specimenIds = rows.map(({ specimenId }) => specimenId);
  const numberOf = await lockSpecimens(work, specimenIds);
  const renewed = wanted.flatMap(({ loanLineId }) => loanLineId ?? []);
  await transaction.booking.deleteMany({
    where: {
      strength: "hold",
      releasedAt: null,
      OR: [{ specimenId: { in: specimenIds }, expiresAt: { lte: now } }, { loanLineId: { in: renewed } }],
    },
  });

  const above = await wholesOf(transaction, [...tree.keys()]);
  const bookedHere = new Set(specimenIds);
  const reach = new Map(
    [...tree].map(([id, members]) => [
      id,
      [...members, ...(above.get(id) ?? []).filter((whole) => !bookedHere.has(whole))],
    ]),
  );
  // A part that was recorded after its whole was booked has no row that the constraint could see.
  const ofItsWhole = above.size > 0 ? await findTaken(work, wanted, reach, numberOf) : null;
  if (ofItsWhole) throw ofItsWhole;

  const made = rows.map((row) => ({ id: newId(), row }));
  // A failed statement would end the transaction; behind a savepoint it can still say until when the days are taken.
  await transaction.$executeRaw`SAVEPOINT before_booking`;
  try {
    await transaction.booking.createMany({
      data: made.map(({ id, row }) => ({
        id,
        specimenId: row.specimenId,
        loanLineId: row.loanLineId,
        purpose: row.purpose,
        strength: row.strength,
        startsOn: toDate(row.period.startsOn),
        endsOn: toDate(row.period.endsOn),
        expiresAt: row.expiresAt,
        bookedBy: viewer.name,
        bookedAt: now,
      })),
    });
  } catch (error) {
    const refusal = refusalFromDatabase(error);
    if (refusal?.reason !== "booking.taken") throw error;
    await transaction.$executeRaw`ROLLBACK TO SAVEPOINT before_booking`;
    throw (await findTaken(work, wanted, reach, numberOf)) ?? new Refusal("conflict", "record.busy");
  }
  return new Map(
    made
      .filter(({ row }) => row.specimenId === row.askedFor.specimenId)
      .map(({ id, row }) => [row.specimenId, id]),
  );
}

/**
 * Which of the wanted days are taken, if any: by the specimen's own booking, by
 * one of its parts, or by a whole that was booked before this part was recorded.
 * What is free is said for the whole of the wanted days, with all that comes along;
 * for a loan, whose days begin with packing and travel, the first day of delivery too.
 */
async function findTaken(
  work: Work,
  wanted: readonly Wanted[],
  reach: Map<string, string[]>,
  numberOf: Map<string, string>,
): Promise<Refusal | null> {
  const { transaction, now } = work;
  const firstDay = wanted.map(({ period }) => period.startsOn).sort()[0];
  if (firstDay === undefined) return null;
  const rows = await transaction.booking.findMany({
    where: {
      specimenId: { in: [...new Set([...reach.values()].flat())] },
      releasedAt: null,
      endsOn: { gt: toDate(firstDay) },
      OR: [{ strength: "firm" }, { expiresAt: { gt: now } }],
    },
    orderBy: [{ startsOn: "asc" }, { specimenId: "asc" }],
    select: { specimenId: true, startsOn: true, endsOn: true },
  });
  const live = rows.map(({ specimenId, startsOn, endsOn }) => ({
    specimenId,
    startsOn: toDateText(startsOn),
    endsOn: toDateText(endsOn),
  }));
  for (const { specimenId, loanLineId, period } of wanted) {
    const near = live.filter((booking) => reach.get(specimenId)?.includes(booking.specimenId));
    const inTheWay = near.filter((booking) => rangesOverlap(booking, period));
    const named = inTheWay.find((booking) => booking.specimenId === specimenId) ?? inTheWay[0];
    if (!named) continue;
    const taken = {
      accessionNumber: numberOf.get(named.specimenId) ?? numberOf.get(specimenId) ?? "",
      freeFrom: nextFreeStart(near, period),
    };
    const deliverFrom = await firstDelivery(work, loanLineId, near);
    return new Refusal(
      "conflict",
      "booking.taken",
      deliverFrom === null
        ? { ...taken, wayOut: "booking.free-from" }
        : { ...taken, deliverFrom, wayOut: "booking.deliver-from" },
    );
  }
  return null;
}

/** The first day of delivery for which all days of the line's loan are free; null for what is no loan. */
async function firstDelivery(
  { transaction }: Work,
  loanLineId: string | null,
  busy: readonly Period[],
): Promise<DateText | null> {
  if (loanLineId === null) return null;
  const { loan } = await transaction.loanLine.findUniqueOrThrow({
    where: { id: loanLineId },
    select: { loan: { select: { startsOn: true, endsOn: true, daysBefore: true, daysAfter: true } } },
  });
  const days = { startsOn: toDateText(loan.startsOn), endsOn: toDateText(loan.endsOn) };
  return addDays(nextFreeStart(busy, withBuffers(days, loan.daysBefore, loan.daysAfter)), loan.daysBefore);
}
