/**
 * Places and moves, hand-overs and bookings. A whole takes its parts along: who
 * books it books them, and what stands with it or is held with it goes with it.
 * Specimens are locked in order of their id before anything of theirs changes, so
 * call each of these functions once for all specimens of an act, not once for each.
 */
import { z } from "zod";
import { command, type Work } from "#lib/people/command.ts";
import { type DateText, toDate } from "#lib/platform/dates.ts";
import { Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { arrivalsOf, beginCustody, openingNote } from "#lib/whereabouts/commands/begin-custody.ts";
import { lockSpecimens, takeBookings } from "#lib/whereabouts/commands/take-bookings.ts";
import { handoverLinks, isInHouse } from "#lib/whereabouts/custody.ts";
import {
  homePlacesOf,
  houseOf,
  lastHandoversOf,
  placesOf,
  wholesOf,
  withPartsOf,
} from "#lib/whereabouts/queries.ts";
import {
  HouseBookingInput,
  isHomeKind,
  isStorageKind,
  MoveInput,
  PlaceInput,
  type PlaceKind,
} from "#lib/whereabouts/schema.ts";

// Places and moves

/** What a place may not become: one that stands elsewhere than what was moved there was told. */
function requireSameSide(before: PlaceFacts | null, after: PlaceFacts): void {
  if (!before) return;
  if (isHomeKind(before.kind) && !isHomeKind(after.kind))
    throw new Refusal("conflict", "place.stays-inside", { place: before.code });
  const fixed = ["code", "kind", "venueId", "parentId"] as const;
  if (!isHomeKind(before.kind) && fixed.some((fact) => before[fact] !== after[fact]))
    throw new Refusal("conflict", "place.kept-by-the-program", { place: before.code });
}

type PlaceFacts = { code: string; kind: string; venueId: string | null; parentId: string | null };

/** @returns the place's id */
export const keepPlace = command("keepPlace", PlaceInput, async ({ transaction }, input): Promise<Id> => {
  const { id: given, ...facts } = input;
  // Of two changes at once each could put one place into the other: the tree is changed by one at a time.
  await transaction.$executeRaw`SELECT pg_advisory_xact_lock(hashtextextended('tree of places', 0))`;
  const sameCode = await transaction.place.findUnique({ where: { code: facts.code } });
  if (sameCode && sameCode.id !== given)
    throw new Refusal("conflict", "place.code-taken", { code: facts.code });
  const before = given === null ? null : await transaction.place.findUnique({ where: { id: given } });
  if (given !== null && !before) throw notFound("place");
  requireSameSide(before, facts);
  if (facts.venueId && !(await transaction.venue.findUnique({ where: { id: facts.venueId } })))
    throw notFound("venue");
  if (facts.parentId) {
    const above = await transaction.$queryRaw<{ id: string; kind: string }[]>`
      WITH RECURSIVE up (id) AS (
        SELECT ${facts.parentId}::uuid
        UNION SELECT place.parent_id FROM up JOIN place ON place.id = up.id WHERE place.parent_id IS NOT NULL
      )
      SELECT place.id::text AS id, place.kind FROM up JOIN place ON place.id = up.id`;
    const refuse = (message: string) =>
      new Refusal("invalid", "input.invalid", {}, [{ path: "parentId", message }]);
    if (above.length === 0) throw notFound("place");
    if (above.some(({ id }) => id === given)) throw refuse("place.inside-itself");
    if (isHomeKind(facts.kind) && above.some(({ kind }) => !isHomeKind(kind)))
      throw refuse("place.around-outside");
  }
  if (given === null) return (await transaction.place.create({ data: { id: newId(), ...facts } })).id;
  await transaction.place.update({ where: { id: given }, data: facts });
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

/** A move that is told afterwards is told in order: after the last move and the last hand-over of all that go. */
async function requireInOrder({ transaction, now }: Work, specimenIds: readonly string[], at: Date) {
  if (!(at <= now)) throw new Refusal("conflict", "move.in-the-future");
  const [last] = await transaction.$queryRaw<{ at: Date | null }[]>`
    SELECT greatest(
      (SELECT max(moved_at) FROM move WHERE specimen_id = ANY(${specimenIds}::uuid[])),
      (SELECT max(handed_over_at) FROM custody_event WHERE specimen_id = ANY(${specimenIds}::uuid[]))) AS at`;
  if (last?.at && !(at >= last.at))
    throw new Refusal("conflict", "move.before-the-last", { last: last.at.toISOString() });
}

/** Moves specimens and the parts that stand with them. What stands there already stays without an entry. */
export async function writeMoves(
  work: Work,
  move: { specimenIds: readonly string[]; placeId: string; reason: string; movedAt?: Date },
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
  const leaving = [...going].filter((id) => placeOf.get(id) !== move.placeId).sort();
  if (move.movedAt) await requireInOrder(work, leaving, move.movedAt);
  await transaction.move.createMany({
    data: leaving.map((specimenId) => ({
      id: newId(),
      specimenId,
      placeId: move.placeId,
      movedAt: move.movedAt ?? now,
      movedBy: viewer.name,
      reason: move.reason,
    })),
  });
}

export async function writeMove(
  work: Work,
  { specimenId, ...move }: { specimenId: string; placeId: string; reason: string; movedAt?: Date },
): Promise<void> {
  await writeMoves(work, { specimenIds: [specimenId], ...move });
}

/** What came home from a loan may be carried to where it is looked at, and is put back only by its check-in. */
async function refusePuttingBackUnseen(
  { transaction }: Work,
  specimenId: Id,
  place: { id: string; kind: string },
): Promise<void> {
  const waiting = await transaction.loanLine.findFirst({
    where: { specimenId, state: "resting at home" },
    select: { loan: { select: { number: true } } },
  });
  if (waiting === null) return;
  const own = (await homePlacesOf(transaction, [specimenId])).get(specimenId);
  if (isStorageKind(place.kind) || place.id === own)
    throw new Refusal("conflict", "move.not-checked-in", { loan: waiting.loan.number });
}

/**
 * A move inside the house. The ways out and home are written by the loan that causes them.
 * @returns the name of the place where it stands now
 */
export const moveSpecimen = command("moveSpecimen", MoveInput, async (work, input) => {
  const { transaction } = work;
  const { specimenId, placeId, reason, movedAt } = input;
  const place = await transaction.place.findUnique({ where: { id: placeId } });
  if (!place) throw notFound("place");
  if (!isHomeKind(place.kind)) throw new Refusal("conflict", "move.outside-the-house");
  // Whoever sends it away at this moment has to wait, or has been waited for.
  const members = (await withPartsOf(transaction, [specimenId])).get(specimenId) ?? [];
  await lockSpecimens(work, [specimenId, ...members]);
  const holder = (await lastHandoversOf(transaction, [specimenId])).get(specimenId)?.toParty ?? null;
  if (holder !== null && !isInHouse(holder, await houseOf(transaction)))
    throw new Refusal("conflict", "move.not-in-the-house", { holder });
  if ((await placesOf(transaction, [specimenId])).get(specimenId) === placeId)
    throw new Refusal("conflict", "move.already-there", { place: place.name });
  await refusePuttingBackUnseen(work, specimenId, place);
  const told: { movedAt?: Date } = movedAt === null ? {} : { movedAt: new Date(movedAt) };
  await writeMove(work, { specimenId, placeId, reason, ...told });
  // Where it has its first place in the house, the house has it.
  await beginCustody(work, members, told.movedAt ?? work.now);
  return { place: place.name };
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
 * chain that has not begun begins in the house, when the specimen came to it. What
 * the party has already stays without an entry.
 */
export async function writeHandovers(
  work: Work,
  note: HandoverNote & { specimenIds: readonly string[] },
): Promise<void> {
  const { transaction, now } = work;
  const tree = await withPartsOf(transaction, note.specimenIds);
  const all = [...new Set([...tree.values()].flat())];
  await lockSpecimens(work, [...note.specimenIds, ...all]);
  const house = await houseOf(transaction);
  if (house.name === "") throw notFound("centre");
  const lastOf = await lastHandoversOf(transaction, all);
  const holder = (id: string) => {
    const party = lastOf.get(id)?.toParty ?? null;
    return party === null || isInHouse(party, house) ? house.name : party;
  };
  const going = new Set(
    [...tree].flatMap(([root, members]) => members.filter((member) => holder(member) === holder(root))),
  );
  const { toParty, specimenIds: _, ...said } = note;
  const cameAt = await arrivalsOf(
    transaction,
    [...going].filter((id) => !lastOf.has(id)),
    now,
  );
  await transaction.custodyEvent.createMany({
    data: [...going].sort().flatMap((specimenId) =>
      handoverLinks(lastOf.get(specimenId) ?? null, toParty, house).map(({ opens, ...link }) => ({
        id: newId(),
        specimenId,
        ...link,
        handedOverAt: opens ? cameAt(specimenId) : now,
        ...(opens ? openingNote(house) : said),
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
