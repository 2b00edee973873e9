/**
 * Asking again like last time: a slip with the purpose, the venue, the contacts
 * and the specimens of an earlier loan, on the same days of a coming year or from
 * another day on. What is not free on those days is left out and named; nothing is
 * submitted, so that everything can still be changed.
 */
import { daysLikeLastTime, earliestStart } from "#lib/loans/asked-days.ts";
import { buffersOf, noteLines } from "#lib/loans/commands/note-specimen.ts";
import { openLoanFor } from "#lib/loans/commands/open-loan.ts";
import { requireStart } from "#lib/loans/commands/state-request.ts";
import { AskAgainInput, type RequestDraft } from "#lib/loans/inputs.ts";
import type { LineState } from "#lib/loans/schema.ts";
import { toColumns, toRequest } from "#lib/loans/stored-request.ts";
import { command, type Work } from "#lib/people/command.ts";
import { authorise } from "#lib/people/permission.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { addDays, daysBetween } from "#lib/platform/dates.ts";
import type { Id } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import { type Buffers, bookedRange, type Days } from "#lib/suitability/period.ts";
import { busyPeriodsOf } from "#lib/whereabouts/queries.ts";

const neverWent: readonly LineState[] = ["declined", "withdrawn", "missing"];

/** The slip that a borrower is gathering, which is one at a time. */
async function slipInHand({ transaction, viewer }: Work) {
  if (!isBorrower(viewer)) return null;
  return await transaction.loan.findFirst({
    where: {
      createdById: viewer.accountId,
      borrowerId: viewer.institutionId ?? "",
      submittedAt: null,
      closedAt: null,
      lines: { every: { state: "noted" } },
    },
    select: { id: true, number: true, _count: { select: { lines: true } } },
    orderBy: { id: "desc" },
  });
}

/** Which of the specimens are free on all days that the loan would take. */
async function freeAmong(
  { transaction, today }: Work,
  specimenIds: readonly string[],
  days: Days & Buffers,
): Promise<string[]> {
  const { startsOn, endsOn } = bookedRange(days, today);
  const busy = await busyPeriodsOf(transaction, specimenIds, startsOn, endsOn);
  return specimenIds.filter((id) => (busy.get(id) ?? []).length === 0);
}

export type AskedAgain = {
  id: Id;
  number: string;
  days: Days;
  /** Accession numbers of what is not free then. */
  leftOut: string[];
};

export const askAgain = command("askAgain", AskAgainInput, async (work, input): Promise<AskedAgain> => {
  const { transaction, viewer, today } = work;
  const last = await transaction.loan.findUnique({
    where: { id: input.loanId },
    include: { lines: { include: { specimen: { select: { accessionNumber: true } } } } },
  });
  if (!last) throw notFound("loan");
  authorise(viewer, "askAgain", { institutionId: last.borrowerId });
  const slip = await slipInHand(work);
  if (slip && slip._count.lines > 0)
    throw new Refusal("conflict", "loan.slip-in-hand", { number: slip.number });

  const went = last.lines.filter(({ state }) => !neverWent.includes(state as LineState));
  const wanted = went.map(({ specimenId }) => specimenId);
  const buffers = await buffersOf(work, wanted);
  const before = toRequest(last);
  const days = daysLikeLastTime(before, earliestStart(today, buffers), input.startsOn);
  requireStart(work, days.startsOn);
  const free = new Set(await freeAmong(work, wanted, { ...days, ...buffers }));
  if (wanted.length > 0 && free.size === 0)
    throw new Refusal("conflict", "loan.nothing-free", { from: days.startsOn, to: days.endsOn });

  const { opensOn } = before;
  const request: RequestDraft = {
    ...before,
    ...days,
    opensOn: opensOn ? addDays(days.startsOn, daysBetween(before.startsOn, opensOn)) : null,
    factsConfirmed: false,
    note: "",
  };
  const specimenIds = wanted.filter((id) => free.has(id));
  const leftOut = went.filter(({ specimenId }) => !free.has(specimenId));
  const answer = { days, leftOut: leftOut.map(({ specimen }) => specimen.accessionNumber).sort() };
  if (!slip) {
    const { id, number } = await openLoanFor(work, {
      borrowerId: last.borrowerId,
      request,
      specimenIds,
      days: null,
    });
    return { id, number, ...answer };
  }
  await transaction.loan.update({
    where: { id: slip.id },
    data: { ...toColumns(request, work.now), ...(await buffersOf(work, specimenIds)) },
  });
  await noteLines(work, { id: slip.id, lines: [] }, specimenIds);
  return { id: slip.id, number: slip.number, ...answer };
});
