/** Recording a certificate of cover: how much, from when to when, where, on the road or not. */
import { requireState } from "#lib/loans/at-hand.ts";
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { CoverInput, loanStates } from "#lib/loans/schema.ts";
import { command } from "#lib/people/command.ts";
import { type Id, newId } from "#lib/platform/identity.ts";

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
