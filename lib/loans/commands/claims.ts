/**
 * Opening a claim and writing down what happens to it. A claim is for a specimen
 * that was on the loan and left the house; its number follows the loan's. It goes
 * on after the loan is closed, and never holds a specimen back from coming home.
 */

import { ClaimEventInput, type ClaimEventKind, nextClaimEvents, OpenClaimInput } from "#lib/loans/claims.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { lineStatesSinceRelease } from "#lib/loans/loan-state.ts";
import { command } from "#lib/people/command.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { notFound, Refusal } from "#lib/platform/refusal.ts";

export const openClaim = command(
  "openClaim",
  OpenClaimInput,
  async (work, { loanId, specimenId, note }): Promise<{ id: Id; number: string }> => {
    const { transaction, viewer, now } = work;
    const loan = await takeLoan(work, loanId, "openClaim");
    const line = loan.lines.find((one) => one.specimenId === specimenId);
    if (!line) throw notFound("specimen");
    if (!lineStatesSinceRelease.includes(line.state))
      throw new Refusal("conflict", "claim.never-left", { specimen: line.accessionNumber });
    const earlier = await transaction.claim.findMany({
      where: { loanId },
      include: { events: { orderBy: { sequence: "desc" }, take: 1 } },
    });
    const stillOpen = earlier.find(
      (claim) =>
        claim.specimenId === specimenId &&
        nextClaimEvents((claim.events[0]?.kind ?? "opened") as ClaimEventKind).length > 0,
    );
    if (stillOpen) throw new Refusal("conflict", "claim.open-already", { claim: stillOpen.number });
    const [id, number] = [newId(), `${loan.number} C${earlier.length + 1}`];
    await transaction.claim.create({ data: { id, loanId, specimenId, number } });
    await transaction.claimEvent.create({
      data: { id: newId(), claimId: id, kind: "opened", note, accountId: viewer.accountId, at: now },
    });
    await writeLetters(work, loanId, "claim", { claim: number });
    return { id, number };
  },
);

export const recordClaimEvent = command(
  "recordClaimEvent",
  ClaimEventInput,
  async (work, { claimId, kind, amount, note }) => {
    const { transaction, viewer, now } = work;
    const claim = await transaction.claim.findUnique({ where: { id: claimId } });
    if (!claim) throw notFound("claim");
    await takeLoan(work, claim.loanId, "recordClaimEvent");
    const last = await transaction.claimEvent.findFirst({
      where: { claimId },
      orderBy: { sequence: "desc" },
    });
    const from = (last?.kind ?? "opened") as ClaimEventKind;
    if (!nextClaimEvents(from).includes(kind))
      throw new Refusal("conflict", "claim.not-now", { claim: claim.number, from, to: kind });
    await transaction.claimEvent.create({
      data: {
        id: newId(),
        claimId,
        kind,
        amountMinor: amount?.minor ?? null,
        currency: amount?.currency ?? null,
        note,
        accountId: viewer.accountId,
        at: now,
      },
    });
    await writeLetters(work, claim.loanId, "claim", { claim: claim.number });
  },
);
