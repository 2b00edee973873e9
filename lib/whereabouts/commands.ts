/**
 * Places and moves, hand-overs and bookings. A whole takes its parts along: who
 * books it books them, and what stands with it or is held with it goes with it.
 * Specimens are locked in order of their id before anything of theirs changes, so
 * call each of these functions once for all specimens of an act, not once for each.
 */
import { z } from "zod";
import { command, type Work } from "#lib/people/command.ts";
import { centreSettings } from "#lib/people/queries.ts";
import { type DateText, toDate } from "#lib/platform/dates.ts";
import { Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { lockSpecimens, takeBookings } from "#lib/whereabouts/commands/take-bookings.ts";
import { handoverLinks } from "#lib/whereabouts/custody.ts";
import { lastHandoversOf, placesOf, wholesOf, withPartsOf } from "#lib/whereabouts/queries.ts";
import {
  HouseBookingInput,
  homeKinds,
  MoveInput,
  PlaceInput,
  type PlaceKind,
} from "#lib/whereabouts/schema.ts";

// Places and moves

/** @returns the place's id */
export const keepPlace = command("keepPlace", PlaceInput, async ({ transaction }, input): Promise<Id> => {
  const { id: given, ...facts } = input;
  const sameCode = await transaction.place.findUnique({ where: { code: facts.code } });
  if (sameCode && sameCode.id !== given)
    throw new Refusal("conflict", "place.code-taken", { code: facts.code });
  if (facts.venueId && !(await transaction.venue.findUnique({ where: { id: facts.venueId } })))
    throw notFound("venue");
  if (facts.parentId) {
    const above = await transaction.$queryRaw<{ id: string }[]>`
      WITH RECURSIVE up (id) AS (
        SELECT ${facts.parentId}::uuid
        UNION SELECT place.parent_id FROM up JOIN place ON place.id = up.id WHERE place.parent_id IS NOT NULL
      )
      SELECT place.id::text AS id FROM up JOIN place ON place.id = up.id`;
    if (above.length === 0) throw notFound("place");
    if (above.some(({ id }) => id === given))
      throw new Refusal("invalid", "input.invalid", {}, [
        { path: "parentId", message: "place.inside-itself" },
      ]);
  }
  if (given === null) return (await transaction.place.create({ data: { id: newId(), ...facts } })).id;
  const changed = await transaction.place.updateMany({ where: { id: given }, data: facts });
  if (changed.count === 0) throw notFound("place");
  return given;
});

async function findOrMakePlace(
  { transaction }: Work,
  place: { code: string; name: string; kind: PlaceKind; venueId: string | null },
): Promise<Id> {
  await transaction.place.createMany({ data: [{ id: newId(), ...place }], skipDuplicates: true });
  const { id } = await transaction.place.findUniqueOrThrow({
    where: { code: place.code },
    select: { id: true },
  });
  return id;
}

/** The place that stands for a borrower's venue, made when it is first needed. */
export async function placeOfVenue(work: Work, venueId: string): Promise<Id> {
  const known = await work.transaction.place.findFirst({
    where: { venueId, kind: "venue" },
    select: { id: true },
  });
  if (known) return known.id;
  const venue = await work.transaction.venue.findUnique({
    where: { id: venueId },
    include: { institution: true },
  });
  if (!venue) throw notFound("venue");
  const name = `${venue.institution.name}, ${venue.name}`.slice(0, 120);
  return await findOrMakePlace(work, {
    code: `V-${venueId.slice(-12).toUpperCase()}`,
    name,
    kind: "venue",
    venueId,
  });
}

/** The place of everything that is between two places. */
export async function placeOnTheWay(work: Work): Promise<Id> {
  return await findOrMakePlace(work, {
    code: "ON-THE-WAY",
    name: "On the way",
    kind: "on the way",
    venueId: null,
  });
}

/** Moves specimens and the parts that stand with them. What stands there already stays without an entry. */
export async function writeMoves(
  work: Work,
  move: { specimenIds: readonly string[]; placeId: string; reason: string },
): Promise<void> {
  const { transaction, viewer, now } = work;
  const tree = await withPartsOf(transaction, move.specimenIds);
  const all = [...new Set([...tree.values()].flat())];
  await lockSpecimens(work, [...move.specimenIds, ...all]);
  if (!(await transaction.place.findUnique({ where: { id: move.placeId } }))) throw notFound("place");
  const placeOf = await placesOf(transaction, all);
  const going = new Set(
    [...tree].flatMap(([root, members]) =>
      members.filter((member) => placeOf.get(member) === placeOf.get(root)),
    ),
  );
  await transaction.move.createMany({
    data: [...going]
      .filter((id) => placeOf.get(id) !== move.placeId)
      .sort()
      .map((specimenId) => ({
        id: newId(),
        specimenId,
        placeId: move.placeId,
        movedAt: now,
        movedBy: viewer.name,
        reason: move.reason,
      })),
  });
}

export async function writeMove(
  work: Work,
  { specimenId, ...move }: { specimenId: string; placeId: string; reason: string },
): Promise<void> {
  await writeMoves(work, { specimenIds: [specimenId], ...move });
}

/** A move inside the house. The ways out and home are written by the loan that causes them. */
export const moveSpecimen = command("moveSpecimen", MoveInput, async (work, input) => {
  const { specimenId, placeId } = input;
  const place = await work.transaction.place.findUnique({ where: { id: placeId } });
  if (!place) throw notFound("place");
  if (!homeKinds.includes(place.kind as PlaceKind)) throw new Refusal("conflict", "move.outside-the-house");
  const holder = (await lastHandoversOf(work.transaction, [specimenId])).get(specimenId)?.toParty;
  if (holder && holder !== (await centreSettings(work.transaction)).name)
    throw new Refusal("conflict", "move.not-in-the-house", { holder });
  if ((await placesOf(work.transaction, [specimenId])).get(specimenId) === placeId)
    throw new Refusal("conflict", "move.already-there", { place: place.name });
  await writeMove(work, input);
});

// Custody

export type HandoverNote = {
  toParty: string;
  /** Who gave it out of hand, and who took it, by name. */
  releasedBy: string;
  receivedBy: string;
  reason: string;
  loanId: string | null;
};

/**
 * Writes a hand-over of specimens and of the parts that are held with them. A
 * chain that has not begun begins in the house. What the party has already stays
 * without an entry.
 */
export async function writeHandovers(
  work: Work,
  note: HandoverNote & { specimenIds: readonly string[] },
): Promise<void> {
  const { transaction, now } = work;
  const tree = await withPartsOf(transaction, note.specimenIds);
  const all = [...new Set([...tree.values()].flat())];
  await lockSpecimens(work, [...note.specimenIds, ...all]);
  const house = (await centreSettings(transaction)).name;
  const lastOf = await lastHandoversOf(transaction, all);
  const holder = (id: string) => lastOf.get(id)?.toParty ?? house;
  const going = new Set(
    [...tree].flatMap(([root, members]) => members.filter((member) => holder(member) === holder(root))),
  );
  const { toParty, specimenIds: _, ...said } = note;
  await transaction.custodyEvent.createMany({
    data: [...going].sort().flatMap((specimenId) =>
      handoverLinks(lastOf.get(specimenId) ?? null, toParty, house).map(({ opens, ...link }) => ({
        id: newId(),
        specimenId,
        ...link,
        handedOverAt: now,
        ...(opens
          ? { ...said, releasedBy: "", receivedBy: house, reason: "the record of custody begins" }
          : said),
      })),
    ),
  });
}

export async function writeHandover(
  work: Work,
  { specimenId, ...note }: HandoverNote & { specimenId: string },
): Promise<void> {
  await writeHandovers(work, { specimenIds: [specimenId], ...note });
}

// Bookings

/** Books a specimen for the house itself. @returns the booking's id */
export const bookSpecimen = command("bookSpecimen", HouseBookingInput, async (work, input): Promise<Id> => {
  const { specimenId, purpose, startsOn, endsOn } = input;
  const wanted = {
    specimenId,
    purpose,
    period: { startsOn, endsOn },
    strength: "firm",
    loanLineId: null,
    expiresAt: null,
  } as const;
  const id = (await takeBookings(work, [wanted])).get(specimenId);
  if (!id) throw notFound("specimen");
  return id;
});

/** Gives back what the house booked for itself, with the parts that came along. */
export const releaseBooking = command("releaseBooking", z.object({ bookingId: Id }), async (work, input) => {
  const { transaction, now } = work;
  const booking = await transaction.booking.findUnique({ where: { id: input.bookingId } });
  if (!booking || booking.releasedAt !== null) throw notFound("booking");
  if (booking.loanLineId !== null) throw new Refusal("conflict", "booking.of-a-loan");
  const { specimenId, purpose, startsOn, endsOn, bookedBy, bookedAt } = booking;
  const together = { purpose, startsOn, endsOn, bookedBy, bookedAt, loanLineId: null, releasedAt: null };
  const wholes = (await wholesOf(transaction, [specimenId])).get(specimenId) ?? [];
  const cameWith = await transaction.booking.findFirst({
    where: { ...together, specimenId: { in: wholes } },
    select: { specimen: { select: { accessionNumber: true } } },
  });
  if (cameWith) throw new Refusal("conflict", "booking.of-its-whole", { ...cameWith.specimen });
  const members = (await withPartsOf(transaction, [specimenId])).get(specimenId) ?? [];
  await lockSpecimens(work, members);
  await transaction.booking.updateMany({
    where: { ...together, specimenId: { in: members } },
    data: { releasedAt: now },
  });
});

export type Hold = {
  specimenId: string;
  loanLineId: string;
  startsOn: DateText;
  endsOn: DateText;
  expiresAt: Date;
};

/** Holds specimens for loan lines until the holds run out. A line's earlier hold is replaced. */
export async function holdSpecimens(work: Work, holds: readonly Hold[]): Promise<void> {
  await takeBookings(
    work,
    holds.map(({ startsOn, endsOn, ...hold }) => ({
      ...hold,
      period: { startsOn, endsOn },
      purpose: "loan",
      strength: "hold",
    })),
  );
}

/** The lines' specimens and their parts, locked. */
async function lockLines(work: Work, lineIds: readonly string[]) {
  const lines = await work.transaction.loanLine.findMany({
    where: { id: { in: [...lineIds] } },
    select: { id: true, specimenId: true },
  });
  const tree = await withPartsOf(
    work.transaction,
    lines.map(({ specimenId }) => specimenId),
  );
  const numberOf = await lockSpecimens(work, [...tree.values()].flat());
  return { lines, tree, numberOf };
}

/** Makes the lines' holds firm. A hold that ran out and lost a row has to be taken again first. */
export async function firmBookings(work: Work, lineIds: readonly string[]): Promise<void> {
  const { lines, tree, numberOf } = await lockLines(work, lineIds);
  const live = { loanLineId: { in: [...lineIds] }, releasedAt: null };
  const rows = await work.transaction.booking.findMany({ where: live, select: { specimenId: true } });
  const held = new Set(rows.map(({ specimenId }) => specimenId));
  for (const { specimenId } of lines) {
    if (tree.get(specimenId)?.some((member) => !held.has(member)))
      throw new Refusal("conflict", "booking.lapsed", { accessionNumber: numberOf.get(specimenId) ?? "" });
  }
  await work.transaction.booking.updateMany({ where: live, data: { strength: "firm", expiresAt: null } });
}

/**
 * Gives the lines' days back: all of them, or those from `endsOn` on, so that the
 * days that were used stay in the calendar. Never makes a booking longer.
 */
export async function releaseLineBookings(
  work: Work,
  lineIds: readonly string[],
  endsOn?: DateText,
): Promise<void> {
  await lockLines(work, lineIds);
  const live = { loanLineId: { in: [...lineIds] }, releasedAt: null };
  if (endsOn !== undefined) {
    const day = toDate(endsOn);
    await work.transaction.booking.updateMany({
      where: { ...live, startsOn: { lt: day }, endsOn: { gt: day } },
      data: { endsOn: day },
    });
  }
  await work.transaction.booking.updateMany({
    where: endsOn === undefined ? live : { ...live, startsOn: { gte: toDate(endsOn) } },
    data: { releasedAt: work.now },
  });
}
