/**
 * Messages on a loan: written by either side, never changed. Whoever writes has
 * read what was there before; whoever only reads says so by a mark of their own.
 */
import { takeLoan } from "#lib/loans/commands/on-loan.ts";
import { writeLetters } from "#lib/loans/commands/write-letters.ts";
import { LoanOnly } from "#lib/loans/inputs.ts";
import { MessageInput } from "#lib/loans/messages.ts";
import { command, type Work } from "#lib/people/command.ts";
import { isBorrower } from "#lib/people/viewer.ts";
import { type Id, newId } from "#lib/platform/identity.ts";
import { Refusal } from "#lib/platform/refusal.ts";

async function markRead({ transaction, viewer, now }: Work, loanId: string): Promise<void> {
  const { accountId } = viewer;
  await transaction.messageSeen.upsert({
    where: { loanId_accountId: { loanId, accountId } },
    create: { loanId, accountId, seenAt: now },
    update: { seenAt: now },
  });
}

export const writeMessage = command(
  "writeMessage",
  MessageInput,
  async (work, { loanId, text }): Promise<Id> => {
    const { transaction, viewer, now } = work;
    const loan = await takeLoan(work, loanId, "writeMessage");
    if (loan.submittedAt === null)
      throw new Refusal("conflict", "loan.not-now", { state: loan.state, loan: loan.number });
    const side = isBorrower(viewer) ? "borrower" : "centre";
    const id = newId();
    await transaction.message.create({
      data: { id, loanId: loan.id, accountId: viewer.accountId, side, text, writtenAt: now },
    });
    await markRead(work, loan.id);
    await writeLetters(work, loan.id, side === "borrower" ? "message-to-centre" : "message-to-borrower");
    return id;
  },
);

/** Says that one has read what the other side wrote. */
export const readMessages = command("readMessages", LoanOnly, async (work, { loanId }) => {
  const loan = await takeLoan(work, loanId, "readMessages");
  await markRead(work, loan.id);
});
