/**
 * Putting specimens on a loan and taking them off, as long as it has not been
 * decided. A slip of which nothing is stated takes the days that were looked for,
 * or the first that are possible for what is noted on it. From the slip a specimen
 * goes without a trace; later it is withdrawn, unpacked if need be, and its days
 * are given back. What was withdrawn from a loan does not come back to it.
 */

import { earliestStart, firstDays } from "#lib/loans/asked-days.ts";
import { type LineOnLoan, type LoanAtHand, liveLines, requireState } from "#lib/loans/at-hand.ts";
import { moveLines, takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { LoanSpecimen, NoteInput } from "#lib/loans/inputs.ts";
import { command, type Work } from "#lib/people/command.ts";
import { practiceHere } from "#lib/people/queries.ts";
import { addDays, toDate, toDateText } from "#lib/platform/dates.ts";
import { newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { writeCrateEvents } from "#lib/shipments/commands.ts";
import type { SpecimenInput } from "#lib/specimens/schema.ts";
import { type Buffers, bufferDaysOf, buffersFor, type Days } from "#lib/suitability/period.ts";
import { releaseLineBookings } from "#lib/whereabouts/commands.ts";
import { busyPeriodsOf } from "#lib/whereabouts/queries.ts";

/** The days around a loan of these specimens. */
export async function buffersOf({ transaction }: Work, specimenIds: readonly string[]): Promise<Buffers> {
  const specimens = await transaction.specimen.findMany({
    where: { id: { in: [...specimenIds] } },
    select: { kind: true, massKg: true, mountedMassKg: true },
  });
  return buffersFor(
    specimens.map((specimen) => ({ ...specimen, kind: specimen.kind as SpecimenInput["kind"] })),
    bufferDaysOf(await practiceHere(transaction)),
  );
}

/** The days around a loan follow from what is on it. */
export async function settleBuffers(work: Work, loanId: string): Promise<void> {
  const { transaction } = work;
  const lines = await transaction.loanLine.findMany({
    where: { loanId, state: { in: ["noted", "requested", "accepted", "packed"] } },
    select: { specimenId: true },
  });
  const buffers = await buffersOf(
    work,
    lines.map(({ specimenId }) => specimenId),
  );
  await transaction.loan.update({ where: { id: loanId }, data: buffers });
}

/** How far ahead the calendar is read for a slip's first guess of its days. */
const LOOK_AHEAD_DAYS = 3_650;

/** The days that a slip with these specimens begins with. */
export async function guessDays(
  { transaction, today }: Work,
  specimenIds: readonly string[],
  buffers: Buffers,
  wish: Days | null,
): Promise<Days> {
  const busy = await busyPeriodsOf(transaction, specimenIds, today, addDays(today, LOOK_AHEAD_DAYS));
  return firstDays(today, buffers, [...busy.values()].flat(), wish);
}

/** Days of a slip, as long as nothing of it is stated: what was looked for first, later what has become possible. */
async function settleDays(work: Work, loan: LoanAtHand, wish: Days | null): Promise<Days> {
  const { transaction, today } = work;
  const row = await transaction.loan.findUniqueOrThrow({
    where: { id: loan.id },
    include: { lines: { select: { specimenId: true } } },
  });
  const kept = { startsOn: toDateText(row.startsOn), endsOn: toDateText(row.endsOn) };
  const isStated = loan.state !== "enquiry" || row.title !== "";
  const wished = liveLines(loan).length === 0 ? wish : null;
  if (isStated || (wished === null && kept.startsOn >= earliestStart(today, row))) return kept;
  const days = await guessDays(
    work,
    row.lines.map(({ specimenId }) => specimenId),
    row,
    wished,
  );
  await transaction.loan.update({
    where: { id: loan.id },
    data: { startsOn: toDate(days.startsOn), endsOn: toDate(days.endsOn) },
  });
  return days;
}

export type Noted = {
  added: number;
  /** The request was submitted before, so that what is added waits until it is submitted again. */
  waits: boolean;
  days: Days;
};

/** Notes specimens that are not on the loan yet. @returns how many were added */
export async function noteLines(
  work: Work,
  loan: Pick<LoanAtHand, "id" | "lines">,
  specimenIds: readonly string[],
): Promise<number> {
  const wanted = [...new Set(specimenIds)];
  const known = await work.transaction.specimen.findMany({
    where: { id: { in: wanted } },
    select: { id: true, accessionNumber: true },
  });
  if (known.length < wanted.length) throw notFound("specimen");
  const live = new Set(liveLines(loan).map(({ specimenId }) => specimenId));
  const onIt = new Set(loan.lines.map(({ specimenId }) => specimenId));
  const back = known.find(({ id }) => onIt.has(id) && !live.has(id));
  if (back) throw new Refusal("conflict", "loan.was-withdrawn", { specimen: back.accessionNumber });
  const added = known.filter(({ id }) => !onIt.has(id));
  await work.transaction.loanLine.createMany({
    data: added.map(({ id: specimenId }) => ({
      id: newId(),
      loanId: loan.id,
      specimenId,
      state: "noted",
      stateSince: work.now,
    })),
  });
  await settleBuffers(work, loan.id);
  return added.length;
}

/** @returns how many were added; what is on the loan already stays once */
export const noteSpecimen = command("noteSpecimen", NoteInput, async (work, input): Promise<Noted> => {
  const { loanId, specimenIds, seriesId, days: wish } = input;
  const loan = await takeLoan(work, loanId, "noteSpecimen");
  requireState(loan, ["enquiry", "requested"]);
  const sheets =
    seriesId === null
      ? []
      : await work.transaction.specimen.findMany({ where: { seriesId }, select: { id: true } });
  if (seriesId !== null && sheets.length === 0) throw notFound("series");
  const added = await noteLines(work, loan, [...specimenIds, ...sheets.map(({ id }) => id)]);
  return { added, waits: loan.state === "requested", days: await settleDays(work, loan, wish) };
});

/** Takes specimens out of their crates; a crate that was sealed is open again and wants a new seal. */
async function unpack(work: Work, loanId: string, specimenIds: readonly string[]): Promise<void> {
  const where = { specimenId: { in: [...specimenIds] }, crate: { loanId } };
  const crates = await work.transaction.crateContent.findMany({
    where,
    distinct: ["crateId"],
    select: { crateId: true, crate: { select: { _count: { select: { events: true } } } } },
  });
  await work.transaction.crateContent.deleteMany({ where });
  const packed = crates.filter(({ crate }) => crate._count.events > 0);
  await writeCrateEvents(
    work,
    packed.map(({ crateId }) => ({ crateId, kind: "packed" as const })),
  );
}

/** Withdraws lines that have not left and gives their days back. */
export async function withdrawLines(
  work: Work,
  loan: Pick<LoanAtHand, "id">,
  lines: readonly LineOnLoan[],
): Promise<void> {
  if (lines.length === 0) return;
  const packed = lines.filter((line) => line.state === "packed");
  const specimenIds = lines.map((line) => line.specimenId);
  if (lines.some((line) => line.state === "accepted" || line.state === "packed"))
    await unpack(work, loan.id, specimenIds);
  if (packed.length > 0) await moveLines(work, packed, "accepted");
  const unpacked = lines.map((line) =>
    line.state === "packed" ? { ...line, state: "accepted" as const } : line,
  );
  await moveLines(work, unpacked, "withdrawn");
  await releaseLineBookings(
    work,
    lines.map((line) => line.id),
  );
}

export const removeSpecimen = command("removeSpecimen", LoanSpecimen, async (work, input) => {
  const loan = await takeLoan(work, input.loanId, "removeSpecimen");
  const line = liveLines(loan).find(({ specimenId }) => specimenId === input.specimenId);
  if (!line) throw notFound("specimen");
  if (line.state === "noted") await work.transaction.loanLine.delete({ where: { id: line.id } });
  else await withdrawLines(work, loan, [line]);
  const isLast = liveLines(loan).length === 1 && line.state !== "noted";
  if (isLast) {
    await work.transaction.loan.update({ where: { id: loan.id }, data: { closedAt: work.now } });
    await writeLetters(work, loan.id, line.state === "requested" ? "withdrawn" : "cancelled");
  }
  await settleBuffers(work, loan.id);
});
