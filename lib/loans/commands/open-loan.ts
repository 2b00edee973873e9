/**
 * Opening a loan as an enquiry slip. A borrower opens it for its own institution,
 * the registrar for any. A slip may hold specimens before anything else is stated:
 * what is not stated stays empty and is asked for when the request is submitted.
 */
import type { z } from "zod";
import { buffersOf, guessDays, noteLines } from "#lib/loans/commands/note-specimen.ts";
import { requireStart, requireVenue } from "#lib/loans/commands/state-request.ts";
import { OpenLoanInput, type RequestDraft } from "#lib/loans/inputs.ts";
import { toColumns } from "#lib/loans/stored-request.ts";
import { command, type Work } from "#lib/people/command.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";
import type { Days } from "#lib/suitability/period.ts";

/** The next loan number of the year. */
async function nextLoanNumber({ transaction, today }: Work): Promise<string> {
  const year = today.slice(0, 4);
  const [row] = await transaction.$queryRaw<{ value: number }[]>`
    INSERT INTO counter (key, value) VALUES (${`loan-${year}`}, 1)
    ON CONFLICT (key) DO UPDATE SET value = counter.value + 1 RETURNING value`;
  return `L ${year}-${String(row?.value ?? 1).padStart(3, "0")}`;
}

/** The institution that borrows, with its venues. */
async function findBorrower({ transaction, viewer }: Work, borrowerId: string | null) {
  const id = isBorrower(viewer) ? viewer.institutionId : borrowerId;
  if (isBorrower(viewer) && borrowerId !== null && borrowerId !== id) throw notFound("institution");
  if (id === null)
    throw new Refusal("invalid", "input.invalid", {}, [
      { path: "borrowerId", message: "loan.borrower-missing" },
    ]);
  const borrower = await transaction.institution.findUnique({
    where: { id },
    include: { venues: { select: { id: true }, orderBy: { name: "asc" } } },
  });
  if (!borrower || borrower.kind === "centre") throw notFound("institution");
  return borrower;
}

export type Opened = { id: Id; number: string; days: Days };

/** Opens a loan inside a command that has authorised. */
export async function openLoanFor(work: Work, input: z.output<typeof OpenLoanInput>): Promise<Opened> {
  const { transaction, viewer } = work;
  const borrower = await findBorrower(work, input.borrowerId);
  const [firstVenue] = borrower.venues;
  if (!firstVenue) throw new Refusal("conflict", "loan.no-venue", { borrower: borrower.name });
  const byBorrower = isBorrower(viewer);
  const buffers = await buffersOf(work, input.specimenIds);
  const days = input.request ?? (await guessDays(work, input.specimenIds, buffers, input.days));
  const request: RequestDraft = input.request ?? {
    venueId: firstVenue.id,
    title: "",
    purpose: "",
    teachingUse: "viewing",
    audience: "enrolled students",
    paidAdmission: false,
    displayStyle: "didactic",
    pictures: [],
    activities: [],
    startsOn: days.startsOn,
    endsOn: days.endsOn,
    contactName: byBorrower ? viewer.name : "",
    contactEmail: byBorrower ? viewer.email : "",
    contactPhone: byBorrower ? borrower.phone : "",
    cover: null,
    note: "",
  };
  await requireVenue(work, request.venueId);
  requireStart(work, request.startsOn);
  const id = newId();
  const number = await nextLoanNumber(work);
  await transaction.loan.create({
    data: {
      id,
      number,
      borrowerId: borrower.id,
      ...toColumns(request, work.now),
      ...buffers,
      createdById: viewer.accountId,
      createdAt: work.now,
    },
  });
  if (input.specimenIds.length > 0) await noteLines(work, { id, lines: [] }, input.specimenIds);
  return { id, number, days: { startsOn: request.startsOn, endsOn: request.endsOn } };
}

export const openLoan = command("openLoan", OpenLoanInput, openLoanFor);
