/**
 * Recording a certificate of cover: how much, from when to when, where, on the road
 * or not. One that was recorded wrongly is taken back before the specimens leave;
 * once they have left, what covered them on the way stays as it was.
 */
import { z } from "zod";
import { requireState } from "#lib/loans/at-hand.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { statesBeforeRelease } from "#lib/loans/loan-state.ts";
import { CoverInput, loanStates } from "#lib/loans/schema.ts";
import { command } from "#lib/people/command.ts";
import { Id, newId } from "#lib/platform/identity.ts";
import { notFound } from "#lib/platform/refusal.ts";

const ended: readonly string[] = ["closed", "declined", "withdrawn"];

export const recordCover = command("recordCover", CoverInput, async (work, input): Promise<Id> => {
  const { minor, startsAt, endsAt, ...facts } = input;
  const loan = await takeLoan(work, input.loanId, "recordCover");
  requireState(
    loan,
    loanStates.filter((state) => !ended.includes(state)),
  );
  const id = newId();
  await work.transaction.cover.create({
    data: {
      id,
      ...facts,
      amountMinor: BigInt(minor),
      startsAt: new Date(startsAt),
      endsAt: new Date(endsAt),
    },
  });
  return id;
});

/**
 * Takes a certificate off the record. A version of the agreement that names it
 * keeps naming it; the gate of release counts only what is on record.
 */
export const takeBackCover = command("takeBackCover", z.object({ coverId: Id }), async (work, input) => {
  const cover = await work.transaction.cover.findUnique({ where: { id: input.coverId } });
  if (!cover) throw notFound("cover");
  const loan = await takeLoan(work, cover.loanId, "takeBackCover");
  requireState(loan, statesBeforeRelease);
  // Of two who take it back at once the second finds nothing.
  const { count } = await work.transaction.cover.deleteMany({ where: { id: cover.id } });
  if (count === 0) throw notFound("cover");
  await writeLetters(work, loan.id, "cover-taken-back");
});
